"""Measures the start of the installed kernel: python3 startup.py [kernel name] [starts].

Wall time from the start of the process to the answer of the first cell, the processor time that the
kernel had used by then, and the wall time of trivial cells after it. Run it on a machine that does
nothing else.
"""
import os
import statistics
import sys
import time

from jupyter_client.manager import KernelManager


def processor_seconds(pid):
    with open("/proc/%d/stat" % pid) as stat:
        fields = stat.read().rsplit(")", 1)[1].split()
    return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")


def start(name):
    begun = time.time()
    manager = KernelManager(kernel_name=name)
    manager.start_kernel()
    client = manager.client()
    client.start_channels()
    try:
        client.wait_for_ready(timeout=60)
        ready = time.time() - begun
        answer(client, "1 + 1")
        first = time.time() - begun
        used = processor_seconds(manager.provisioner.pid)
        trivial = [answer(client, "%d + 1" % i) for i in range(20)]
    finally:
        client.stop_channels()
        manager.shutdown_kernel(now=True)
    return ready, first, used, trivial


def answer(client, code):
    begun = time.time()
    reply = client.execute_interactive(code, timeout=60, output_hook=lambda message: None)
    assert reply["content"]["status"] == "ok", reply
    return time.time() - begun


if __name__ == "__main__":
    kernel = sys.argv[1] if len(sys.argv) > 1 else "rungwork"
    for _ in range(int(sys.argv[2]) if len(sys.argv) > 2 else 5):
        ready, first, used, trivial = start(kernel)
        print(
            "connected %.2f s, first cell %.2f s (processor %.2f s), trivial cells: median %.0f ms, worst %.0f ms"
            % (ready, first, used, statistics.median(trivial) * 1e3, max(trivial) * 1e3)
        )

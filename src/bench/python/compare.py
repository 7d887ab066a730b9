"""Writes the figures of docs/benchmarks.md: runs the scripts in numpy and the program in C after the
Java benchmarks, on the same machine, and sets them side by side.

    mvn -q verify -Pbench && python3 src/bench/python/compare.py
"""
import datetime
import json
import os
import pathlib
import platform
import re
import shutil
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parents[2]
START, END = "<!-- figures -->", "<!-- end of figures -->"


def java():
    found = {}
    for run in json.loads((ROOT / "target/bench.json").read_text()):
        name = run["benchmark"].rsplit(".", 1)[1] + "".join(f" {v}" for v in run.get("params", {}).values())
        score = run["primaryMetric"]
        found[name] = (score["score"], score["scoreError"], run["vmVersion"])
    return found


def numpy(script):
    done = subprocess.run([sys.executable, str(HERE / script)], capture_output=True, text=True, check=True)
    return done.stdout


def lapack():
    """Microseconds and sum of dpbsv called from C; nothing where there is no compiler or library."""
    if shutil.which("gcc") is None:
        return None
    with tempfile.TemporaryDirectory() as folder:
        program = os.path.join(folder, "band")
        command = ["gcc", "-O3", "-march=native", str(HERE.parent / "c/band.c"), "-o", program]
        if subprocess.run(command + ["-llapack", "-lblas", "-lm"], capture_output=True).returncode:
            return None
        return [float(x) for x in subprocess.run([program], capture_output=True, text=True).stdout.split()]


def row(what, size, score, versus=""):
    shown = f"{score[0]:.3g} ± {score[1]:.1g}" if isinstance(score, tuple) else f"{score:.3g}"
    return f"| {what} | {size} | {shown} | {versus} |"


def figures():
    run = java()
    frame = float(numpy("sweep.py").split()[0])
    ladders = [float(x) for x in re.findall(r"([\d.]+) us", numpy("ladder.py"))]
    band = lapack()
    sweep, both = run["one_frame"], run["one_frame_on_each_of_two_threads"]
    ours = run["band_solve"]
    lines = [
        f"Date {datetime.date.today()} · {os.cpu_count()} cores, {platform.machine()} · Java {sweep[2]}, "
        f"numpy script by Python {platform.python_version()} · load of the machine when this was written: "
        f"{os.getloadavg()[0]:.1f}",
        "",
        "| what | size | time [µs] | beside it |",
        "| --- | --- | ---: | --- |",
        row("**sweep**: other stocks, both actions, 8 cases, end forces and edge stress of every beam",
            "24 nodes, 28 beams", sweep, f"numpy {frame / sweep[0]:.0f} times as long"),
        row("the same by numpy and scipy (`pbsv`)", "the same", frame),
        row("the same in Java on each of two threads", "the same", both, f"{2e6 / both[0]:,.0f} frames a second"),
        row("**band solve**: factorise, 8 right-hand sides", "72 unknowns, half-bandwidth 8", ours,
            f"LAPACK {band[0] / ours[0]:.1f} times as long" if band else "LAPACK not measured: no compiler or library"),
    ]
    if band:
        lines.append(row("the same by LAPACK `dpbsv` called from C", "the same", band[0]))
    for bays, seconds in zip((4, 40), ladders):
        whole = run[f"solve_four_cases_and_all_forces {bays}"]
        lines.append(row("one ladder from its description, four cases, all forces", f"{bays} bays", whole,
                         f"numpy, dense: {seconds:.3g} µs"))
    for nodes in (1000, 10000, 100000):
        large = run[f"chain_of_bays {nodes}"]
        lines.append(row("a long ladder, one case, both actions", f"{nodes:,} nodes", large,
                         f"{large[0] / nodes:.2g} µs a node"))
    if "one_variant" in run:
        both = run["one_variant_on_each_of_two_threads"]
        lines.append(row("**screening**: a whole variant, loads that follow its mass, 8 cases, every check of every member",
                         "25 nodes, 28 beams, 15 members", run["one_variant"],
                         f"numpy's solve of a like frame alone: {frame:.3g} µs; "
                         f"100,000 on two threads: {both[0] * 0.05:.1f} s"))
    lines.append(row("a rectangular tube from typed sizes: outline, properties, stress points", "one",
                     run["rectangular_tube 3"]))
    return "\n".join(lines)


if __name__ == "__main__":
    page = ROOT / "docs/benchmarks.md"
    text = page.read_text()
    before, rest = text.split(START)
    after = rest.split(END)[1]
    page.write_text(f"{before}{START}\n{figures()}\n{END}{after}")
    print(page)

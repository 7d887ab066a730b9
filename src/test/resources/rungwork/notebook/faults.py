"""What a cell may do to a kernel, before a real client: afterwards every earlier name is still there."""
import os
import tempfile
import time
import unittest
from queue import Empty

from jupyter_client.manager import start_new_kernel
from jupyter_client.restarter import KernelRestarter


class Session(unittest.TestCase):
    """A fresh kernel for each test."""

    options = ""
    words = None

    def setUp(self):
        environment = dict(os.environ, JDK_JAVA_OPTIONS=self.options)
        self.manager, self.client = start_new_kernel(
            kernel_name="rungwork", env=environment, stderr=self.words
        )
        self.run_cell("int kept = 41;")

    def tearDown(self):
        self.client.stop_channels()
        self.manager.shutdown_kernel(now=True)

    def start(self, code, **how):
        return self.client.execute(code, **how)

    def finish(self, request, timeout=30):
        """The reply and the outputs of a request."""
        while True:
            reply = self.client.get_shell_msg(timeout=timeout)
            if reply["parent_header"].get("msg_id") == request:
                break
        outputs = []
        while True:
            message = self.client.get_iopub_msg(timeout=timeout)
            if message["parent_header"].get("msg_id") != request:
                continue
            if message["msg_type"] == "status":
                if message["content"]["execution_state"] == "idle":
                    return reply["content"], outputs
            else:
                outputs.append(message)

    def run_cell(self, code, timeout=30, **how):
        return self.finish(self.start(code, **how), timeout)

    def interrupted(self, code):
        request = self.start(code)
        time.sleep(1.5)
        self.manager.interrupt_kernel()
        reply, _ = self.finish(request, 10)
        self.assertEqual("error", reply["status"])
        self.assertEqual("Interrupted", reply["ename"])

    def survives(self):
        reply, outputs = self.run_cell("kept + 1")
        self.assertEqual("ok", reply["status"])
        results = [m for m in outputs if m["msg_type"] == "execute_result"]
        self.assertEqual("42", results[0]["content"]["data"]["text/plain"])

    def fails(self, code, name):
        reply, _ = self.run_cell(code)
        self.assertEqual(("error", name), (reply["status"], reply["ename"]))
        self.survives()

    def text(self, outputs, stream="stdout"):
        return "".join(
            m["content"]["text"]
            for m in outputs
            if m["msg_type"] == "stream" and m["content"]["name"] == stream
        )


class FullMemory(Session):
    """Cells that fill a small memory."""

    options = "-Xmx128m"

    def filled(self, code, rest):
        begun = time.time()
        reply, _ = self.run_cell(code)
        self.assertEqual("OutOfMemoryError", reply["ename"])
        self.assertRegex(reply["evalue"], "^" + rest + "$")
        self.survives()
        self.assertLess(time.time() - begun, 25)

    def test_lists_that_grow_without_end_and_arrays_too_large(self):
        filled = r"the cell filled the memory \(128 MiB\) and was stopped; names are kept"
        about = r" \(about \d+ MiB\)"
        self.filled(
            "var own = new ArrayList<long[]>(); while (true) own.add(new long[5]);",
            filled + ", but null now: own" + about,
        )
        self.run_cell("var earlier = new ArrayList<int[]>();")
        self.filled(
            "while (true) earlier.add(new int[3]);",
            filled + "; set what is large and no longer needed to null: earlier" + about,
        )
        reply, outputs = self.run_cell("earlier.size() > 1000000")
        self.assertEqual("true", outputs[-1]["content"]["data"]["text/plain"])
        self.run_cell("earlier = null;")
        self.filled(
            'for (var texts = new ArrayList<String>(); ; ) texts.add("text " + texts.size());', filled
        )
        self.filled(
            "var big = new long[Integer.MAX_VALUE];",
            r"the memory \(128 MiB\) does not hold this; names are kept",
        )
        self.run_cell("var half = new long[7 << 20];")
        self.survives()


class Faults(Session):
    """Cells that leave the kernel as it was; they share one."""

    shared = None

    def setUp(self):
        if Faults.shared is None:
            super().setUp()
            Faults.shared = self.manager, self.client
        self.manager, self.client = Faults.shared
        self.run_cell("kept = 41;")

    def tearDown(self):
        """The kernel stays for the next test."""

    @classmethod
    def tearDownClass(cls):
        manager, client = Faults.shared
        client.stop_channels()
        manager.shutdown_kernel(now=True)

    def test_an_interrupt_stops_a_loop_and_a_sleep(self):
        self.interrupted("while (true) { kept = 41; }")
        self.interrupted("Thread.sleep(600000);")
        self.survives()

    def test_an_endless_study_of_the_library_ends_soon_after_an_interrupt(self):
        self.run_cell("import rungwork.study.*;\nimport rungwork.quantity.Kind;")
        request = self.start(
            """
            Study.of("endless", List.of(Input.of("force", 1000.0).within(0.1, "guessed")), setting -> {
              double x = setting.number("force");
              for (int i = 0; i < 100_000; i++) x = Math.sin(x) + 1;
              return x;
            }, List.of(Measure.least("force", Kind.FORCE, (Double force) -> force)))
              .scatter(Scatter.Sampling.random(1_000_000, 1));
            kept = 0;"""
        )
        time.sleep(2)
        begun = time.time()
        self.manager.interrupt_kernel()
        reply, _ = self.finish(request, 10)
        self.assertLess(time.time() - begun, 4)
        self.assertEqual(("error", "Interrupted"), (reply["status"], reply["ename"]))
        self.survives()

    def test_errors_of_the_machine_and_calls_to_end_it(self):
        self.fails("int deep(int x) { return deep(x + 1) + 1; }\ndeep(0)", "StackOverflowError")
        self.fails("var big = new long[Integer.MAX_VALUE];", "OutOfMemoryError")
        self.fails("System.exit(0);", "ExitRefused")
        self.fails("Runtime.getRuntime().halt(0);", "ExitRefused")
        self.fails('System.class.getMethod("exit", int.class).invoke(null, 0);', "ExitRefused")
        self.fails(
            'Runtime.class.getMethod("halt", int.class).invoke(Runtime.getRuntime(), 0);', "ExitRefused"
        )
        self.fails(
            "java.lang.invoke.MethodHandles.lookup().findVirtual(Runtime.class, \"halt\","
            " java.lang.invoke.MethodType.methodType(void.class, int.class));",
            "ExitRefused",
        )
        self.fails(
            'class Bad { static int x = Integer.parseInt("?"); }\nBad.x', "ExceptionInInitializerError"
        )

    def test_a_burst_of_lines_loses_nothing_before_the_cut(self):
        reply, outputs = self.run_cell(
            'for (int i = 0; i < 20000; i++) System.out.println("line " + i);'
        )
        lines = self.text(outputs).splitlines()
        self.assertEqual(["line %d" % i for i in range(20000)], lines)
        reply, outputs = self.run_cell('for (int i = 0; i < 400000; i++) System.out.println("012345678");')
        self.assertIn("[output cut here", self.text(outputs))
        self.survives()

    def test_a_displayed_value_is_replaced_under_its_id(self):
        _, first = self.run_cell('Rungwork.display("mass", 720);')
        _, second = self.run_cell('Rungwork.update("mass", 710);')
        kinds = [m["msg_type"] for m in first + second if m["msg_type"] != "execute_input"]
        self.assertEqual(["display_data", "update_display_data"], kinds)
        for message, text in (first[-1], "720"), (second[-1], "710"):
            self.assertEqual({"display_id": "mass"}, message["content"]["transient"])
            self.assertEqual(text, message["content"]["data"]["text/plain"])

    def test_a_thread_left_running_prints_to_its_own_cell(self):
        request = self.start(
            "new Thread(() -> { try { Thread.sleep(4000); } catch (InterruptedException e) { }"
            ' System.out.println("late"); }).start();'
        )
        begun = time.time()
        self.finish(request)
        self.survives()
        self.assertLess(time.time() - begun, 3.9)
        while True:
            message = self.client.get_iopub_msg(timeout=10)
            if message["msg_type"] == "stream":
                break
        self.assertEqual("late\n", message["content"]["text"])
        self.assertEqual(request, message["parent_header"]["msg_id"])

    def test_a_class_defined_anew_and_odd_text(self):
        self.run_cell("record Tube(int width) {}\nvar tube = new Tube(3);")
        reply, _ = self.run_cell("record Tube(int width, int wall) {}\nnew Tube(1, 2).wall()")
        self.assertEqual("ok", reply["status"])
        reply, outputs = self.run_cell('System.out.println("\\u0000\\u0007 \\uD800 end");')
        self.assertIn("end", self.text(outputs))
        reply, _ = self.run_cell("// " + "x" * 1000000 + "\nkept")
        self.assertEqual("ok", reply["status"])
        self.survives()

    def test_an_answer_is_read_and_an_interrupt_frees_a_waiting_read(self):
        request = self.start("new Scanner(System.in).nextLine()", allow_stdin=True)
        question = self.client.get_stdin_msg(timeout=10)
        self.assertEqual("input_request", question["msg_type"])
        self.client.input("grüße")
        _, outputs = self.finish(request)
        self.assertEqual("grüße", outputs[-1]["content"]["data"]["text/plain"])
        request = self.start("System.in.read()", allow_stdin=True)
        self.client.get_stdin_msg(timeout=10)
        self.manager.interrupt_kernel()
        reply, _ = self.finish(request, 10)
        self.assertEqual("error", reply["status"])
        self.survives()

    def test_cells_that_wait_behind_a_failed_one_are_not_run(self):
        failing = self.start("Thread.sleep(500); int[] none = {}; none[1] = 0;")
        waiting = self.start("kept = 0;")
        self.finish(failing)
        reply, _ = self.finish(waiting)
        self.assertEqual("aborted", reply["status"])
        failing = self.start("Thread.sleep(500); int[] none = {}; none[1] = 0;", stop_on_error=False)
        waiting = self.start("6 * 7")
        self.finish(failing)
        reply, _ = self.finish(waiting)
        self.assertEqual("ok", reply["status"])
        self.survives()

    def test_silent_and_unstored_cells_are_not_counted(self):
        first, _ = self.run_cell("1")
        _, outputs = self.run_cell("System.out.println(2);", silent=True)
        self.assertEqual([], outputs)
        self.run_cell("3", store_history=False)
        second, _ = self.run_cell("4", user_expressions={"sum": "kept + 2", "bad": "nobody"})
        self.assertEqual(first["execution_count"] + 1, second["execution_count"])
        values = second["user_expressions"]
        self.assertEqual("43", values["sum"]["data"]["text/plain"])
        self.assertEqual("error", values["bad"]["status"])

    def test_a_wrongly_signed_message_is_not_answered(self):
        good = self.client.session.key
        self.client.session.key = b"wrong"
        self.client.execute("kept = 0;")
        self.client.session.key = good
        with self.assertRaises(Empty):
            self.client.get_shell_msg(timeout=1)
        self.survives()

    def test_an_unsigned_message_is_not_answered_and_shows_nowhere(self):
        channel = self.client.shell_channel.socket
        signed = self.client.session.msg("execute_request", {"code": "kept = 0;", "silent": False})
        parts = self.client.session.serialize(signed)
        parts[1] = b""  # the place of the signature
        channel.send_multipart(parts)
        with self.assertRaises(Empty):
            self.client.get_shell_msg(timeout=1)
        with self.assertRaises(Empty):
            self.client.get_iopub_msg(timeout=1)
        self.survives()

    def test_it_listens_only_where_the_connection_file_says(self):
        with open("/proc/%d/net/tcp" % self.manager.provisioner.pid) as table:
            rows = [line.split() for line in table.readlines()[1:]]
        with open("/proc/%d/net/tcp6" % self.manager.provisioner.pid) as table:
            rows += [line.split() for line in table.readlines()[1:]]
        own = set()
        folder = "/proc/%d/fd" % self.manager.provisioner.pid
        for name in os.listdir(folder):
            target = os.readlink(os.path.join(folder, name))
            if target.startswith("socket:["):
                own.add(target[8:-1])
        listening = {row[1] for row in rows if row[3] == "0A" and row[9] in own}
        ports = {int(at.split(":")[1], 16) for at in listening}
        info = self.manager.get_connection_info()
        named = {info[key] for key in info if key.endswith("_port")}
        self.assertEqual(named, ports)
        for at in listening:  # 127.0.0.1, as it is or within IPv6
            self.assertTrue(at.split(":")[0].endswith("0100007F"), at)


class Ends(Session):
    """Cells that may end the kernel."""

    def test_an_end_by_a_compiled_library_ends_the_kernel_with_a_status_that_says_so(self):
        self.start(
            'new java.beans.Statement(Runtime.getRuntime(), "exit", new Object[] {0}).execute();'
        )
        self.assertEqual(1, self.manager.provisioner.process.wait(30))

    def test_a_cell_that_catches_everything_is_stopped_or_ends_in_an_announced_restart(self):
        for code in (  # which of them can be stopped depends on the Java
            "while (true) { try { Thread.sleep(5); } catch (Throwable e) { } }",
            "void on() { try { on(); } finally { on(); } }\non();",
            "java.util.stream.LongStream.range(0, Long.MAX_VALUE).map(Math::abs).sum()",
        ):
            if self.given_up(code) == "Restart":
                return self.started_again_by_its_client()
            self.survives()
        self.fail("no cell was given up")

    def given_up(self, code):
        """How the cell ended after an interrupt; the process is gone 6 s later if it restarts."""
        request = self.start('System.out.println("begun");\n' + code)
        while self.client.get_iopub_msg(timeout=30)["msg_type"] != "stream":
            pass
        time.sleep(1)
        begun = time.time()
        self.manager.interrupt_kernel()
        reply, _ = self.finish(request, 10)
        if reply["ename"] == "Restart":
            self.assertIn("every name is lost", reply["evalue"])
            while self.manager.is_alive() and time.time() - begun < 6:
                time.sleep(0.02)
            self.assertFalse(self.manager.is_alive())
        self.assertLess(time.time() - begun, 6)
        return reply["ename"]

    def started_again_by_its_client(self):
        """As the Notebook does: what watches the process starts another at the same ports."""
        restarter = KernelRestarter(kernel_manager=self.manager, random_ports_until_alive=False)
        restarter.poll()
        self.client.wait_for_ready(timeout=60)
        reply, outputs = self.run_cell("6 * 7")
        self.assertEqual("42", outputs[-1]["content"]["data"]["text/plain"])
        reply, _ = self.run_cell("kept")
        self.assertEqual("CompileError", reply["ename"])


class Past(Session):
    """What a kernel knows of its cells."""

    def history(self, **how):
        request = self.client.history(**how)
        while True:
            reply = self.client.get_shell_msg(timeout=10)
            if reply["parent_header"].get("msg_id") == request:
                return [tuple(row[1:]) for row in reply["content"]["history"]]

    def test_history_by_tail_range_and_search(self):
        for code in ("6 * 7", "6 * 8", "6 * 7", '"x"'):
            self.run_cell(code)
        tail = dict(raw=True, output=False, hist_access_type="tail")
        self.assertEqual([(4, "6 * 7"), (5, '"x"')], self.history(n=2, **tail))
        ranged = dict(raw=True, hist_access_type="range", session=0, start=2, stop=4)
        self.assertEqual([(2, "6 * 7"), (3, "6 * 8")], self.history(output=False, **ranged))
        self.assertEqual(
            [(2, ["6 * 7", "42"]), (3, ["6 * 8", "48"])],
            [(count, list(pair)) for count, pair in self.history(output=True, **ranged)],
        )
        search = dict(raw=True, output=False, hist_access_type="search", pattern="6 * ?", n=10)
        self.assertEqual(3, len(self.history(**search)))
        self.assertEqual([(3, "6 * 8"), (4, "6 * 7")], self.history(unique=True, **search))


class CutOff(Session):
    """A kernel whose messages no longer travel."""

    def setUp(self):
        self.words = tempfile.TemporaryFile("w+")
        self.addCleanup(self.words.close)
        super().setUp()

    def test_it_ends_with_a_word_and_a_status_that_says_so(self):
        self.start(
            "for (Thread each : Thread.getAllStackTraces().keySet())"
            ' if (each.getName().startsWith("iothread"))'
            " try { each.stop(); } catch (UnsupportedOperationException newer) {"
            " each.getUncaughtExceptionHandler().uncaughtException(each, new OutOfMemoryError()); }"
        )
        self.assertEqual(1, self.manager.provisioner.process.wait(30))
        self.words.seek(0)
        self.assertIn("the kernel was cut off from its clients and ends", self.words.read())


if __name__ == "__main__":
    unittest.main(verbosity=2)

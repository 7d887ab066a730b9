"""The installed kernel before the clients that people have besides the notebook."""
import glob
import os
import subprocess
import sys
import tempfile
import unittest

import nbformat
from jupyter_client.kernelspec import get_kernel_spec
from jupyter_client.manager import start_new_kernel

RUN = "from jupyter_client.runapp import RunApp; RunApp.launch_instance()"
EXECUTE = "from nbclient.cli import main; main()"


def program(*words, typed=""):
    """Status, output and errors of a Python program."""
    done = subprocess.run([sys.executable, *words], input=typed, capture_output=True, text=True, timeout=120)
    return done.returncode, done.stdout, done.stderr


class Clients(unittest.TestCase):
    def setUp(self):
        folder = tempfile.TemporaryDirectory()
        self.addCleanup(folder.cleanup)
        self.folder = folder.name

    def written(self, name, text):
        path = os.path.join(self.folder, name)
        with open(path, "w", encoding="utf-8") as file:
            file.write(text)
        return path

    def notebook(self, name, *cells):
        cells = [nbformat.v4.new_code_cell(cell) for cell in cells]
        metadata = {"kernelspec": {"name": "rungwork", "display_name": "Rungwork", "language": "java"}}
        notebook = nbformat.v4.new_notebook(cells=cells, metadata=metadata)
        return self.written(name, nbformat.writes(notebook))

    def test_the_console_answers_line_by_line(self):
        lines = "int kept = 41;\nkept + 1\nnobody\nRungwork.display(7 * kept);\n2 * kept\n"
        status, output, errors = program(
            "-m", "jupyter_console", "--kernel=rungwork", "--simple-prompt", typed=lines
        )
        self.assertEqual(0, status, errors)
        self.assertIn("not an approval", output)
        self.assertIn("Out[2]: 42", output)
        self.assertIn("In [4]: 287", output)
        self.assertIn("Out[5]: 82", output)
        self.assertIn("cell [3], line 1: cannot find symbol\n    nobody\n    ^^^^^^", errors)

    def test_a_file_is_run_and_a_fault_in_it_is_told(self):
        """This client leaves its kernel behind; the answer is complete once the kernel has ended too."""
        good = self.written("good.java", "int kept = 41;\nSystem.out.println(kept + 1);\n")
        bad = self.written("bad.java", "int[] none = {};\nnone[1] = 0;\n")
        status, output, errors = program("-c", RUN, "--kernel=rungwork", good, bad)
        self.assertEqual((1, "42\n"), (status, output), errors)
        self.assertIn("cell [2], line 2", errors)

    def test_a_notebook_is_executed_and_a_failed_cell_fails_it(self):
        good = self.notebook("good.ipynb", "import rungwork.material.*;\nRungwork.start();", 'Material.rated("S355J2H")')
        status, output, errors = program("-c", EXECUTE, good)
        self.assertEqual(0, status, errors)
        bad = self.notebook("bad.ipynb", "int kept = 41;", "nobody")
        status, output, errors = program("-c", EXECUTE, bad)
        self.assertNotEqual(0, status)
        self.assertIn("cell [2], line 1: cannot find symbol", errors)

    def test_a_running_kernel_outlives_the_copy_that_it_was_started_from(self):
        (library,) = glob.glob(os.path.join(get_kernel_spec("rungwork").resource_dir, "lib-*"))
        manager, client = start_new_kernel(kernel_name="rungwork")
        away = library + ".away"
        try:
            self.answers(client, "1 + 1")
            os.rename(library, away)
            for code in (
                "import rungwork.material.*;\nimport rungwork.section.*;\nimport rungwork.frame.*;",
                'new Stock(Section.squareTube(mm(50), mm(3)), Material.rated("S355J2H"))',
                'tech.tablesaw.api.Table.create("t", tech.tablesaw.api.DoubleColumn.create("x", 1, 2)).summary()',
            ):
                self.answers(client, code)
        finally:
            if os.path.exists(away):
                os.rename(away, library)
            client.stop_channels()
            manager.shutdown_kernel(now=True)

    def answers(self, client, code):
        reply = client.execute_interactive(code, timeout=60, output_hook=lambda message: None)
        self.assertEqual("ok", reply["content"]["status"], reply)


if __name__ == "__main__":
    unittest.main(verbosity=2)

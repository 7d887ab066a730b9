"""The published conformance suite for Jupyter kernels, with samples in Java."""
import unittest

import jupyter_kernel_test


class Conformance(jupyter_kernel_test.KernelTests):
    kernel_name = "rungwork"
    language_name = "java"
    file_extension = ".java"

    code_hello_world = 'System.out.println("hello, world");'
    code_stderr = 'System.err.println("a warning");'

    completion_samples = [
        {"text": "Math.floorM", "matches": {"floorMod("}},
        {"text": 'String s = "x"; s.substr', "matches": {"substring("}},
        {"text": "new StringBuild", "matches": {"StringBuilder("}},
        {"text": "nothingIsCalledThis", "matches": set()},
    ]

    complete_code_samples = ["1 + 1", "int x = 3;", "int f() { return 1; }\nf()", ""]
    incomplete_code_samples = ["int f() {", "if (true) {\n  int y = 1;", "Math.max(1,"]
    invalid_code_samples = ["1 + ) 2", "}"]

    code_generate_error = "int[] none = {}; none[3] = 1;"
    code_execute_result = [
        {"code": "6 * 7", "result": "42"},
        {"code": '"a" + 1', "result": "a1"},
        {"code": "List.of(1, 2)", "result": "[1, 2]"},
    ]
    code_display_data = [{"code": 'display("seen");', "mime": "text/plain"}]

    code_history_pattern = "6 * 7"
    supported_history_operations = ("tail", "range", "search")

    code_clear_output = "Rungwork.clearOutput();"

    code_inspect_sample = "Math.max"


if __name__ == "__main__":
    unittest.main(verbosity=2)

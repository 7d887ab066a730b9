"""Where Jupyter itself looks for kernels of a user, as if on another system; paths stay this system's.

folders.py CASE...: each the system's name and variables, such as "Linux HOME=/home/anna".
"""
import os
import sys

from jupyter_core import paths

SYSTEMS = {"Linux": ("linux", "posix"), "Mac": ("darwin", "posix"), "Windows": ("win32", "nt")}

paths.Path = type(paths.Path())
for case in sys.argv[1:]:
    system, *variables = case.split()
    os.environ.clear()
    os.environ.update(each.split("=") for each in variables)
    sys.platform, os.name = SYSTEMS[system]
    print(os.path.join(paths.jupyter_data_dir(), "kernels"))

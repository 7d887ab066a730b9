"""A person before a running Notebook server: types cells, runs, completes, reads, interrupts, restarts.

session.py BROWSER FOLDER: an empty folder for all that the session writes, pictures among it.
"""
import json
import os
import socket
import subprocess
import sys
import time
import urllib.request
from contextlib import contextmanager

from browser import ENTER, ESCAPE, SHIFT, TAB, Browser

NOTEBOOK = {
    "cells": [{"cell_type": "code", "execution_count": None, "id": "first", "metadata": {}, "outputs": [], "source": []}],
    "metadata": {"kernelspec": {"display_name": "Rungwork (Java)", "language": "java", "name": "rungwork"}},
    "nbformat": 4,
    "nbformat_minor": 5,
}
CELLS = "Array.from(document.querySelectorAll('.cell'))"
WRITTEN = "document.querySelector('.CodeMirror-focused')"
READY = "a ready kernel", "!!document.querySelector('#kernel_indicator_icon.kernel_idle_icon')"
DESCRIPTION = "A grade of the catalogue that has a guaranteed strength."


@contextmanager
def server(folder):
    """A Notebook server without a token, that only this machine can reach; its address."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = free.getsockname()[1]
    with open(os.path.join(folder, "server.log"), "w") as log:
        process = subprocess.Popen(
            [
                sys.executable, "-m", "notebook", "--no-browser", "--allow-root", "--ip=127.0.0.1",
                "--port=%d" % port, "--port-retries=0", "--NotebookApp.token=", "--NotebookApp.password=",
                "--notebook-dir=" + folder,
            ],
            stdout=log, stderr=log,
        )  # fmt: skip
    address = "http://127.0.0.1:%d/" % port
    try:
        answers(address + "api", process)
        yield address
    finally:
        process.terminate()  # it shuts its kernels down first
        try:
            process.wait(10)
        except subprocess.TimeoutExpired:
            process.kill()
            process.wait()


def answers(address, process):
    until = time.time() + 20
    while time.time() < until:
        assert process.poll() is None, "the server ended"
        try:
            return urllib.request.urlopen(address, timeout=5).read()
        except OSError:
            time.sleep(0.1)
    raise AssertionError("the server does not answer")


class Person:
    """Types at the end of a notebook and reads what shows."""

    def __init__(self, browser, folder):
        self.browser = browser
        self.folder = folder

    def opens(self, address):
        self.browser.open(address)
        self.browser.wait(*READY)
        self.browser.click(".cell .CodeMirror")
        self.browser.wait("a cursor", "!!" + WRITTEN)

    def runs(self, code):
        """Types and runs a cell at the end; its place."""
        self.browser.type(code)
        place = self.browser.value(CELLS + ".length - 1")
        self.browser.press(ENTER, SHIFT)
        self.browser.wait("a new cell", CELLS + ".length == %d" % (place + 2))
        return place

    def sees(self, place, text):
        shown = CELLS + "[%d].querySelector('.output').innerText" % place
        self.browser.wait("%r under cell %d" % (text, place), "%s.includes(%s)" % (shown, json.dumps(text)))

    def commands(self, *keys):
        """Leaves the cell and presses keys that are commands then."""
        self.browser.press(ESCAPE)
        self.browser.wait("command mode", "document.body.classList.contains('command_mode')")
        for key in keys:
            self.browser.press(key)

    def writes_on(self):
        self.browser.press(ENTER)
        self.browser.wait("a cursor", "!!" + WRITTEN)

    def photographs(self, name):
        self.browser.picture(os.path.join(self.folder, name + ".png"))


def session(person):
    browser = person.browser
    person.sees(person.runs("import rungwork.material.*; Rungwork.start()"), "not an approval")
    person.sees(person.runs("int kept = 41; kept + 1"), "42")

    browser.type("Material.rat")
    browser.wait(*READY)  # the page asks no busy kernel for names, and these keys come faster than any person's
    browser.press(TAB)
    browser.wait("a completed name", WRITTEN + ".innerText.includes('Material.rated(')")
    browser.press(TAB, SHIFT)
    tooltip = "document.querySelector('#tooltip')"
    browser.wait("the name's description", tooltip + ".innerText.includes(%s)" % json.dumps(DESCRIPTION))
    browser.wait("the description unfaded", "getComputedStyle(%s).opacity == 1" % tooltip)
    person.photographs("described")
    person.sees(person.runs('"S355J2H")'), "S355J2H")

    endless = person.runs("while (true) { }")
    browser.wait("a running cell", CELLS + "[%d].innerText.includes('[*]')" % endless)
    person.commands("i", "i")
    person.sees(endless, "the cell was stopped; names defined before it stay usable")
    person.writes_on()
    person.sees(person.runs("2 * kept"), "82")

    person.commands("0", "0")
    browser.click(".modal-dialog .btn-danger")
    browser.wait("a closed question", "!document.querySelector('.modal-dialog')")
    browser.wait(*READY)
    person.writes_on()
    person.sees(person.runs("kept"), "cannot find symbol")
    person.sees(person.runs("6 * 7"), "42")
    person.photographs("restarted")


if __name__ == "__main__":
    program, folder = sys.argv[1:]
    with open(os.path.join(folder, "session.ipynb"), "w") as file:
        json.dump(NOTEBOOK, file)
    with server(folder) as address, Browser(program, os.path.join(folder, "profile")) as browser:
        person = Person(browser, folder)
        try:
            person.opens(address + "notebooks/session.ipynb")
            session(person)
        except AssertionError:
            person.photographs("failed")
            print("what it looked like:", os.path.join(folder, "failed.png"))
            raise
    print("OK")

"""A browser that a person's keys and mouse drive: the DevTools protocol over a pipe.

The browser ends when the pipe is closed, so also when this process is killed.
"""
import base64
import fcntl
import json
import os
import select
import signal
import subprocess
import time

ENTER, TAB, ESCAPE = "Enter", "Tab", "Escape"
CODES = {ENTER: 13, TAB: 9, ESCAPE: 27}
SHIFT = 8


class Browser:
    def __init__(self, program, folder):
        commands, self.commands = os.pipe()
        self.answers, answers = os.pipe()

        def numbered():
            high = [fcntl.fcntl(each, fcntl.F_DUPFD, 10) for each in (commands, answers)]
            for number, each in zip((3, 4), high):
                os.dup2(each, number)

        self.process = subprocess.Popen(
            [
                program, "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                "--disable-background-networking", "--disable-component-update", "--disable-sync",
                "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1", "--window-size=1200,1000",
                "--user-data-dir=" + folder, "--remote-debugging-pipe", "about:blank",
            ],
            preexec_fn=numbered, pass_fds=(3, 4), start_new_session=True,
            stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
        )  # fmt: skip
        os.close(commands)
        os.close(answers)
        self.read, self.count, self.session = b"", 0, None

    def __enter__(self):
        page = self.ask("Target.createTarget", url="about:blank")["targetId"]
        self.session = self.ask("Target.attachToTarget", targetId=page, flatten=True)["sessionId"]
        return self

    def __exit__(self, *_):
        os.close(self.commands)
        os.close(self.answers)
        try:
            self.process.wait(5)
        except subprocess.TimeoutExpired:
            os.killpg(self.process.pid, signal.SIGKILL)
            self.process.wait()

    def ask(self, method, **parameters):
        self.count += 1
        message = {"id": self.count, "method": method, "params": parameters}
        if self.session:
            message["sessionId"] = self.session
        os.write(self.commands, json.dumps(message).encode() + b"\0")
        while True:
            answer = self.next_message()
            if answer.get("id") == self.count:
                assert "error" not in answer, (method, answer)
                return answer["result"]

    def next_message(self):
        until = time.time() + 20
        while b"\0" not in self.read:
            ready, _, _ = select.select([self.answers], [], [], until - time.time())
            part = os.read(self.answers, 1 << 16) if ready else b""
            assert part, "the browser does not answer"
            self.read += part
        message, self.read = self.read.split(b"\0", 1)
        return json.loads(message)

    def open(self, address):
        self.ask("Page.navigate", url=address)

    def value(self, expression):
        """What an expression is worth in the page, which is only looked at, never steered, by it."""
        result = self.ask("Runtime.evaluate", expression=expression, returnByValue=True)
        assert "exceptionDetails" not in result, result
        return result["result"].get("value")

    def wait(self, what, expression, seconds=40):
        """The value of an expression once it is true."""
        until = time.time() + seconds
        while time.time() < until:
            value = self.value(expression)
            if value:
                return value
            time.sleep(0.05)
        raise AssertionError("%s was not seen within %d s" % (what, seconds))

    def press(self, key, modifiers=0):
        code = CODES.get(key) or ord(key.upper())
        at = dict(key=key, windowsVirtualKeyCode=code, modifiers=modifiers)
        text = {"text": "\r" if key == ENTER else key} if key == ENTER or len(key) == 1 else {}
        self.ask("Input.dispatchKeyEvent", type="keyDown", **at, **text)
        self.ask("Input.dispatchKeyEvent", type="keyUp", **at)

    def type(self, text):
        for letter in text:
            self.ask("Input.dispatchKeyEvent", type="keyDown", key=letter, text=letter)
            self.ask("Input.dispatchKeyEvent", type="keyUp", key=letter)

    def click(self, selector):
        box = self.wait(
            selector,
            "(() => { const e = document.querySelector(%s); if (!e) return null;"
            " const r = e.getBoundingClientRect();"
            " return r.width ? [r.x + r.width / 2, r.y + r.height / 2] : null; })()" % json.dumps(selector),
        )
        at = dict(x=box[0], y=box[1], button="left", clickCount=1)
        self.ask("Input.dispatchMouseEvent", type="mousePressed", **at)
        self.ask("Input.dispatchMouseEvent", type="mouseReleased", **at)

    def picture(self, file):
        with open(file, "wb") as out:
            out.write(base64.b64decode(self.ask("Page.captureScreenshot")["data"]))

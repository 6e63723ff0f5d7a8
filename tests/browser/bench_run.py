"""Starts the bench page's server, drives it in a browser, and counts. Usage: bench_run.py SHAFTCUT [--short] [WORD]"""
import json
import os
import pathlib
import subprocess
import sys
import tempfile
import time
import traceback

import hands_test
import looks_test
import samples_test
import saw_test
from bench_page import Page, browser


class Bench:
    """The program that serves, the browser that looks at it, and a folder for files."""

    def __init__(self, program):
        self.program, self.source = os.path.abspath(program), str(pathlib.Path(__file__).resolve().parents[2])
        self.folder = tempfile.mkdtemp()
        self.downloads = tempfile.mkdtemp()
        self.port = 0
        self.start()
        self.page = Page(browser(downloads=self.downloads), self.address)

    def start(self):
        self.server = subprocess.Popen([self.program, "bench", "--config", f"{self.source}/config", "--port", str(self.port)], stdout=subprocess.PIPE, text=True)
        self.address = self.server.stdout.readline().strip()
        self.port = int(self.address.rstrip("/").rsplit(":", 1)[1])

    def start_again(self):
        for _ in range(50):
            self.start()
            if self.server.poll() is None and self.address:
                return
            time.sleep(0.2)
        raise AssertionError("the server does not start on its port again")

    def stop(self):
        self.server.kill()
        self.server.wait()

    def end(self):
        self.page.driver.quit()
        self.stop()

    def file(self, name, text):
        path = os.path.join(self.folder, name)
        with open(path, "w") as file:
            file.write(text)
        return path

    def cut(self, path):
        return subprocess.run([self.program, "cut", "--config", f"{self.source}/config", "--formats", "json", "--output", "-", str(path)], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True).stdout.strip()

    def asked(self, page, route):
        return page.driver.execute_async_script("const done = arguments[1]; import('/state.js').then((m) => fetch(arguments[0], {method: 'POST', headers: {'Content-Type': 'application/xml'}, body: m.state.job.text()})"
                                                ".then((reply) => reply.text()).then(done))", route).strip()

    def answered(self, page):
        return self.asked(page, "/answer")

    def view(self, page):

        return json.loads(self.asked(page, "/view"))


def main():
    arguments = [one for one in sys.argv[2:] if one != "--short"]
    short = "--short" in sys.argv
    bench = Bench(sys.argv[1])
    passed = failed = 0
    for module in (hands_test, saw_test, samples_test, looks_test):
        for name, test in module.tests(bench, short):
            if arguments and not any(word in name for word in arguments):
                continue
            begun = time.monotonic()
            bench.stop()
            bench.start_again()  # it counts a client's requests, and a test makes more of them in a minute than a hand
            try:
                test()
                passed += 1
                print(f"ok      {name} ({time.monotonic() - begun:.1f} s)", flush=True)
            except Exception as error:  # the next test still counts
                failed += 1
                line = traceback.extract_tb(error.__traceback__)[-1]
                print(f"FAILED  {name}: {str(error).splitlines()[0] if not isinstance(error, AssertionError) else error} ({line.filename.rsplit('/', 1)[-1]}:{line.lineno})", flush=True)
    bench.end()
    print(f"{passed} passed, {failed} failed")
    return failed > 0


sys.exit(main())

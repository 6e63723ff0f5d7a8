"""Makes a bad copy of each cut sheet's front, and reads it with programs that know nothing of shafts.

usage: /usr/bin/python3 bad_copy.py SHAFTCUT

The front is drawn at 100 dots an inch in grey, blurred, paled and strewn with noise, as a worn copier and a telephone leave it. zbarimg must still
read the order's number from its code, tesseract the four lengths that are kept. The last line counts: "N passed, M failed".
"""
import json
import os
import re
import subprocess
import sys
import tempfile

import numpy

os.environ["OMP_THREAD_LIMIT"] = "1"  # tesseract's threads wait for each other on few processors
SAMPLES = ["plain-cut", "altered-shaft", "trailed-wide-angle", "uneven-halves"]
PAPERS = ["a4", "letter"]
WEIGHTS = numpy.array([0.25, 0.5, 0.25])
PALEST, CONTRAST, NOISE = 60, 0.62, 8  # of 255


def run(*command, must_end_well=True):
    return subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, check=must_end_well).stdout


def bad_copy(pdf, picture):
    _, size, _, grey = run("pdftoppm", "-r", "100", "-gray", "-f", "1", "-l", "1", pdf).split(b"\n", 3)
    width, height = map(int, size.split())
    page = numpy.frombuffer(grey[:width * height], dtype=numpy.uint8).reshape(height, width).astype(float)
    for axis in (0, 1):
        page = sum(numpy.roll(page, step, axis) * weight for step, weight in zip((-1, 0, 1), WEIGHTS))
    noise = numpy.random.default_rng(1).normal(0, NOISE, page.shape)
    with open(picture, "wb") as out:
        out.write(b"P5\n%d %d\n255\n" % (width, height) + numpy.clip(PALEST + page * CONTRAST + noise, 0, 255).astype(numpy.uint8).tobytes())


def faults_of(program, sample, paper, folder):
    """What cannot be read of this sample's front."""
    run(program, "cut", "--config", "config", "--formats", "pdf,json", "--paper", paper, "--units", "mm", "--replace", "--output", folder, "samples/%s.xml" % sample)
    name = next(name for name in os.listdir(folder) if name.endswith(".json"))
    with open(os.path.join(folder, name)) as file:
        answer = json.load(file)
    picture = os.path.join(folder, "copy.pgm")
    bad_copy(os.path.join(folder, answer["order"] + "-cut-sheet.pdf"), picture)
    faults = []
    if run("zbarimg", "-q", "--raw", picture, must_end_well=False).decode().strip() != answer["order"]:
        faults.append("the code")
    read = run("tesseract", picture, "-", "--dpi", "100").decode()
    for half, kept in answer["keep_mm"].items():
        kind = "guard" if "guard" in half else "tube"
        if not re.search(r"%s %d mm" % (kind, int(kept)), read):
            faults.append("%s %d mm" % (kind, int(kept)))
    return faults


def main(program):
    failed = 0
    for sample in SAMPLES:
        for paper in PAPERS:
            with tempfile.TemporaryDirectory() as folder:
                faults = faults_of(program, sample, paper, folder)
            if faults:
                failed += 1
                print("%s on %s: a bad copy does not show %s" % (sample, paper, ", ".join(faults)))
    print("%d passed, %d failed" % (len(SAMPLES) * len(PAPERS) - failed, failed))
    return 1 if failed else 0


if __name__ == "__main__":
    program = os.path.abspath(sys.argv[1])
    os.chdir(os.path.join(os.path.dirname(os.path.abspath(__file__)), "../.."))
    sys.exit(main(program))

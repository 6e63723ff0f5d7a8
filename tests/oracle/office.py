"""LibreOffice as the second program that computes a workbook, and what the comparisons with it share.

A comparison is a helper program that writes workbooks and, in cases.json, what shaftcut itself answers for changed inputs. It fails, and does not
skip, where LibreOffice is missing.
"""
import json
import os
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import time
import zipfile
from xml.etree import ElementTree

import uno
from com.sun.star.beans import PropertyValue

SECONDS_ALLOWED = 900  # on a busy machine; alone the longest takes about 60
SECONDS_TO_WRITE = 300  # the workbooks and their answers
SECONDS_TO_START = 40
SAME = 5e-7  # mm: far below the 0.001 mm that everything is rounded to
XML = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
CONTENTS = 1 | 2 | 4 | 16  # values, dates, texts, formulas


class Office:
    """A LibreOffice of our own, with its own profile, that is gone afterwards."""

    def __enter__(self):
        self.profile = tempfile.mkdtemp(prefix="shaftcut-office-")
        pipe = "shaftcut%d" % os.getpid()
        program = shutil.which("soffice")
        if not program:
            raise SystemExit("recalculate: soffice is not installed")
        self.process = subprocess.Popen(
            [program, "--headless", "--norestore", "--nologo", "--nodefault", "-env:UserInstallation=file://" + self.profile,
             "--accept=pipe,name=%s;urp;" % pipe],
            start_new_session=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        try:
            self.desktop = self.connect(pipe)
        except BaseException:
            self.__exit__()
            raise
        return self

    @staticmethod
    def connect(pipe):
        local = uno.getComponentContext()
        resolver = local.ServiceManager.createInstanceWithContext("com.sun.star.bridge.UnoUrlResolver", local)
        until = time.monotonic() + SECONDS_TO_START
        while True:
            try:
                context = resolver.resolve("uno:pipe,name=%s;urp;StarOffice.ComponentContext" % pipe)
                return context.ServiceManager.createInstanceWithContext("com.sun.star.frame.Desktop", context)
            except Exception:
                if time.monotonic() > until:
                    raise SystemExit("recalculate: LibreOffice did not start")
                time.sleep(0.1)

    def open(self, path):
        hidden = PropertyValue()
        hidden.Name, hidden.Value = "Hidden", True
        document = self.desktop.loadComponentFromURL(uno.systemPathToFileUrl(path), "_blank", 0, (hidden,))
        if not document:
            raise SystemExit("recalculate: LibreOffice does not open " + path)
        return document

    def __exit__(self, *_):
        os.killpg(self.process.pid, signal.SIGKILL)
        self.process.wait()
        shutil.rmtree(self.profile, ignore_errors=True)


def place(reference):
    """Row and column of "B3" or "$B$3", counted from 0."""
    letter, number = re.fullmatch(r"\$?([A-Z])\$?(\d+)", reference).groups()
    return int(number) - 1, ord(letter) - ord("A")


class Workbook:
    """The file's own XML beside the document that LibreOffice made of it.

    `formulas` holds the file's value of each formula by sheet, row and column; `fixed` every figure, to 0.001, that is no formula's;
    `names` the row and column of each name given to a cell of a sheet that `named` matches, `sheet_of` that sheet's name.
    """

    def __init__(self, office, path, named):
        self.read_parts(path, named)
        self.document = office.open(path)
        self.document.enableAutomaticCalculation(False)
        self.sheets = [self.document.Sheets.getByIndex(i) for i in range(self.document.Sheets.Count)]

    def read_parts(self, path, named):
        self.formulas, self.names, self.sheet_of, self.fixed = {}, {}, {}, set()
        with zipfile.ZipFile(path) as parts:
            book = ElementTree.fromstring(parts.read("xl/workbook.xml"))
            for index in range(len(book.find(XML + "sheets"))):
                for cell in ElementTree.fromstring(parts.read("xl/worksheets/sheet%d.xml" % (index + 1))).iter(XML + "c"):
                    self.read_cell(index, cell)
        for name in book.iter(XML + "definedName"):
            found = re.fullmatch("(%s)" % named + r"!(\$[A-Z]\$\d+)", name.text)
            if found and not name.get("name").startswith("_xlnm"):
                self.names[name.get("name")] = place(found.group(2))
                self.sheet_of[name.get("name")] = found.group(1)

    def read_cell(self, sheet, cell):
        value = cell.find(XML + "v")
        if cell.find(XML + "f") is not None:
            text = value.text or ""
            self.formulas[(sheet,) + place(cell.get("r"))] = text if cell.get("t") == "str" else float(text)
        elif cell.get("t") is None and value is not None:
            self.fixed.add(round(float(value.text), 3))

    def last_row(self):
        return max(row for _, row, _ in self.formulas)


def set_cell(cell, value):
    if value is None:
        cell.clearContents(CONTENTS)
    else:
        cell.setValue(value)


def same(found, wanted):
    if isinstance(wanted, str) or isinstance(found, str):
        return found == wanted
    return found is not None and abs(found - wanted) < SAME


class Comparison:
    def __init__(self):
        self.compared = 0
        self.wrong = []

    def expect(self, what, found, wanted):
        self.compared += 1
        if not same(found, wanted):
            self.wrong.append("%s: the workbook has %r, the program %r" % (what, found, wanted))

    def expect_cached(self, name, workbook, values):
        """Every formula, recalculated, gives the value that the file holds for it. `values` are the rows of each sheet."""
        for (sheet, row, column), cached in workbook.formulas.items():
            self.expect("%s, sheet %d row %d column %d, recalculated" % (name, sheet + 1, row + 1, column + 1), values[sheet][row][column], cached)


def compare_all(name, helper, compare_book, least):
    """Exit status: 0 if all that the helper wrote is the same in LibreOffice, and that was at least `least` changed sets of inputs.

    `compare_book(comparison, office, folder, book)` compares one entry of cases.json and returns how many sets of inputs that was.
    """
    signal.signal(signal.SIGALRM, lambda *_: sys.exit("%s: took more than %d s" % (name, SECONDS_ALLOWED)))
    signal.alarm(SECONDS_ALLOWED)
    folder = tempfile.mkdtemp(prefix="shaftcut-workbooks-")
    comparison = Comparison()
    try:
        subprocess.run([helper, folder], check=True, timeout=SECONDS_TO_WRITE)
        with open(os.path.join(folder, "cases.json"), encoding="utf-8") as file:
            books = json.load(file)
        with Office() as office:
            cases = sum(compare_book(comparison, office, folder, book) for book in books)
    finally:
        shutil.rmtree(folder, ignore_errors=True)
    for line in comparison.wrong[:40]:
        print(line)
    print("%s: %d workbooks, %d changed sets of inputs, %d figures compared, %d wrong" %
          (name, len(books), cases, comparison.compared, len(comparison.wrong)))
    return 1 if comparison.wrong or cases < least else 0

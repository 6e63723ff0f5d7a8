"""Opens the workbooks in LibreOffice and compares what it computes with what the program says.

usage: /usr/bin/python3 recalculate.py WORKBOOK_CASES

WORKBOOK_CASES is the helper program that writes the workbooks and the program's own answers. Three things are held:
every formula, recalculated, gives the value that the file holds for it; for every changed set of inputs the workbook's
verdict, cuts, kept lengths, overlaps and checks are the program's; while it is refused no cell holds a cut. It fails, and
does not skip, where LibreOffice is missing.
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
from fractions import Fraction
from xml.etree import ElementTree

import uno
from com.sun.star.beans import PropertyValue

SECONDS_ALLOWED = 900  # on a busy machine; alone it takes about 60
SECONDS_TO_START = 40
SAME = 5e-7  # mm: far below the 0.001 mm that everything is rounded to
XML = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
CONTENTS = 1 | 2 | 4 | 16  # values, dates, texts, formulas
MM = {"mm": 1.0, "in": 25.4}
OVERLAPS = {"closed_before": "overlap_closed_before", "closed_after": "overlap_closed_after", "shortest": "overlap_shortest",
            "longest_working": "overlap_working", "longest_turning": "overlap_turning", "longest_standing": "overlap_standing"}


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
    """The file's own XML beside the document that LibreOffice made of it."""

    def __init__(self, office, path):
        self.read_parts(path)
        self.document = office.open(path)
        self.document.enableAutomaticCalculation(False)
        self.sheets = [self.document.Sheets.getByIndex(i) for i in range(self.document.Sheets.Count)]
        self.areas = [sheet.getCellRangeByPosition(0, 0, 9, 400) for sheet in self.sheets]
        self.order = self.sheets[0]
        last_row = max(row for row, _ in self.names.values())
        self.results = self.order.getCellRangeByPosition(0, 0, 4, last_row)  # all that has a name: less to fetch

    def read_parts(self, path):
        self.formulas, self.names, self.fixed = {}, {}, set()
        with zipfile.ZipFile(path) as parts:
            book = ElementTree.fromstring(parts.read("xl/workbook.xml"))
            for index in range(len(book.find(XML + "sheets"))):
                tree = ElementTree.fromstring(parts.read("xl/worksheets/sheet%d.xml" % (index + 1)))
                for cell in tree.iter(XML + "c"):
                    if cell.find(XML + "f") is None:
                        if cell.get("t") is None and cell.find(XML + "v") is not None:
                            self.fixed.add(round(float(cell.find(XML + "v").text), 3))
                        continue
                    value = cell.find(XML + "v").text or ""
                    row, column = place(cell.get("r"))
                    self.formulas[index, row, column] = value if cell.get("t") == "str" else float(value)
            for name in book.iter(XML + "definedName"):
                found = re.fullmatch(r"Order!(\$[A-Z]\$\d+)", name.text)
                if found and not name.get("name").startswith("_xlnm"):
                    self.names[name.get("name")] = place(found.group(1))

    def set(self, name, value):
        row, column = self.names[name]
        cell = self.order.getCellByPosition(column, row)
        if value is None:
            cell.clearContents(CONTENTS)
        else:
            cell.setValue(value)

    def calculate(self, everything=False):
        self.document.calculateAll() if everything else self.document.calculate()
        self.values = self.results.getDataArray()

    def all_values(self):
        return [self.areas[0].getDataArray()] + [area.getDataArray() for area in self.areas[1:]]

    def __getitem__(self, name):
        row, column = self.names[name]
        return self.values[row][column]


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


def compare_cached(comparison, workbook, name):
    workbook.calculate(everything=True)
    values = workbook.all_values()
    for (sheet, row, column), cached in workbook.formulas.items():
        comparison.expect("%s, sheet %d row %d column %d, recalculated" % (name, sheet, row + 1, column + 1), values[sheet][row][column], cached)


def in_mm(value, units):
    return value if value is None or isinstance(value, str) else round(value * MM[units], 6)


def or_empty(value):
    return "" if value is None else value


def inches_of(text):
    whole, _, fraction = text.partition("-") if "-" in text[1:] else ("0", "", text) if "/" in text else (text, "", "0")
    return float(Fraction(whole) + Fraction(fraction))


def compare_lengths(comparison, workbook, units, what, answer):
    def expect(name, wanted, tolerance_in=False):
        found = in_mm(workbook[name], units)
        if tolerance_in and units == "in" and wanted is not None and isinstance(found, float):
            found = wanted if abs(found - wanted) < 0.0011 else found  # whole sixteenths; the program keeps whole micrometres
        comparison.expect("%s, %s" % (what, name), found, or_empty(wanted))

    cuts = answer["cut_mm"] or dict.fromkeys(("inner_tube", "outer_tube", "inner_guard", "outer_guard"))
    for name, wanted in cuts.items():
        expect("cut_" + name, wanted, tolerance_in=True)
    for key, name in OVERLAPS.items():
        expect(name, answer["overlap_mm"][key])
    expect("closed_after", answer["telescoping_mm"]["closed_after"])
    expect("clearance", next(check["value"] for check in answer["checks"] if check["id"] == "closing-clearance"))


def compare_kept(comparison, workbook, units, what, kept):
    for name, text in kept.items():
        wanted = "" if text is None else inches_of(text) if units == "in" else float(text)
        comparison.expect("%s, %s" % (what, name), workbook[name], wanted)


def compare_checks(comparison, workbook, units, what, checks):
    for check in checks:
        name = "check_" + check["id"].replace("-", "_")
        comparison.expect("%s, %s" % (what, check["id"]), workbook[name + "_result"], check["result"].upper())
        scale = units if check["unit"] == "mm" else "mm"
        for figure in ("value", "worst", "limit"):
            comparison.expect("%s, %s of %s" % (what, figure, check["id"]), in_mm(workbook[name + "_" + figure], scale), or_empty(check[figure]))


def off_the_millimetre(case, units):
    return len(case["set"]) > 1 and all(value is None or (value * MM[units]) % 1 for value in case["set"].values())


def compare_hidden(comparison, workbook, units, what, hidden, known):
    """No cell holds a figure that must not be seen. Asked of lengths off the whole millimetre, so that none is there by chance."""
    on_sheet = {round(value * scale, 3) for sheet in workbook.all_values() for row in sheet for value in row
                if isinstance(value, float) for scale in {1.0, MM[units]}}
    for figure in hidden:
        if figure not in known:
            comparison.expect("%s, a cell holds %r though refused" % (what, figure), float(figure in on_sheet), 0.0)


def compare_as_cut(comparison, workbook, units, what, answer):
    """A shaft that is cut as the sheet says has the clearance and overlaps that the sheet promised; one that bottoms is refused."""
    for half in ("inner_half", "outer_half", "inner_guard_half", "outer_guard_half"):
        kept = answer["keep_mm"][half]
        workbook.set("after_" + half, None if kept is None else kept / MM[units])
    workbook.calculate()
    comparison.expect(what + ", verdict as cut", workbook["after_verdict"], "fits")
    comparison.expect(what + ", clearance as cut", in_mm(workbook["after_clearance"], units), answer["checks"][1]["value"])
    for key in ("longest_working", "longest_turning", "longest_standing"):
        name = "after_overlap_" + key.removeprefix("longest_")
        comparison.expect(what + ", " + name, in_mm(workbook[name], units), or_empty(answer["overlap_mm"][key]))
    guards = [answer["keep_mm"][half] for half in ("inner_guard_half", "outer_guard_half")]
    if None not in guards:
        setback = next(check for check in answer["checks"] if check["id"] == "guard-setback")
        comparison.expect(what + ", setback as cut", in_mm(workbook["after_guard_setback"], units), setback["value"])
        workbook.set("after_inner_guard_half", (answer["keep_mm"]["inner_half"] + 13) / MM[units])  # longer than its tube
        workbook.calculate()
        comparison.expect(what + ", a guard longer than its tube", workbook["after_guard_setback_result"], "WARN")
        workbook.set("after_inner_guard_half", guards[0] / MM[units])
    for half in ("inner_half", "outer_half"):  # too long by all of the clearance
        workbook.set("after_" + half, (answer["keep_mm"][half] + answer["checks"][1]["value"]) / MM[units])
    workbook.calculate()
    comparison.expect(what + ", verdict with no clearance left", workbook["after_verdict"], "refused")
    for half in ("inner_half", "outer_half", "inner_guard_half", "outer_guard_half"):
        workbook.set("after_" + half, None)
    workbook.calculate()


def run_case(comparison, workbook, base, number, case):
    units, issued = base["units"], base["issued"]
    for name, value in case["set"].items():
        workbook.set(name, value)
    workbook.calculate()
    what = "%s case %d %s" % (base["name"], number, json.dumps(case["set"]))
    answer = case["answer"]
    comparison.expect(what + ", verdict", workbook["verdict"], answer["verdict"])
    compare_lengths(comparison, workbook, units, what, answer)
    compare_kept(comparison, workbook, units, what, case["kept"])
    compare_checks(comparison, workbook, units, what, answer["checks"])
    if case["hidden"] and off_the_millimetre(case, units):
        inputs = {round(value * MM[units], 3) for value in case["set"].values() if value is not None}
        compare_hidden(comparison, workbook, units, what, case["hidden"], workbook.fixed | inputs)
    if number % 25 == 0 and answer["cut_mm"]:
        compare_as_cut(comparison, workbook, units, what, answer)
    for name in case["set"]:
        workbook.set(name, issued[name])


def compare_base(comparison, office, folder, base):
    workbook = Workbook(office, os.path.join(folder, base["name"] + ".xlsx"))
    compare_cached(comparison, workbook, base["name"])
    for number, case in enumerate(base["cases"]):
        run_case(comparison, workbook, base, number, case)
    workbook.document.close(True)
    return len(base["cases"])


def main(helper):
    signal.signal(signal.SIGALRM, lambda *_: sys.exit("recalculate: took more than %d s" % SECONDS_ALLOWED))
    signal.alarm(SECONDS_ALLOWED)
    folder = tempfile.mkdtemp(prefix="shaftcut-workbooks-")
    comparison = Comparison()
    try:
        subprocess.run([helper, folder], check=True, timeout=240)
        with open(os.path.join(folder, "cases.json"), encoding="utf-8") as file:
            bases = json.load(file)
        with Office() as office:
            cases = sum(compare_base(comparison, office, folder, base) for base in bases)
    finally:
        shutil.rmtree(folder, ignore_errors=True)
    for line in comparison.wrong[:40]:
        print(line)
    print("recalculate: %d workbooks, %d changed input sets, %d figures compared, %d wrong" %
          (len(bases), cases, comparison.compared, len(comparison.wrong)))
    return 1 if comparison.wrong or cases < 200 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))

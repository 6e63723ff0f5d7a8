"""Opens saw plans' workbooks in LibreOffice and compares what it computes with what the program says.

usage: /usr/bin/python3 recalculate_saw.py SAW_WORKBOOK_CASES

SAW_WORKBOOK_CASES is the helper program that writes the workbooks and the answers. Held: every formula, recalculated, gives the value that the
file holds for it; for changed kerf, trims and reusable leftover every stop, leftover and total is the program's.
"""
import json
import os
import re
import shutil
import signal
import subprocess
import sys
import tempfile
import zipfile
from xml.etree import ElementTree

from recalculate import XML, Comparison, Office, place

SECONDS_ALLOWED = 900
FIRST_ROW = 1
STOP, LEFTOVER, GOES, PIECE = 6, 7, 8, 3  # columns of the sheet Bars
TOTALS = ("bars_used", "bars_length", "pieces_length", "rack_length", "verdict")
CONTENTS = 1 | 2 | 4 | 16


class Book:
    def __init__(self, office, path):
        self.cached, self.names = {}, {}
        with zipfile.ZipFile(path) as parts:
            for index in range(2):
                for cell in ElementTree.fromstring(parts.read("xl/worksheets/sheet%d.xml" % (index + 1))).iter(XML + "c"):
                    if cell.find(XML + "f") is not None:
                        value = cell.find(XML + "v").text or ""
                        self.cached[(index,) + place(cell.get("r"))] = value if cell.get("t") == "str" else float(value)
            for name in ElementTree.fromstring(parts.read("xl/workbook.xml")).iter(XML + "definedName"):
                found = re.fullmatch(r"Plan!(\$[A-Z]\$\d+)", name.text)
                if found:
                    self.names[name.get("name")] = place(found.group(1))
        self.rows = max(row for _, row, _ in self.cached) + 1
        self.document = office.open(path)
        self.document.enableAutomaticCalculation(False)
        self.sheets = [self.document.Sheets.getByIndex(index) for index in range(2)]

    def values(self):
        self.document.calculateAll()
        return [sheet.getCellRangeByPosition(0, 0, 15, self.rows + 60).getDataArray() for sheet in self.sheets]

    def set(self, name, value):
        row, column = self.names[name]
        cell = self.sheets[0].getCellByPosition(column, row)
        cell.clearContents(CONTENTS) if value is None else cell.setValue(value)


def compare_case(comparison, book, what, case):
    for name, value in case["set"].items():
        book.set(name, value)
    plan, bars = book.values()
    answer = case["answer"]
    rows = [row for row in bars[FIRST_ROW:] if row[PIECE] != ""]
    comparison.expect(what + ", pieces", float(len(rows)), float(len(answer["stops"])))
    for number, (row, stop) in enumerate(zip(rows, answer["stops"])):
        comparison.expect("%s, stop %d" % (what, number + 1), row[STOP], stop)
    firsts = [row for row in rows if row[PIECE] == 1]
    for number, (row, left, goes) in enumerate(zip(firsts, answer["leftovers"], answer["goes"])):
        comparison.expect("%s, leftover %d" % (what, number + 1), row[LEFTOVER], left)
        comparison.expect("%s, leftover %d goes" % (what, number + 1), row[GOES], goes)
    for name in TOTALS:
        row, column = book.names[name]
        comparison.expect("%s, %s" % (what, name), plan[row][column], answer[name])


def compare_book(comparison, office, folder, one):
    book = Book(office, os.path.join(folder, one["file"]))
    values = book.values()
    for (sheet, row, column), cached in book.cached.items():
        comparison.expect("%s, sheet %d row %d column %d, recalculated" % (one["name"], sheet, row + 1, column + 1), values[sheet][row][column], cached)
    row, column = book.names["waste_percent"]
    comparison.expect(one["name"] + ", waste", values[0][row][column], one["waste"])
    for number, case in enumerate(one["cases"]):
        compare_case(comparison, book, "%s case %d" % (one["name"], number), case)
    book.document.close(True)
    return len(one["cases"])


def main(helper):
    signal.signal(signal.SIGALRM, lambda *_: sys.exit("recalculate_saw: took more than %d s" % SECONDS_ALLOWED))
    signal.alarm(SECONDS_ALLOWED)
    folder = tempfile.mkdtemp(prefix="shaftcut-workbooks-")
    comparison = Comparison()
    try:
        subprocess.run([helper, folder], check=True, timeout=300)
        with open(os.path.join(folder, "cases.json"), encoding="utf-8") as file:
            books = json.load(file)
        with Office() as office:
            cases = sum(compare_book(comparison, office, folder, one) for one in books)
    finally:
        shutil.rmtree(folder, ignore_errors=True)
    for line in comparison.wrong[:40]:
        print(line)
    print("recalculate_saw: %d workbooks, %d sets of inputs, %d figures compared, %d wrong" % (len(books), cases, comparison.compared, len(comparison.wrong)))
    return 1 if comparison.wrong or cases < 40 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))

"""Opens batches' workbooks in LibreOffice and compares what it computes with what the program says.

usage: /usr/bin/python3 recalculate_batch.py BATCH_WORKBOOK_CASES

BATCH_WORKBOOK_CASES is the helper program that writes the workbooks and the answers. Held: every formula, recalculated, gives the value that the
file holds for it; for changed closed lengths, shoulders, seats, guard figures, counts and saw's step every length, every verdict and every sum of
parts is the program's.
"""
import json
import os
import shutil
import signal
import subprocess
import sys
import tempfile
import zipfile
from xml.etree import ElementTree

from recalculate import XML, Comparison, Office, place

SECONDS_ALLOWED = 900
HEADS, FIRST_ROW = 4, 5  # of the sheet Orders, counted from 0
COLUMNS = 40
ORDERS, PARTS = 0, 1
CONTENTS = 1 | 2 | 4 | 16


class Book:
    def __init__(self, office, path):
        self.cached = {}
        with zipfile.ZipFile(path) as parts:
            self.count = sum(1 for name in parts.namelist() if name.startswith("xl/worksheets/sheet"))
            for index in range(self.count):
                for cell in ElementTree.fromstring(parts.read("xl/worksheets/sheet%d.xml" % (index + 1))).iter(XML + "c"):
                    if cell.find(XML + "f") is not None:
                        value = cell.find(XML + "v").text or ""
                        self.cached[(index,) + place(cell.get("r"))] = value if cell.get("t") == "str" else float(value)
            names = ElementTree.fromstring(parts.read("xl/workbook.xml")).iter(XML + "definedName")
            self.step = place([name.text for name in names if name.get("name") == "step"][0].split("!")[1])
        self.rows = max(row for _, row, _ in self.cached) + 3
        self.document = office.open(path)
        self.document.enableAutomaticCalculation(False)
        self.sheets = [self.document.Sheets.getByIndex(index) for index in range(self.count)]
        first = self.sheets[ORDERS].getCellRangeByPosition(0, 0, COLUMNS, self.rows).getDataArray()
        self.columns = {title: column for column, title in enumerate(first[HEADS]) if title}
        self.order_rows = {row[0]: number for number, row in enumerate(first) if number >= FIRST_ROW and row[0]}

    def values(self):
        self.document.calculateAll()
        return [sheet.getCellRangeByPosition(0, 0, COLUMNS, self.rows).getDataArray() for sheet in self.sheets]

    def cell(self, order, title):
        return self.sheets[ORDERS].getCellByPosition(self.columns[title], self.order_rows[order])


def compare_case(comparison, book, what, case):
    before = [(order, title, book.cell(order, title).getValue()) for order, title, _ in case["set"]]
    for order, title, value in case["set"]:
        book.cell(order, title).setValue(value)
    row, column = book.step
    book.sheets[ORDERS].getCellByPosition(column, row).setValue(case["step"])
    values = book.values()
    for order, figures in case["orders"].items():
        shown = values[ORDERS][book.order_rows[order]]
        for title, expected in figures.items():
            comparison.expect("%s, %s, %s" % (what, order, title), shown[book.columns[title]], expected)
    picked = {row[0]: row[1] for row in values[PARTS][1:] if row[0]}
    comparison.expect(what + ", parts", sorted(picked) == sorted(case["parts"]), True)
    for part, count in case["parts"].items():
        comparison.expect("%s, part %s" % (what, part), picked.get(part), float(count))
    for order, title, value in before:
        book.cell(order, title).setValue(value)


def compare_book(comparison, office, folder, one):
    book = Book(office, os.path.join(folder, one["file"]))
    values = book.values()
    for (sheet, row, column), cached in book.cached.items():
        comparison.expect("%s, sheet %d row %d column %d, recalculated" % (one["file"], sheet + 1, row + 1, column + 1), values[sheet][row][column], cached)
    for number, case in enumerate(one["cases"]):
        compare_case(comparison, book, "%s case %d" % (one["file"], number), case)
    book.document.close(True)
    return len(one["cases"])


def main(helper):
    signal.signal(signal.SIGALRM, lambda *_: sys.exit("recalculate_batch: took more than %d s" % SECONDS_ALLOWED))
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
    print("recalculate_batch: %d workbooks, %d sets of inputs, %d figures compared, %d wrong" % (len(books), cases, comparison.compared, len(comparison.wrong)))
    return 1 if comparison.wrong or cases < 60 else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1]))

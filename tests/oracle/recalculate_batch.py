"""Opens batches' workbooks in LibreOffice and compares what it computes with what the program says.

usage: /usr/bin/python3 recalculate_batch.py BATCH_WORKBOOK_CASES

BATCH_WORKBOOK_CASES is the helper program that writes the workbooks and the answers. Held: every formula, recalculated, gives the value that the
file holds for it; for changed closed lengths, shoulders, seats, guard figures, counts and saw's step every length, every verdict and every sum of
parts is the program's.
"""
import os
import sys

from office import Workbook, compare_all

LEAST_CASES = 60
HEADS, FIRST_ROW = 4, 5  # of the sheet Orders, counted from 0
COLUMNS = 40
ORDERS, PARTS = 0, 1


class BatchWorkbook(Workbook):
    def __init__(self, office, path):
        super().__init__(office, path, "Orders")
        self.rows = self.last_row() + 3
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
    row, column = book.names["step"]
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
    book = BatchWorkbook(office, os.path.join(folder, one["file"]))
    comparison.expect_cached(one["file"], book, book.values())
    for number, case in enumerate(one["cases"]):
        compare_case(comparison, book, "%s case %d" % (one["file"], number), case)
    book.document.close(True)
    return len(one["cases"])


if __name__ == "__main__":
    sys.exit(compare_all("recalculate_batch", sys.argv[1], compare_book, LEAST_CASES))

"""Opens saw plans' workbooks in LibreOffice and compares what it computes with what the program says.

usage: /usr/bin/python3 recalculate_saw.py SAW_WORKBOOK_CASES

SAW_WORKBOOK_CASES is the helper program that writes the workbooks and the answers. Held: every formula, recalculated, gives the value that the
file holds for it; for changed kerf, trims and reusable leftover every stop, leftover and total is the program's.
"""
import os
import sys

from office import Workbook, compare_all, set_cell

LEAST_CASES = 40
FIRST_ROW = 1
STOP, LEFTOVER, GOES, PIECE = 6, 7, 8, 3  # columns of the sheet Bars
TOTALS = ("bars_used", "bars_length", "pieces_length", "rack_length", "verdict")


class SawWorkbook(Workbook):
    def __init__(self, office, path):
        super().__init__(office, path, "Plan")
        self.rows = self.last_row() + 1

    def values(self):
        self.document.calculateAll()
        return [sheet.getCellRangeByPosition(0, 0, 15, self.rows + 60).getDataArray() for sheet in self.sheets]

    def set(self, name, value):
        row, column = self.names[name]
        set_cell(self.sheets[0].getCellByPosition(column, row), value)


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
    comparison.expect(what + ", bars", float(len(firsts)), float(len(answer["leftovers"])))
    for number, (row, left, goes) in enumerate(zip(firsts, answer["leftovers"], answer["goes"])):
        comparison.expect("%s, leftover %d" % (what, number + 1), row[LEFTOVER], left)
        comparison.expect("%s, leftover %d goes" % (what, number + 1), row[GOES], goes)
    for name in TOTALS:
        row, column = book.names[name]
        comparison.expect("%s, %s" % (what, name), plan[row][column], answer[name])


def compare_book(comparison, office, folder, one):
    book = SawWorkbook(office, os.path.join(folder, one["file"]))
    values = book.values()
    comparison.expect_cached(one["name"], book, values)
    row, column = book.names["waste_percent"]
    comparison.expect(one["name"] + ", waste", values[0][row][column], one["waste"])
    for number, case in enumerate(one["cases"]):
        compare_case(comparison, book, "%s case %d" % (one["name"], number), case)
    book.document.close(True)
    return len(one["cases"])


if __name__ == "__main__":
    sys.exit(compare_all("recalculate_saw", sys.argv[1], compare_book, LEAST_CASES))

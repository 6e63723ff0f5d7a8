"""Opens the workbooks in LibreOffice and compares what it computes with what the program says.

usage: /usr/bin/python3 recalculate.py WORKBOOK_CASES

WORKBOOK_CASES is the helper program that writes the workbooks and the program's own answers. Four things are held:
every formula, recalculated, gives the value that the file holds for it; for every changed set of inputs the workbook's
verdict, cuts, kept lengths, overlaps, checks and what is to be confirmed are the program's; while it is refused no cell holds a cut;
and whatever is then measured after the cut, the workbook says of the shaft what the program says.
"""
import json
import os
import sys
from fractions import Fraction

from office import Workbook, compare_all, set_cell

LEAST_CASES = 200
NOT_ASKED = "—"
MM = {"mm": 1.0, "in": 25.4}
PART_AS_CUT = {"right": "RIGHT", "saw-more": "SAW MORE", "measure": "MEASURE", "too-short": "TOO SHORT"}
VERDICT_AS_CUT = {"right": "RIGHT", "saw-more": "SAW MORE", "measure": "MEASURE AGAIN", "too-short": "DO NOT USE"}
OVERLAPS = {"closed_before": "overlap_closed_before", "closed_after": "overlap_closed_after", "shortest": "overlap_shortest",
            "longest_working": "overlap_working", "longest_turning": "overlap_turning", "longest_standing": "overlap_standing"}


class OrderWorkbook(Workbook):
    def __init__(self, office, path):
        super().__init__(office, path, "Order|Checks")
        self.areas = [sheet.getCellRangeByPosition(0, 0, 9, 400) for sheet in self.sheets]
        self.order = self.sheets[0]
        last_named_row = max(row for row, _ in self.names.values())
        # All that has a name: less to fetch.
        self.results = {sheet.Name: sheet.getCellRangeByPosition(0, 0, 4, last_named_row) for sheet in self.sheets[:2]}

    def set(self, name, value):
        row, column = self.names[name]
        set_cell(self.order.getCellByPosition(column, row), value)

    def calculate(self, everything=False):
        self.document.calculateAll() if everything else self.document.calculate()
        self.values = {name: cells.getDataArray() for name, cells in self.results.items()}

    def all_values(self):
        return [area.getDataArray() for area in self.areas]

    def __getitem__(self, name):
        row, column = self.names[name]
        return self.values[self.sheet_of[name]][row][column]


def in_mm(value, units):
    return value if value is None or isinstance(value, str) else round(value * MM[units], 6)


def or_empty(value):
    return "" if value is None else value


def inches_of(text):
    whole, _, fraction = text.partition("-") if "-" in text[1:] else ("0", "", text) if "/" in text else (text, "", "0")
    return float(Fraction(whole) + Fraction(fraction))


def clearance(answer):
    return next(check["value"] for check in answer["checks"] if check["id"] == "closing-clearance")


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
    expect("clearance", clearance(answer))


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


def compare_confirmations(comparison, workbook, units, what, verdict, asked):
    """Each confirmation is asked where the program asks it, with the same figures, and the sheet's first words count them all."""
    for name in [name for name in workbook.names if name.startswith("confirm_") and not name.endswith(("_plus_minus", "_count"))]:
        key = name.removeprefix("confirm_")
        expected, plus_minus = asked.get(key, ("not asked", "not asked"))
        shown = {"not asked": NOT_ASKED, None: "look"}.get(expected, expected)
        comparison.expect("%s, %s" % (what, name), in_mm(workbook[name], units), shown)
        if name + "_plus_minus" in workbook.names:
            comparison.expect("%s, ± of %s" % (what, name), in_mm(workbook[name + "_plus_minus"], units), "" if plus_minus == "not asked" else plus_minus)
    for key in asked:
        comparison.expect("%s, a row for %s" % (what, key), float("confirm_" + key in workbook.names), 1.0)
    comparison.expect(what + ", how many to confirm", workbook["confirm_count"], float(len(asked)))
    first = {"cut": "CUT: CONFIRM %d FIRST", "fits": "FITS AS IT IS: CONFIRM %d FIRST", "refused": "DO NOT CUT"}[verdict]
    if asked:
        comparison.expect(what + ", words of the verdict", workbook["verdict_words"].partition(".")[0], first % len(asked))
    else:
        comparison.expect(what + ", words of the verdict ask for nothing", float("CONFIRM" in workbook["verdict_words"]), 0.0)


def off_the_millimetre(case, units):
    return len(case["set"]) > 1 and all(value is None or (value * MM[units]) % 1 for value in case["set"].values())


def compare_hidden(comparison, workbook, units, what, hidden, known):
    """No cell holds a figure that must not be seen. Asked of lengths off the whole millimetre, so that none is there by chance."""
    on_sheet = {round(value * scale, 3) for sheet in workbook.all_values() for row in sheet for value in row
                if isinstance(value, float) for scale in {1.0, MM[units]}}
    for figure in hidden:
        if figure not in known:
            comparison.expect("%s, a cell holds %r though refused" % (what, figure), float(figure in on_sheet), 0.0)


def compare_as_cut(comparison, workbook, units, what, after_cuts):
    """Whatever is measured after the cut, each part and the whole shaft are what the program says of them."""
    for after in after_cuts:
        for name, value in after["set"].items():
            workbook.set(name, value)
        workbook.calculate()
        said = "%s, as cut %s" % (what, json.dumps(after["set"]))
        comparison.expect(said + ", verdict", workbook["after_verdict"], VERDICT_AS_CUT[after["verdict"]])
        for part, found in after["parts"].items():
            tube, _, kind = part.partition("_")
            name = "after_%s_%shalf" % (tube, "guard_" if kind == "guard" else "")
            comparison.expect("%s, %s" % (said, part), workbook[name + "_result"], PART_AS_CUT[found["result"]])
            comparison.expect("%s, by how much of %s" % (said, part), in_mm(workbook[name + "_by"], units), or_empty(found["by"]))
        for name in after["set"]:
            workbook.set(name, None)


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
    compare_confirmations(comparison, workbook, units, what, answer["verdict"], case["confirm"])
    if case["hidden"] and off_the_millimetre(case, units):
        inputs = {round(value * MM[units], 3) for value in case["set"].values() if value is not None}
        fixed = workbook.fixed | {round(value * MM[units], 3) for value in workbook.fixed}
        compare_hidden(comparison, workbook, units, what, case["hidden"], fixed | inputs)
    compare_as_cut(comparison, workbook, units, what, case["after_cut"])
    for name in case["set"]:
        workbook.set(name, issued[name])


def compare_base(comparison, office, folder, base):
    workbook = OrderWorkbook(office, os.path.join(folder, base["name"] + ".xlsx"))
    workbook.calculate(everything=True)
    comparison.expect_cached(base["name"], workbook, workbook.all_values())
    for number, case in enumerate(base["cases"]):
        run_case(comparison, workbook, base, number, case)
    workbook.document.close(True)
    return len(base["cases"])


if __name__ == "__main__":
    sys.exit(compare_all("recalculate", sys.argv[1], compare_base, LEAST_CASES))

"""Opens quotes' workbooks in LibreOffice, types other figures in, and compares what it computes with Python's decimal.

usage: /usr/bin/python3 quote_workbook.py QUOTE_WORKBOOK_CASES

QUOTE_WORKBOOK_CASES is the helper program that writes the workbooks and what each is made of. Held: every formula, recalculated, gives the value
that the file holds for it; the totals of a quote as it is are the program's; for random quantities, minutes, prices, rates and discounts, ties
and sums beside the minimum charge among them, every line and total is what the rule gives: quantity times price, rounded once, half away from
zero; tax once a rate, on the sum of its lines or taken out of it; the deposit rounded down.
"""
import os
import random
import sys
from decimal import ROUND_DOWN, ROUND_HALF_UP, Decimal

from office import Workbook, compare_all, set_cell

LEAST_CASES = 250
CASES_OF_A_BOOK = 40
DESK = 1
GREATEST_PRODUCT = 10 ** 14  # of two whole numbers; above it nothing is counted
TOO_GREAT = "TOO GREAT"


def rounded(value):
    return int(value.quantize(Decimal(1), rounding=ROUND_HALF_UP))  # half away from zero, of negatives too


class Inputs:
    """What is typed in, as whole numbers: thousandths, and minor units of the currency. None: the cell is empty."""

    def __init__(self, book):
        self.hourly, self.percent, self.off = book["hourly"], book["percent"], book["off"]
        self.quantities = [line["quantity"] for line in book["lines"]]
        self.prices = [line["price"] for line in book["lines"]]
        self.most = [line["most"] for line in book["lines"]]


def line_amounts(book, inputs):
    amounts = []
    for line, quantity, price in zip(book["lines"], inputs.quantities, inputs.prices):
        price = inputs.hourly if line["work"] else price
        if quantity is None or price is None:
            amounts.append(None)
        elif quantity * price > GREATEST_PRODUCT:
            amounts.append(TOO_GREAT)
        else:
            amounts.append(rounded(Decimal(quantity) * price / (1000 * line["per"])))
    return amounts


def totals(book, sums):
    taxes, net = [], 0
    for rate, total in zip(book["rates"], sums):
        if book["within"]:
            taxes.append(rounded(Decimal(total) * rate / (100000 + rate)))
            net += total - taxes[-1]
        else:
            taxes.append(rounded(Decimal(total) * rate / 100000))
            net += total
    return taxes, net


def sums_of(book, amounts):
    return [sum(amount for line, amount in zip(book["lines"], amounts) if line["rate"] == rate) for rate in range(len(book["rates"]))]


def expected(book, inputs):
    """Names and their amounts in minor units, or the words that stand in their place."""
    amounts = line_amounts(book, inputs)
    wanted = {"line_%d_amount" % (i + 1): "NOT PRICED" if amount is None else amount for i, amount in enumerate(amounts)}
    both = inputs.percent is not None and inputs.off is not None
    names = ["net", "total"] + (["deposit"] if book["deposit"] else []) + (["total_up_to"] if book["estimate"] else [])
    names += ["tax_%d_%s" % (i + 1, what) for i in range(len(book["rates"])) for what in ("base", "amount")]
    wanted["open_lines"] = ("count", amounts.count(None) + amounts.count(TOO_GREAT))
    if None in amounts or TOO_GREAT in amounts:
        return dict(wanted, verdict="NOT PRICED" if None in amounts else TOO_GREAT, **dict.fromkeys(names, ""))
    sums = sums_of(book, amounts)
    if book["charges"]:
        if book["minimum"] is not None:
            wanted["minimum_amount"] = max(0, book["minimum"] - sum(sums))
            sums[0] += wanted["minimum_amount"]
        if both:
            return dict(wanted, verdict="ONE DISCOUNT ONLY", **dict.fromkeys(names, ""))
        for i, total in enumerate(list(sums)):
            off = -rounded(Decimal(total) * inputs.percent / 100000) if inputs.percent is not None else -(inputs.off or 0) if i == 0 else 0
            wanted["discount_%d_amount" % (i + 1)] = off
            sums[i] += off
    if sum(sums) < 0:
        return dict(wanted, verdict=TOO_GREAT, **dict.fromkeys(names, ""))
    taxes, net = totals(book, sums)
    wanted.update(verdict="complete", net=net, total=net + sum(taxes))
    for i, tax in enumerate(taxes):
        wanted["tax_%d_amount" % (i + 1)] = tax
        wanted["tax_%d_base" % (i + 1)] = sums[i] - (tax if book["within"] else 0)
    if book["estimate"]:
        most = [amount if up_to is None else up_to for amount, up_to in zip(amounts, inputs.most)]
        taxes, net = totals(book, sums_of(book, most))
        wanted["total_up_to"] = net + sum(taxes)
    if book["deposit"]:
        part = Decimal(wanted["total"]) * book["deposit"]["percent"] / 100000
        wanted["deposit"] = "" if wanted["total"] < book["deposit"]["from"] else int(part.quantize(Decimal(1), rounding=ROUND_DOWN))
    return wanted


class Draw:
    """Random inputs: ordinary ones, those that end in a tie, those whose sum lies beside the minimum charge, those with something missing."""

    def __init__(self, book, seed):
        self.book, self.random = book, random.Random(seed)
        self.unit = 10 ** book["digits"]

    def price(self):
        return self.random.choice([0, 1, self.random.randrange(1000), self.random.randrange(500 * self.unit), self.random.randrange(20000 * self.unit)])

    def quantity(self, line):
        if line["work"]:
            return self.random.choice([0, 1, 30000, 90000, self.random.randrange(600) * 100, self.random.randrange(60000)])
        return self.random.choice([0, 500, 1000, 1500, self.random.randrange(1, 40) * 1000, self.random.randrange(9999)])

    def ordinary(self):
        inputs = Inputs(self.book)
        inputs.hourly = self.random.choice([inputs.hourly or 0, self.random.randrange(200 * self.unit)])
        for i, line in enumerate(self.book["lines"]):
            inputs.quantities[i] = self.quantity(line)
            if not line["work"]:
                inputs.prices[i] = self.price()
            if line["most"] is not None:
                inputs.most[i] = self.price()
        inputs.percent = inputs.off = None
        if self.book["charges"]:
            kind = self.random.randrange(4)
            inputs.percent = self.random.choice([0, 5000, 50000, 100000, self.random.randrange(100001)]) if kind == 1 else None
            inputs.off = self.price() if kind == 2 else None
        return inputs

    def ties(self):
        inputs = self.ordinary()
        inputs.hourly = 2 * self.random.randrange(50 * self.unit) + 1
        for i, line in enumerate(self.book["lines"]):
            inputs.quantities[i] = 30000 * (2 * self.random.randrange(5) + 1) if line["work"] else 500 * (2 * self.random.randrange(9) + 1)
            if not line["work"]:
                inputs.prices[i] = 2 * self.random.randrange(300 * self.unit) + 1
        if inputs.percent is not None:
            inputs.percent = 50000
        return inputs

    def beside_minimum(self):
        inputs = self.ordinary()
        if self.book["minimum"] is None:
            return inputs
        inputs.quantities = [0] * len(inputs.quantities)
        at = [i for i, line in enumerate(self.book["lines"]) if not line["work"]]
        if at:
            inputs.quantities[at[0]], inputs.prices[at[0]] = 1000, self.book["minimum"] + self.random.choice([-1, 0, 1])
        else:  # of work alone: an hour of it
            inputs.quantities[0], inputs.hourly = 60000, self.book["minimum"] + self.random.choice([-1, 0, 1])
        return inputs

    def something_missing(self):
        inputs = self.ordinary()
        at = self.random.randrange(len(inputs.quantities))
        what = self.random.randrange(4)
        if what == 0:
            inputs.quantities[at] = None
        elif what == 1:
            inputs.hourly = None
        elif what == 2 and self.book["charges"]:
            inputs.percent, inputs.off = 5000, 1
        elif not self.book["lines"][at]["work"]:
            inputs.prices[at] = None
        return inputs

    def greatest(self):
        """A line at the greatest product that is counted, or one above it."""
        inputs = self.ordinary()
        inputs.percent = None
        at = self.random.randrange(len(inputs.quantities))
        inputs.quantities[at] = 10 ** 7
        above = self.random.randrange(2)
        if self.book["lines"][at]["work"]:
            inputs.quantities = [quantity if i == at else 0 if line["work"] else quantity for i, (line, quantity) in enumerate(zip(self.book["lines"], inputs.quantities))]
            inputs.hourly = 10 ** 7 + above
        else:
            inputs.prices[at] = 10 ** 7 + above
        return inputs

    def case(self, number):
        if number == 0:
            return Inputs(self.book)
        return [self.ordinary, self.ties, self.beside_minimum, self.ordinary, self.something_missing, self.greatest][number % 6]()


class QuoteWorkbook(Workbook):
    def __init__(self, office, path):
        super().__init__(office, path, "Desk")
        self.rows = self.last_row() + 1 if self.formulas else 0  # of a quote without a line

    def values(self):
        self.document.calculateAll()
        return [sheet.getCellRangeByPosition(0, 0, 15, self.rows + 20).getDataArray() for sheet in self.sheets]

    def set(self, name, value, by):
        row, column = self.names[name]
        set_cell(self.sheets[DESK].getCellByPosition(column, row), None if value is None else value / by)


def type_in(workbook, book, inputs, unit):
    workbook.set("hourly_rate", inputs.hourly, unit)
    if book["charges"]:
        workbook.set("discount_percent", inputs.percent, 1000)
        workbook.set("discount_amount", inputs.off, unit)
    for i, line in enumerate(book["lines"]):
        workbook.set("line_%d_quantity" % (i + 1), inputs.quantities[i], 1000)
        if not line["work"]:
            workbook.set("line_%d_price" % (i + 1), inputs.prices[i], unit)
        if book["estimate"]:
            workbook.set("line_%d_most" % (i + 1), inputs.most[i], unit)


def compare_case(comparison, workbook, book, what, inputs):
    unit = 10 ** book["digits"]
    type_in(workbook, book, inputs, unit)
    desk = workbook.values()[DESK]
    for name, wanted in expected(book, inputs).items():
        row, column = workbook.names[name]
        if isinstance(wanted, tuple):
            wanted = float(wanted[1])
        elif not isinstance(wanted, str):
            wanted = wanted / unit
        comparison.expect("%s, %s" % (what, name), desk[row][column], wanted)


def compare_program(comparison, book):
    """The rule as it stands above, on the quote as it is, gives the program's totals."""
    if book["totals"] is None or not book["lines"]:
        return
    wanted = expected(book, Inputs(book))
    for name in ("net", "total"):
        comparison.expect("%s, the program's %s" % (book["name"], name), float(wanted[name]), float(book["totals"][name]))
    if book["deposit"]:
        comparison.expect(book["name"] + ", the program's deposit", str(wanted["deposit"]), str(book["totals"]["deposit"] or ""))
    if book["estimate"]:
        comparison.expect(book["name"] + ", the program's most", float(wanted["total_up_to"]), float(book["total_up_to"]))


def compare_book(comparison, office, folder, book):
    workbook = QuoteWorkbook(office, os.path.join(folder, book["file"]))
    comparison.expect_cached(book["name"], workbook, workbook.values())
    cases = 0 if not book["lines"] else 8 if len(book["lines"]) > 30 else CASES_OF_A_BOOK
    if cases and book["name"] != "long names":  # its own lines do not follow the rule: an amount is set by hand
        compare_program(comparison, book)
    draw = Draw(book, book["name"])
    for number in range(cases):
        compare_case(comparison, workbook, book, "%s case %d" % (book["name"], number), draw.case(number))
    workbook.document.close(True)
    return cases


if __name__ == "__main__":
    sys.exit(compare_all("quote_workbook", sys.argv[1], compare_book, LEAST_CASES))

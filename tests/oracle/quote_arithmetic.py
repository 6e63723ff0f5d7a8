#!/usr/bin/python3
"""Adds up random bills in decimal fractions and compares every line and total with the program's whole numbers.

The rule is written here a second time, from the standard's text (EN 16931-1:2017, BR-CO-10, -13, -15, -17): a line is rounded once, half away
from zero; tax once a rate on the sum of its lines. Ties, sums at the edge of a deposit, two and three rates, tax in and tax on top.
Usage: quote_arithmetic.py PROGRAM; SHAFTCUT_QUOTES=1000000 for as many as the documentation names (20,000 otherwise).
"""
import os
import random
import subprocess
import sys
from decimal import ROUND_HALF_UP, Decimal, getcontext

getcontext().prec = 60
RATES = [0, 5500, 9000, 19000, 21000, 25000, 100000]


def whole(value):
    return int(value.quantize(Decimal(1), ROUND_HALF_UP))


def draw(rng):
    rates = rng.sample(RATES, rng.randint(1, 3))
    lines = []
    for _ in range(rng.choice([1, 2, 5, 12])):
        per = rng.choice([1, 1, 1, 60])
        each = rng.choice([rng.randint(0, 50), rng.randint(0, 100000), rng.randint(0, 10**11)])
        quantity = rng.choice([500, 1000, 1500, 250, rng.randint(0, 5000), 1000 * rng.randint(0, 5000)])
        if rng.random() < 0.1:
            each = -each
        lines.append((each, quantity, per, rng.choice(rates)))
    return rng.randint(0, 1), rates[0], rng.choice([0, 25000, 33333]), rng.choice([0, 30000]), rng.choice([0, 5, 10]), lines


def expected(bill):
    stated, usual, deposit, deposit_from, coin, lines = bill
    amounts = [whole(Decimal(each) * quantity / (1000 * per)) for each, quantity, per, _ in lines]
    order = list(dict.fromkeys(rate for *_, rate in lines))
    order.sort(key=lambda rate: rate != usual)
    taxes, net, total = [], 0, 0
    for rate in order:
        base = sum(amount for amount, line in zip(amounts, lines) if line[3] == rate)
        tax = whole(Decimal(base) * rate / (100000 + rate if stated else 100000))
        base -= tax if stated else 0
        taxes += [rate, base, tax]
        net, total = net + base, total + base + tax
    due = int(Decimal(total) * deposit / 100000) if total >= deposit_from else 0
    cash = whole(Decimal(total) / coin) * coin if coin else total
    return amounts + [net, total, due, cash] + taxes


def main():
    count = int(os.environ.get("SHAFTCUT_QUOTES", "20000"))
    rng = random.Random(16931)
    bills = [draw(rng) for _ in range(count)]
    text = "\n".join(" ".join(map(str, bill[:5])) + f" {len(bill[5])} " + " ".join(" ".join(map(str, line)) for line in bill[5]) for bill in bills)
    lines = subprocess.run([sys.argv[1]], input=text + "\n", text=True, capture_output=True, check=True).stdout.splitlines()
    wrong = 0
    for bill, line in zip(bills, lines):
        if list(map(int, line.split())) != expected(bill):
            wrong += 1
            if wrong <= 5:
                print(bill, "\n  program ", line, "\n  expected", *expected(bill))
    wrong += abs(len(lines) - count)
    print(f"{count} bills, {wrong} wrong")
    print("1 passed, 0 failed" if wrong == 0 else "0 passed, 1 failed")
    return 0 if wrong == 0 else 1


sys.exit(main())

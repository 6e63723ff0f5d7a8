"""At the saw, after the cut, the machine that moves, the quote, another shaft, and which shaft it is."""
import os

from bench_page import attributes_of, until


def opened(bench, name):
    page = bench.page
    page.open()
    page.open_text(open(os.path.join(bench.source, f"samples/{name}.xml")).read())
    page.answer_open()
    until(lambda: page.verdict())
    return page


def touched_off(bench):
    page = opened(bench, "plain-cut")
    page.touch("#to-saw")
    until(lambda: len(page.all("#saw-steps .steps li")) > 12)
    page.bring(page.all(".done")[0]).click()
    page.driver.refresh()
    page.ready()
    until(lambda: page.verdict())
    page.touch("#to-saw")
    until(lambda: page.all(".done"))
    assert [one.get_attribute("aria-pressed") for one in page.all(".done")[:2]] == ["true", "false"]
    assert page.all("#saw-halves svg circle"), "no drawing says what the letters are"
    assert not page.js("return [...document.querySelectorAll('#saw *')].some((one) => getComputedStyle(one).textDecorationLine.includes('line-through'))"), "a line that was touched off is struck out, its warnings too"
    assert not any(sign in page.one("#saw-steps").text for sign in "☐▭"), "a square of the paper that no hand can touch"
    numbers = page.js("return [...document.querySelectorAll('.steps > li')].map((one) => one.value)")
    assert numbers == list(range(1, len(numbers) + 1)), numbers
    assert all(page.js("return [...document.querySelectorAll('.steps > li')].map((one) => one.querySelectorAll('p').length)")), "a step says nothing"
    page.touch("#saw [data-view-to=form]")
    page.type("fit[1]/shortest@length", "815")
    until(lambda: page.lengths().get("C") == 125)
    page.touch("#to-saw")
    until(lambda: page.all("#anew"))
    assert page.one(".done").get_attribute("aria-pressed") == "false", "what was touched off for other cuts still stands"


def after_the_cut(bench):
    page = opened(bench, "plain-cut")
    page.touch("#to-saw")
    until(lambda: page.all('[data-path="half[tube=inner]@length"]'))
    page.type("half[tube=inner]@length", "668")
    until(lambda: page.all('[data-after="measure"]'))
    assert not page.complaints()
    for path, value in (("half[tube=inner]@length", "675"), ("half[tube=inner]@stands-out", "23"), ("half[tube=outer]@length", "647"), ("half[tube=outer]@guard", "632"), ("closed@length", "787")):
        page.type(path, value)
    until(lambda: page.all('[data-after="saw-more"]'))
    assert "7 mm" in page.one('[data-part="inner_tube"]').text, page.one("#after-says").text
    page.type("half[tube=inner]@length", "668")
    page.type("half[tube=inner]@stands-out", "16")
    page.type("closed@length", "780")
    until(lambda: page.all('[data-after="right"]'))
    assert "verdict_" not in page.one("#after-says").text
    until(lambda: page.all("#steps-open"))
    assert " 16" in page.one("#steps-open").text, page.one("#steps-open").text
    page.type("half[tube=inner]@length", "300")
    until(lambda: page.all('[data-after="too-short"]') or page.all("#after-says .fault"))
    assert not page.complaints()


def confirmed(bench):
    page = opened(bench, "unconfirmed-shoulder")
    page.touch("#to-saw")
    until(lambda: page.all("input[data-confirm]"))
    box = page.bring(page.all("input[data-confirm]")[0])
    box.send_keys("1")
    item = box.find_element("xpath", "./..")
    outside = until(lambda: item.find_element("css selector", ".judged").text)
    box.clear()
    expected = next(one["expected_mm"] for one in bench.view(page)["confirm"] if one["what"] == box.get_attribute("data-confirm"))
    box.send_keys(f"{expected:g}")
    until(lambda: item.find_element("css selector", ".judged").text not in ("", outside))


def machine_moves(bench):
    page = opened(bench, "trailed-wide-angle")
    until(lambda: page.all(".moving svg"))
    first = page.one(".moving").get_attribute("innerHTML")
    says = page.one(".mover output").text
    page.js("const one = document.querySelector('.mover input'); one.value = Math.floor(one.max / 3); one.dispatchEvent(new Event('input'))")
    assert page.one(".moving").get_attribute("innerHTML") != first and page.one(".mover output").text != says


def another_shaft(bench):
    page = opened(bench, "refused-overlap")
    page.touch("#to-choose")
    until(lambda: page.all("#choices .big") or page.all("#choices .fault"))
    takes = page.all("#choices li button")
    if takes:
        takes[0].click()
        until(lambda: page.one("#form").is_displayed())


def priced(bench):
    page = opened(bench, "plain-cut")
    page.touch("#to-quote")
    until(lambda: page.all("#quote-totals dd"))
    before = page.one("#quote-totals").text
    page.bring(page.one("#discount")).send_keys("10%")
    until(lambda: page.one("#quote-totals").text != before)
    discounted, amount = page.one("#quote-totals").text, page.one('[data-amount="0"]').text
    minutes = page.bring(page.one('[data-line="0"]'))
    minutes.clear()
    minutes.send_keys("120")
    until(lambda: page.one("#quote-totals").text not in (before, discounted) and page.one('[data-amount="0"]').text != amount)


def measured(bench, tubes, ends, writing=""):
    """A new job's shaft: the widths of both its tubes, span and cap of each end."""
    page = bench.page
    page.open()
    page.touch("#jobs > summary")
    page.touch("#new-job")
    page.touch("header [data-view-to=identify]")
    until(lambda: page.all("#identify-says .verdict"))
    page.touch_tile("tubes@shape", "lemon")
    for tube, width in tubes.items():
        page.type(f"tubes/tube[tube={tube}]/width@length", width)
    if writing:
        page.type("guard@writing", writing)
    for side, (span, cap) in ends.items():
        page.touch(f'[data-part="{side}"]')
        page.touch_tile(f"end[side={side}]@joint", "standard")
        page.type(f"end[side={side}]/cross/span@length", span)
        page.type(f"end[side={side}]/cross/cap@diameter", cap)
    return page


def identified(bench):
    page = measured(bench, {"inner": "42.9", "outer": "51,0"}, {"tractor": ("53.9", "22"), "implement": ("53.9", "22")})
    until(lambda: page.all('[data-identified="one"]'))
    assert page.one("#identify-says .verdict").text == "measures like Alder 2"
    rows = [row.text for row in page.all("#identify-says .series li")]
    assert rows[0] == "Alder 2 > 95 %" and rows[-2].startswith("mixed, of more than one make ") and rows[-1].startswith("of no series here "), rows
    page.touch("#to-cut")
    until(lambda: page.one("#form").is_displayed())
    assert ("shaft@series", "Alder 2") in attributes_of(page.job())


def mixed_to_cut(bench):
    page = measured(bench, {"inner": "53.8", "outer": "63.1"}, {"tractor": ("69.9", "26.95"), "implement": ("53.8", "21.95")}, "Larch 6")
    until(lambda: page.all('[data-identified="mixed"]'))
    page.js("window.answering = window.fetch; window.fetch = () => Promise.reject(new TypeError('no way there'))")
    before = page.job()
    page.touch("#to-cut")
    until(lambda: page.all("#identify-says .fault"))
    assert page.one("#identify").is_displayed() and page.job() == before
    page.js("window.fetch = window.answering")
    page.touch("#to-cut")
    until(lambda: page.one("#form").is_displayed())
    job = dict(attributes_of(page.job()))
    assert job["shaft@series"] == "Larch 6"
    # Nobody has said which tube the implement's half carries: the inner one until then.
    assert job.get("shaft/half[tube=inner]@series") == "none" and "shaft/half[tube=outer]@series" not in job, job
    page.touch_tile("shaft@inner-tube", "tractor")
    job = dict(attributes_of(page.job()))
    assert job.get("shaft/half[tube=outer]@series") == "none" and "shaft/half[tube=inner]@series" not in job, job


def tests(bench, short):
    both = [("steps touched off stay touched off", touched_off), ("after the cut: saw more, right", after_the_cut)]
    rest = [("a confirmation judged", confirmed), ("the machine moves", machine_moves), ("another shaft", another_shaft), ("the quote follows a discount and minutes", priced), ("which shaft is this", identified), ("a mixed shaft goes into the job by its ends", mixed_to_cut)]
    return [(name, lambda test=test: test(bench)) for name, test in both + ([] if short else rest)]

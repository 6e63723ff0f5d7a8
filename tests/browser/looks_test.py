"""What an eye and a hand meet at four sizes: room to touch, the band in sight, nothing that axe-core finds, no word missing."""
import os

from bench_page import SIZES, size, until

AXE = os.path.join(os.path.dirname(__file__), "node_modules/axe-core/axe.min.js")
# Everything that can be touched and is seen, with its box on the page.
TARGETS = """
const shown = [...document.querySelectorAll('button, summary, input:not([type=range]), .button')].filter((one) => one.checkVisibility() && !one.closest('[hidden]') && one.type !== 'file');
return shown.map((one) => { const r = one.getBoundingClientRect(); return [one.textContent.trim() || one.dataset.path || one.dataset.spot || one.id, r.left, r.top + scrollY, r.width, r.height, one.closest('#tape') ? 2 : Number(one.matches('#bar *, #rest *'))]; });
"""


def sample(bench, name):
    page = bench.page
    page.open()
    page.open_text(open(os.path.join(bench.source, f"samples/{name}.xml")).read())
    page.answer_open()
    until(lambda: page.verdict())


def states(bench):
    """Each state of the page, by name; what follows looks at it."""
    page = bench.page
    page.open()
    page.touch("#jobs > summary")
    page.touch("#new-job")
    page.js("document.getElementById('jobs').open = false")
    yield "empty form"
    sample(bench, "wide-angle-outer-cross")
    yield "cut"
    page.js("document.querySelectorAll('details').forEach((one) => { if (!one.closest('header')) one.open = true; })")
    yield "more, all open"
    page.touch("#to-saw")
    until(lambda: page.all(".steps li"))
    yield "saw"
    sample(bench, "refused-overlap")
    yield "refused"
    page.touch("#to-choose")
    until(lambda: page.all("#choices .big, #choices .fault"))
    yield "choose"
    page.touch("#choose [data-view-to]")
    page.touch("#to-quote")
    until(lambda: page.all("#quote-lines tr"))
    yield "quote"
    sample(bench, "trailed-wide-angle")
    until(lambda: page.all(".moving svg"))
    yield "machine"
    sample(bench, "two-tractors")
    yield "two tractors"
    page.touch("header [data-view-to=identify]")
    yield "identify"
    page.touch("#identify [data-view-to]")
    sample(bench, "unknown-series")
    yield "unknown series"
    page.type("shaft/closed@length", "7x")
    until(lambda: page.all("label.wrong"))
    yield "fault"


def small_or_touching(page, least):
    faults, targets = [], page.js(TARGETS)
    for name, left, top, width, height, _ in targets:
        if width < least - 0.5 or height < least - 0.5:
            faults.append(f"{name}: {width:.0f} x {height:.0f}")
    for n, (name, left, top, width, height, fixed) in enumerate(targets):
        for other, x, y, w, h, also_fixed in targets[n + 1:]:
            if fixed == also_fixed and left < x + w - 1 and x < left + width - 1 and top < y + h - 1 and y < top + height - 1:
                faults.append(f"{name} lies over {other}")
    return faults


def room(bench, width, height, glove):
    page, faults = bench.page, []
    size(page.driver, width, height, touch=True)
    try:
        page.open()
        if (page.one("#glove").get_attribute("aria-pressed") == "true") != glove:
            page.touch("#glove")
        for name in states(bench):
            page.js("dispatchEvent(new Event('resize'))")
            wide = page.js("return document.documentElement.scrollWidth - innerWidth")
            faults += [f"{name}: {wide} px wider than the screen"] if wide > 0 else []
            faults += [f"{name}: {each}" for each in small_or_touching(page, 64 if glove else 48)]
            page.js("scrollTo(0, document.body.scrollHeight / 2)")
            top, bottom = page.js("const r = document.getElementById('band').getBoundingClientRect(); return [r.top, r.bottom]")
            if top < -1 or bottom > height * 0.6:
                faults.append(f"{name}: the band is at {top:.0f} to {bottom:.0f}, out of sight or where a keypad comes up")
            if os.environ.get("PICTURES"):
                page.js("scrollTo(0, 0)")
                page.driver.save_screenshot(os.path.join(os.environ["PICTURES"], f"{name.replace(' ', '-').replace(',', '')}-{width}{'-glove' if glove else ''}.png"))
    finally:
        page.js("localStorage.setItem('glove', '')")
        size(page.driver, 1024, 768)
    assert not faults, "\n    ".join(sorted(set(faults))[:30])


def axe(bench, width, height):
    page, faults = bench.page, []
    script = open(AXE).read()
    size(page.driver, width, height)
    for name in states(bench):
        page.js(script)
        found = page.driver.execute_async_script("""
            axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag2aaa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'], rules: {'color-contrast-enhanced': {enabled: true}}}).then(arguments[arguments.length - 1])""")
        faults += [f"{name}: {one['id']}: {node['html'][:150]}" for one in found["violations"] for node in one["nodes"][:3]]
    size(page.driver, 1024, 768)
    assert not faults, "\n    ".join(faults[:30])


def nothing_from_elsewhere(bench):
    page = bench.page
    page.complaints()  # those of tests before
    for _ in states(bench):
        pass
    hosts = set(page.js("return performance.getEntriesByType('resource').map((one) => new URL(one.name).host)"))
    assert hosts == {bench.address.split("/")[2]}, hosts
    complaints = page.complaints()
    assert not complaints, complaints[:5]


def tests(bench, short):
    sizes = [SIZES[0], SIZES[2]] if short else SIZES
    found = [(f"room to touch at {w} x {h}", lambda w=w, h=h: room(bench, w, h, False)) for w, h in sizes]
    found.append(("no other host, no word missing, no complaint of the browser", lambda: nothing_from_elsewhere(bench)))
    if not short:
        found += [(f"room for a glove at {w} x {h}", lambda w=w, h=h: room(bench, w, h, True)) for w, h in SIZES]
    if os.path.exists(AXE):
        found += [(f"axe-core at {w} x {h}", lambda w=w, h=h: axe(bench, w, h)) for w, h in (sizes[:1] if short else SIZES)]
    return found

"""Every sample, typed in box by box: the page's answer is the answer of cut for the same job."""
import json
import pathlib
import re
import xml.etree.ElementTree as ElementTree

from bench_page import attributes_of, until

SHORT = {"plain-cut", "wide-angle-outer-cross", "refused-overlap", "inches"}


def expected(answer):
    cut = answer["cut_mm"]
    if answer["verdict"] == "refused":
        return {}
    parts = zip("ABCD", ("inner_guard", "outer_guard", "inner_tube", "outer_tube"))
    return {letter: cut[part] for letter, part in parts if cut[part] is not None}


def placeless(answer):
    """Without where in its file a figure stands."""
    return re.sub(r" \(line \d+, column \d+ of [^)]*\)", "", answer)


def with_answers(xml, asked, job):
    """The sample, with what the page asked beside it."""
    root, answers = ElementTree.fromstring(xml), dict(attributes_of(job))
    for path in asked:
        element, _, attribute = path.rpartition("@")
        one = root.find(element)
        (ElementTree.SubElement(root, element) if one is None else one).set(attribute, answers[path])
    return ElementTree.tostring(root, encoding="unicode")


def close(one, other):
    return one.keys() == other.keys() and all(abs(one[key] - other[key]) < 0.001 for key in one)


def samples(bench, short):
    for path in sorted(pathlib.Path(bench.source, "samples").glob("*.xml")):
        if "<measures>" in path.read_text() or "<measures " in path.read_text():
            continue  # what a series was told by comes from its own view, which is proven there
        if not short or path.stem in SHORT:
            yield path


def typed(bench, path):
    page, xml = bench.page, path.read_text()
    page.open()
    answer = json.loads(bench.cut(path))
    page.type_job(xml)
    asked = page.open_questions()
    assert not asked or not page.lengths(), "cuts stand while something is not answered"
    page.answer_open()
    until(lambda: page.verdict() == answer["verdict"] and close(page.lengths(), expected(answer)))
    assert set(attributes_of(page.job())) >= {pair for pair in attributes_of(xml) if pair[1]}, "something that the sample states is not in the page's job"
    mine = bench.file("job", page.job())  # as the server calls it where it says a line
    assert bench.cut(mine) == bench.answered(page), "the server's JSON is not the command's, byte for byte"
    stated = bench.file("stated.xml", with_answers(xml, asked, page.job()))
    assert json.loads(placeless(bench.cut(mine))) == json.loads(placeless(bench.cut(stated))), "the typed job is not answered as the sample is"


def tests(bench, short):
    return [(f"{path.stem} typed in box by box", lambda path=path: typed(bench, path)) for path in samples(bench, short)]

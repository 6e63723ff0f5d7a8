// The sentences of an identification, each kind of verdict in both units.
#include <algorithm>

#include "identify/figure_words.hpp"
#include "identify/look_alike_words.hpp"
#include "identify/verdict_words.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::identify_words;

namespace {

const Wording mm(Units::mm), in(Units::in);

ComparedFigure off(IdentifyingFigure figure, double measured, double series, double sigma)
{
    return {figure, Length::from_mm(measured), Length::from_mm(series), Length::from_mm(measured) - Length::from_mm(series), sigma};
}

IdentifyingFigure span(IdentifiedPart part) { return {part, IdentifyingKind::span}; }

IdentifiedShaft of(IdentifyVerdict verdict)
{
    IdentifiedShaft shaft;
    shaft.series_known = 12;
    shaft.found.verdict = verdict;
    shaft.found.stop = true;
    shaft.found.fits.series = "Alder 2";
    shaft.found.series = {{"Alder 2", 97, 98}};
    shaft.found.one_series_percent = 97;
    return shaft;
}

}  // namespace

TEST_CASE("a shaft of one series: the nearest other, what is farthest off by its own spread, and no next step where it stops")
{
    IdentifiedShaft shaft = of(IdentifyVerdict::one);
    IdentifyingFigure spacing{IdentifiedPart::tractor, IdentifyingKind::spacing};
    shaft.found.fits.figures = {off(span(IdentifiedPart::implement), 53.2, 54, -1.2), off(spacing, 64.6, 64, 1.9)};
    CHECK(verdict(shaft, mm) == "measures like Alder 2");
    CHECK(reasons(shaft, mm) == std::vector<std::string>{"Nearest other: none.", "Farthest off: the spacing of the two crosses at the tractor end, 0.6 mm more."});
    CHECK(next_steps(shaft, mm).empty());
    CHECK(reasons(shaft, in)[1] == "Farthest off: the spacing of the two crosses at the tractor end, 0.024 in (0.6 mm) more.");
    shaft.found.series.push_back({"Larch 6", 2.4, 3});
    CHECK(reasons(shaft, mm)[0] == "Nearest other: Larch 6, 2 %.");
    shaft.found.rests_on_writing = true;
    shaft.found.written_series = "Larch 6";
    CHECK(reasons(shaft, mm).size() == 4);
    CHECK(reasons(shaft, mm)[2] == "It rests on the writing on the guard, and a guard may come from another shaft.");
    CHECK(reasons(shaft, mm)[3] == "The guard says Larch 6: it may come from another shaft.");
}

TEST_CASE("a verdict with more to gain says what makes it surer, and an undecided one what to measure next")
{
    IdentifiedShaft shaft = of(IdentifyVerdict::one);
    shaft.found.stop = false;
    shaft.measures.shape = Shape::star;
    shaft.found.next = {{{IdentifiedPart::tubes, IdentifyingKind::width, {}, CapPair::first, Tube::inner}, false, MeasuringEffort::halves_apart, 0.4, 97, 80}};
    CHECK(next_steps(shaft, mm) == std::vector<std::string>{"To be surer measure the width of the inner tube (2 min, halves apart): calliper on the tube, between opposite points of the star; halves apart for the inner tube."});
    shaft.found.verdict = IdentifyVerdict::several;
    shaft.found.next[0].again = true;
    CHECK(next_steps(shaft, mm)[0].starts_with("Measure next the width of the inner tube again (2 min, halves apart): "));
    shaft.found.next = {{{IdentifiedPart::implement, IdentifyingKind::joint}, false, MeasuringEffort::look, 0.4, 97, 80}};
    CHECK(next_steps(shaft, mm)[0].starts_with("Look next at the joint at the implement end (half a minute, a look): "));
}

TEST_CASE("a mixed shaft: its odd part against the others' series, and what that is like")
{
    IdentifiedShaft shaft = of(IdentifyVerdict::mixed);
    IdentifyingFigure cap{IdentifiedPart::implement, IdentifyingKind::cap};
    shaft.found.mixed = MixedShaft{IdentifiedPart::implement, "Larch 6", {off(cap, 22, 27, -40)}, {{"Alder 2", 50}, {"Birch 1", 45}}, 5};
    CHECK(verdict(shaft, mm) == "mixed, of more than one make");
    CHECK(reasons(shaft, mm) == std::vector<std::string>{"Everything but the implement end's joint is like Larch 6: the cap of the cross at the implement end is 22 mm for 27 mm, 5 mm less.",
                                                         "It is like Alder 2 or Birch 1, which share that joint within tolerance."});
    shaft.found.mixed->odd_like = {{"Alder 2", 40}};
    shaft.found.mixed->odd_none_percent = 60;
    CHECK(reasons(shaft, mm)[1] == "It is like no series here for certain, perhaps Alder 2.");
    shaft.found.mixed->odd_like.clear();
    CHECK(reasons(shaft, mm)[1] == "It is like no series here.");
    shaft.found.mixed->others_series.reset();
    CHECK(reasons(shaft, mm)[0] == "The implement end's joint and the rest are not of one make, and the rest is of no series here.");
}

TEST_CASE("an undecided shaft: which it can be, or that it is none as a whole, or that nothing will tell")
{
    IdentifiedShaft shaft = of(IdentifyVerdict::several);
    shaft.found.stop = false;
    shaft.found.series = {{"Larch 6", 60, 61}, {"Rowan 5", 30, 31}, {"Elm 4", 4, 5}};
    shaft.found.one_series_percent = 94;
    shaft.found.mixed_percent = 4;
    shaft.found.none_percent = 2;
    CHECK(verdict(shaft, mm) == "Larch 6, perhaps Rowan 5");
    shaft.found.series = {{"Larch 6", 20, 21}, {"Rowan 5", 20, 21}, {"Elm 4", 19, 20}, {"Birch 1", 18, 19}};
    CHECK(verdict(shaft, mm) == "Larch 6, Rowan 5, Elm 4 or another");
    shaft.found.series = {{"Larch 6", 14, 21}, {"Rowan 5", 14, 21}, {"Elm 4", 14, 20}, {"Birch 1", 14, 19}};
    CHECK(verdict(shaft, mm) == "not known yet, any of 12 series");
    shaft.found.series = {{"Larch 6", 45, 61}, {"Rowan 5", 44, 31}};
    CHECK(verdict(shaft, mm) == "Larch 6 or Rowan 5");
    shaft.found.series = {{"Larch 6", 7, 61}, {"Rowan 5", 7, 31}};
    CHECK(verdict(shaft, mm) == "not known yet, any of 12 series");
    shaft.found.series = {{"Larch 6", 47, 61}, {"Elm 4", 46, 50}};
    shaft.found.stop = true;
    shaft.found.not_told_apart = {{{"Larch 6", "Elm 4"}, WhyTogether::same_figures, {}}};
    CHECK(next_steps(shaft, mm) == std::vector<std::string>{"Nothing more that can be measured will tell.", "Larch 6 and Elm 4: their figures are the same within tolerance."});
    shaft.found.not_told_apart[0].why = WhyTogether::measured_between;
    shaft.found.not_told_apart[0].by = {span(IdentifiedPart::tractor)};
    CHECK(next_steps(shaft, mm)[1] == "Larch 6 and Elm 4: the span of the cross at the tractor end would tell, and what was measured lies between them or fits both.");
    shaft.found.series = {{"Larch 6", 9, 61}, {"Elm 4", 8, 50}};
    shaft.found.one_series_percent = 30;
    shaft.found.mixed_percent = 40;
    shaft.found.none_percent = 30;
    CHECK(verdict(shaft, mm) == "no series here as a whole");
    CHECK(reasons(shaft, mm)[0] == "Mixed, or of no series here: these figures cannot tell.");
    // Some series is likely yet.
    shaft.found.series = {{"Alder 2", 47, 60}};
    shaft.found.one_series_percent = 48;
    shaft.found.mixed_percent = 47;
    shaft.found.none_percent = 5;
    CHECK(verdict(shaft, mm) == "perhaps Alder 2");
    CHECK(reasons(shaft, mm)[0] == "It is likelier mixed, or of no series here, than of one series whole.");
}

TEST_CASE("a guard that names what the verdict does not is said, whatever the verdict, and so is one that names no series here")
{
    const std::string known = "The guard says Alder 2: it may come from another shaft.", unknown = "The guard says Yew 9, which is no series here: it may come from another shaft.";
    const auto said = [](const IdentifiedShaft& shaft, const std::string& what) {
        const std::vector<std::string> all = reasons(shaft, mm);
        return std::find(all.begin(), all.end(), what) != all.end();
    };
    IdentifiedShaft shaft = of(IdentifyVerdict::none);
    shaft.measures.writing = "alder 2";
    shaft.found.written_series = "Alder 2";
    CHECK(said(shaft, known));
    shaft.found.verdict = IdentifyVerdict::one;
    CHECK_FALSE(said(shaft, known));
    shaft.found.verdict = IdentifyVerdict::mixed;
    shaft.found.mixed = MixedShaft{IdentifiedPart::implement, "Alder 2", {}, {}, 0};
    CHECK_FALSE(said(shaft, known));
    shaft.found.mixed->others_series = "Larch 6";
    CHECK(said(shaft, known));
    shaft.found.mixed->odd = IdentifiedPart::tubes;
    shaft.found.mixed->odd_like = {{"Alder 2", 99}};
    CHECK_FALSE(said(shaft, known));
    shaft.measures.writing = "Yew 9";
    shaft.found.written_series.reset();
    for (const IdentifyVerdict verdict : {IdentifyVerdict::one, IdentifyVerdict::mixed, IdentifyVerdict::several}) {
        shaft.found.verdict = verdict;
        CHECK(said(shaft, unknown));
    }
    shaft.found.verdict = IdentifyVerdict::none;
    CHECK_FALSE(said(shaft, unknown));
}

TEST_CASE("of a mixed shaft whose other parts may be of several series all are named")
{
    IdentifiedShaft shaft = of(IdentifyVerdict::mixed);
    shaft.found.mixed = MixedShaft{IdentifiedPart::tubes, "Larch 6", {off({IdentifiedPart::tubes, IdentifyingKind::wall}, 3, 4, -9)}, {}, 100};
    shaft.found.mixed->others_like = {{"Larch 6", 55}, {"Rowan 5", 44}};
    CHECK(reasons(shaft, mm)[0] == "Everything but the tubes is like Larch 6 or Rowan 5.");
    CHECK(reasons(shaft, mm)[1] == "Against Larch 6 the wall of a tube is 3 mm for 4 mm, 1 mm less.");
    shaft.found.mixed->others_like = {{"Larch 6", 95}};
    CHECK(reasons(shaft, mm)[0] == "Everything but the tubes is like Larch 6: the wall of a tube is 3 mm for 4 mm, 1 mm less.");
}

TEST_CASE("spans that are all as much too long ask whether spacers were left in, and none that were deducted do")
{
    IdentifiedShaft shaft = of(IdentifyVerdict::several);
    shaft.found.fits.figures = {off(span(IdentifiedPart::tractor), 66, 54, 80), off(span(IdentifiedPart::implement), 65.9, 54, 79)};
    CHECK(reasons(shaft, mm) == std::vector<std::string>{"Every span is 11.9 mm more than Alder 2's: if they were read over spacer pieces, state both pieces together."});
    IdentifiedShaft apart = shaft;
    apart.found.fits.figures[1] = off(span(IdentifiedPart::implement), 70, 54, 90);
    CHECK(reasons(apart, mm).empty());
    apart.found.fits.figures.pop_back();
    CHECK(reasons(apart, mm).empty());
    // Of another series, whose caps are these, its spans are not asked for spacers.
    IdentifiedShaft capped = shaft;
    capped.found.fits.figures.push_back(off({IdentifiedPart::tractor, IdentifyingKind::cap}, 22.1, 22, 1.8));
    CHECK(reasons(capped, mm).size() == 1);
    capped.found.fits.figures.back() = off({IdentifiedPart::tractor, IdentifyingKind::cap}, 30, 22, 140);
    CHECK(reasons(capped, mm).empty());
    MeasuredCross cross;
    cross.pairs[CapPair::first].span = {{Length::millimetres(66), {}, Length::millimetres(12)}};
    shaft.measures.ends[End::tractor].crosses = {cross};
    CHECK(reasons(shaft, mm).empty());
}

TEST_CASE("a shaft that is as its series says so")
{
    IdentifiedShaft shaft = of(IdentifyVerdict::one);
    shaft.found.fits.figures = {off(span(IdentifiedPart::tractor), 54, 54, 0)};
    CHECK(reasons(shaft, mm)[1] == "No figure is off.");
}

// Sure is 95 % and no more is said; what is less is never rounded up to it.
TEST_CASE("probabilities are whole per cents, rounded down, and what is sure is no finer")
{
    CHECK(percent(99.99, mm) == "> 95 %");
    CHECK(percent(95, mm) == "> 95 %");
    CHECK(percent(94.99, mm) == "94 %");
    CHECK(percent(1, mm) == "1 %");
    CHECK(percent(0.99, mm) == "< 1 %");
    CHECK(percent(0, mm) == "< 1 %");
}

TEST_CASE("a calliper's lengths are to a hundredth of a millimetre, and in inches to a thousandth with the millimetres beside")
{
    CHECK(calliper(Length::from_mm(21.95), mm) == "21.95 mm");
    CHECK(calliper(Length::from_mm(54), in) == "2.126 in (54 mm)");
    CHECK(bare_figure(Length::from_mm(54), in) == "2.126");
    CHECK(bare_off(Length::from_mm(-0.6), mm) == "−0.6");
    CHECK(bare_off(Length::from_mm(0.6), in) == "+0.024");
    CHECK(bare_off(Length(), mm) == "0");
    CHECK(off_by(Length::from_mm(-5), mm) == "5 mm less");
}

TEST_CASE("what no measurement tells apart is listed by its first series, and apart from it what only a wide-angle joint shows")
{
    Catalogue catalogue;
    for (const char* name : {"A", "B", "C", "D"}) catalogue.series.emplace_back().name = name;
    LookAlikes found;
    CHECK(look_alike_lines(found, catalogue, mm).empty());
    found.never = {{{0, 1}, 1}, {{0, 2}, 1}, {{1, 2}, 1}};
    found.only_wide_angle = {{{0, 3}, 9}};
    CHECK(look_alike_lines(found, catalogue, mm) == "No measurement tells apart:\n  A: B and C\n  B: C\nTold apart at a wide-angle joint only:\n  A: D\n");
}

TEST_CASE("of many series that no measurement tells apart some are named, and how many more there are")
{
    Catalogue catalogue;
    LookAlikes found;
    for (std::uint32_t i = 0; i < 60; ++i) {
        catalogue.series.emplace_back().name = "S" + std::to_string(i);
        for (std::uint32_t j = i + 1; j < 60; ++j) found.never.push_back({{i, j}, 0});
    }
    const std::string lines = look_alike_lines(found, catalogue, mm);
    CHECK(lines.find("\n  S0: S1, S2, S3, S4, S5, S6, S7, S8 and 51 more\n") != std::string::npos);
    CHECK(lines.ends_with("  and as much of 39 more series\n"));
    CHECK(std::count(lines.begin(), lines.end(), '\n') == 22);
}

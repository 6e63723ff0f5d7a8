// What an answer says: verdict, fits, mixed parts, what is next and why, warnings.
#include "shaftcut/trade/identify/identify.hpp"

#include <algorithm>

#include "support/catch.hpp"
#include "support/identify/invented.hpp"
#include "support/identify/plain_shafts.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("a shaft that measures like one series is said to be that one, and what else it may be")
{
    const Catalogue catalogue = four();
    for (const Series& series : catalogue.series) {
        const Identification answer = identify(catalogue, measured(series));
        CHECK(answer.verdict == IdentifyVerdict::one);
        CHECK(answer.series.front().series == series.name);
        CHECK(answer.fits.series == series.name);
        REQUIRE(answer.fits.figures.size() == 6);
        for (const ComparedFigure& figure : answer.fits.figures) CHECK(figure.off == Length());
        CHECK(answer.stop);
        CHECK(answer.not_told_apart.empty());
        check_sound(answer);
    }
}

TEST_CASE("a shaft with one end of another series is mixed: which part, what it is not, what it is like")
{
    const Catalogue catalogue = four();
    Measures measures = measured(catalogue.series[2]);
    measures.ends[End::implement] = measured(catalogue.series[0]).ends[End::implement];
    const Identification answer = identify(catalogue, measures);
    CHECK(answer.verdict == IdentifyVerdict::mixed);
    REQUIRE(answer.mixed);
    CHECK(answer.mixed->odd == IdentifiedPart::implement);
    CHECK(answer.mixed->others_series == "Larch 6");
    CHECK(answer.mixed->odd_like.front().series == "Alder 2");
    REQUIRE(answer.mixed->odd_figures.size() == 2);
    CHECK(answer.mixed->odd_figures[0].off == Length::from_mm(-5));
    CHECK(answer.parts[IdentifiedPart::tubes].series.front().series == "Larch 6");
    REQUIRE(answer.mixed->others_figures.size() == 4);
    for (const ComparedFigure& figure : answer.mixed->others_figures) {
        CHECK(figure.figure.part != IdentifiedPart::implement);
        CHECK(figure.off == Length());
    }
    REQUIRE_FALSE(answer.mixed->others_like.empty());
    CHECK(answer.mixed->others_like.front().series == "Larch 6");
    CHECK(answer.mixed->others_like.front().percent > 95);
}

TEST_CASE("of a mixed shaft the other two parts may be of several series, each with its share, and a guard that flips them is said")
{
    Catalogue catalogue = four();
    catalogue.series.push_back(catalogue.series[2]);
    catalogue.series.back().name = "Rowan 5";
    Measures measures = measured(catalogue.series[2]);
    measures.ends[End::implement] = measured(catalogue.series[0]).ends[End::implement];
    const Identification alike = identify(catalogue, measures);
    REQUIRE(alike.verdict == IdentifyVerdict::mixed);
    REQUIRE(alike.mixed->others_like.size() == 2);
    CHECK(alike.mixed->others_like[0].percent == Approx(alike.mixed->others_like[1].percent));
    CHECK(alike.mixed->others_like[0].percent + alike.mixed->others_like[1].percent + alike.mixed->others_none_percent == Approx(100).margin(0.5));
    CHECK_FALSE(alike.rests_on_writing);
    measures.writing = "Rowan 5";
    const Identification written = identify(catalogue, measures);
    CHECK(written.mixed->others_series == "Rowan 5");
    CHECK(written.rests_on_writing);
    measures.writing = "Larch 6";
    CHECK_FALSE(identify(catalogue, measures).rests_on_writing);
}

TEST_CASE("a closed length that no shaft has tells of no series, listed or not")
{
    Catalogue catalogue = four();
    for (const std::size_t k : {0U, 2U}) catalogue.series[k].closed_lengths = {Length::millimetres(660), Length::millimetres(860)};
    Measures measures;
    const Identification before = identify(catalogue, measures);
    for (const int closed : {12'000, 90}) {
        measures.closed = MeasuredClosed{{Length::millimetres(closed), {}, {}, {}}, {}};
        const Identification answer = identify(catalogue, measures);
        for (const Series& series : catalogue.series) CHECK(percent_of(answer, series.name) == Approx(percent_of(before, series.name)));
    }
    // One that is listed does.
    measures.closed = MeasuredClosed{{Length::millimetres(860), {}, {}, {}}, {}};
    CHECK(percent_of(identify(catalogue, measures), "Alder 2") > 2 * percent_of(before, "Alder 2") - 1);
}

TEST_CASE("a shaft of sizes that no series has is of none")
{
    Measures measures = measured(plain_series("", 33.3, 91.7, 72.5, 84.4));
    measures.shape = Shape::square;
    CHECK(identify(four(), measures).verdict == IdentifyVerdict::none);
}

TEST_CASE("a verdict that only the writing makes says so")
{
    Catalogue catalogue = four();
    catalogue.series.push_back(plain_series("Birch 9", 23.8, 61.3, 51, 60.3));
    Measures measures = measured(catalogue.series[1]);
    const Identification before = identify(catalogue, measures);
    CHECK(before.verdict == IdentifyVerdict::several);
    CHECK_FALSE(before.rests_on_writing);
    measures.writing = "Birch 1";
    const Identification after = identify(catalogue, measures);
    CHECK(after.verdict == IdentifyVerdict::one);
    CHECK(after.rests_on_writing);
    measures = measured(catalogue.series[3]);
    measures.writing = "Elm 4";
    CHECK_FALSE(identify(catalogue, measures).rests_on_writing);
}

TEST_CASE("what is worth measuring stands in front, the most bits a minute first, and nothing worth it means stop")
{
    support::Dice dice(9);
    const Catalogue catalogue = invented_catalogue(dice, 60, "Invented");
    for (int i = 0; i < 60; ++i) {
        const Identification answer = identify(catalogue, drawn_measures(dice, drawn_shaft(dice, catalogue, catalogue, {}), {}));
        const auto worth = [](const NextMeasurement& one) { return one.bits >= 0.05; };
        CHECK(std::is_partitioned(answer.next.begin(), answer.next.end(), worth));
        CHECK(answer.stop == std::none_of(answer.next.begin(), answer.next.end(), worth));
        if (answer.stop) continue;
        const NextMeasurement& first = answer.next.front();
        for (const NextMeasurement& one : answer.next)
            if (worth(one)) CHECK(one.bits / minutes_of(one.effort) <= first.bits / minutes_of(first.effort) + 0.02 + 1e-12);
    }
}

TEST_CASE("where nobody knows which tube was measured, both its own figures and the other tube's are asked for")
{
    Measures measures;
    measures.tubes.push_back({std::nullopt, read(51), {}});
    const Identification answer = identify(four(), measures);
    const auto asked = [&](IdentifyingKind kind, bool other) {
        const IdentifyingFigure figure{IdentifiedPart::tubes, kind, {}, CapPair::first, {}, other};
        return std::any_of(answer.next.begin(), answer.next.end(), [&](const NextMeasurement& one) { return one.figure == figure && !one.again; });
    };
    CHECK(asked(IdentifyingKind::role, false));
    CHECK(asked(IdentifyingKind::wall, false));
    CHECK(asked(IdentifyingKind::width, true));
    CHECK_FALSE(asked(IdentifyingKind::width, false));
}

TEST_CASE("looks at a cross count where the catalogue states them, and are asked for only then")
{
    const auto asks = [](const Identification& answer, IdentifyingKind kind) {
        return std::any_of(answer.next.begin(), answer.next.end(), [&](const NextMeasurement& one) { return one.figure.kind == kind; });
    };
    Catalogue catalogue = four();
    CHECK_FALSE(asks(identify(catalogue, {}), IdentifyingKind::circlip));
    catalogue.series.push_back(catalogue.series[1]);
    catalogue.series.back().name = "Rowan 5";
    catalogue.series[1].crosses[0].circlip = Circlip::inside;
    catalogue.series.back().crosses[0].circlip = Circlip::outside;
    Measures measures = measured(catalogue.series[1]);
    CHECK(asks(identify(catalogue, measures), IdentifyingKind::circlip));
    CHECK_FALSE(asks(identify(catalogue, measures), IdentifyingKind::nipple));
    for (const End end : both_ends) measures.ends[end].crosses[0].circlip = Circlip::outside;
    const Identification answer = identify(catalogue, measures);
    // 0.97 : 0.03 at each of two ends.
    CHECK(percent_of(answer, "Rowan 5") / percent_of(answer, "Birch 1") == Approx(97.0 * 97 / 9).epsilon(1e-9));
}

TEST_CASE("a figure outside the trade's sizes is warned of, with its place, and enters as it is")
{
    Measures measures = measured(four().series[0]);
    CHECK(identify(four(), measures).outside_trade.empty());
    SizeReadings& cap = measures.ends[End::implement].crosses[0].pairs[CapPair::first].cap;
    cap.front().length = Length::from_mm(2.2);
    cap.front().place = {"m.xml", 7, 12};
    measures.closed = MeasuredClosed{{Length::millimetres(86), {}, {}, {}}, {}};
    const Identification answer = identify(four(), measures);
    REQUIRE(answer.outside_trade.size() == 2);
    CHECK(answer.outside_trade[0].figure.kind == IdentifyingKind::cap);
    CHECK(answer.outside_trade[0].place == Place{"m.xml", 7, 12});
    CHECK(answer.outside_trade[0].least == Length::millimetres(10));
    CHECK(answer.outside_trade[1].figure.kind == IdentifyingKind::closed);
    CHECK(answer.series.front().series == "Alder 2");
}

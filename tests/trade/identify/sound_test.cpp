// What an answer must hold to, whatever was measured.
#include <algorithm>
#include <fmt/format.h>
#include <stdexcept>

#include "measures_reader.hpp"
#include "shaftcut/trade/identify/identify.hpp"
#include "support/catch.hpp"
#include "support/identify/invented.hpp"
#include "support/identify/plain_shafts.hpp"
#include "support/identify/reference_files.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("nothing measured at all is answered: what is likely before, and what to measure first")
{
    const Identification answer = identify(four(), {});
    CHECK(answer.verdict == IdentifyVerdict::several);
    CHECK(answer.one_series_percent == Approx(86));
    CHECK(answer.mixed_percent == Approx(8));
    CHECK(answer.none_percent == Approx(6));
    REQUIRE(answer.series.size() == 4);
    for (const ListedSeries& one : answer.series) CHECK(one.percent == Approx(21.5));
    CHECK_FALSE(answer.stop);
    CHECK(answer.fits.figures.empty());
    check_sound(answer);
}

TEST_CASE("a catalogue without a series is refused") { CHECK_THROWS_AS(identify({}, {}), std::invalid_argument); }

TEST_CASE("the catalogue's order changes nothing")
{
    support::Dice dice(7);
    const Catalogue catalogue = invented_catalogue(dice, 40, "Invented");
    Catalogue turned = catalogue;
    std::reverse(turned.series.begin(), turned.series.end());
    for (int i = 0; i < 30; ++i) {
        const Measures measures = drawn_measures(dice, drawn_shaft(dice, catalogue, catalogue, {}), {});
        const Identification one = identify(catalogue, measures), other = identify(turned, measures);
        CHECK(one.verdict == other.verdict);
        CHECK(one.series.size() == other.series.size());
        for (const ListedSeries& listed : one.series) CHECK(percent_of(other, listed.series) == Approx(listed.percent).margin(1e-9));
        REQUIRE(one.next.size() == other.next.size());
        for (std::size_t k = 0; k < one.next.size(); ++k) CHECK(other.next[k].bits == Approx(one.next[k].bits).margin(1e-6));
    }
}

// A caliper in inches reads to a thousandth.
TEST_CASE("read in thousandths of an inch a shaft is answered as in millimetres")
{
    const Catalogue catalogue = four();
    const auto figure = [](double mm, Units units) { return fmt::format("{:.3f}", units == Units::in ? mm / 25.4 : mm); };
    const auto file = [&](Units units) {
        const Series& series = catalogue.series[2];
        std::string text = fmt::format("<measures shaft=\"x\" units=\"{}\">", to_word(units));
        for (const char* side : {"tractor", "implement"})
            text += fmt::format("<end side=\"{}\" joint=\"standard\"><cross><cap diameter=\"{}\"/><span length=\"{}\"/></cross></end>", side, figure(series.crosses[0].cap.mm(), units),
                                figure(series.crosses[0].span.mm(), units));
        text += "<tubes shape=\"lemon\">";
        for (const Tube tube : both_tubes) text += fmt::format("<tube tube=\"{}\"><width length=\"{}\"/></tube>", to_word(tube), figure(series.halves[tube].width->mm(), units));
        return text + "</tubes></measures>";
    };
    const auto answered = [&](Units units) { return identify(catalogue, *read_measures({"x.xml", file(units)}).value); };
    const Identification inches = answered(Units::in), millimetres = answered(Units::mm);
    CHECK(inches.verdict == millimetres.verdict);
    CHECK(inches.series.front().series == "Larch 6");
    CHECK(inches.series.front().percent == Approx(millimetres.series.front().percent).margin(0.05));
    REQUIRE(inches.fits.figures.size() == 6);
    for (const ComparedFigure& one : inches.fits.figures) CHECK(std::abs(one.off->um()) <= 13);  // half a thousandth of an inch
    CHECK(millimetres.fits.figures.front().off == Length());
    const auto is_off = [](const ComparedFigure& one) { return one.off != Length(); };
    CHECK(std::any_of(inches.fits.figures.begin(), inches.fits.figures.end(), is_off));  // 70 mm are no whole thousandths
}

TEST_CASE("a slip of a centimetre in any one figure leaves the true series in the list")
{
    support::Dice dice(8);
    const Catalogue catalogue = invented_catalogue(dice, 100, "Invented");
    int slips = 0;
    for (int i = 0; i < 60; ++i) {
        World careful;
        careful.slips = careful.mixed = careful.outsiders = careful.wrong_place = careful.wrong_writing = 0;
        const TrueShaft shaft = drawn_shaft(dice, catalogue, catalogue, careful);
        Measures measures = drawn_measures(dice, shaft, careful);
        for (SizeReadings* one : all_readings(measures))
            for (const int off : {10, -10}) {
                const Length right = one->front().length, slipped = right + Length::millimetres(off);
                if (slipped <= Length()) continue;
                one->front().length = slipped;
                const Identification answer = identify(catalogue, measures);
                INFO(shaft.series << " " << right.mm() << " " << off);
                CHECK(lists(answer, shaft.series));
                one->front().length = right;
                ++slips;
            }
    }
    CHECK(slips > 400);
}

TEST_CASE("of two series that are the same neither is ever sworn to, but by its writing")
{
    Catalogue catalogue = four();
    catalogue.series.push_back(catalogue.series[1]);
    catalogue.series.back().name = "Rowan 5";
    Measures measures = measured(catalogue.series[1]);
    const Identification answer = identify(catalogue, measures);
    CHECK(answer.verdict == IdentifyVerdict::several);
    CHECK(percent_of(answer, "Birch 1") == percent_of(answer, "Rowan 5"));
    CHECK(answer.stop == false);  // the writing is left
    measures.writing = "Elsewhere";
    const Identification unwritten = identify(catalogue, measures);
    CHECK(unwritten.stop);
    REQUIRE(unwritten.not_told_apart.size() == 1);
    CHECK(unwritten.not_told_apart[0].series == std::array<std::string, 2>{"Birch 1", "Rowan 5"});
    CHECK(unwritten.not_told_apart[0].why == WhyTogether::same_figures);
    measures.writing = "rowan  5";
    const Identification written = identify(catalogue, measures);
    CHECK(percent_of(written, "Rowan 5") > 90);
    CHECK(written.written_series == "Rowan 5");
    CHECK(written.rests_on_writing == (written.verdict == IdentifyVerdict::one));
}

TEST_CASE("with two parts unmeasured no series is sworn to")
{
    const Catalogue catalogue = four();
    for (const Series& series : catalogue.series) {
        Measures measures = measured(series);
        measures.ends[End::implement] = {};
        measures.tubes.clear();
        measures.shape.reset();
        CHECK(identify(catalogue, measures).verdict == IdentifyVerdict::several);
    }
}

TEST_CASE("hostile figures are answered with probabilities that add up")
{
    const Catalogue catalogue = read_reference_catalogue(std::string(SHAFTCUT_SOURCE_DIR) + "/tests/trade/identify/reference/six/series.xml");
    for (const double size : {1e9, 1e6, 200.0, 0.001})
        for (const double plus_minus : {0.001, 0.5, 1e6}) {
            Measures measures;
            const SizeReadings thrice(3, {Length::from_mm(size), Length::from_mm(plus_minus), {}, {}});
            for (const End end : both_ends) {
                measures.ends[end].spacing = thrice;
                for (int i = 0; i < 2; ++i) {
                    MeasuredCross& cross = measures.ends[end].crosses.emplace_back();
                    for (const CapPair pair : {CapPair::first, CapPair::second}) cross.pairs[pair] = {thrice, CapRead::cap, thrice};
                }
            }
            for (int i = 0; i < 2; ++i) measures.tubes.push_back({std::nullopt, thrice, thrice});
            measures.closed = MeasuredClosed{thrice[0], Reference::outer_cross};
            check_sound(identify(catalogue, measures));
            // Readings that do not agree with each other.
            for (SizeReadings* one : all_readings(measures)) one->back().length = Length::from_mm(27);
            check_sound(identify(catalogue, measures));
        }
}

TEST_CASE("a single series, and one that states nothing but its cross, are answered")
{
    Catalogue catalogue;
    catalogue.series.push_back(plain_series("Alder 2", 22, 54, 43, 51));
    check_sound(identify(catalogue, {}));
    // Not sworn to: another make may well have its cross, or its tubes, and nothing is known of that make.
    const Identification alone = identify(catalogue, measured(catalogue.series[0]));
    CHECK(alone.series.front().percent > 90);
    check_sound(alone);
    catalogue.series.emplace_back().name = "Rowan 5";
    check_sound(identify(catalogue, measured(catalogue.series[0])));
}


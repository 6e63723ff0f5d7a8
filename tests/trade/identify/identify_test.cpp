// What an answer must hold to, whatever was measured.
#include "shaftcut/trade/identify/identify.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

#include "support/catch.hpp"
#include "support/identify/invented.hpp"
#include "support/identify/reference_files.hpp"

using namespace shaftcut;

namespace {

SizeReadings read(double mm) { return {{Length::from_mm(mm), {}, {}, {}}}; }

Series plain_series(const std::string& name, double cap, double span, double inner, double outer)
{
    Series series;
    series.name = name;
    series.shape = Shape::lemon;
    series.crosses.push_back({Length::from_mm(cap), Length::from_mm(span), {}, {}, {}, {}, {}});
    series.halves[Tube::inner].width = Length::from_mm(inner);
    series.halves[Tube::outer].width = Length::from_mm(outer);
    return series;
}

Catalogue four()
{
    Catalogue catalogue;
    catalogue.series = {plain_series("Alder 2", 22, 54, 43, 51), plain_series("Birch 1", 23.8, 61.3, 51, 60), plain_series("Larch 6", 27, 70, 54, 63), plain_series("Elm 4", 30.2, 80, 60, 70)};
    return catalogue;
}

// All its figures, as the series states them.
Measures measured(const Series& series)
{
    Measures measures;
    for (const End end : both_ends) {
        measures.ends[end].joint = JointKind::standard;
        MeasuredPair& pair = measures.ends[end].crosses.emplace_back().pairs[CapPair::first];
        pair.cap = read(series.crosses[0].cap.mm());
        pair.span = read(series.crosses[0].span.mm());
    }
    measures.shape = series.shape;
    for (const Tube tube : both_tubes) measures.tubes.push_back({tube, read(series.halves[tube].width->mm()), {}});
    return measures;
}

std::vector<SizeReadings*> all_readings(Measures& measures)
{
    std::vector<SizeReadings*> all;
    for (const End end : both_ends) {
        all.push_back(&measures.ends[end].spacing);
        for (MeasuredCross& cross : measures.ends[end].crosses)
            for (const CapPair pair : {CapPair::first, CapPair::second}) {
                all.push_back(&cross.pairs[pair].cap);
                all.push_back(&cross.pairs[pair].span);
            }
    }
    for (MeasuredTube& tube : measures.tubes) {
        all.push_back(&tube.width);
        all.push_back(&tube.wall);
    }
    std::erase_if(all, [](const SizeReadings* one) { return one->empty(); });
    return all;
}

bool lists(const Identification& answer, const std::string& series)
{
    return std::any_of(answer.series.begin(), answer.series.end(), [&](const ListedSeries& one) { return one.series == series; });
}

double percent_of(const Identification& answer, const std::string& series)
{
    for (const ListedSeries& one : answer.series)
        if (one.series == series) return one.percent;
    return 0;
}

void check_sound(const Identification& answer)
{
    CHECK(answer.one_series_percent + answer.mixed_percent + answer.none_percent == Approx(100).epsilon(1e-12));
    for (const double one : {answer.one_series_percent, answer.mixed_percent, answer.none_percent}) CHECK((one >= 0 && one <= 100 + 1e-9));
    for (const ListedSeries& one : answer.series) {
        CHECK((one.percent >= 0 && one.percent <= one.percent_any_part + 1e-9));
        CHECK(one.percent_any_part <= 100 + 1e-9);
    }
    for (const NextMeasurement& one : answer.next) {
        CHECK((std::isfinite(one.bits) && one.bits >= 0));
        CHECK((one.expected_best_percent > 0 && one.expected_best_percent < 100.5));
        CHECK((one.settles_percent >= 0 && one.settles_percent < 100.5));
    }
}

}  // namespace

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
    const Catalogue catalogue = test::invented_catalogue(dice, 40, "Invented");
    Catalogue turned = catalogue;
    std::reverse(turned.series.begin(), turned.series.end());
    for (int i = 0; i < 30; ++i) {
        const Measures measures = test::drawn_measures(dice, test::drawn_shaft(dice, catalogue, catalogue, {}), {});
        const Identification one = identify(catalogue, measures), other = identify(turned, measures);
        CHECK(one.verdict == other.verdict);
        CHECK(one.series.size() == other.series.size());
        for (const ListedSeries& listed : one.series) CHECK(percent_of(other, listed.series) == Approx(listed.percent).margin(1e-9));
        REQUIRE(one.next.size() == other.next.size());
        for (std::size_t k = 0; k < one.next.size(); ++k) CHECK(other.next[k].bits == Approx(one.next[k].bits).margin(1e-6));
    }
}

TEST_CASE("inches and millimetres of the same length are answered alike")
{
    const Catalogue catalogue = four();
    Measures inches = measured(catalogue.series[2]), millimetres = inches;
    inches.units = Units::in;
    for (SizeReadings* one : all_readings(inches)) one->front().length = Length::from_mm(25.4 * std::round(one->front().length.mm() / 25.4 * 1000) / 1000);
    for (SizeReadings* one : all_readings(millimetres)) one->front().length = Length::from_mm(25.4 * std::round(one->front().length.mm() / 25.4 * 1000) / 1000);
    const Identification one = identify(catalogue, inches), other = identify(catalogue, millimetres);
    CHECK(one.series.front().percent == other.series.front().percent);
    CHECK(one.next.front().bits == other.next.front().bits);
    // A thousandth of an inch, which is how finely a caliper in inches reads, decides nothing.
    CHECK(one.series.front().percent == Approx(identify(catalogue, measured(catalogue.series[2])).series.front().percent).margin(0.05));
}

TEST_CASE("a slip of a centimetre in any one figure leaves the true series in the list")
{
    support::Dice dice(8);
    const Catalogue catalogue = test::invented_catalogue(dice, 100, "Invented");
    int slips = 0;
    for (int i = 0; i < 60; ++i) {
        test::World careful;
        careful.slips = careful.mixed = careful.outsiders = careful.wrong_place = careful.wrong_writing = 0;
        const test::TrueShaft shaft = test::drawn_shaft(dice, catalogue, catalogue, careful);
        Measures measures = test::drawn_measures(dice, shaft, careful);
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
    const Catalogue catalogue = test::read_reference_catalogue(std::string(SHAFTCUT_SOURCE_DIR) + "/tests/trade/identify/reference/six/series.xml");
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
    const Catalogue catalogue = test::invented_catalogue(dice, 60, "Invented");
    for (int i = 0; i < 60; ++i) {
        const Identification answer = identify(catalogue, test::drawn_measures(dice, test::drawn_shaft(dice, catalogue, catalogue, {}), {}));
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

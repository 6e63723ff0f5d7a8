// What is said of a shaft as it was cut.
#include "order/after_cut_words.hpp"

#include "support/catch.hpp"
#include "support/jobs.hpp"
#include "support/drawn/random_jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const Wording w(Units::mm);
const Expected around_596{mm(596), mm(591), mm(601)};

PartAfterCut inner(AfterCutVerdict result, double read) { return {SawnPart::inner_tube, result, mm(read), around_596, std::nullopt, Length()}; }

RingsFinding rings(std::optional<Range> longest, RingsShow show, double pulled_out, double proven)
{
    return {longest, show, mm(pulled_out), {mm(148), mm(139), mm(159), std::nullopt, std::nullopt}, mm(proven), mm(156)};
}

}  // namespace

TEST_CASE("a part after the cut is said by its word and its figures")
{
    CHECK(say(inner(AfterCutVerdict::right, 598), w) == "The inner tube is right: 598 mm, expected 596 mm ± 5 mm.");
    CHECK(say(inner(AfterCutVerdict::right, 580), w) == "The inner tube is shorter than was to be kept, 580 mm where 596 mm ± 5 mm was expected; it is long enough.");
    CHECK(say(inner(AfterCutVerdict::right, 610), w) == "The inner tube is longer than was to be kept, 610 mm where 596 mm ± 5 mm was expected; nothing need come off it.");
    CHECK(say({SawnPart::outer_guard, AfterCutVerdict::right, mm(556), std::nullopt, std::nullopt, Length()}, w) == "The outer guard is right: 556 mm; it was not measured before.");
    PartAfterCut more = inner(AfterCutVerdict::saw_more, 604);
    more.saw_more = SawMore{mm(8), mm(8), false};
    CHECK(say(more, w) == "Saw 8 mm more off the inner tube.");
    more.saw_more = SawMore{mm(9), mm(8), true};
    CHECK(say(more, w) == "Saw 9 mm more off the inner tube: your saw's least; 8 mm was needed.");
    PartAfterCut less = inner(AfterCutVerdict::too_short, 560);
    less.short_by = mm(30);
    CHECK(say(less, w) == "The inner tube is too short by 30 mm: do not use it. One that is longer by so much would serve.");
    CHECK(say({SawnPart::inner_guard, AfterCutVerdict::measure, std::nullopt, std::nullopt, std::nullopt, Length()}, w) == "Measure the inner guard.");
    CHECK(verdict_words(AfterCutVerdict::too_short, w) == "DO NOT USE");
}

TEST_CASE("a closed length beside the halves is said by what it can be")
{
    const Expected expected{mm(702), mm(695), mm(707)};
    CHECK(say(ClosedFinding{ClosedAfterCutIs::as_expected, mm(702), expected}, w).empty());
    CHECK(say(ClosedFinding{ClosedAfterCutIs::longer, mm(715), expected}, w) ==
          "It closes 8 mm longer than its halves explain: look for a burr, chips, a guard that meets the other, a bent tube. Put it right and measure again.");
    CHECK(say(ClosedFinding{ClosedAfterCutIs::shorter, mm(690), expected}, w) == "It closes 5 mm shorter than its halves explain: a half was sawn short, or its stop lies deeper.");
}

TEST_CASE("a reading between the rings is said by what it proves")
{
    const auto at_turning = [](RingsShow show, double pulled_out, double proven) { return say(rings(Range::turning, show, pulled_out, proven), w); };
    const auto at_shortest = [](RingsShow show, double proven) { return say(rings(std::nullopt, show, proven, proven), w); };
    CHECK(at_shortest(RingsShow::as_expected, 40) == "At the shortest position the rings read as expected: 40 mm is left to close.");
    CHECK(at_shortest(RingsShow::outside, 28) == "At the shortest position 28 mm is left to close, less than was expected; it will do.");
    CHECK(at_shortest(RingsShow::too_little, 12) == "At the shortest position only 12 mm is left to close; 156 mm is the least. Take the shaft off and measure the shortest again.");
    CHECK(at_shortest(RingsShow::not_the_shortest, 60) == "This was not the shortest position, or the shortest was read too long: go on in small steps to the least reading.");
    CHECK(at_shortest(RingsShow::not_closed, 40) ==
          "The reading at the shortest position proves nothing: the lengths over both ends, dry and greased, do not agree or were not read. The rings were read on grease.");
    CHECK(at_turning(RingsShow::as_expected, 148, 320) == "At the longest turning position the rings read as expected.");
    CHECK(at_turning(RingsShow::outside, 100, 368) ==
          "At the longest turning position the shaft is pulled out by 100 mm, less than the 148 mm expected: that was not the longest position, or it was read too long.");
    CHECK(at_turning(RingsShow::outside, 170, 298) == "At the longest turning position the shaft is pulled out by 170 mm, 148 mm was expected; the overlap of 298 mm that is left will do.");
    CHECK(at_turning(RingsShow::too_little, 330, 138) == "At the longest turning position the tubes overlap by only 138 mm; 156 mm is the least. The PTO stays off.");
    CHECK(at_turning(RingsShow::too_little, 480, -12) == "At the longest turning position the tubes do not overlap; 156 mm is the least. The PTO stays off.");
    CHECK(at_turning(RingsShow::not_closed, 148, 320) == "The reading at the longest turning position proves nothing: the closed length was not read, or the rings were read on grease.");
}

TEST_CASE("all that is said of a shaft as it was cut leaves out what needs no words")
{
    MeasuredAfterCut read;
    read.halves[Tube::inner] = {measured(602), measured(578), std::nullopt};
    read.halves[Tube::outer] = {measured(574), measured(556), std::nullopt};
    read.closed = ClosedAfterCut{measured(772), std::nullopt};
    const auto sentences = sentences_of(*after_cut(worked(job()), job(), catalogue(), read), w);
    CHECK(sentences == std::vector<std::string>{"Saw 6 mm more off the inner tube.", "The outer tube is right: 574 mm, expected 574 mm ± 5 mm.",
                                                "The inner guard is right: 578 mm, expected 578 mm ± 5 mm.", "The outer guard is right: 556 mm, expected 556 mm ± 5 mm."});
    read.closed.reset();
    std::swap(read.halves[Tube::inner], read.halves[Tube::outer]);
    read.halves[Tube::outer].length = measured(596);
    const auto exchanged = sentences_of(*after_cut(worked(job()), job(), catalogue(), read), w);
    CHECK(exchanged.back() == "The other way round both tubes are as they are to be kept: measure both again, and the closed length.");
}

TEST_CASE("whatever is read, of whatever shaft, something whole is said of it")
{
    const auto read = [](Dice& dice) -> std::optional<Measurement> {
        if (dice.one_in(4)) return std::nullopt;
        return Measurement{dice.length(0, dice.one_in(4) ? 4'000 : 900), std::nullopt, {"measured.xml", 1, 1}};
    };
    int said = 0;
    for (std::uint64_t number = 0; number < 2'000; ++number) {
        const World world = number % 2 ? sound_world(number) : random_world(number);
        Dice dice(number);
        MeasuredAfterCut found;
        for (const Tube tube : both_tubes) found.halves[tube] = {read(dice), read(dice), read(dice)};
        if (const auto closed = read(dice)) found.closed = ClosedAfterCut{*closed, std::nullopt};
        found.marks = {read(dice), read(dice), read(dice), read(dice), {}};
        for (const Range range : all_ranges) found.marks.longest[range] = read(dice);
        const auto after = after_cut(work_up(world.job, world.catalogue, world.workshop, world.units), world.job, world.catalogue, found);
        if (!after) continue;
        for (const std::string& sentence : sentences_of(*after, Wording(world.units))) {
            CHECK(sentence.ends_with('.'));
            ++said;
        }
        CHECK(after->checks.size() == Words<CheckId>::all.size());
    }
    CHECK(said > 2'000);
}

// What is called right: true shafts are measured, worked up, sawn as the answer allows or otherwise, and read again within the tape's
// tolerance. 2,000 in every run of the tests, and as many as the environment variable SHAFTCUT_AFTER_CUT_JOBS says.
#include <cstdlib>
#include <map>

#include "support/sentences.hpp"
#include "support/catch.hpp"
#include "support/jobs.hpp"
#include "support/drawn/shafts_after_cut.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// Lengths are rounded to the micrometre; comparisons ignore less than 10 of them.
constexpr Um ignored = 25;

std::uint64_t wanted()
{
    const char* jobs = std::getenv("SHAFTCUT_AFTER_CUT_JOBS");
    return jobs ? std::strtoull(jobs, nullptr, 10) : 2'000;
}

struct Case {
    World world;
    TrueShaft sawn;
    WorkOrder order;
    MeasuredAfterCut measured;
    AfterCut found;
};

using Sawing = TrueShaft (*)(const TrueShaft&, const Promise&, Dice&);

// Nothing of a job that is refused.
std::optional<Case> drawn(std::uint64_t number, Sawing saws)
{
    const Measured before = measured_shaft(number, Draw::as_described);
    Case one{before.world, before.shaft, work_up(before.world.job, before.world.catalogue, before.world.workshop, before.world.units), {}, {}};
    if (!one.order.cut) return std::nullopt;
    Dice dice(number + 1'000'000'007);
    one.sawn = saws(before.shaft, promise_of(one.order), dice);
    one.measured = read_after_cut(one.sawn, one.order, dice);
    one.found = *after_cut(one.order, one.world.job, one.world.catalogue, one.measured);
    return one;
}

Um um(const std::optional<std::int64_t>& thousandths) { return thousandths.value_or(0); }

std::string described(std::uint64_t number, const Case& one)
{
    std::string text = "number " + std::to_string(number) + ": " + to_word(one.found.verdict) + "\n";
    for (const PartAfterCut& part : one.found.parts) {
        text += std::string(to_word(part.part)) + " " + to_word(part.result) + ": " + std::to_string(part.measured.value_or(Length()).um());
        if (part.expected) text += " of " + std::to_string(part.expected->value.um()) + " +- " + std::to_string((part.expected->most - part.expected->value).um());
        text += ", short by " + std::to_string(part.short_by.um()) + "\n";
    }
    if (one.found.closed) text += "closed " + std::to_string(one.found.closed->measured.um()) + " at most " + std::to_string(one.found.closed->expected.most.um()) + "\n";
    for (const RingsFinding& rings : one.found.rings) text += "rings " + std::to_string(static_cast<int>(rings.show)) + " " + std::to_string(rings.pulled_out.um()) + "\n";
    for (const Check& check : one.found.checks)
        if (check.result == CheckResult::fail) text += said(check) + "\n";
    return text;
}

// A guard that the sheet could not check, for it was not measured before, can be found too short.
bool only_unknown_guards_short(const Case& one)
{
    const auto known = [&](const PartAfterCut& part) { return part.expected.has_value() && part.result != AfterCutVerdict::right; };
    return check_of(one.order.checks, CheckId::guard_cover).result == CheckResult::not_checked && check_of(one.found.checks, CheckId::guard_cover).result == CheckResult::fail &&
           std::none_of(one.found.parts.begin(), one.found.parts.begin() + 2, known);
}

// How far the clearance of what is called right may pass below the sheet's worst.
Um may_pass_below(const Case& one)
{
    Um by_halves = 0;
    for (const Tube tube : both_tubes) {
        const Um tape = one.measured.halves[tube].length->plus_minus.value_or(one.order.measuring_plus_minus).um();
        by_halves = std::max(by_halves, 2 * tape + one.order.reading.shaft.halves[tube].length->plus_minus.um());
    }
    if (!one.measured.closed) return by_halves;
    return std::min(by_halves, 2 * one.measured.closed->length.plus_minus.value_or(one.order.measuring_plus_minus).um());
}

std::string wrongly_right(const Case& one)
{
    std::string text;
    const Um sheet_worst = um(check_of(one.order.checks, CheckId::closing_clearance).worst);
    const Um least = one.found.as_the_sheet ? sheet_worst - may_pass_below(one) : um(check_of(one.found.checks, CheckId::closing_clearance).worst);
    if (true_clearance(one.sawn) < least - ignored) text += "clearance " + std::to_string(true_clearance(one.sawn)) + " under " + std::to_string(least) + "\n";
    for (const Range range : all_ranges) {
        const Check& check = check_of(one.found.checks, overlap_check_id(range));
        if (!one.order.fit.longest[range]) continue;
        if (um(check.value) < um(check.limit) - ignored) text += std::string(to_word(check.id)) + " below its limit by its value\n";
        Um tapes = 0;
        if (one.found.as_the_sheet)
            for (const Tube tube : both_tubes) tapes += 2 * one.measured.halves[tube].length->plus_minus.value_or(one.order.measuring_plus_minus).um();
        if (true_overlap(one.sawn, range) < um(check.worst) - tapes - ignored) text += std::string(to_word(check.id)) + " truly under its worst\n";
    }
    return text;
}

// The halves by tapes as good as those that the sheet was made from.
bool read_no_worse(const Case& one)
{
    return std::all_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) {
        return one.measured.halves[tube].length->plus_minus.value_or(one.order.measuring_plus_minus) <= one.order.reading.shaft.halves[tube].length->plus_minus;
    });
}

struct Tally {
    std::map<AfterCutVerdict, std::uint64_t> verdicts;
    std::uint64_t judged = 0, unknown_guards = 0, wrong = 0;
};

void blame(Tally& tally, const std::string& what)
{
    if (++tally.wrong <= 3) UNSCOPED_INFO(what);
}

}  // namespace

TEST_CASE("a true shaft that is sawn as its answer allows is right")
{
    const std::uint64_t jobs = wanted();
    Tally tally;
    for (std::uint64_t number = 0; tally.judged < jobs; ++number) {
        const auto one = drawn(number, sawn_as_allowed);
        if (!one) continue;
        ++tally.judged;
        if (one->found.verdict == AfterCutVerdict::right) continue;
        if (only_unknown_guards_short(*one)) ++tally.unknown_guards;
        else blame(tally, described(number, *one));
    }
    CHECK(tally.wrong == 0);
    CHECK(tally.unknown_guards < jobs / 20);
}

TEST_CASE("a true shaft that is sawn otherwise and called right has what its answer promises")
{
    const std::uint64_t jobs = wanted();
    Tally tally;
    for (std::uint64_t number = 0; tally.judged < jobs; ++number) {
        const auto one = drawn(number, sawn_otherwise);
        if (!one) continue;
        ++tally.judged;
        ++tally.verdicts[one->found.verdict];
        if (one->found.verdict != AfterCutVerdict::right) continue;
        const std::string wrong = wrongly_right(*one);
        if (!wrong.empty()) blame(tally, wrong + described(number, *one));
    }
    CHECK(tally.wrong == 0);
    for (const AfterCutVerdict verdict : {AfterCutVerdict::right, AfterCutVerdict::saw_more, AfterCutVerdict::too_short}) {
        INFO(to_word(verdict));
        CHECK(tally.verdicts[verdict] > jobs / 50);
    }
}

TEST_CASE("a tube that is sawn again as it was told is not sawn a third time")
{
    const std::uint64_t jobs = wanted();
    Tally tally;
    for (std::uint64_t number = 0; tally.judged < jobs / 10; ++number) {
        const auto one = drawn(number, sawn_otherwise);
        if (!one || one->found.verdict != AfterCutVerdict::saw_more || !read_no_worse(*one)) continue;
        ++tally.judged;
        Dice dice(number);
        Case after = *one;
        after.sawn = sawn_again(one->sawn, one->found, one->order.saw.plus_minus.um(), dice);
        after.measured = read_after_cut(after.sawn, one->order, dice);
        after.found = *after_cut(one->order, one->world.job, one->world.catalogue, after.measured);
        const auto third = [&](std::size_t part) { return one->found.parts[part].saw_more && after.found.parts[part].saw_more; };
        const bool again = third(0) || third(1);
        if (again && read_no_worse(after)) blame(tally, described(number, *one) + described(number, after));
    }
    CHECK(tally.wrong == 0);
}

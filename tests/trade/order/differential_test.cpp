// The program against a second implementation of the method, on random jobs: 20,000 in every run of the tests, and as many as
// the environment variable SHAFTCUT_DIFFERENTIAL_JOBS says. Job number n is the same on every machine.
#include <cmath>
#include <map>
#include <set>

#include "hitch/hitch_shaft.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "support/compare_answers.hpp"
#include "support/differences.hpp"
#include "support/machines.hpp"
#include "support/drawn/random_jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

// Nothing left measured, or something about as far from the machine's own extreme as its tolerance.
void measure_beside(std::optional<Measurement>& measured, const ExtremeLength* extreme, Length in_line_sum, test::Dice& dice)
{
    if (!extreme || dice.one_in(3)) return measured.reset();
    const Length tolerance = Length::micrometres(dice.up_to(4'000));
    const Length apart = dice.one_in(2) ? tolerance + dice.nudge() : Length::micrometres(dice.up_to(9'000));
    measured = Measurement{extreme->length + in_line_sum + (dice.one_in(2) ? apart : -apart), tolerance, {}};
}

// A random job whose first fit has a machine; empty where the shaft's yokes are not known or the machine leaves it no room.
std::optional<std::pair<World, plain::PlainMachine>> world_with_machine(std::uint64_t number)
{
    World world = sound_world(number);
    support::Dice machines(number);
    test::Dice dice(number);
    const Machine machine = dice.one_in(2) ? support::random_mounted(machines).machine : support::random_trailed(machines).machine;
    JobFit& fit = world.job.fits[0];
    fit.machine = machine;
    const auto shaft = hitch_shaft(world.job.shaft, series_of(world.job.shaft, world.catalogue));
    if (!std::holds_alternative<HitchShaft>(shaft)) return std::nullopt;
    const auto answer = operating_lengths(machine, std::get<HitchShaft>(shaft), world.workshop.measuring_plus_minus);
    const auto* lengths = std::get_if<OperatingLengths>(&answer);
    if (!lengths) return std::nullopt;
    const WorkOrder order = work_up(world.job, world.catalogue, world.workshop, world.units);
    const Length sum = Length() - in_line(Length(), order.fits[0].reaches);
    measure_beside(fit.shortest, &lengths->shortest, sum, dice);
    for (const Range range : all_ranges) measure_beside(fit.longest[range], lengths->ranges[range] ? &lengths->ranges[range]->longest : nullptr, sum, dice);
    for (const End end : both_ends)
        for (const Range range : all_ranges)
            if (dice.one_in(3)) fit.angles[end][range].reset();
    return std::pair(world, plain_machine(*lengths));
}

}  // namespace

TEST_CASE("the program and a second implementation of the method agree on random jobs")
{
    check_all_agree(20'000, [](std::uint64_t number) { return differences(random_world(number)); });
}

TEST_CASE("the two agree on random jobs that mix measured lengths with a machine's geometry")
{
    std::map<CheckResult, int> consistency;
    int disputed = 0;
    for (std::uint64_t number = 0; number < 400; ++number) {
        const auto found = world_with_machine(number);
        if (!found) continue;
        const auto& [world, machine] = *found;
        CAPTURE(number);
        CHECK(differences(world, {machine}) == "");
        const WorkOrder order = work_up(world.job, world.catalogue, world.workshop, world.units);
        ++consistency[order.checks[0].result];
        disputed += order.fits[0].disputed.empty() ? 0 : 1;
    }
    CHECK(consistency[CheckResult::pass] > 5);
    CHECK(consistency[CheckResult::warn] > 20);
    CHECK(disputed > 50);
}

TEST_CASE("the random jobs reach every result that a check can have, and limits met exactly")
{
    std::map<CheckId, std::set<CheckResult>> reached;
    std::set<Verdict> verdicts;
    std::set<CheckId> on_the_limit;
    for (std::uint64_t number = 0; number < 5'000; ++number) {
        const World world = random_world(number);
        const WorkOrder order = work_up(world.job, world.catalogue, world.workshop, world.units);
        verdicts.insert(order.verdict);
        for (const Check& check : order.checks) {
            reached[check.id].insert(check.result);
            if (check.value && (check.value == check.limit || check.worst == check.limit)) on_the_limit.insert(check.id);
        }
    }
    using enum CheckResult;
    const std::set<CheckResult> all{pass, warn, fail, not_checked};
    // Setback and ripple only warn; a device is where it may be or not. The cut leaves the guards their clearance, but for those of halves that an
    // earlier sheet cut.
    std::map<CheckId, std::set<CheckResult>> expected{{CheckId::consistency, {pass, warn, fail}},
                                                      {CheckId::tube_left, {pass, fail, not_checked}},
                                                      {CheckId::guard_setback, {pass, warn, not_checked}},
                                                      {CheckId::irregularity, {pass, warn, not_checked}},
                                                      {CheckId::overload_device, {pass, fail, not_checked}}};
    for (std::size_t i = 0; i < Words<CheckId>::all.size(); ++i) {
        const CheckId id = static_cast<CheckId>(i);
        INFO(to_word(id));
        CHECK((reached[id] == (expected.count(id) ? expected[id] : all)));
    }
    CHECK(verdicts.size() == 3);
    for (const CheckId id : {CheckId::closing_clearance, CheckId::overlap_working, CheckId::overlap_turning, CheckId::overlap_standing,
                             CheckId::guard_cover, CheckId::guard_setback, CheckId::joint_angle_tractor})
        CHECK(on_the_limit.count(id) == 1);
}

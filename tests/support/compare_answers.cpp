#include "support/compare_answers.hpp"

#include <cmath>

#include "shaftcut/trade/order/work_order.hpp"
#include "support/differences.hpp"

namespace shaftcut::test {
namespace {

using shaftcut::test::um;
plain::Maybe um(const std::optional<Toleranced>& length) { return length ? plain::Maybe(length->value.um()) : std::nullopt; }

// A longest that is known only as at least so much is no figure of the answer.
plain::Maybe longest_of(const plain::PlainDeciding& fit, Range range)
{
    const auto& reach = fit.longest[static_cast<std::size_t>(range)];
    return reach && !reach->at_least_only ? plain::Maybe(reach->longest) : std::nullopt;
}

void compare_readings(Differences& found, const WorkOrder& program, const plain::PlainShaft& plain)
{
    found.compare("closed", program.reading.shaft.closed.value.um(), plain.closed.value);
    found.compare("shortest", um(program.fit.shortest), plain.deciding.shortest);
    for (const Range range : all_ranges)
        found.compare(std::string("longest ") + to_word(range), um(program.fit.longest[range]), longest_of(plain.deciding, range));
    const auto& [a, b] = plain.halves;
    plain::Maybe overlap;
    if (a.length && b.length) overlap = a.length->value + b.length->value - plain.closed.value;
    found.compare("overlap closed before", um(program.overlap_closed_before), overlap);
}

void compare_cuts(Differences& found, const CutFigures& program, const plain::PlainShaft& shaft)
{
    const plain::PlainCut& plain = *shaft.cut;
    for (const Tube tube : both_tubes) {
        const std::size_t i = static_cast<std::size_t>(tube);
        const std::string name = to_word(tube);
        found.compare(name + " cut", program.plan.cut[tube].um(), plain.cut[i]);
        found.compare(name + " half", program.plan.half[tube].um(), plain.half[i]);
        found.compare(name + " guard cut", um(program.plan.guard_cut[tube]), plain.guard_cut[i]);
        found.compare(name + " guard half", um(program.plan.guard_half[tube]), plain.guard_half[i]);
    }
    const plain::Um both = plain.half[0] + plain.half[1];
    found.compare("closed after", program.plan.closed.um(), plain.closed);
    found.compare("overlap closed", program.overlap.closed.um(), both - plain.closed);
    found.compare("overlap shortest", um(program.overlap.shortest), plain::Maybe(both - *shaft.deciding.shortest));
    for (const Range range : all_ranges) {
        const plain::Maybe longest = longest_of(shaft.deciding, range);
        found.compare(std::string("overlap ") + to_word(range), um(program.overlap.longest[range]),
                      longest ? plain::Maybe(both - *longest) : std::nullopt);
    }
}

std::string confirm_text(Confirmed what, const plain::Maybe& expected, const plain::Maybe& plus_minus)
{
    if (!expected) return std::string(to_word(what)) + "; ";
    return std::string(to_word(what)) + " " + std::to_string(*expected) + " ± " + std::to_string(plus_minus.value_or(-1)) + "; ";
}

void compare_confirmations(Differences& found, const WorkOrder& program, const plain::PlainAnswer& plain)
{
    std::string ours, theirs;
    for (const Confirmation& one : program.confirm) ours += confirm_text(one.what, um(one.expected), um(one.plus_minus));
    for (const plain::PlainConfirmation& one : plain.confirm) theirs += confirm_text(one.what, one.expected, one.plus_minus);
    found.compare("confirm", ours, theirs);
}

plain::Figure plain_figure(const ExtremeLength& extreme) { return {extreme.length.um(), extreme.plus_minus.um()}; }

}  // namespace

plain::PlainMachine plain_machine(const OperatingLengths& lengths)
{
    plain::PlainMachine found;
    found.shortest = plain_figure(lengths.shortest);
    for (const Range range : all_ranges) {
        const auto& extremes = lengths.ranges[range];
        if (!extremes) continue;
        const auto index = static_cast<std::size_t>(range);
        found.longest[index] = plain_figure(extremes->longest);
        found.angle[0][index] = extremes->tractor.angle.mdeg();
        found.angle[1][index] = extremes->implement.angle.mdeg();
    }
    found.has_working_range = lengths.irregularity.has_value();
    if (lengths.irregularity && lengths.irregularity->percent) found.ripple = std::llround(*lengths.irregularity->percent * 1000);
    return found;
}

std::string differences(const World& world, const std::vector<std::optional<plain::PlainMachine>>& machines)
{
    Differences found;
    const WorkOrder program = work_up(world.job, world.catalogue, world.workshop, world.units);
    const plain::PlainAnswer plain = plain::answer(world.job, world.catalogue, world.workshop, world.units, machines);
    compare_readings(found, program, plain.shaft);
    compare_checks(found, program.checks, plain.checks);
    found.compare("verdict", program.verdict, plain.verdict);
    if (program.cut && plain.verdict != Verdict::refused) {
        compare_cuts(found, *program.cut, plain.shaft);
        compare_confirmations(found, program, plain);
    }
    return found.text();
}

}  // namespace shaftcut::test

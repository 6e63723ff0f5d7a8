#include "terminal/build_terminal.hpp"
#include "checks/check_sentences.hpp"

#include <algorithm>

#include "build/build_words.hpp"
#include "shaft_title_words.hpp"
#include "terminal/terminal_lines.hpp"
#include "terminal/terminal_text.hpp"

namespace shaftcut {
namespace {

using namespace terminal;

std::string lengths_lines(const BuildPlan& plan, const Wording& w)
{
    const BuiltLengths& lengths = plan.built->lengths;
    std::string lines = named_line(LineName::closed, closed_of(plan, w), w);
    lines += named_line(LineName::tubes, inner_and_outer(lengths.blank[Tube::inner], lengths.blank[Tube::outer], w), w);
    if (lengths.guard_blank[Tube::inner] && lengths.guard_blank[Tube::outer])
        lines += named_line(LineName::guard_tubes, inner_and_outer(*lengths.guard_blank[Tube::inner], *lengths.guard_blank[Tube::outer], w), w);
    return lines;
}

const char* colour_of(BuildVerdict verdict) { return verdict == BuildVerdict::build ? "1;32" : verdict == BuildVerdict::held ? "1;33" : "1;31"; }

std::int64_t orders_of(const Batch& batch, BuildVerdict verdict)
{
    return std::count_if(batch.orders.begin(), batch.orders.end(), [&](const BatchOrder& order) { return order.verdict == verdict; });
}

ListCounts counts_of(const Batch& batch)
{
    ListCounts counts{0, orders_of(batch, BuildVerdict::build), orders_of(batch, BuildVerdict::held), orders_of(batch, BuildVerdict::refused)};
    for (const BatchOrder& order : batch.orders) counts.shafts += order.built ? order.count : 0;
    return counts;
}

ListInks inks_of(Colour colour)
{
    const auto ink = [&](BuildVerdict verdict) { return colour_on(colour_of(verdict), colour); };
    return {ink(BuildVerdict::build), ink(BuildVerdict::held), ink(BuildVerdict::refused), colour_off(colour)};
}

}  // namespace

std::string terminal_text(const BuildPlan& plan, Colour colour, const Wording& w)
{
    const std::string verdict = painted(build_verdict(plan, w), colour_of(plan.verdict), colour);
    std::string text = order_and_verdict(plan.order, verdict, w) + "\n" + wrapped(" ", shaft_for(say(plan.shaft_title, w), plan.machine, w));
    if (plan.built) text += lengths_lines(plan, w);
    for (const Check& check : plan.checks)
        if (check.result == CheckResult::fail || check.result == CheckResult::warn) text += check_line(check, colour, w);
    for (const OpenPoint& point : plan.open) text += named_line(LineName::open, say(point, w), w);
    // What refuses an order beside its checks.
    for (const BuildReason& reason : plan.reasons)
        if (!std::holds_alternative<Check>(reason)) text += named_line(LineName::why, running_text(say(std::vector{reason}, w)), w);
    for (const std::string& way : say(plan.ways_out, w)) text += named_line(LineName::instead, way, w);
    return text;
}

std::string terminal_text(const Batch& batch, Colour colour, const Wording& w)
{
    std::string text = list_line(batch.name, counts_of(batch), inks_of(colour), w) + "\n";
    for (const ProfilePlan& plan : batch.plans) {
        if (plan.order) text += terminal_text(*plan.order, colour, w);
        else text += named_line(LineName::no_saw_plan, not_planned(plan.profile, say(*plan.refusal, w), w), w);
    }
    for (const std::string& profile : batch.unplanned) text += named_line(LineName::no_saw_plan, no_bars_for(profile, w), w);
    return text;
}

}  // namespace shaftcut

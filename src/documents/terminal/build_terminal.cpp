#include "terminal/build_terminal.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "terminal/terminal_lines.hpp"

namespace shaftcut {
namespace {

std::string from_text(const BuildPlan& plan)
{
    if (!plan.has_wide_angle) return "between crosses";
    return plan.reference == Reference::outer_cross ? "from the outer cross" : "from the inner cross";
}

std::string lengths_text(const BuildPlan& plan)
{
    const BuiltLengths& lengths = plan.built->lengths;
    const auto text = [&](Length length) { return saw_figure_with_unit(length, plan.units); };
    std::string lines = wrapped("  closed     ", text(plan.built->closed_at[plan.reference]) + " " + from_text(plan));
    lines += wrapped("  tubes      ", "inner " + text(lengths.blank[Tube::inner]) + ", outer " + text(lengths.blank[Tube::outer]));
    if (lengths.guard_blank[Tube::inner] && lengths.guard_blank[Tube::outer])
        lines += wrapped("  guard tubes", "inner " + text(*lengths.guard_blank[Tube::inner]) + ", outer " + text(*lengths.guard_blank[Tube::outer]));
    return lines;
}

const char* plural(std::int64_t count) { return count == 1 ? "" : "s"; }

}  // namespace

std::string terminal_text(const BuildPlan& plan, Colour colour)
{
    const std::string verdict = plan.built ? painted(fmt::format("BUILD {}", plan.count), "1;32", colour) : painted("DO NOT BUILD", "1;31", colour);
    std::string text = plan.order + ": " + verdict + "\n" + wrapped(" ", plan.shaft_title + (plan.machine.empty() ? "" : ", for " + plan.machine));
    if (plan.built) text += lengths_text(plan);
    for (const Check& check : plan.checks)
        if (check.result == CheckResult::fail || check.result == CheckResult::warn) text += check_line(check, colour);
    // What refuses an order beside its checks.
    const std::vector<std::string> failed = reasons_to_refuse(plan.checks);
    for (const std::string& reason : plan.reasons)
        if (std::find(failed.begin(), failed.end(), reason) == failed.end()) text += wrapped("  why        ", reason);
    for (const std::string& way : plan.ways_out) text += wrapped("  instead    ", way);
    return text;
}

std::string terminal_text(const Batch& batch, Colour colour)
{
    std::int64_t shafts = 0;
    for (const BatchOrder& order : batch.orders) shafts += order.built ? order.count : 0;
    const auto refused = std::count_if(batch.orders.begin(), batch.orders.end(), [](const BatchOrder& order) { return !order.built; });
    const auto total = static_cast<std::int64_t>(batch.orders.size());
    std::string text = batch.name + ": " + painted(fmt::format("{} shaft{} of {} order{}", shafts, plural(shafts), total - refused, plural(total - refused)), "1;32", colour);
    if (refused > 0) text += ", " + painted(fmt::format("{} order{} refused", refused, plural(refused)), "1;31", colour);
    text += "\n";
    for (const ProfilePlan& plan : batch.plans) {
        if (plan.order) text += terminal_text(*plan.order, colour);
        else text += wrapped("  no saw plan", plan.profile + ": " + plan.refusal);
    }
    for (const std::string& profile : batch.unplanned) text += wrapped("  no saw plan", profile + ": the workshop states no bars for it");
    return text;
}

}  // namespace shaftcut

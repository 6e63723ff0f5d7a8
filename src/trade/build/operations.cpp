#include "shaftcut/trade/build/operations.hpp"

#include <algorithm>

#include "shaftcut/trade/build/build_plan.hpp"

namespace shaftcut {
namespace {

MeasuredFrom closed_from(const BuildPlan& plan) { return measured_from(plan.has_wide_angle, plan.reference); }

SawTubes sawing(const BuildPlan& plan)
{
    SawTubes does{{}, plan.saw.plus_minus, {}};
    const BuiltLengths& lengths = plan.built->lengths;
    for (const Tube tube : both_tubes) (plan.built->sawn[tube] ? does.sawn : does.fetched).push_back({{tube, TubeKind::drive}, lengths.blank[tube]});
    for (const Tube tube : both_tubes)
        if (const auto& guard = lengths.guard_blank[tube]) does.sawn.push_back({{tube, TubeKind::guard}, *guard});
    return does;
}

void add_yokes(std::vector<Operation>& operations, const BuildPlan& plan)
{
    DriveTubeYokes yokes;
    for (const Tube tube : both_tubes) yokes.end[tube] = end_of(plan.ordered, tube);
    operations.push_back({Work::yoke, yokes});
    for (const End end : both_ends) {
        const JobEnd& of = plan.ordered.ends[end];
        operations.push_back({Work::cross, FitCross{end, of.joint, of.connection}});
        if (of.device && *of.device != Device::none) operations.push_back({Work::device, FitDevice{end, *of.device}});
    }
}

void add_joining(std::vector<Operation>& operations, const BuildPlan& plan)
{
    operations.push_back({Work::phase, JoinInPhase{plan.shape, plan.guard}});
    if (!plan.guard) return;
    PushGuards guards;
    for (const Tube tube : both_tubes) guards.short_by[tube] = plan.built->lengths.half[tube] - *plan.built->lengths.guard_half[tube];
    operations.push_back({Work::bearing, PlainOperation::set_bearings});
    operations.push_back({Work::guard, guards});
    operations.push_back({Work::phase, PlainOperation::join_guard_in_guard});
    operations.push_back({Work::chain, PlainOperation::hook_chains});
}

StickLabel labelling(const BuildPlan& plan)
{
    StickLabel does{plan.guard, plan.order, plan.built->closed_at[plan.reference], closed_from(plan), {}};
    const auto& longest = plan.built->use.longest[Range::turning];
    if (plan.ordered_closed && longest) does.pull_to_turning = (*longest)[plan.reference];
    return does;
}

std::optional<Length> telescoping_to_try(const BuildPlan& plan)
{
    std::optional<Length> longest;
    for (const Range range : all_ranges)
        if (const auto& of = plan.fit.longest[range]) longest = std::max(longest, std::optional(of->value));
    if (longest) return longest;
    for (const Range range : all_ranges)
        if (const auto& of = plan.built->use.longest[range]) longest = std::max(longest, std::optional((*of)[Reference::inner_cross]));
    return longest;
}

Length beyond_inner_crosses(const BuildPlan& plan) { return plan.built->closed_at[plan.reference] - plan.built->lengths.closed; }

void add_checks(std::vector<Operation>& operations, const BuildPlan& plan)
{
    const BuiltShaft& built = *plan.built;
    operations.push_back({Work::check, MeasureClosed{closed_from(plan), built.closed_at[plan.reference], plan.saw.plus_minus}});
    if (const auto longest = telescoping_to_try(plan)) {
        const Length left = built.lengths.half[Tube::inner] + built.lengths.half[Tube::outer] - *longest;
        operations.push_back({Work::check, PullOut{*longest + beyond_inner_crosses(plan), left}});
    }
    operations.push_back({Work::check, TurnByHand{plan.guard}});
}

}  // namespace

std::optional<Length> longest_to_try(const BuildPlan& plan)
{
    const auto longest = telescoping_to_try(plan);
    return longest ? std::optional(*longest + beyond_inner_crosses(plan)) : std::nullopt;
}

std::vector<Operation> operations_of(const BuildPlan& plan)
{
    std::vector<Operation> operations;
    operations.push_back({Work::saw, sawing(plan)});
    operations.push_back({Work::deburr, PlainOperation::deburr});
    operations.push_back({Work::drill, DrillPinHoles{plan.built->lengths.pin_hole}});
    add_yokes(operations, plan);
    operations.push_back({Work::grease, PlainOperation::grease});
    add_joining(operations, plan);
    operations.push_back({Work::label, labelling(plan)});
    add_checks(operations, plan);
    return operations;
}

}  // namespace shaftcut

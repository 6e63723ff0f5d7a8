#include "shaftcut/trade/build/operations.hpp"

#include <algorithm>

#include "shaftcut/trade/build/build_plan.hpp"

namespace shaftcut {
namespace {

MeasuredFrom closed_from(const BuildPlan& plan) { return measured_from(plan.has_wide_angle, plan.reference); }

CheckPieces checking(const BuildPlan& plan)
{
    CheckPieces does{{}, plan.saw.plus_minus, {}};
    const BuiltLengths& lengths = plan.built->lengths;
    for (const Tube tube : both_tubes) (plan.built->sawn[tube] ? does.sawn : does.fetched).push_back({{tube, TubeKind::drive}, lengths.blank[tube]});
    for (const Tube tube : both_tubes)
        if (const auto& guard = lengths.guard_blank[tube]) does.sawn.push_back({{tube, TubeKind::guard}, *guard});
    return does;
}

// Whether the end's device sits where its connection yoke would.
bool is_replaced(const BuildPlan& plan, End end)
{
    const auto& parts = plan.built->parts;
    return std::any_of(parts.begin(), parts.end(), [&](const ShaftPart& part) { return part.end == end && part.replaces == Replaces::connection_yoke; });
}

std::optional<Device> device_of(const BuildPlan& plan, End end)
{
    const auto& device = plan.ordered.ends[end].device;
    return device && *device != Device::none ? device : std::nullopt;
}

StrokesAndCrosses crosses(const BuildPlan& plan)
{
    StrokesAndCrosses does;
    for (const End end : both_ends) {
        const JobEnd& of = plan.ordered.ends[end];
        does.cross[end] = {end, of.joint, of.connection, is_replaced(plan, end) ? device_of(plan, end) : std::nullopt};
    }
    return does;
}

FitGuards guards(const BuildPlan& plan)
{
    FitGuards does;
    for (const Tube tube : both_tubes) does.stands_out[tube] = plan.built->lengths.half[tube] - *plan.built->lengths.guard_half[tube];
    return does;
}

// A clamp and a flange are bolted; whether a lock that nobody named has a spring is not known.
bool has_spring(Lock lock)
{
    switch (lock) {
    case Lock::exposed_collar:
    case Lock::covered_collar:
    case Lock::exposed_push_pin:
    case Lock::shrouded_push_pin: return true;
    case Lock::clamp_bolt:
    case Lock::tapered_clamp:
    case Lock::flange:
    case Lock::unknown: break;
    }
    return false;
}

FitFittings fittings(const BuildPlan& plan)
{
    FitFittings does;
    for (const End end : both_ends) {
        const auto& lock = plan.ordered.ends[end].lock;
        if (!is_replaced(plan, end)) does.device[end] = device_of(plan, end);
        if (lock && has_spring(*lock)) does.springing.push_back(end);
    }
    return does;
}

bool has_any(const FitFittings& does) { return does.device[End::tractor] || does.device[End::implement] || !does.springing.empty(); }

StickLabel labelling(const BuildPlan& plan)
{
    StickLabel does{plan.guard, plan.order, plan.built->closed_at[plan.reference], closed_from(plan), {}};
    const auto& longest = plan.built->use.longest[Range::turning];
    if (plan.ordered_closed && longest) does.pull_to_turning = (*longest)[plan.reference];
    return does;
}

}  // namespace

Length closed_plus_minus(const BuildPlan& plan) { return plan.saw.plus_minus + plan.measuring_plus_minus; }

std::vector<Operation> operations_of(const BuildPlan& plan)
{
    const BuiltShaft& built = *plan.built;
    const auto& hole = built.lengths.pin_hole;
    std::vector<Operation> operations{{Work::pieces, checking(plan)},
                                      {Work::outer_yoke, FixOuterYoke{end_of(plan.ordered, Tube::outer), hole[Tube::outer]}},
                                      {Work::inner_yoke, FixInnerYoke{end_of(plan.ordered, Tube::inner), hole[Tube::inner], plan.shape}},
                                      {Work::crosses, crosses(plan)},
                                      {Work::closed, MeasureClosed{closed_from(plan), built.closed_at[plan.reference], closed_plus_minus(plan)}},
                                      {Work::grease, PartAndGrease{plan.guard}}};
    if (plan.guard) operations.push_back({Work::guards, guards(plan)});
    operations.push_back({Work::join, JoinAgain{plan.guard}});
    if (const FitFittings does = fittings(plan); has_any(does)) operations.push_back({Work::fittings, does});
    if (plan.guard) operations.push_back({Work::chains, HookChains{}});
    operations.push_back({Work::papers, labelling(plan)});
    return operations;
}

}  // namespace shaftcut

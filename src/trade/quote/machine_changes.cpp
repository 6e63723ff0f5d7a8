#include "quote/machine_changes.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

// Whether a fit is of this tractor's machine; an empty name stands for the only one.
bool is_of(const JobFit& fit, const std::string& tractor) { return tractor.empty() || fit.tractor == tractor; }

template <class T>
std::optional<T>& range_of(Ranges<T>& ranges, Range range)
{
    return range == Range::working ? ranges.working : range == Range::turning ? ranges.turning : ranges.standing;
}

// The machines of this tractor, or of this kind.
template <class MachineKind, class Change>
bool change_machines(Job& job, const std::string& tractor, Change change)
{
    bool changed = false;
    for (JobFit& fit : job.fits) {
        auto* machine = fit.machine ? std::get_if<MachineKind>(&*fit.machine) : nullptr;
        if (machine && is_of(fit, tractor)) changed = change(*machine) || changed;
    }
    return changed;
}

// A range that holds another goes no less far than it: the lesser ones come along.
template <class Limit>
bool limit_ranges(Trailed& machine, Range from, Limit limit)
{
    bool changed = false;
    for (const Range range : all_ranges)
        if (auto& there = range_of(machine.ranges, range); range <= from && there) changed = limit(*there) || changed;
    return changed;
}

bool lessen(AngleDimension& angle, Angle most)
{
    if (angle.value <= most) return false;
    angle.value = most;
    return true;
}

bool changes(Job& job, const LongestServed& way, const WorkOrder& order)
{
    if (!way.longest) return false;
    bool changed = false;
    for (std::size_t i = 0; i < job.fits.size(); ++i) {
        auto& stated = job.fits[i].longest[way.range];
        const auto& telescoping = order.fits[i].fit.longest[way.range];
        if (!stated || !telescoping || telescoping->value <= *way.longest) continue;
        stated->length -= telescoping->value - *way.longest;
        changed = true;
    }
    return changed;
}

bool changes(Job& job, const ShortestServed& way, const WorkOrder& order)
{
    bool changed = false;
    for (std::size_t i = 0; i < job.fits.size(); ++i) {
        auto& stated = job.fits[i].shortest;
        const auto& telescoping = order.fits[i].fit.shortest;
        if (!stated || !telescoping || telescoping->value >= way.least) continue;
        stated->length += way.least - telescoping->value;
        changed = true;
    }
    return changed;
}

bool changes(Job& job, const LimitMovement& way, const WorkOrder&)
{
    bool changed = false;
    for (JobFit& fit : job.fits)
        for (const auto& [range, most] : {std::pair(Range::turning, way.turning), std::pair(Range::standing, way.standing)})
            if (auto& angle = fit.angles[way.end][range]; angle && *angle > most) angle = most, changed = true;
    return changed;
}

bool changes(Job& job, const TurnServed& way, const WorkOrder&)
{
    return change_machines<Trailed>(job, way.tractor, [&](Trailed& machine) { return limit_ranges(machine, way.range, [&](TrailedRange& range) { return lessen(range.turn, way.served); }); });
}

bool changes(Job& job, const PitchServed& way, const WorkOrder&)
{
    return change_machines<Trailed>(job, way.tractor, [&](Trailed& machine) { return limit_ranges(machine, way.range, [&](TrailedRange& range) { return lessen(range.pitch, way.served); }); });
}

bool changes(Job& job, const LiftRangeServed& way, const WorkOrder&)
{
    return change_machines<Mounted>(job, way.tractor, [&](Mounted& machine) {
        bool changed = false;
        for (const Range range : all_ranges) {
            auto& there = range_of(machine.ranges, range);
            if (!there || range > way.range) continue;
            if (way.up_to && there->highest.value > *way.up_to) there->highest.value = *way.up_to, changed = true;
            else if (!way.up_to && way.down_to && there->lowest.value < *way.down_to) there->lowest.value = *way.down_to, changed = true;
        }
        return changed;
    });
}

bool changes(Job& job, const PinMoveServed& way, const WorkOrder&)
{
    return change_machines<Trailed>(job, way.tractor, [&](Trailed& machine) {
        machine.pin_behind.value += way.move;
        return true;
    });
}

// A remedy, other parts, another shaft.
template <class Other>
bool changes(Job&, const Other&, const WorkOrder&) { return false; }

}  // namespace

std::optional<Job> changed_by(const WayOut& way, const Job& job, const WorkOrder& order)
{
    Job changed = job;
    const bool is_change = std::visit([&](const auto& one) { return changes(changed, one, order); }, way);
    return is_change ? std::optional(std::move(changed)) : std::nullopt;
}

MachineChange service_for(const WayOut& way)
{
    if (std::holds_alternative<LiftRangeServed>(way)) return MachineChange::lift_stop;
    if (std::holds_alternative<TurnServed>(way) || std::holds_alternative<PitchServed>(way)) return MachineChange::drawbar_stop;
    if (std::holds_alternative<PinMoveServed>(way)) return MachineChange::pin_hole;
    return MachineChange::position_stop;
}

}  // namespace shaftcut

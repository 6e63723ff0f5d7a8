// The way out of a refusal for a machine whose geometry is known: how far it may turn, lift or be hitched with this shaft.
#include <algorithm>

#include "advice/advice_parts.hpp"
#include "hitch/hitch_advice.hpp"

namespace shaftcut {
namespace {

// What this range would have to keep to; nothing where this fit's own figures in it are not what fails.
std::optional<ShaftLimits> broken_limits(const CheckInput& input, const std::vector<Check>& checks, const FitReading& fit, Range range)
{
    ShaftLimits limits;
    const Check& overlap = check_of(checks, overlap_check_id(range));
    const ExtremeLength* longest = fit.computed_longest(range);
    if (longest && input.plan && overlap.result == CheckResult::fail && overlap.limit) {
        const Length most = input.plan->half[Tube::inner] + input.plan->half[Tube::outer] - Length::micrometres(*overlap.limit);
        if (clearly_above(longest->length, most)) limits.longest = most;
    }
    for (const End end : both_ends) {
        const ExtremeAngle* angle = fit.computed_angle(end, range);
        const Angle most = greatest_angle(input.limits, input.job.shaft.ends[end].joint, range);
        if (angle && failed(checks, joint_angle_check_id(end)) && angle->angle > most) (end == End::tractor ? limits.tractor : limits.implement) = most;
    }
    if (!limits.longest && !limits.tractor && !limits.implement) return std::nullopt;
    return limits;
}

// A turn that serves with pitch and roll as they are; else a pitch that does with the turn as it is.
std::optional<WayOut> movement_way(const std::string& tractor, const Trailed& machine, const HitchShaft& shaft, Range range, const ShaftLimits& limits)
{
    const TrailedRange& whole = *machine.ranges[range];
    if (const auto turn = movement_served(machine, shaft, whole, limits, Movement::turn)) return TurnServed{tractor, range, *turn, whole.turn.value};
    if (const auto pitch = movement_served(machine, shaft, whole, limits, Movement::pitch)) return PitchServed{tractor, range, *pitch, whole.pitch.value};
    return std::nullopt;
}

std::optional<WayOut> lift_way(const std::string& tractor, const Mounted& machine, const HitchShaft& shaft, Range range, const ShaftLimits& limits)
{
    const MountedRange& whole = *machine.ranges[range];
    const LiftServed served = lift_served(machine, shaft, whole, limits);
    if (!served.up_to && !served.down_to) return std::nullopt;
    return LiftRangeServed{tractor, range, whole.lowest.value, whole.highest.value, served.up_to, served.down_to};
}

// The fit as it would be with another machine; its tolerances are taken to stay.
std::optional<FitReading> with_machine(FitReading fit, const Trailed& machine)
{
    const auto lengths = operating_lengths(machine, fit.geometry->shaft, Length());
    if (!std::holds_alternative<OperatingLengths>(lengths)) return std::nullopt;
    fit.geometry->machine = machine;
    fit.geometry->lengths = std::get<OperatingLengths>(lengths);
    if (const ExtremeLength* shortest = fit.computed_shortest()) fit.fit.shortest->value = shortest->length;
    for (const Range range : all_ranges) {
        if (const ExtremeLength* longest = fit.computed_longest(range)) fit.fit.longest[range]->value = longest->length;
        for (const End end : both_ends)
            if (const ExtremeAngle* angle = fit.computed_angle(end, range)) fit.fit.angles[end][range] = angle->angle;
    }
    return fit;
}

// Whether every check on lengths and angles holds with this fit in the place of number `index`.
bool serves_with(const CheckInput& input, std::size_t index, const FitReading& fit)
{
    std::vector<FitReading> fits = input.fits;
    fits[index] = fit;
    const Fit deciding = deciding_fit(fits);
    const auto plan = plan_cut(input.reading.shaft, input.stops, deciding.shortest, input.limits.length(Limit::closing_clearance), input.saw);
    if (!plan) return false;
    const CheckInput trial{input.job, input.catalogue, input.series, input.limits, input.saw, input.reading, fits, deciding, input.stops, plan};
    const std::vector<Check> checks = run_checks(trial);
    return std::none_of(checks.begin(), checks.end(), [](const Check& check) {
        return rule_of(check.id).follows_machine && check.result == CheckResult::fail;
    });
}

// The pin moved along the drawbar, where that alone would do: tried by all the rules, since it moves the shortest too.
std::optional<WayOut> pin_way(const std::string& tractor, const CheckInput& input, std::size_t index, const ShaftLimits& limits, Range range)
{
    const FitReading& fit = input.fits[index];
    const Trailed& machine = std::get<Trailed>(fit.geometry->machine);
    const auto move = pin_move_served(machine, fit.geometry->shaft, *machine.ranges[range], limits);
    if (!move) return std::nullopt;
    Trailed moved = machine;
    moved.pin_behind.value += *move;
    const auto trial = with_machine(fit, moved);
    if (!trial || !serves_with(input, index, *trial)) return std::nullopt;
    return PinMoveServed{tractor, *move};
}

void add_ways(std::vector<WayOut>& ways, const CheckInput& input, const std::vector<Check>& checks, std::size_t index)
{
    const FitReading& fit = input.fits[index];
    if (!fit.geometry) return;
    const auto add = [&](const std::optional<WayOut>& way) {
        if (way) ways.push_back(*way);
    };
    const std::string tractor = input.fits.size() > 1 ? fit.tractor : "";
    for (const Range range : all_ranges) {
        const auto limits = broken_limits(input, checks, fit, range);
        if (!limits) continue;
        const HitchShaft& shaft = fit.geometry->shaft;
        if (const auto* trailed = std::get_if<Trailed>(&fit.geometry->machine)) {
            add(movement_way(tractor, *trailed, shaft, range, *limits));
            add(pin_way(tractor, input, index, *limits, range));
        } else {
            add(lift_way(tractor, std::get<Mounted>(fit.geometry->machine), shaft, range, *limits));
        }
    }
}

}  // namespace

std::vector<WayOut> machine_ways(const CheckInput& input, const std::vector<Check>& checks)
{
    std::vector<WayOut> ways;
    for (std::size_t i = 0; i < input.fits.size(); ++i) add_ways(ways, input, checks, i);
    return ways;
}

}  // namespace shaftcut

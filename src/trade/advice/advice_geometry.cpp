// The way out of a refusal for a machine whose geometry is known: how far it may turn, lift or be hitched with this shaft.
#include <algorithm>

#include "advice/advice_parts.hpp"
#include "cut/geometry_words.hpp"
#include "hitch/hitch_advice.hpp"

namespace shaftcut {
namespace {

constexpr PerEach<Range, const char*> positions_of()
{
    PerEach<Range, const char*> words;
    words[Range::working] = "in the usual working position";
    words[Range::turning] = "with the PTO turning";
    words[Range::standing] = "with the PTO stopped";
    return words;
}

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

// What must be cut with another movement is not known before it is worked out.
constexpr const char* would_serve = "This shaft, cut if its new sheet says so, would serve ";

std::string movement_text(const char* name, Angle served, Angle now)
{
    return std::string("a ") + name + " of " + figure(Angle::millidegrees(served.mdeg() / 100 * 100)) + "° (now " + figure(now) + "°)";
}

// A turn that serves with pitch and roll as they are; else a pitch that does with the turn as it is.
std::optional<std::string> movement_way(const Trailed& machine, const HitchShaft& shaft, Range range, const ShaftLimits& limits)
{
    const TrailedRange& whole = *machine.ranges[range];
    const std::string start = std::string(would_serve) + positions_of()[range] + " up to ";
    if (const auto turn = movement_served(machine, shaft, whole, limits, Movement::turn))
        return start + movement_text("turn", *turn, whole.turn.value) + ", pitch and roll as stated.";
    if (const auto pitch = movement_served(machine, shaft, whole, limits, Movement::pitch))
        return start + movement_text("pitch", *pitch, whole.pitch.value) + ", turn and roll as stated.";
    return std::nullopt;
}

std::optional<std::string> lift_way(const CheckInput& input, const Mounted& machine, const HitchShaft& shaft, Range range, const ShaftLimits& limits)
{
    const MountedRange& whole = *machine.ranges[range];
    const LiftServed served = lift_served(machine, shaft, whole, limits);
    const auto text = [&](Length length, Toward toward) { return figure_with_millimetres(length, input.units, toward); };
    std::string way;
    if (served.up_to) way = "lifted from " + text(whole.lowest.value, Toward::nearest) + " up to " + text(*served.up_to, Toward::down) + " (now " +
                            text(whole.highest.value, Toward::nearest) + ")";
    if (served.down_to) way += (way.empty() ? "" : ", or ") + ("lowered from " + text(whole.highest.value, Toward::nearest)) + " down to " +
                               text(*served.down_to, Toward::up) + " (now " + text(whole.lowest.value, Toward::nearest) + ")";
    if (way.empty()) return std::nullopt;
    return std::string(would_serve) + positions_of()[range] + " with the lower hitch point " + way + ".";
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
    const CheckInput trial{input.job, input.catalogue, input.series, input.limits, input.saw, input.reading, fits, deciding, input.stops, plan, input.units};
    const std::vector<Check> checks = run_checks(trial);
    return std::none_of(checks.begin(), checks.end(), [](const Check& check) {
        return rule_of(check.id).follows_machine && check.result == CheckResult::fail;
    });
}

// The pin moved along the drawbar, where that alone would do: tried by all the rules, since it moves the shortest too.
std::optional<std::string> pin_way(const CheckInput& input, std::size_t index, const ShaftLimits& limits, Range range)
{
    const FitReading& fit = input.fits[index];
    const Trailed& machine = std::get<Trailed>(fit.geometry->machine);
    const auto move = pin_move_served(machine, fit.geometry->shaft, *machine.ranges[range], limits);
    if (!move) return std::nullopt;
    Trailed moved = machine;
    moved.pin_behind.value += *move;
    const auto trial = with_machine(fit, moved);
    if (!trial || !serves_with(input, index, *trial)) return std::nullopt;
    const bool rearwards = *move > Length();
    return "With the pin moved " + figure_with_millimetres(rearwards ? *move : -*move, input.units, Toward::up) + (rearwards ? " rearwards" : " forwards") +
           " along the drawbar, the machine with it, it would serve all ranges as stated, cut if its new sheet says so.";
}

void add_ways(std::vector<std::string>& ways, const CheckInput& input, const std::vector<Check>& checks, std::size_t index)
{
    const FitReading& fit = input.fits[index];
    if (!fit.geometry) return;
    const auto add = [&](const std::optional<std::string>& way) {
        if (way) ways.push_back(whose(fit, input.fits.size()) + *way);
    };
    for (const Range range : all_ranges) {
        const auto limits = broken_limits(input, checks, fit, range);
        if (!limits) continue;
        const HitchShaft& shaft = fit.geometry->shaft;
        if (const auto* trailed = std::get_if<Trailed>(&fit.geometry->machine)) {
            add(movement_way(*trailed, shaft, range, *limits));
            add(pin_way(input, index, *limits, range));
        } else {
            add(lift_way(input, std::get<Mounted>(fit.geometry->machine), shaft, range, *limits));
        }
    }
}

}  // namespace

std::vector<std::string> machine_ways(const CheckInput& input, const std::vector<Check>& checks)
{
    std::vector<std::string> ways;
    for (std::size_t i = 0; i < input.fits.size(); ++i) add_ways(ways, input, checks, i);
    return ways;
}

}  // namespace shaftcut

#include "hitch/hitch_advice.hpp"

#include <algorithm>
#include <cmath>
#include <vector>

#include "hitch/shafts_on_grid.hpp"

namespace shaftcut {
namespace {

constexpr double scan_step = 25;   // mm, for equal angles
constexpr double serve_step = 5;   // mm, for limits
constexpr Angle equal_within = Angle::millidegrees(10);

Trailed with_pin_moved(Trailed machine, Length move)
{
    machine.pin_behind.value += move;
    return machine;
}

// The greatest angles with the pin moved.
std::optional<PinAdvice> angles_with(const Trailed& trailed, const HitchShaft& shaft, const Box& box, Length move)
{
    const Machine machine = with_pin_moved(trailed, move);
    const ShaftsOnGrid shafts(machine, shaft, box);
    const Greatest tractor = greatest_over(Quantity::tractor_angle, machine, shaft, shafts);
    if (!tractor.value) return std::nullopt;
    const Greatest implement = greatest_over(Quantity::implement_angle, machine, shaft, shafts);
    if (!implement.value) return std::nullopt;
    PinAdvice advice{move, angle_of_measure(*tractor.value), angle_of_measure(*implement.value), false};
    const Angle excess = advice.tractor - advice.implement;
    advice.equal = excess <= equal_within && Angle() - excess <= equal_within;
    return advice;
}

std::int64_t difference(const PinAdvice& advice)
{
    return advice.tractor.mdeg() - advice.implement.mdeg();
}

// Nearest first: 0, step, -step, 2 step ... to the furthest move, never to a pin in front of the PTO.
std::vector<Length> moves_outwards(const Trailed& machine, double step)
{
    std::vector<Length> moves{Length()};
    for (int i = 1; i * step <= furthest_pin_move.mm(); ++i) {
        const Length move = Length::from_mm(i * step);
        moves.push_back(move);
        if (machine.pin_behind.value >= move) moves.push_back(-move);
    }
    return moves;
}

// Between two places where the difference of the angles changes its sign.
PinAdvice halved(const Trailed& machine, const HitchShaft& shaft, const Box& box, PinAdvice one, PinAdvice other)
{
    while (std::abs((one.move - other.move).um()) > 20) {
        const auto middle = angles_with(machine, shaft, box, Length::micrometres((one.move.um() + other.move.um()) / 2));
        if (!middle) break;
        const bool same_side = (difference(*middle) > 0) == (difference(one) > 0);
        (same_side ? one : other) = *middle;
    }
    return std::abs(difference(one)) <= std::abs(difference(other)) ? one : other;
}

// Whether `holds` of the greatest value over the box. Where it does not hold of one on the grid, no hill need be climbed.
template <class Holds>
bool holds_over(Quantity quantity, const Machine& machine, const HitchShaft& shaft, const ShaftsOnGrid& shafts, const Holds& holds)
{
    const bool on_grid = std::all_of(shafts.shafts.begin(), shafts.shafts.end(), [&](const auto& bent) { return bent && holds(measure(quantity, *bent)); });
    if (!on_grid) return false;
    const Greatest found = greatest_over(quantity, machine, shaft, shafts);
    return found.value && holds(*found.value);
}

bool serves(const Machine& machine, const HitchShaft& shaft, const Box& box, const ShaftLimits& limits)
{
    const ShaftsOnGrid shafts(machine, shaft, box);
    const auto length = [&](double value) { return !clearly_above(Length::from_mm(value), *limits.longest); };
    if (limits.longest && !holds_over(Quantity::length, machine, shaft, shafts, length)) return false;
    const auto within = [&](Quantity quantity, const std::optional<Angle>& limit) {
        return !limit || holds_over(quantity, machine, shaft, shafts, [&](double value) { return angle_of_measure(value) <= *limit; });
    };
    return within(Quantity::tractor_angle, limits.tractor) && within(Quantity::implement_angle, limits.implement);
}

// The whole number furthest from `good`, which serves, towards `wanted` that serves, where what is nearer always does.
template <class Serves>
std::optional<std::int64_t> furthest_served(std::int64_t good, std::int64_t wanted, const Serves& serves_at)
{
    if (!serves_at(good)) return std::nullopt;
    if (serves_at(wanted)) return wanted;
    std::int64_t bad = wanted;
    while (std::abs(bad - good) > 1) {
        const std::int64_t middle = good + (bad - good) / 2;
        (serves_at(middle) ? good : bad) = middle;
    }
    return good;
}

AngleDimension TrailedRange::*member_of(Movement movement)
{
    if (movement == Movement::turn) return &TrailedRange::turn;
    return movement == Movement::pitch ? &TrailedRange::pitch : &TrailedRange::roll;
}

}  // namespace

std::optional<PinAdvice> pin_for_equal_angles(const Trailed& machine, const HitchShaft& shaft, const TrailedRange& range)
{
    const Box box = box_of(range);
    std::vector<PinAdvice> tried;
    for (const Length move : moves_outwards(machine, scan_step)) {
        const auto advice = angles_with(machine, shaft, box, move);
        if (!advice) continue;
        if (difference(*advice) == 0) return advice;
        for (const PinAdvice& before : tried) {
            const bool next = std::abs((before.move - move).um()) == Length::from_mm(scan_step).um();
            if (next && (difference(before) > 0) != (difference(*advice) > 0)) return halved(machine, shaft, box, before, *advice);
        }
        tried.push_back(*advice);
    }
    const auto nearer = [](const PinAdvice& a, const PinAdvice& b) { return std::abs(difference(a)) < std::abs(difference(b)); };
    const auto best = std::min_element(tried.begin(), tried.end(), nearer);
    if (best == tried.end()) return std::nullopt;
    return *best;
}

PinFromCentre pin_from_wide_angle_centre(const Trailed& machine, const HitchShaft& shaft)
{
    PinFromCentre distance;
    const auto bent = shaft_in_place(machine, shaft, {});
    if (!bent) return distance;
    const double pin = machine.pin_behind.value.mm();
    const InputShaft input = input_shaft(machine, {});
    const double tractor_outer = shaft.tractor.cross_to_groove.mm();
    const double implement_outer = input.groove.x - shaft.implement.cross_to_groove.mm() * input.axis.x;
    if (shaft.tractor.spacing > Length())
        distance.tractor = Length::from_mm(pin - (tractor_outer + bent->tractor_inner.x) / 2);
    if (shaft.implement.spacing > Length())
        distance.implement = Length::from_mm(pin - (implement_outer + bent->implement_inner.x) / 2);
    return distance;
}

std::optional<Angle> movement_served(const Trailed& machine, const HitchShaft& shaft, const TrailedRange& range,
                                     const ShaftLimits& limits, Movement movement)
{
    const Machine whole = machine;
    const auto member = member_of(movement);
    const auto serves_at = [&](std::int64_t mdeg) {
        TrailedRange narrower = range;
        (narrower.*member).value = Angle::millidegrees(mdeg);
        return serves(whole, shaft, box_of(narrower), limits);
    };
    const auto mdeg = furthest_served(0, (range.*member).value.mdeg(), serves_at);
    if (!mdeg) return std::nullopt;
    return Angle::millidegrees(*mdeg);
}

LiftServed lift_served(const Mounted& machine, const HitchShaft& shaft, const MountedRange& range, const ShaftLimits& limits)
{
    const Machine whole = machine;
    const auto from = [&](Length fixed) {
        return [&whole, &shaft, &limits, fixed](std::int64_t um) {
            MountedRange part;
            part.lowest.value = std::min(fixed, Length::micrometres(um));
            part.highest.value = std::max(fixed, Length::micrometres(um));
            return serves(whole, shaft, box_of(part), limits);
        };
    };
    const Length low = range.lowest.value;
    const Length high = range.highest.value;
    LiftServed served;
    if (const auto um = furthest_served(low.um(), high.um(), from(low))) served.up_to = Length::micrometres(*um);
    if (const auto um = furthest_served(high.um(), low.um(), from(high))) served.down_to = Length::micrometres(*um);
    return served;
}

std::optional<Length> pin_move_served(const Trailed& machine, const HitchShaft& shaft, const TrailedRange& range,
                                      const ShaftLimits& limits)
{
    const Box box = box_of(range);
    const auto serves_at = [&](std::int64_t tenths) {
        return serves(with_pin_moved(machine, Length::micrometres(100 * tenths)), shaft, box, limits);
    };
    for (const Length move : moves_outwards(machine, serve_step)) {
        const std::int64_t tenths = move.um() / 100;
        if (!serves_at(tenths)) continue;
        if (tenths == 0) return move;
        const std::int64_t towards = tenths - (tenths > 0 ? 1 : -1) * static_cast<std::int64_t>(serve_step * 10);
        return Length::micrometres(100 * furthest_served(tenths, towards, serves_at).value());
    }
    return std::nullopt;
}

}  // namespace shaftcut

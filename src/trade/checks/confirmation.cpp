#include "shaftcut/trade/checks/confirmation.hpp"

#include <algorithm>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

constexpr PerEach<Tube, Confirmed> per_tube(Confirmed inner, Confirmed outer)
{
    PerEach<Tube, Confirmed> each;
    each[Tube::inner] = inner;
    each[Tube::outer] = outer;
    return each;
}
constexpr auto half_of = per_tube(Confirmed::inner_half, Confirmed::outer_half);
constexpr auto shoulder_of = per_tube(Confirmed::inner_shoulder, Confirmed::outer_shoulder);
constexpr auto guard_of = per_tube(Confirmed::inner_guard, Confirmed::outer_guard);

// What is asked for a length; the figures are put behind it.
struct Asked {
    Confirmed what;
    std::string measure, why;
};

// Collects them, each length once.
class Confirmations {
public:
    Confirmations(const CheckInput& input, Length tape) : input_(input), tape_(tape) {}

    void length(const Asked& asked, const Toleranced& figure)
    {
        if (std::any_of(found_.begin(), found_.end(), [&](const Confirmation& one) { return one.what == asked.what; })) return;
        const Length plus_minus = figure.plus_minus + tape_;
        found_.push_back({asked.what, figure.value, plus_minus,
                          asked.measure + ": expected " + figure_with_unit(figure.value, input_.units, Toward::nearest) + " ± " +
                              figure_with_unit(plus_minus, input_.units, Toward::down) + ". " + asked.why});
    }
    void look(Confirmed what, std::string says) { found_.push_back({what, std::nullopt, std::nullopt, std::move(says)}); }

    std::vector<Confirmation> in_order()
    {
        std::stable_sort(found_.begin(), found_.end(), [](const Confirmation& a, const Confirmation& b) { return a.what < b.what; });
        return std::move(found_);
    }

private:
    const CheckInput& input_;
    Length tape_;
    std::vector<Confirmation> found_;
};

std::string half_measured(Tube tube) { return std::string(tube == Tube::inner ? "Inner" : "Outer") + " half, centre of its inner cross to the tube's free end"; }

std::string closed_measured(const ShaftReading& reading)
{
    if (!reading.has_wide_angle) return "Closed length, pushed fully together";
    return std::string("Closed length, pushed fully together, from the ") + (reading.reference == Reference::outer_cross ? "outer" : "inner") + " cross of the wide-angle joint";
}

void confirm_halves(Confirmations& found, const CheckInput& input)
{
    const Length setback = input.limits.length(Limit::guard_setback);
    for (const Tube tube : both_tubes) {
        const Half& half = input.reading.shaft.halves[tube];
        const Asked asked{half_of[tube], half_measured(tube), ""};
        if (!half.measured) found.length({asked.what, asked.measure, "It was not measured: the cut rests on the closed length and its series."}, *half.length);
        else if (half_to_confirm(input.reading.shaft, *input.stops, tube, setback))
            found.length({asked.what, asked.measure, "It is short by its own figure alone."}, *half.length);
    }
}

void confirm_stops(Confirmations& found, const CheckInput& input)
{
    for (const Tube tube : both_tubes) {
        if (!stop_to_confirm(input.reading.shaft, *input.stops, tube)) continue;
        const std::string measure = std::string(tube == Tube::inner ? "Inner" : "Outer") + " half's shoulder, centre of its inner cross to the face that stops the other tube";
        found.length({shoulder_of[tube], measure, "No other figure bears it out: too short a cut would let the shaft bottom."}, *input.reading.shaft.halves[tube].shoulder);
    }
}

// Whether some half's length and the stop that it meets are both stated: then the halves tell which cross was meant.
bool halves_tell_cross(const Stops& stops)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return stops.path[tube].known; });
}

void confirm_cross(Confirmations& found, const CheckInput& input)
{
    const auto& halves = input.reading.shaft.halves;
    const bool any_measured = halves[Tube::inner].measured || halves[Tube::outer].measured;
    if (!input.reading.has_wide_angle || !any_measured || halves_tell_cross(*input.stops)) return;
    found.length({Confirmed::closed_inner_cross, "Closed length, pushed fully together, between the inner crosses",
                  "No other figure tells from which cross of the wide-angle joint the closed length was measured."},
                 input.reading.shaft.closed);
}

void confirm_disagreement(Confirmations& found, const CheckInput& input)
{
    if (input.stops->agreement == ClosedAgreement::agrees) return;
    const std::string why = "The closed length and the halves disagree.";
    found.length({Confirmed::closed, closed_measured(input.reading), why}, input.reading.closed);
    for (const Tube tube : both_tubes)
        if (input.stops->in_model[tube]) found.length({half_of[tube], half_measured(tube), why}, *input.reading.shaft.halves[tube].length);
}

void confirm_guards(Confirmations& found, const CheckInput& input)
{
    const Length setback = input.limits.length(Limit::guard_setback);
    for (const Tube tube : both_tubes) {
        const Half& half = input.reading.shaft.halves[tube];
        if (half.guard || !half.guard_used) continue;
        found.look(guard_of[tube], std::string(tube == Tube::inner ? "Inner" : "Outer") + " guard: its tube stands out of it by 0 to " +
                                       figure_with_unit(setback, input.units, Toward::down) + ". The guard was not measured and is cut as its tube is.");
    }
}

void confirm_year(Confirmations& found, const CheckInput& input)
{
    const JobShaft& shaft = input.job.shaft;
    const auto exposed = [&](End end) { return shaft.ends[end].lock && is_exposed(*shaft.ends[end].lock); };
    if (shaft.role != Role::primary || shaft.built || std::none_of(both_ends.begin(), both_ends.end(), exposed)) return;
    found.look(Confirmed::built, "Year of building: before 2021, by the plate, or by the owner's word and whose. From 2021 on no part of a lock may stand out (EN 12965:2019).");
}

}  // namespace

std::vector<Confirmation> confirmations(const CheckInput& input, Length tape)
{
    Confirmations found(input, tape);
    confirm_disagreement(found, input);
    confirm_cross(found, input);
    confirm_halves(found, input);
    confirm_stops(found, input);
    confirm_guards(found, input);
    confirm_year(found, input);
    return found.in_order();
}

}  // namespace shaftcut

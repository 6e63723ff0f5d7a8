#include "shaftcut/trade/checks/confirmation.hpp"

#include <algorithm>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {


// Collects them, each length once.
class Confirmations {
public:
    explicit Confirmations(Length tape) : tape_(tape) {}

    void length(Confirmed what, ConfirmedFor why, const Toleranced& figure, std::optional<Reference> from = {})
    {
        if (std::any_of(found_.begin(), found_.end(), [&](const Confirmation& one) { return one.what == what; })) return;
        found_.push_back({what, why, figure.value, figure.plus_minus + tape_, from, {}});
    }
    void look(Confirmed what, ConfirmedFor why, std::optional<Length> setback = {}) { found_.push_back({what, why, {}, {}, {}, setback}); }

    std::vector<Confirmation> in_order()
    {
        std::stable_sort(found_.begin(), found_.end(), [](const Confirmation& a, const Confirmation& b) { return a.what < b.what; });
        return std::move(found_);
    }

private:
    Length tape_;
    std::vector<Confirmation> found_;
};

void confirm_halves(Confirmations& found, const CheckInput& input)
{
    const Length setback = input.limits.length(Limit::guard_setback);
    for (const Tube tube : both_tubes) {
        const Half& half = input.reading.shaft.halves[tube];
        if (!half.measured) found.length(confirmed_half[tube], ConfirmedFor::half_not_measured, *half.length);
        else if (half_to_confirm(input.reading.shaft, *input.stops, tube, setback)) found.length(confirmed_half[tube], ConfirmedFor::half_short_alone, *half.length);
    }
}

void confirm_stops(Confirmations& found, const CheckInput& input)
{
    for (const Tube tube : both_tubes) {
        const Half& half = input.reading.shaft.halves[tube];
        if (!stop_to_confirm(input.reading.shaft, *input.stops, tube)) continue;
        found.length(confirmed_shoulder[tube], stops_by_measures(half) ? ConfirmedFor::stop_by_measures : ConfirmedFor::stop_alone, *half.shoulder);
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
    found.length(Confirmed::closed_inner_cross, ConfirmedFor::cross_not_known, input.reading.shaft.closed);
}

void confirm_disagreement(Confirmations& found, const CheckInput& input)
{
    if (input.stops->agreement == ClosedAgreement::agrees) return;
    const auto from = input.reading.has_wide_angle ? std::optional(input.reading.reference) : std::nullopt;
    found.length(Confirmed::closed, ConfirmedFor::disagreement, input.reading.closed, from);
    for (const Tube tube : both_tubes)
        if (input.stops->in_model[tube]) found.length(confirmed_half[tube], ConfirmedFor::disagreement, *input.reading.shaft.halves[tube].length);
}

void confirm_guards(Confirmations& found, const CheckInput& input)
{
    const Length setback = input.limits.length(Limit::guard_setback);
    for (const Tube tube : both_tubes) {
        const Half& half = input.reading.shaft.halves[tube];
        if (!half.guard && half.guard_used) found.look(confirmed_guard[tube], ConfirmedFor::guard_not_measured, setback);
    }
}

void confirm_year(Confirmations& found, const CheckInput& input)
{
    if (year_to_confirm(input.job.shaft)) found.look(Confirmed::built, ConfirmedFor::year_not_stated);
}

}  // namespace

std::vector<Confirmation> confirmations(const CheckInput& input, Length tape)
{
    Confirmations found(tape);
    confirm_disagreement(found, input);
    confirm_cross(found, input);
    confirm_halves(found, input);
    confirm_stops(found, input);
    confirm_guards(found, input);
    confirm_year(found, input);
    return found.in_order();
}

bool year_to_confirm(const JobShaft& shaft)
{
    const auto exposed = [&](End end) { return shaft.ends[end].lock && is_exposed(*shaft.ends[end].lock); };
    return shaft.role == Role::primary && !shaft.built && std::any_of(both_ends.begin(), both_ends.end(), exposed);
}

}  // namespace shaftcut

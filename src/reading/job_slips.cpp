// What a slip of the pen was found to be, as the change that mends it.
#include <algorithm>

#include "data/slip_limits.hpp"
#include "job_changes_of.hpp"

namespace shaftcut {

// Where that alone explains it: of two wide-angle joints one may have been read at either. Each fit stays read as it was stated.
std::optional<JobChoice> ChangesOf::read_from_other_cross(const std::vector<Length>& expected, Length within) const
{
    const ShaftReading& reading = order_.reading;
    const Length beyond = reading.closed_at[Reference::outer_cross] - reading.closed_at[Reference::inner_cross];
    const Reference cross = reading.reference == Reference::inner_cross ? Reference::outer_cross : Reference::inner_cross;
    const Length closed = reading.closed.value - (cross == Reference::outer_cross ? beyond : Length());
    const auto is_it = [&](Length one) { return !clearly_above(closed - one, within) && !clearly_above(one - closed, within); };
    if (std::none_of(expected.begin(), expected.end(), is_it)) return std::nullopt;
    JobChoice choice{ReadFrom{cross}, {{"shaft/closed@reference", to_word(cross)}}};
    for (std::size_t i = 0; i < order_.fits.size(); ++i)
        if (order_.fits[i].between == Between::crosses) choice.changes.push_back({fit_path(i) + "@reference", to_word(order_.fits[i].reference)});
    return choice;
}

JobChoice ChangesOf::exchanged() const
{
    JobChoice choice{HalvesOtherWayRound{}, {}};
    for (const Tube tube : both_tubes) {
        const JobHalf &half = order_.shaft.halves[tube], &from = order_.shaft.halves[other(tube)];
        const auto put = [&](const char* attribute, const std::optional<Measurement>& now, const std::optional<Measurement>& then) {
            if (now || then) choice.changes.push_back({half_path(tube) + attribute, then ? std::optional(written(then->length)) : std::nullopt});
        };
        put("@length", half.length, from.length);
        if (half.guard_use == GuardUse::kept && from.guard_use == GuardUse::kept) put("@guard", half.guard, from.guard);
    }
    return choice;
}

std::optional<JobChoice> ChangesOf::slip(const CheckFinding& finding) const
{
    if (std::holds_alternative<ReadAtOtherCross>(finding)) return read_from_other_cross({order_.stops.value().modelled}, order_.stops->allowance);
    if (std::holds_alternative<ListedAtOtherCross>(finding)) return read_from_other_cross(order_.listed_closed, order_.reading.closed.plus_minus + beside_a_listed_length);
    if (std::holds_alternative<HalvesExchanged>(finding)) return exchanged();
    return std::nullopt;
}

// Where the job states it; nothing for what follows from other figures.
std::optional<std::string> ChangesOf::path_of(const StatedFigure& figure) const
{
    switch (figure.of) {
    case FigureOf::closed:
    case FigureOf::closed_between_inner_crosses: return "shaft/closed@length";
    case FigureOf::half: return half_path(figure.tube) + "@length";
    case FigureOf::guard_half: return half_path(figure.tube) + "@guard";
    default: break;
    }
    for (std::size_t i = 0; i < order_.fits.size(); ++i) {
        const FitReading& fit = order_.fits[i];
        if (figure.of == FigureOf::shortest && fit.shortest && fit.fit.shortest_place == figure.place) return fit_path(i) + "/shortest@length";
        if (figure.of == FigureOf::longest && fit.longest[figure.range] && fit.fit.longest_places[figure.range] == figure.place) return longest_path(i, figure.range) + "@length";
    }
    return std::nullopt;
}

// All figures at once: one who reads a tape in the wrong unit does so throughout.
std::optional<JobChoice> ChangesOf::unit_slip(const std::vector<CheckFinding>& findings) const
{
    JobChoice choice;
    for (const CheckFinding& finding : findings) {
        const auto* out = std::get_if<OutOfBounds>(&finding);
        if (!out || (!out->if_inches && !out->if_millimetres)) continue;
        const auto path = path_of(out->figure);
        if (!path) return std::nullopt;
        choice.of = InOtherUnit{out->if_inches ? Units::in : Units::mm};
        choice.changes.push_back({*path, written(out->if_inches ? *out->if_inches : *out->if_millimetres)});
    }
    return choice.changes.empty() ? std::nullopt : std::optional(choice);
}

// What a slip of the pen was found to be.
std::vector<JobChoice> ChangesOf::slips() const
{
    const auto& findings = check_of(order_.checks, CheckId::consistency).contradictions;
    std::vector<JobChoice> choices;
    for (const CheckFinding& finding : findings)
        if (auto choice = slip(finding)) choices.push_back(std::move(*choice));
    if (auto unit = unit_slip(findings)) choices.push_back(std::move(*unit));
    return choices;
}

}  // namespace shaftcut

// What the workbook looks for in the check on consistency: contradictions and doubts, each as a clause that stands behind
// "Contradiction:" or "Doubt:".
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

// The sentence; `more`: what is put behind it, a sentence with a blank before it or a formula that gives one; may be empty.
std::string contradiction_or_doubt(bool refuses, const std::string& clause, const std::string& more, const Wording& w);
// What it does to the job.
std::string consequence(bool refuses, const Wording& w);

enum class FindingClause {
    unreadable, spacing_out_of_bounds, halves_do_not_meet, angles_contradict, fit_unusable, one_tractor_contradicts, read_in_line, geometry_disputed, limits_loosened,
    closed_disagrees, exchanged, perhaps_exchanged, closed_unlisted
};
std::string clause(FindingClause which, const Wording& w);

std::string longest_below_shortest(Range range, const Wording& w);
std::string longest_below_longest(Range range, Range other, const Wording& w);
std::string longest_below_longest_both_measured(Range range, Range other, const Wording& w);
std::string half_not_below_closed(Tube tube, const Wording& w);
std::string guard_half_not_below_closed(Tube tube, const Wording& w);
std::string half_within_its_seat(Tube tube, const Wording& w);
// What an earlier sheet kept of a half.
std::string half_below_cut_to(Tube tube, const Wording& w);
std::string cut_to_within_seat(Tube tube, const Wording& w);
// A range, nothing for the shortest.
std::string fit_read_in_line(Range range, const Wording& w);
std::string geometry_goes_past(std::optional<Range> range, const Wording& w);
std::string geometry_cannot_reach(std::optional<Range> range, const Wording& w);

// A length that no shaft has.
enum class BoundedLength { closed, half, guard_half, shoulder, derived_shoulder, fit };
struct OutOfBounds {
    BoundedLength length = BoundedLength::closed;
    std::optional<Tube> tube;    // of a half's
    std::optional<Range> range;  // of a fit's; nothing: its shortest
    Length least, greatest;
};
std::string out_of_bounds(const OutOfBounds& found, const Wording& w);
// Behind that sentence: whether its unit is right, where that alone explains it.
std::string asks_for_unit(Units measured_in, const Wording& w);

std::string shoulder_below_least(Tube tube, const Wording& w);
std::string shoulder_unlike_series(Tube tube, const Wording& w);
std::string shoulder_alone(Tube tube, const Wording& w);
// Behind the sentence that the closed length disagrees.
std::string guards_stop_it(const Wording& w);
std::string seems_from_other_cross(Reference other, const Wording& w);
std::string listed_from_other_cross(Reference other, const Wording& w);

}  // namespace shaftcut::workbook

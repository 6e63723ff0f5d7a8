// What the parts of the consistency check share. Private to it.
#pragma once

#include "checks/check_parts.hpp"

namespace shaftcut {

// What contradicts, which refuses, and what is doubtful, which warns.
struct Findings {
    std::vector<CheckFinding> contradictions;
    std::vector<CheckFinding> doubts;
};

// The closed length between the inner crosses; as stated, at its own reference.
StatedFigure closed_figure(const CheckInput& input);
StatedFigure closed_as_stated(const CheckInput& input);
StatedFigure half_figure(const CheckInput& input, Tube tube);
StatedFigure longest_figure(const Fit& fit, Range range);
// At `otherwise` where the job states no place of its own for it.
StatedFigure guard_figure(const Half& half, Tube tube, const Place& otherwise);

// What halves, shoulders and the closed length say of each other.
void compare_stops(Findings& found, const CheckInput& input);

// A closed length, or halves, that fit as soon as they are read at the other cross, or exchanged.
void find_readings_elsewhere(Findings& found, const CheckInput& input);

// Lengths that no shaft has, and those that are one in the other unit.
void find_out_of_bounds(Findings& found, const CheckInput& input);

}  // namespace shaftcut

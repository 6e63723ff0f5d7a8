// Shortest and longest telescoping lengths, greatest joint angles and greatest irregularity of a shaft over the whole range
// of a machine's movement, each with the position where it occurs.
#pragma once

#include <optional>
#include <variant>
#include <vector>

#include "shaftcut/trade/hitch/extremes.hpp"
#include "shaftcut/trade/hitch/findings.hpp"
#include "shaftcut/trade/hitch/influence.hpp"
#include "shaftcut/trade/hitch/placement.hpp"

namespace shaftcut {

struct ExtremeLength {
    Length length;                      // telescoping length
    Posture at;
    Length plus_minus;                  // worst case: the sum of the effects
    std::vector<Influence> influences;  // of every dimension, the greatest effect first
};

struct ExtremeAngle {
    Angle angle;
    Posture at;
};

struct ExtremeIrregularity {
    std::optional<double> percent;  // empty where a standard joint is bent to 90 degrees or more: it cannot turn
    Posture at;
};

struct RangeExtremes {
    ExtremeLength shortest;
    ExtremeLength longest;
    ExtremeAngle tractor;    // greatest joint angle at the tractor end
    ExtremeAngle implement;
};

struct OperatingLengths {
    ExtremeLength shortest;  // over all ranges
    Ranges<RangeExtremes> ranges;
    // Greatest over the working range, put together rightly and one phase step wrong (to the worse side).
    // Both empty where there is no working range.
    std::optional<ExtremeIrregularity> irregularity;
    std::optional<ExtremeIrregularity> irregularity_out_of_phase;
};

// `measuring` is the plus or minus of every length that states none.
// Extremes are exact to 0.01 mm and 0.01 degrees wherever in the ranges they lie.
// Problems: those of geometry_problems(), and no_answer_problem() for each range with a position that has no answer.
// Checked against closed forms, dense grids over random machines and an independent optimiser.
std::variant<OperatingLengths, HitchProblems> operating_lengths(const Machine& machine, const HitchShaft& shaft, Length measuring);

// A range as a box for greatest(): turn, pitch and roll in radians, or the height in mm, the grid fine enough to part the
// hills of a length, an angle or an irregularity.
Box box_of(const TrailedRange& range);
Box box_of(const MountedRange& range);

// Each grows with what it is named for; closeness is that of the inner crosses.
enum class Quantity { closeness, length, tractor_angle, implement_angle };

// A smooth measure of the quantity, for greatest(): the length or minus the length in mm, or |axis - along| squared.
// Empty where shaft_in_place() is. The function refers to the machine and the shaft, which must outlive it.
BoxFunction measure_of(Quantity quantity, const Machine& machine, const HitchShaft& shaft);

// The joint angle that an angle's measure stands for.
Angle angle_of_measure(double measure);

}  // namespace shaftcut

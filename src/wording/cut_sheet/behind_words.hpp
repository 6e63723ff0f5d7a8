// What the sheets behind sheet 1 say with figures: how each length was read, and what the job states.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut::cut_sheet {

// Where a length was measured: what it runs between, the position as the job names it (may be empty), and the joint angles at which it
// was read; those in line are 0.
enum class Run { grooves, outer_cross, inner_cross, crosses };
Run run_of(const ShaftReading& reading, Between between, Reference reference);
struct Measured {
    Toleranced length;
    Rounded as = Rounded::measured;
    Run run = Run::crosses;
    std::string at;
    PerEach<End, Angle> angles;
};
// "742 mm ± 1 mm at the outer cross, turned left to the stop, read at joint angles of 12° and 3°".
std::string reading(const Measured& measured, const Wording& w);
// The closed length, which a series may state at the outer cross too.
std::string closed_reading(const ShaftReading& reading, const Wording& w);
std::string half_reading(const Toleranced& length, bool measured, const Wording& w);

// Names of rows. `tractor`: whose fit it is where there are several; may be empty.
std::string shortest_name(const std::string& tractor, const Wording& w);
std::string longest_name(const std::string& tractor, Range range, const Wording& w);
std::string closed_name(const Wording& w);
std::string half_part_name(End end, Tube tube, bool guard, const Wording& w);  // "tractor half, guard"

std::string half_row(End end, const Wording& w);        // "tractor half"
std::string half_guard_row(End end, const Wording& w);  // "tractor half's guard"
std::string half_stop_row(End end, const Wording& w);
std::string joint_row(End end, const Wording& w);       // "tractor joint"
std::string joint_angle_row(const std::string& tractor, End end, Range range, const Wording& w);
std::string of_series(const std::string& series, const Wording& w);
// `shoulder`: what the depth gives, from the cross of this joint.
std::string stop_depth(Length depth, const std::optional<Length>& shoulder, JointKind joint, const Wording& w);
std::string joint_lengths(const JobEnd& stated, const Wording& w);  // empty where none is stated
std::string seen_in_two_views(const std::optional<Angle>& angle, const AngleViews& views, const Wording& w);

std::string power_at_pto(std::int64_t watts, const Wording& w);  // "30 kW at the PTO"
std::string telephone(const std::string& number, const Wording& w);
std::string not_measured(const std::vector<std::string>& tractors, const Wording& w);
std::string measured_by(const MeasuredBy& by, const Wording& w);
std::string loosened(const std::string& why, const std::string& by, const Wording& w);

// "a, b": those that are not empty.
std::string one_by_one(const std::vector<std::string>& parts);

}  // namespace shaftcut::cut_sheet

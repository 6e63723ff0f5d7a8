// What the check functions share. Private to the trade layer's checks.
#pragma once

#include <string>

#include "checks/check_rules.hpp"

namespace shaftcut {

inline constexpr int lock_rule_from = 2021;  // year of building from which no lock part may protrude: EN 12965:2019

// Watts that the series carries at this speed, by the rule for speeds that it does not state; nothing where it states no rating.
std::optional<std::int64_t> rated_power(const Series& series, int speed);

// The least overlap at this range's longest, of a shaft that overlaps by `closed_overlap` when it is closed.
Length least_overlap(const LimitsInForce& limits, Range range, Length closed_overlap);

// The greatest angle at which a joint does not fail in this range. A working position turns, so it is held to the turning limit
// too, and no joint folds past a right angle.
Angle greatest_angle(const LimitsInForce& limits, JointKind joint, Range range);

// A check that could not be made, and why.
Check not_checked(CheckId id, NotCheckedReason reason);

// A check that was made, with no figures yet.
Check passed(CheckId id, CheckUnit unit);

// A length check with its figures in micrometres.
Check length_check(CheckId id, std::optional<Length> value, std::optional<Length> worst, std::optional<Length> limit);

// A check of a range that some fits leave out: known only as at least what the others state, it can fail and cannot pass.
Check known_as_least(Check check, const CheckInput& input, Range range);

// Why no cut can be computed.
PlainReason no_plan_reason(const CheckInput& input);

// Sets the result to the worse of what it is and `result` (pass < not-checked < warn < fail).
void at_least(Check& check, CheckResult result);

}  // namespace shaftcut

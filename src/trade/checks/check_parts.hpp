// What the check functions share. Private to the trade layer's checks.
#pragma once

#include <string>

#include "checks/check_rules.hpp"

namespace shaftcut {

// Watts that the series carries at this speed, by the rule for speeds that it does not state; nothing where it states no rating.
std::optional<std::int64_t> rated_power(const Series& series, int speed);

// "30 kW".
std::string kilowatts(std::int64_t watts);

// The least overlap at this range's longest, of a shaft that overlaps by `closed_overlap` when it is closed.
Length least_overlap(const LimitsInForce& limits, Range range, Length closed_overlap);

// The greatest angle at which a joint does not fail in this range. A working position turns, so it is held to the turning limit
// too, and no joint folds past a right angle.
Angle greatest_angle(const LimitsInForce& limits, JointKind joint, Range range);

// A check that could not be made, and why.
Check not_checked(CheckId id, const std::string& reason);

// A length check with its figures in micrometres.
Check length_check(CheckId id, std::optional<Length> value, std::optional<Length> worst, std::optional<Length> limit);

// A length in a sentence, in inches with its millimetres beside. Values and their limits are rounded alike, so that equal ones print
// alike. Overlaps and clearances, which most are, are rounded in one direction.
std::string value_text(const CheckInput& input, Length length, Rounded as = Rounded::overlap);
std::string limit_text(const CheckInput& input, Length length, Rounded as = Rounded::overlap);
// A length beside another that decides about it: to 0.1 mm where that shows which is the greater, else to 0.001 mm.
std::string text_beside(const CheckInput& input, Length length, Length other, Rounded as = Rounded::overlap);
// How far below 0 the length is.
std::string below_zero_text(const CheckInput& input, Length length, Length other, Rounded as = Rounded::overlap);

// A check of a range that some fits leave out: known only as at least what the others state, it can fail and cannot pass.
Check known_as_least(Check check, const CheckInput& input, Range range);

// Why no length is compared with the shortest: a shaft made to order by its closed length alone has none.
inline constexpr const char* no_shortest = "no shortest length is given";

// "the tractor end".
std::string end_named(End end);

// The sum of sentences with a space between them.
std::string joined(const std::vector<std::string>& sentences);

// Why no cut can be computed.
std::string no_plan_reason(const CheckInput& input);

// Sets the result to the worse of what it is and `result` (pass < not-checked < warn < fail).
void at_least(Check& check, CheckResult result);

}  // namespace shaftcut

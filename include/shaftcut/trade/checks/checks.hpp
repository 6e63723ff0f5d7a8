// Everything that must hold after the cut, each check with its value, worst case, limit and basis.
#pragma once

#include <optional>
#include <vector>

#include "shaftcut/trade/checks/findings.hpp"
#include "shaftcut/trade/cut/cut.hpp"
#include "shaftcut/trade/cut/datum.hpp"
#include "shaftcut/trade/data/limits.hpp"
#include "shaftcut/trade/data/rounding.hpp"

namespace shaftcut {

enum class CheckId {
    consistency, closing_clearance, overlap_working, overlap_turning, overlap_standing, tube_left, shortening_allowed,
    guard_clearance, guard_cover, guard_setback, joint_angle_tractor, joint_angle_implement, irregularity, locking, connection,
    overload_device, rating, condition
};
template <> struct Words<CheckId> {
    static constexpr std::array all{"consistency", "closing-clearance", "overlap-working", "overlap-turning", "overlap-standing",
                                    "tube-left", "shortening-allowed", "guard-clearance", "guard-cover", "guard-setback",
                                    "joint-angle-tractor", "joint-angle-implement", "irregularity", "locking", "connection",
                                    "overload-device", "rating", "condition"};
};

constexpr CheckId overlap_check_id(Range range)
{
    return range == Range::working ? CheckId::overlap_working : range == Range::turning ? CheckId::overlap_turning : CheckId::overlap_standing;
}
constexpr CheckId joint_angle_check_id(End end) { return end == End::tractor ? CheckId::joint_angle_tractor : CheckId::joint_angle_implement; }

enum class CheckResult { pass, warn, fail, not_checked };
template <> struct Words<CheckResult> { static constexpr std::array all{"pass", "warn", "fail", "not-checked"}; };

// Of a check's figures, which are thousandths of it: micrometres, thousandths of a degree, of a per cent or of a kilowatt.
enum class CheckUnit { none, mm, deg, percent, kilowatt };
template <> struct Words<CheckUnit> { static constexpr std::array all{"", "mm", "deg", "percent", "kW"}; };

struct Check {
    CheckId id = CheckId::consistency;
    CheckResult result = CheckResult::not_checked;
    CheckUnit unit = CheckUnit::none;
    std::optional<std::int64_t> value, worst, limit;  // thousandths of `unit`
    std::vector<CheckFinding> contradictions;  // each a reason to refuse by itself; said before the others; may be empty
    std::vector<CheckFinding> findings;        // what else was found; together never empty
    std::vector<CheckBasis> basis;             // the limit's source, how the value is computed; for not-checked, the reason
};

// All that a check may look at.
struct CheckInput {
    const Job& job;
    const Catalogue& catalogue;
    const Series* series;  // null for a shaft of no known series
    const LimitsInForce& limits;
    const SawSettings& saw;
    const ShaftReading& reading;
    const std::vector<FitReading>& fits;
    const Fit& fit;  // the deciding one
    const std::optional<Stops>& stops;
    const std::optional<CutPlan>& plan;
    bool new_shaft = false;  // made to order: nothing of it was measured, and there is no length where it cannot be built
};

// One check for each id, in the order of the enumerators.
std::vector<Check> run_checks(const CheckInput& input);

// What a check's value, its worst case and its limit are, where they are lengths: each is rounded accordingly.
constexpr Rounded rounded_as(CheckId id)
{
    switch (id) {
    case CheckId::closing_clearance:
    case CheckId::guard_clearance: return Rounded::clearance;
    case CheckId::tube_left: return Rounded::kept;
    case CheckId::guard_setback: return Rounded::setback;
    default: return Rounded::overlap;
    }
}

inline const Check& check_of(const std::vector<Check>& checks, CheckId id) { return checks[static_cast<std::size_t>(id)]; }

bool any_failed(const std::vector<Check>& checks);

}  // namespace shaftcut

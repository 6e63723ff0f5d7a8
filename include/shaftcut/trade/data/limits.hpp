// The limits that a shaft is held to: their names, units and defaults. Where each default comes from is said in
// src/wording/checks/limit_words.cpp.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "shaftcut/trade/data/rounding.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

enum class Limit {
    closing_clearance, closing_clearance_floor, overlap_working, overlap_turning, least_overlap_turning, least_overlap_standing,
    guard_overlap, guard_setback, guard_setback_new, one_chain_shortening,
    angle_standard_working, angle_standard_turning, angle_standard_standing,
    angle_wide_working, angle_wide_turning, angle_wide_standing, irregularity
};
inline constexpr std::size_t limit_count = 17;

enum class LimitKind { length, fraction, angle, percent };

// A limit's value: micrometres, a fraction of the new closed overlap, thousandths of a degree or of a per cent, by its kind.
using LimitValue = Fraction;

struct LimitRow {
    Limit limit;
    const char* name;      // as files write it
    LimitKind kind;
    LimitValue standard;   // the default
    bool greater_is_looser;
};

// One row for each limit, in the order of the enumerators.
const std::array<LimitRow, limit_count>& limit_rows();
const LimitRow& row_of(Limit limit);

// The limit that a joint's angle in this range is held to.
Limit angle_limit(JointKind joint, Range range);

struct LimitSetting {
    LimitValue value;
    Place place;
};

// The limits that one place (a job, a series, the workshop) sets.
class Limits {
public:
    std::optional<LimitSetting>& operator[](Limit limit) { return settings_[static_cast<std::size_t>(limit)]; }
    const std::optional<LimitSetting>& operator[](Limit limit) const { return settings_[static_cast<std::size_t>(limit)]; }

private:
    std::array<std::optional<LimitSetting>, limit_count> settings_{};
};

enum class LimitOrigin { job, series, workshop, standard };

struct LimitInForce {
    LimitValue value;
    LimitOrigin origin = LimitOrigin::standard;
    LimitValue workshop;  // what the workshop's configuration or else the default says
};

// Where a limit's value comes from.
struct LimitBasis {
    Limit limit;
    LimitOrigin origin;  // standard: the default, or the same figure set elsewhere, for its source does not change by writing it down
};

// The limits in force for one shaft: the job's, else the series', else the workshop's, else the default.
class LimitsInForce {
public:
    LimitsInForce() : LimitsInForce(Limits(), Limits(), Limits()) {}
    LimitsInForce(const Limits& job, const Limits& series, const Limits& workshop);

    const LimitInForce& operator[](Limit limit) const { return values_[static_cast<std::size_t>(limit)]; }
    Length length(Limit limit) const { return Length::micrometres((*this)[limit].value.numerator); }
    Angle angle(Limit limit) const { return Angle::millidegrees((*this)[limit].value.numerator); }
    Fraction fraction(Limit limit) const { return (*this)[limit].value; }
    LimitBasis basis(Limit limit) const;
    // Limits that the job sets looser than the workshop's.
    std::vector<Limit> loosened() const;

private:
    std::array<LimitInForce, limit_count> values_{};
};

// What a limit of lengths is held against: it is rounded alike.
Rounded rounded_as(Limit limit);

}  // namespace shaftcut

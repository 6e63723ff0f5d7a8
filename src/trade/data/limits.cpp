#include "shaftcut/trade/data/limits.hpp"

namespace shaftcut {
namespace {

constexpr LimitValue mm(std::int64_t n) { return {n * 1000, 1}; }
constexpr LimitValue deg(std::int64_t n) { return {n * 1000, 1}; }
constexpr LimitValue percent(std::int64_t n) { return {n * 1000, 1}; }

const std::array<LimitRow, limit_count> rows{{
    {Limit::closing_clearance, "closing-clearance", LimitKind::length, mm(40), false},
    {Limit::closing_clearance_floor, "closing-clearance-floor", LimitKind::length, mm(25), false},
    {Limit::overlap_working, "overlap-working", LimitKind::fraction, {1, 2}, false},
    {Limit::overlap_turning, "overlap-turning", LimitKind::fraction, {1, 3}, false},
    {Limit::least_overlap_turning, "least-overlap-turning", LimitKind::length, mm(150), false},
    {Limit::least_overlap_standing, "least-overlap-standing", LimitKind::length, mm(100), false},
    {Limit::guard_overlap, "guard-overlap", LimitKind::length, mm(50), false},
    {Limit::guard_setback, "guard-setback", LimitKind::length, mm(25), true},
    {Limit::guard_setback_new, "guard-setback-new", LimitKind::length, mm(10), true},
    {Limit::one_chain_shortening, "one-chain-shortening", LimitKind::length, mm(70), true},
    {Limit::angle_standard_working, "angle-standard-working", LimitKind::angle, deg(25), true},
    {Limit::angle_standard_turning, "angle-standard-turning", LimitKind::angle, deg(35), true},
    {Limit::angle_standard_standing, "angle-standard-standing", LimitKind::angle, deg(90), true},
    {Limit::angle_wide_working, "angle-wide-working", LimitKind::angle, deg(25), true},
    {Limit::angle_wide_turning, "angle-wide-turning", LimitKind::angle, deg(70), true},
    {Limit::angle_wide_standing, "angle-wide-standing", LimitKind::angle, deg(70), true},
    {Limit::irregularity, "irregularity", LimitKind::percent, percent(10), true},
}};

bool less(LimitValue a, LimitValue b) { return a.numerator * b.denominator < b.numerator * a.denominator; }

}  // namespace

const std::array<LimitRow, limit_count>& limit_rows() { return rows; }

const LimitRow& row_of(Limit limit) { return rows[static_cast<std::size_t>(limit)]; }

Limit angle_limit(JointKind joint, Range range)
{
    static constexpr std::array standard{Limit::angle_standard_working, Limit::angle_standard_turning, Limit::angle_standard_standing};
    static constexpr std::array wide{Limit::angle_wide_working, Limit::angle_wide_turning, Limit::angle_wide_standing};
    return (joint == JointKind::standard ? standard : wide)[static_cast<std::size_t>(range)];
}

LimitsInForce::LimitsInForce(const Limits& job, const Limits& series, const Limits& workshop)
{
    for (const LimitRow& row : rows) {
        LimitInForce& in_force = values_[static_cast<std::size_t>(row.limit)];
        in_force.workshop = workshop[row.limit] ? workshop[row.limit]->value : row.standard;
        in_force.value = in_force.workshop;
        if (workshop[row.limit]) in_force.origin = LimitOrigin::workshop;
        if (series[row.limit]) in_force = {series[row.limit]->value, LimitOrigin::series, in_force.workshop};
        if (job[row.limit]) in_force = {job[row.limit]->value, LimitOrigin::job, in_force.workshop};
    }
}

LimitBasis LimitsInForce::basis(Limit limit) const
{
    const LimitInForce& in_force = (*this)[limit];
    return {limit, in_force.value == row_of(limit).standard ? LimitOrigin::standard : in_force.origin};
}

std::vector<Limit> LimitsInForce::loosened() const
{
    std::vector<Limit> found;
    for (const LimitRow& row : rows) {
        const LimitInForce& in_force = (*this)[row.limit];
        if (in_force.origin != LimitOrigin::job) continue;
        const bool looser = row.greater_is_looser ? less(in_force.workshop, in_force.value) : less(in_force.value, in_force.workshop);
        if (looser) found.push_back(row.limit);
    }
    return found;
}

Rounded rounded_as(Limit limit)
{
    switch (limit) {
    case Limit::closing_clearance:
    case Limit::closing_clearance_floor: return Rounded::clearance;
    case Limit::guard_setback:
    case Limit::guard_setback_new: return Rounded::setback;
    case Limit::one_chain_shortening: return Rounded::cut;
    default: return Rounded::overlap;
    }
}

}  // namespace shaftcut

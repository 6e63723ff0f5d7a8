#include "shaftcut/trade/data/limits.hpp"

#include <string>

namespace shaftcut {
namespace {

constexpr LimitValue mm(std::int64_t n) { return {n * 1000, 1}; }
constexpr LimitValue deg(std::int64_t n) { return {n * 1000, 1}; }
constexpr LimitValue percent(std::int64_t n) { return {n * 1000, 1}; }

constexpr const char* practice_clearance = "common practice (about 22 manuals and guides: 12 to 75 mm, most 40)";
constexpr const char* practice_floor = "common practice (next most common clearance)";
constexpr const char* practice_overlap = "common practice; here of the new closed overlap, publications differ in what they take it of";
constexpr const char* practice_least = "common practice (most manuals that state a length)";
constexpr const char* own_choice = "the project's own choice, no published figure was found";
constexpr const char* setback = "an implement manual (25 mm short of the drive tube at most)";
constexpr const char* one_chain = "one user handbook (about 70 mm)";
constexpr const char* practice_25 = "common practice";
constexpr const char* manuals_35 = "two manuals";
constexpr const char* manual_90 = "published practice";
constexpr const char* manuals_70 = "two manuals";

const std::array<LimitRow, limit_count> rows{{
    {Limit::closing_clearance, "closing-clearance", LimitKind::length, mm(40), false, practice_clearance},
    {Limit::closing_clearance_floor, "closing-clearance-floor", LimitKind::length, mm(25), false, practice_floor},
    {Limit::overlap_working, "overlap-working", LimitKind::fraction, {1, 2}, false, practice_overlap},
    {Limit::overlap_turning, "overlap-turning", LimitKind::fraction, {1, 3}, false, practice_overlap},
    {Limit::least_overlap_turning, "least-overlap-turning", LimitKind::length, mm(150), false, practice_least},
    {Limit::least_overlap_standing, "least-overlap-standing", LimitKind::length, mm(100), false, own_choice},
    {Limit::guard_overlap, "guard-overlap", LimitKind::length, mm(50), false, own_choice},
    {Limit::guard_setback, "guard-setback", LimitKind::length, mm(25), true, setback},
    {Limit::guard_setback_new, "guard-setback-new", LimitKind::length, mm(10), true, own_choice},
    {Limit::one_chain_shortening, "one-chain-shortening", LimitKind::length, mm(70), true, one_chain},
    {Limit::angle_standard_working, "angle-standard-working", LimitKind::angle, deg(25), true, practice_25},
    {Limit::angle_standard_turning, "angle-standard-turning", LimitKind::angle, deg(35), true, manuals_35},
    {Limit::angle_standard_standing, "angle-standard-standing", LimitKind::angle, deg(90), true, manual_90},
    {Limit::angle_wide_working, "angle-wide-working", LimitKind::angle, deg(25), true, practice_25},
    {Limit::angle_wide_turning, "angle-wide-turning", LimitKind::angle, deg(70), true, manuals_70},
    {Limit::angle_wide_standing, "angle-wide-standing", LimitKind::angle, deg(70), true, manuals_70},
    {Limit::irregularity, "irregularity", LimitKind::percent, percent(10), true, own_choice},
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

std::string LimitsInForce::basis(Limit limit) const
{
    const LimitInForce& in_force = (*this)[limit];
    const LimitRow& row = row_of(limit);
    // A configured figure that is the default's keeps the default's basis: the source does not change by writing it down.
    if (in_force.origin == LimitOrigin::standard || in_force.value == row.standard) return row.basis;
    switch (in_force.origin) {
    case LimitOrigin::job: return "set by the job";
    case LimitOrigin::series: return "set by the series";
    default: return "set by the workshop";
    }
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

std::string limit_text(Limit limit, LimitValue value, Units units)
{
    const std::string thousandths = figure(Length::micrometres(value.numerator), Units::mm, Toward::nearest, 3);
    switch (row_of(limit).kind) {
    case LimitKind::length: return figure_of_with_unit(rounded_as(limit), Length::micrometres(value.numerator), units);
    case LimitKind::angle: return thousandths + "°";
    case LimitKind::percent: return thousandths + " %";
    case LimitKind::fraction: break;
    }
    return std::to_string(value.numerator) + "/" + std::to_string(value.denominator);
}

}  // namespace shaftcut

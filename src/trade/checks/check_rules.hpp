// The checks as a table, one row each: what is asked of "which checks ..." is a column of it. Documents hold their own rows to it.
#pragma once

#include <algorithm>
#include <array>

#include "shaftcut/trade/checks/checks.hpp"

namespace shaftcut {

using RunCheck = Check (*)(const CheckInput&);

Check check_consistency(const CheckInput& input);
Check check_closing_clearance(const CheckInput& input);
Check check_overlap_working(const CheckInput& input);
Check check_overlap_turning(const CheckInput& input);
Check check_overlap_standing(const CheckInput& input);
Check check_tube_left(const CheckInput& input);
Check check_tubes_left_of_new(const CheckInput& input);
Check check_shortening_allowed(const CheckInput& input);
Check check_guard_clearance(const CheckInput& input);
Check check_guard_cover(const CheckInput& input);
Check check_guard_setback(const CheckInput& input);
Check check_guard_setback_of_new(const CheckInput& input);
Check check_joint_angle_tractor(const CheckInput& input);
Check check_joint_angle_implement(const CheckInput& input);
Check check_irregularity(const CheckInput& input);
Check check_locking(const CheckInput& input);
Check check_connection(const CheckInput& input);
Check check_overload_device(const CheckInput& input);
Check check_rating(const CheckInput& input);
Check check_condition(const CheckInput& input);

struct CheckRule {
    CheckId id;
    CheckUnit unit;           // of its figures
    RunCheck run;             // of a shaft that exists
    RunCheck run_new;         // of a shaft made to order
    bool needs_lengths;       // says nothing of a shaft whose halves are not known
    bool needs_positions;     // says nothing of a shaft that is ordered by its closed length alone
    bool about_guard;
    bool mended_by_lengths;   // other tubes or positions could mend it
    bool follows_lengths;     // another length of shaft or position can change its result: the workbook computes it
    bool follows_machine;     // another place or movement of the machine can change its result
};

// In the order of CheckId.
inline constexpr std::array<CheckRule, Words<CheckId>::all.size()> check_rules{{
    // id, unit, run, run_new, needs_lengths, needs_positions, about_guard, mended_by_lengths, follows_lengths, follows_machine
    {CheckId::consistency, CheckUnit::none, check_consistency, check_consistency, false, false, false, false, false, true},
    {CheckId::closing_clearance, CheckUnit::mm, check_closing_clearance, check_closing_clearance, true, true, false, true, true, true},
    {CheckId::overlap_working, CheckUnit::mm, check_overlap_working, check_overlap_working, true, true, false, true, true, true},
    {CheckId::overlap_turning, CheckUnit::mm, check_overlap_turning, check_overlap_turning, true, true, false, true, true, true},
    {CheckId::overlap_standing, CheckUnit::mm, check_overlap_standing, check_overlap_standing, true, true, false, true, true, true},
    {CheckId::tube_left, CheckUnit::mm, check_tube_left, check_tubes_left_of_new, true, false, false, true, true, true},
    {CheckId::shortening_allowed, CheckUnit::none, check_shortening_allowed, check_shortening_allowed, false, false, false, true, true, true},
    {CheckId::guard_clearance, CheckUnit::mm, check_guard_clearance, check_guard_clearance, true, true, true, true, true, true},
    {CheckId::guard_cover, CheckUnit::mm, check_guard_cover, check_guard_cover, true, true, true, true, true, true},
    {CheckId::guard_setback, CheckUnit::mm, check_guard_setback, check_guard_setback_of_new, true, false, true, false, true, true},
    {CheckId::joint_angle_tractor, CheckUnit::deg, check_joint_angle_tractor, check_joint_angle_tractor, false, false, false, false, false, true},
    {CheckId::joint_angle_implement, CheckUnit::deg, check_joint_angle_implement, check_joint_angle_implement, false, false, false, false, false, true},
    {CheckId::irregularity, CheckUnit::percent, check_irregularity, check_irregularity, false, false, false, false, false, false},
    {CheckId::locking, CheckUnit::none, check_locking, check_locking, false, false, false, false, false, false},
    {CheckId::connection, CheckUnit::none, check_connection, check_connection, false, false, false, false, false, false},
    {CheckId::overload_device, CheckUnit::none, check_overload_device, check_overload_device, false, false, false, false, false, false},
    {CheckId::rating, CheckUnit::kilowatt, check_rating, check_rating, false, false, false, false, false, false},
    {CheckId::condition, CheckUnit::none, check_condition, check_condition, false, false, false, false, false, false},
}};

// A table of one row a check, each with an `id`, has its rows in this order.
template <class Rows>
constexpr bool in_order_of_checks(const Rows& rows)
{
    return std::equal(rows.begin(), rows.end(), check_rules.begin(), check_rules.end(), [](const auto& row, const CheckRule& rule) { return row.id == rule.id; });
}

static_assert([] {
    for (std::size_t i = 0; i < check_rules.size(); ++i)
        if (static_cast<std::size_t>(check_rules[i].id) != i) return false;
    return true;
}());

constexpr const CheckRule& rule_of(CheckId id) { return check_rules[static_cast<std::size_t>(id)]; }

}  // namespace shaftcut

// The checks that lengths decide, as formulas: the same comparisons as the program's own, each ignoring less than 0.01 mm.
#include <algorithm>

#include "checks/check_rules.hpp"
#include "checks/check_sentences.hpp"
#include "checks/limit_words.hpp"
#include "work_order_book/check_words.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {
namespace {

std::string cut_known(const Wording& w) { return holds("cut_is_known", CellWord::yes, w); }

std::string all_of(const std::vector<std::string>& conditions)
{
    if (conditions.empty()) return "TRUE";
    std::string text = "AND(";
    for (const std::string& one : conditions) text += (text.back() == '(' ? "" : ",") + one;
    return text + ")";
}

std::string any_of(const std::vector<std::string>& conditions)
{
    if (conditions.empty()) return "FALSE";
    std::string text = "OR(";
    for (const std::string& one : conditions) text += (text.back() == '(' ? "" : ",") + one;
    return text + ")";
}

// Whether a half is left as an earlier sheet cut it, which may then lack clearance; nothing where no sheet did.
std::vector<std::string> left_as_cut(const WorkOrder& order)
{
    std::vector<std::string> found;
    for (const Tube tube : both_tubes)
        if (order.reading.shaft.halves[tube].cut_to) found.push_back(for_tube("left_as_cut_THIS", tube));
    return found;
}

LiveCheck clearance_check(const WorkOrder& order, const Wording& w)
{
    LiveCheck check;
    check.known = cut_known(w);
    check.value = "clearance_value";
    check.worst = "clearance_worst";
    check.limit = "closing_clearance";
    const std::string lacks = clearly_below_expression("clearance_value", "closing_clearance");
    const auto left = left_as_cut(order);
    check.fails = any_of({left.empty() ? lacks : "AND(" + lacks + ",IF(" + any_of(left) + "," + clearly_below_expression("clearance_value", "closing_clearance_floor") + ",TRUE))", "clearance_worst<0.01"});
    check.warns = clearly_below_expression("clearance_worst", "closing_clearance_floor");
    if (!left.empty()) check.warns = any_of({lacks, check.warns});
    return check;
}

LiveCheck overlap_check(const WorkOrder& order, Range range, const Wording& w)
{
    const std::string word = to_word(range);
    LiveCheck check;
    check.known = all_of({cut_known(w), "ISNUMBER(" + word + "_length)"});
    if (range == Range::turning) check.unknown = word_if(holds("stops_known", CellWord::yes, w), CellWord::not_checked, CellWord::fail, w);
    check.value = word + "_overlap_value";
    check.worst = word + "_overlap_worst";
    check.limit = word + "_overlap_limit";
    check.sure = is_sure(order, range);
    check.fails = clearly_below_expression(check.value, check.limit);
    check.warns = clearly_below_expression(check.worst, check.limit);
    return check;
}

// Where a half that would be cut has no seat or least tube nothing is known, unless the other one is already too short.
LiveCheck tube_left_check(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> needed;
    std::string known_tube_is_short = "FALSE";
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        if (half.seat && half.least_tube) known_tube_is_short = for_tube("IF(sawn_THIS_tube>0,spare_THIS_tube<=-0.01,FALSE)", tube);
        else needed.push_back(for_tube("sawn_THIS_tube=0", tube));
    }
    LiveCheck check;
    // The cut is asked for only once it is known: AND would look at it in any case.
    check.known = needed.empty() ? cut_known(w) : "IF(" + cut_known(w) + ",IF(" + all_of(needed) + ",TRUE," + (needed.size() == 2 ? "FALSE" : known_tube_is_short) + "),FALSE)";
    check.limit = "0";
    if (needed.size() == 2) return check;
    check.value = "tube_left_value";
    check.fails = "IF(ISNUMBER(tube_left_value)," + clearly_below_expression("tube_left_value", "0") + ",FALSE)";
    return check;
}

bool has(const Half& half, Feature feature)
{
    return std::find(half.features.begin(), half.features.end(), feature) != half.features.end();
}

LiveCheck shortening_check(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> fails, warns;
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        if (half.shortening_forbidden) fails.push_back(for_tube("sawn_THIS_tube>0", tube));
        if (half.lubrication_hole) fails.push_back(for_tube(clearly_below_expression("left_THIS_half", "THIS_hole"), tube));
        if (has(half, Feature::coated) || has(half, Feature::end_stop)) warns.push_back(for_tube("sawn_THIS_tube>0", tube));
        if (has(half, Feature::one_chain_guard)) warns.push_back(for_tube(clearly_below_expression("one_chain_shortening", "sawn_THIS_guard"), tube));
    }
    LiveCheck check;
    check.of_length = false;
    check.known = cut_known(w);
    check.fails = any_of(fails);
    check.warns = any_of(warns);
    return check;
}

bool faces_known(const WorkOrder& order)
{
    const auto& halves = order.reading.shaft.halves;
    return halves[Tube::inner].guard_shoulder && halves[Tube::outer].guard_shoulder;
}

bool seats_known(const WorkOrder& order)
{
    return std::all_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) {
        const Half& half = order.reading.shaft.halves[tube];
        return half.seat && half.least_tube;
    });
}

LiveCheck guard_clearance_check(const WorkOrder& order, const Wording& w)
{
    LiveCheck check;
    check.known = faces_known(order) ? all_of({cut_known(w), "has_inner_guard", "has_outer_guard"}) : "FALSE";
    check.value = "guard_clearance_value";
    check.limit = "closing_clearance";
    check.fails = clearly_below_expression("guard_clearance_value", "0");
    check.warns = clearly_below_expression("guard_clearance_value", "closing_clearance");
    return check;
}

LiveCheck guard_cover_check(const WorkOrder& order, const Wording& w)
{
    LiveCheck check;
    check.known = all_of({cut_known(w), "has_inner_guard", "has_outer_guard", "ISNUMBER(greatest_length)"});
    check.unknown = word_if(holds("guard_cut_away", CellWord::yes, w), CellWord::fail, CellWord::not_checked, w);
    check.value = "guard_cover_value";
    check.worst = "guard_cover_worst";
    check.limit = "guard_overlap";
    std::vector<std::string> sure;
    for (const Range range : all_ranges)
        if (order.fit.longest_at_least[range]) sure.push_back(is_sure(order, range));
    if (!sure.empty()) check.sure = all_of(sure);
    check.fails = any_of({holds("guard_cut_away", CellWord::yes, w), clearly_below_expression("guard_cover_worst", "0")});
    check.warns = clearly_below_expression("guard_cover_value", "guard_overlap");
    return check;
}

LiveCheck guard_setback_check(const WorkOrder& order, const Wording& w)
{
    LiveCheck check;
    if (lacks_guard(order)) {
        check.known = "FALSE";
        return check;
    }
    check.known = all_of({cut_known(w), "OR(has_inner_guard,has_outer_guard)"});
    check.value = "setback_value";
    check.limit = "guard_setback";
    check.warns = any_of({clearly_below_expression("setback_value", "0"), clearly_below_expression("guard_setback", "setback_value")});
    return check;
}

std::string part(const WorkOrder& order, Limit limit, const Wording& w) { return limit_text(limit, order.limits[limit].value, w); }

std::string work_after_cut(const WorkOrder& order, const Wording& w)
{
    std::vector<HalfWork> halves;
    for (const Tube tube : both_tubes) {
        const Half& half = order.reading.shaft.halves[tube];
        halves.push_back({tube, half.shortening_forbidden, half.lubrication_hole.has_value(), has(half, Feature::coated), has(half, Feature::end_stop), has(half, Feature::one_chain_guard)});
    }
    return shortening_asked(halves, order.limits.length(Limit::one_chain_shortening), w);
}

std::string overlap_asked(const WorkOrder& order, Range range, const Wording& w)
{
    const bool at_least = order.fit.longest_at_least[range].has_value();
    switch (range) {
    case Range::working: return overlap_working_asked(part(order, Limit::overlap_working, w), at_least, w);
    case Range::turning: return overlap_turning_asked(part(order, Limit::overlap_turning, w), order.limits.length(Limit::least_overlap_turning), at_least, w);
    case Range::standing: break;
    }
    return overlap_standing_asked(order.limits.length(Limit::least_overlap_standing), at_least, w);
}

// One row a check, in its order: the formulas of those that follow the lengths, nothing for the others.
struct LiveRow {
    CheckId id;
    LiveCheck (*formulas)(const WorkOrder&, const Wording&);
};
constexpr std::array<LiveRow, check_rules.size()> live_rows{{
    {CheckId::consistency, nullptr},  // made of finding_lines instead
    {CheckId::closing_clearance, clearance_check},
    {CheckId::overlap_working, [](const WorkOrder& order, const Wording& w) { return overlap_check(order, Range::working, w); }},
    {CheckId::overlap_turning, [](const WorkOrder& order, const Wording& w) { return overlap_check(order, Range::turning, w); }},
    {CheckId::overlap_standing, [](const WorkOrder& order, const Wording& w) { return overlap_check(order, Range::standing, w); }},
    {CheckId::tube_left, tube_left_check},
    {CheckId::shortening_allowed, shortening_check},
    {CheckId::guard_clearance, guard_clearance_check},
    {CheckId::guard_cover, guard_cover_check},
    {CheckId::guard_setback, guard_setback_check},
    {CheckId::joint_angle_tractor, nullptr},
    {CheckId::joint_angle_implement, nullptr},
    {CheckId::irregularity, nullptr},
    {CheckId::locking, nullptr},
    {CheckId::connection, nullptr},
    {CheckId::overload_device, nullptr},
    {CheckId::rating, nullptr},
    {CheckId::condition, nullptr},
}};

// A check whose result lengths can change has its formulas, and only such a one.
static_assert(in_order_of_checks(live_rows));
static_assert(std::equal(live_rows.begin(), live_rows.end(), check_rules.begin(),
                         [](const LiveRow& row, const CheckRule& rule) { return (row.formulas != nullptr) == rule.follows_lengths; }));

}  // namespace

std::optional<LiveCheck> live_check(const WorkOrder& order, CheckId id, const Wording& w)
{
    const auto formulas = live_rows[static_cast<std::size_t>(id)].formulas;
    return formulas ? std::optional(formulas(order, w)) : std::nullopt;
}

std::string what_is_asked(const WorkOrder& order, CheckId id, const Wording& w)
{
    for (const Range range : all_ranges)
        if (id == overlap_check_id(range)) return overlap_asked(order, range, w);
    switch (id) {
    case CheckId::closing_clearance: return clearance_asked(order.limits.length(Limit::closing_clearance_floor), w);
    case CheckId::tube_left: return tube_left_asked(seats_known(order), w);
    case CheckId::shortening_allowed: return work_after_cut(order, w);
    case CheckId::guard_clearance: return guard_clearance_asked(faces_known(order), lacks_guard(order), w);
    case CheckId::guard_cover: return guard_cover_asked(lacks_guard(order), w);
    case CheckId::guard_setback: return guard_setback_asked(lacks_guard(order), w);
    default: return say(check_of(order.checks, id), w);
    }
}

}  // namespace shaftcut::workbook

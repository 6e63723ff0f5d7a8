// What the workbooks of a saw plan and of a batch say in their cells. Sheets' names, names of cells and formulas are not wording.
// Checked in tests/documents/saw_book.
#pragma once

#include "shaftcut/trade/build/batch.hpp"
#include "wording.hpp"

namespace shaftcut::saw_book_words {

// In what a sheet has at its head and foot, & begins a mark of the spreadsheet's own.
enum class Caption {
    footer, plan_header, bars_header, orders_header, parts_header, saw_header,
    length_range, length_above_zero, number_of_shafts,
    inputs, kerf, start_trim, end_trim, rack_from, kerf_remark, start_trim_remark, end_trim_remark, rack_from_remark,
    totals, bars, bars_length, pieces_length, rack_length, waste, with_these_inputs, fits, does_not_fit_plan_again,
    bars_to_fetch, length, cost_of_one, cautions, does_not_fit,
    part, to_pick, picked, order, for_one_shaft, shafts, in_all,
    pieces_by_bar, kerf_mm, start_trim_mm, end_trim_mm, rack_from_mm, no_bars_stated,
    lengths_follow, saws_step, do_not_build, held, see_own_sheet, build, changed, not_at_all
};
std::string say(Caption caption, const Wording& w);

std::string plan_title(const std::string& name, const Wording& w);
std::string batch_title(const std::string& name, const Wording& w);

// The columns of bars, and of orders; their order is the sheets'.
enum class BarColumn { bars, alike, stock, number, label, length, stop, leftover, goes, over, bars_total, pieces_total, rack_total, length_in, stop_in };
std::string head(BarColumn column, const Wording& w);

enum class OrderColumn {
    order, verdict, count, measured, closed, half, half_outer, blank, blank_outer, guard_blank, guard_blank_outer, pin_hole, pin_hole_outer, working, turning,
    standing,
    due, mass, reasons, customer, machine, shaft, guard_half, guard_half_outer,
    ordered, beyond, setback, shoulder, shoulder_outer, seat, seat_outer, guard_shoulder, guard_shoulder_outer, guard_seat, guard_seat_outer
};
std::string head(OrderColumn column, const Wording& w);

// Where a leftover goes: "none", "rack", "scrap".
std::string say(LeftoverUse use, const Wording& w);
// Between which crosses a closed length is measured: "OUTER cross".
std::string say(MeasuredFrom from, const Wording& w);

// "NO PLAN: ...".
std::string no_plan(const ProfileRefusal& refusal, const Wording& w);
// What to fetch for a profile, and what its plan costs.
std::string fetch_and_cost(const SawOrder& order, const Wording& w);

}  // namespace shaftcut::saw_book_words

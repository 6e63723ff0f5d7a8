// A saw plan laid out for the saw: what the documents print, every figure worked out here once.
//
// A piece's stop is its running position from the bar's starting end: the start trim, the pieces and kerfs before it, and
// the piece itself. There the piece ends; the blade cuts beyond it. Checked by tests/trade/saw/saw_order_test.cpp.
#pragma once

#include "shaftcut/trade/saw/saw.hpp"

namespace shaftcut {

struct PlacedPiece {
    Length length;
    std::string label;  // may be empty
    Length start;       // from the bar's starting end
    Length stop;        // start + length
    bool operator==(const PlacedPiece&) const = default;
};

enum class LeftoverUse { none, rack, scrap };

// Bars cut alike, labels included.
struct BarLayout {
    std::size_t stock = 0;  // index into SawTask::stock
    Length length;          // of the whole bar
    std::int64_t count = 0;
    std::vector<PlacedPiece> pieces;  // in cutting order, at least one
    Length leftover;                  // usable length behind the last cut, the end trim not counted
    LeftoverUse use = LeftoverUse::none;
    bool whole = false;               // one piece as long as the bar: nothing is cut
    bool ends_with_piece = false;     // the last piece ends where the bar ends: no last cut
    std::optional<Length> thin_end;   // what the last cut takes off the bar's end, where that is less than the kerf or the saw's
                                      // least cut: the blade has no material on its far side
};

struct BarsToFetch {
    Length length;
    std::int64_t cost = 0;  // of one bar, in millionths
    std::int64_t count = 0;
};

struct SawTotals {
    std::int64_t bars = 0;
    std::int64_t pieces = 0;
    Length bars_length;               // of all bars taken
    Length pieces_length;             // of all pieces
    Length rack_length;               // of all leftovers that go back to the rack
    std::int64_t waste = 0;           // what is neither piece nor goes back, of bars_length, in thousandths of a per cent
};

// What the sawyer must mind. A trim is cut off first where there is one.
enum class SawCaution { measure_bars, cut_trim_first, kerf_counted, clamp_and_protect, deburr_and_label, thin_end };

// Why the search for a better plan ended.
enum class SawEnd { finished, time_was_up, interrupted };

struct SawOrder {
    std::string name;   // of the list, on documents and in file names
    std::string owner;  // may be empty
    Units units = Units::mm;
    SawTask task;
    SawPlan plan;
    std::optional<Length> reusable;  // a leftover at least this long goes back to the rack; nothing: none does
    Length least_cut;                // the least that the saw can take off an end
    Length plus_minus;               // of a sawn length
    SawEnd end = SawEnd::finished;
    double seconds = 0;              // that the plan took
    std::vector<BarLayout> bars;     // in the plan's order
    std::vector<BarsToFetch> fetch;  // by stock as given, those taken
    SawTotals totals;
    std::vector<SawCaution> cautions;  // in order
};

struct SawHeading {
    std::string name;
    std::string owner;
    Units units = Units::mm;
    std::optional<Length> reusable;
    Length least_cut{};
    Length plus_minus{};
};

// `plan` must be a plan for `task`.
SawOrder lay_out(const SawHeading& heading, SawTask task, SawPlan plan, SawEnd end, double seconds);

// "6000", "980.25", "29-3/16": exact. In inches a length that is no whole number of sixteenths is a decimal to the
// thousandth, so that no stop is off by more than 0.013 mm.
std::string saw_figure(Length length, Units units);
// With its unit, and in inches the millimetres beside: "29-3/16 in (741.363 mm)".
std::string saw_figure_with_unit(Length length, Units units);

// "72000", "61.5": a cost of millionths, without trailing zeros.
std::string cost_figure(std::int64_t cost);

// What the bars taken cost by: their lengths in mm where no cost is stated, the costs stated, or both.
enum class CostBasis { lengths, stated, stated_and_lengths };
CostBasis cost_basis(const SawOrder& order);

// The costs stated of the bars taken, in millionths, and the length of those that have none: money and millimetres have no sum.
struct CostParts {
    std::int64_t stated = 0;
    Length without;
    bool mixed() const { return stated > 0 && without > Length(); }
};
CostParts cost_parts(const SawOrder& order);

// By how much the plan's cost is above the bound, in thousandths of a per cent of it.
std::int64_t gap_of(const SawPlan& plan);

}  // namespace shaftcut

// Saw plans: pieces of many lengths out of stock bars at the least cost, with a bound that anybody can check again.
//
// A bar of length B holds a set of pieces when the sum of (length + kerf) is at most B − trims + kerf: every piece is
// followed by a cut but the last one of a bar used to its end. All lengths are exact micrometres, all costs whole
// millionths. Method: docs/saw-plans.md (column generation after Gilmore and Gomory, Operations Research 9 (1961)).
// Checked by tests/trade/saw/saw_*_test.cpp: textbook optima, triplets, an independent checker on every plan, a general
// solver's full model on small instances.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "shaftcut/trade/data/stock.hpp"

namespace shaftcut {

struct SawPiece {
    Length length;           // above 0
    std::int64_t count = 1;  // 0 or more
    std::string label;       // free words for the sheet; pieces of equal length and different labels are cut alike
};

struct SawTask {
    std::vector<SawPiece> pieces;
    std::vector<SawStock> stock;
    Length kerf;
    Length trim_start;
    Length trim_end;
    Length reusable;  // a leftover at least this long goes back to the rack
};

// Limits of one task beside most_saw_pieces: beyond them plan_saw() refuses, so that no sum can overflow and memory stays bounded.
inline constexpr std::size_t most_saw_lengths = 5'000;
inline constexpr std::size_t most_saw_stock = 1'000;

// Bars cut alike.
struct SawBar {
    std::size_t stock = 0;            // index into SawTask::stock
    std::int64_t count = 0;           // how many bars are cut in this way
    std::vector<std::size_t> pieces;  // in cutting order, longest first: indices into SawTask::pieces of the first bar's
                                      // lengths. Labels are dealt out by deal_pieces(): bars alike differ in labels only
    Length leftover;                  // usable length behind the last cut, the end trim not counted; 0 when the kerf eats it
};

// A step of a proof by cases, in the order: a case, then its first half with all its steps, then its second half.
// The sizes of a case are those of SawCertificate::lengths, then one for each pair joined on the way to it, in that order.
struct SawProofNode {
    std::vector<std::vector<std::int64_t>> prices;              // rows for this case and its halves: one price, 0 or more, for each size of it
    std::optional<std::pair<std::size_t, std::size_t>> halves;  // two sizes of the case. First half: a bar holds a piece of each, and these are
                                                                // one piece from now on. Second half: no bar does. Nothing: no halves
};

// What proves the bound. For any prices, one bar of a kind is worth at most what its best filling is worth, and the bars
// taken must be worth at least all pieces together. The bound is the cheapest whole numbers of bars, within the stock,
// that satisfy this for each row of prices at once.
struct SawCertificate {
    std::vector<Length> lengths;                    // the different piece lengths, longest first
    std::vector<std::vector<std::int64_t>> prices;  // each row: one price, 0 or more, for each length
    std::vector<SawProofNode> cases;                // empty: the rows do it alone. Else every case without halves is refuted by its rows and those above it
};

struct SawPlan {
    std::vector<SawBar> bars;      // by stock as given, then fullest first
    std::int64_t cost = 0;         // in millionths
    std::int64_t lower_bound = 0;  // no plan costs less; in millionths
    bool proven_optimal = false;   // cost == lower_bound
    SawCertificate certificate;    // certifies() lower_bound
};

// What is wrong with a task, in figures.
enum class SawFault { nothing_to_cut, list_too_large, rack_too_small, no_plan_in_time };
// The kerf, a trim or the reusable length.
struct BladeFigureOutOfRange {
    Length length;
};
struct PieceOutOfRange {
    Length length;
    std::int64_t count;
};
struct BarOutOfRange {
    Length length;
};
// `longest`: of a bar between its trims; nothing where no bar is longer than its trims.
struct PieceFitsNoBar {
    Length piece;
    std::optional<Length> longest;
};
struct RackTooShort {
    Length lacking;  // cuts and trims counted
};
using SawFinding = std::variant<SawFault, BladeFigureOutOfRange, PieceOutOfRange, BarOutOfRange, PieceFitsNoBar, RackTooShort>;

struct SawRefusal {
    enum class Reason { nothing_to_cut, bad_figure, piece_fits_no_bar, rack_too_small, no_plan_in_time };
    Reason reason = Reason::bad_figure;
    SawFinding found;
    std::vector<std::size_t> pieces;  // the pieces concerned, when it is about pieces
    std::vector<std::size_t> stock;   // the stock concerned, when it is about stock
};

using SawOutcome = std::variant<SawPlan, SawRefusal>;

// A function of the linear programme's library (CLP's C interface) by its name. Never null: it throws what it has to say instead.
using FindFunction = std::function<void*(const char* name)>;

// How the caller limits and follows the work: the trade layer has no clock, and loads no library.
struct SawWatch {
    std::function<double()> seconds_left;                                   // at most 0: answer now with the best plan so far
    std::function<void(std::int64_t cost, std::int64_t lower_bound)> news;  // may be empty; called when either improved
    FindFunction linear_programme = {};                                     // only a check of a plan that is there needs none
};

// The best plan found and its bound. Equal input gives an equal plan as long as time does not run out.
// Never costs more than first-fit decreasing. Refuses when there is nothing to cut, when a figure is out of range,
// when a piece is longer than every bar between its trims, when the stock is proven too small, and when the time ran
// out before any plan was found.
SawOutcome plan_saw(const SawTask& task, const SawWatch& watch);

// True when the prices prove that no plan for the task costs less than `lower_bound` millionths; false as well when they
// are malformed or the task is one that plan_saw() refuses at once. Uses no linear programme: for each row of prices an exact
// knapsack for each bar, then a search over whole numbers of bars.
bool certifies(const SawTask& task, const SawCertificate& certificate, std::int64_t lower_bound);

// The pieces with their labels for each single bar of a group: result[b][i] is the index into SawTask::pieces of piece i of
// bar b, groups and bars in the plan's order. Equal lengths are dealt in the order of SawTask::pieces.
std::vector<std::vector<std::size_t>> deal_pieces(const SawTask& task, const SawPlan& plan);

}  // namespace shaftcut

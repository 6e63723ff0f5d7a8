#include "saw/saw_check_task.hpp"

#include <algorithm>
#include <set>

namespace shaftcut::saw {
namespace {

using Reason = SawRefusal::Reason;

constexpr Length longest_figure = Length::millimetres(100'000);

bool is_length(Length length, Length least)
{
    return length >= least && length <= longest_figure;
}

std::optional<SawRefusal> bad_figures(const SawTask& task)
{
    for (const Length length : {task.kerf, task.trim_start, task.trim_end, task.reusable})
        if (!is_length(length, Length()))
            return SawRefusal{Reason::bad_figure, BladeFigureOutOfRange{length}, {}, {}};
    const Length shortest = Length::micrometres(1);
    for (std::size_t i = 0; i < task.pieces.size(); ++i)
        if (!is_length(task.pieces[i].length, shortest) || task.pieces[i].count < 0)
            return SawRefusal{Reason::bad_figure, PieceOutOfRange{task.pieces[i].length, task.pieces[i].count}, {i}, {}};
    for (std::size_t k = 0; k < task.stock.size(); ++k) {
        const SawStock& stock = task.stock[k];
        if (!is_length(stock.length, shortest) || stock.count.value_or(0) < 0 || stock.cost < 0 || stock.cost > most_saw_cost)
            return SawRefusal{Reason::bad_figure, BarOutOfRange{stock.length}, {}, {k}};
    }
    return std::nullopt;
}

std::optional<SawRefusal> wrong_size(const SawTask& task)
{
    std::int64_t pieces = 0;
    std::set<Length> lengths;
    for (const SawPiece& piece : task.pieces) {
        if (piece.count == 0) continue;
        pieces = std::min(pieces, most_saw_pieces) + std::min(piece.count, most_saw_pieces + 1);
        lengths.insert(piece.length);
    }
    if (pieces == 0) return SawRefusal{Reason::nothing_to_cut, SawFault::nothing_to_cut, {}, {}};
    if (pieces > most_saw_pieces || lengths.size() > most_saw_lengths || task.stock.size() > most_saw_stock)
        return SawRefusal{Reason::bad_figure, SawFault::list_too_large, {}, {}};
    return std::nullopt;
}

Length longest_between_trims(const SawTask& task)
{
    Length longest = Length::micrometres(-1);
    for (const SawStock& stock : task.stock)
        if (stock.count.value_or(1) > 0) longest = std::max(longest, stock.length - task.trim_start - task.trim_end);
    return longest;
}

std::optional<SawRefusal> too_long(const SawTask& task)
{
    const Length longest = longest_between_trims(task);
    std::vector<std::size_t> pieces;
    for (std::size_t i = 0; i < task.pieces.size(); ++i)
        if (task.pieces[i].count > 0 && task.pieces[i].length > longest) pieces.push_back(i);
    if (pieces.empty()) return std::nullopt;
    const PieceFitsNoBar found{task.pieces[pieces.front()].length, longest < Length() ? std::nullopt : std::optional(longest)};
    return SawRefusal{Reason::piece_fits_no_bar, found, std::move(pieces), {}};
}

// Needed: every piece with its kerf. There: every bar between its trims with one kerf, for the last piece needs no cut.
std::optional<SawRefusal> too_little(const SawTask& task)
{
    std::int64_t needed = 0;
    for (const SawPiece& piece : task.pieces) needed += piece.count * (piece.length + task.kerf).um();
    std::int64_t there = 0;
    for (const SawStock& stock : task.stock) {
        if (!stock.count) return std::nullopt;
        const Length held = stock.length - task.trim_start - task.trim_end + task.kerf;
        if (held > task.kerf) there += std::min(*stock.count, most_saw_pieces) * held.um();
        if (there >= needed) return std::nullopt;
    }
    return SawRefusal{Reason::rack_too_small, RackTooShort{Length::micrometres(needed - there)}, {}, {}};
}

}  // namespace

std::optional<SawRefusal> check_task(const SawTask& task)
{
    if (auto refusal = bad_figures(task)) return refusal;
    if (auto refusal = wrong_size(task)) return refusal;
    if (auto refusal = too_long(task)) return refusal;
    return too_little(task);
}

}  // namespace shaftcut::saw

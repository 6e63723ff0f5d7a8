#include "support/saw/saw_checker.hpp"

#include <map>

namespace shaftcut::test {
namespace {

// Cuts along the bar as a saw does: start trim, then piece, kerf, piece, kerf ... The last cut is not made when nothing is left.
std::string bar_fault(const SawTask& task, const SawBar& bar)
{
    if (bar.stock >= task.stock.size()) return "no such stock";
    if (bar.count < 1 || bar.pieces.empty()) return "an empty bar";
    const std::int64_t end = task.stock[bar.stock].length.um() - task.trim_end.um();
    std::int64_t at = task.trim_start.um();
    for (std::size_t i = 0; i < bar.pieces.size(); ++i) {
        if (bar.pieces[i] >= task.pieces.size()) return "no such piece";
        if (i > 0) at += task.kerf.um();
        at += task.pieces[bar.pieces[i]].length.um();
        if (i > 0 && task.pieces[bar.pieces[i]].length > task.pieces[bar.pieces[i - 1]].length) return "not longest first";
    }
    if (at > end) return "a bar is overfull by " + std::to_string(at - end) + " micrometres";
    const std::int64_t behind_cut = end - at - task.kerf.um();
    if (bar.leftover.um() != (behind_cut > 0 ? behind_cut : 0)) return "a wrong leftover";
    return {};
}

std::string count_fault(const SawTask& task, const SawPlan& plan)
{
    std::map<std::int64_t, std::int64_t> pieces;
    std::map<std::size_t, std::int64_t> bars;
    for (const SawPiece& piece : task.pieces) pieces[piece.length.um()] += piece.count;
    for (const SawBar& bar : plan.bars) {
        bars[bar.stock] += bar.count;
        for (const std::size_t piece : bar.pieces) pieces[task.pieces[piece].length.um()] -= bar.count;
    }
    for (const auto& [length, left] : pieces)
        if (left != 0) return std::to_string(left) + " pieces of " + std::to_string(length) + " micrometres are missing";
    for (const auto& [stock, used] : bars)
        if (task.stock[stock].count && used > *task.stock[stock].count) return "more bars than in stock";
    return {};
}

}  // namespace

std::string fault_of(const SawTask& task, const SawPlan& plan)
{
    std::int64_t cost = 0;
    for (const SawBar& bar : plan.bars) {
        if (std::string fault = bar_fault(task, bar); !fault.empty()) return fault;
        cost += bar.count * task.stock[bar.stock].cost;
    }
    if (std::string fault = count_fault(task, plan); !fault.empty()) return fault;
    if (cost != plan.cost) return "a wrong cost";
    if (plan.lower_bound > plan.cost) return "a bound above the cost";
    if (plan.proven_optimal != (plan.lower_bound == plan.cost)) return "a wrong claim of proof";
    return {};
}

}  // namespace shaftcut::test

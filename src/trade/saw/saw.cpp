#include "shaftcut/trade/saw/saw.hpp"

#include <algorithm>
#include <map>

#include "saw/saw_check_task.hpp"
#include "saw/saw_finish.hpp"
#include "saw/saw_greedy.hpp"
#include "saw/saw_search.hpp"

namespace shaftcut {
namespace saw {
namespace {

// The same task with one more kind of bar, as long as the longest and never used up. It costs 1 and the real bars cost
// nothing: the cheapest plan says how many bars are missing.
Model with_missing_bars(const Model& model)
{
    Model free = model;
    std::int64_t capacity = 0;
    for (BarKind& bar : free.bars) {
        bar.cost = 0;
        capacity = std::max(capacity, bar.capacity);
    }
    free.bars.push_back({SIZE_MAX, capacity, model.pieces, 1});
    free.cost_scale = 1;
    return free;
}

SawRefusal too_small()
{
    return {SawRefusal::Reason::rack_too_small, SawFault::rack_too_small, {}, {}};
}

SawRefusal no_time()
{
    return {SawRefusal::Reason::no_plan_in_time, SawFault::no_plan_in_time, {}, {}};
}

std::variant<Packing, SawRefusal> first_packing(const Model& model, const SawWatch& watch)
{
    if (auto packing = greedy_packing(model, wanted(model), available(model), watch)) return std::move(*packing);
    const Model free = with_missing_bars(model);
    auto start = greedy_packing(free, wanted(free), available(free), watch);
    if (!start) return no_time();
    const SawWatch silent{watch.seconds_left, {}, watch.linear_programme};
    Found found = search_cheapest(free, std::move(*start), silent);
    if (cost_of(free, found.packing) == 0) return std::move(found.packing);
    return found.bound > 0 ? too_small() : no_time();
}

// The first piece of each length stands for all of them.
std::map<Length, std::size_t> first_of_length(const SawTask& task)
{
    std::map<Length, std::size_t> first;
    for (std::size_t i = 0; i < task.pieces.size(); ++i)
        if (task.pieces[i].count > 0) first.emplace(task.pieces[i].length, i);
    return first;
}

std::vector<SawBar> saw_bars(const SawTask& task, const Model& model, const Packing& packing)
{
    const std::map<Length, std::size_t> first = first_of_length(task);
    std::vector<SawBar> bars;
    for (const PackedBars& packed : packing) {
        SawBar bar{model.bars[packed.pattern.bar].stock, packed.count, {}, {}};
        for (const Part& part : packed.pattern.parts)
            bar.pieces.insert(bar.pieces.end(), static_cast<std::size_t>(part.count), first.at(model.sizes[part.size].length));
        bar.leftover = leftover_of(task, model, packed.pattern);
        bars.push_back(std::move(bar));
    }
    return bars;
}

SawPlan make_plan(const SawTask& task, const Model& model, const Found& found)
{
    SawPlan plan;
    plan.bars = saw_bars(task, model, found.packing);
    plan.cost = cost_of(model, found.packing) * model.cost_scale;
    plan.lower_bound = found.bound * model.cost_scale;
    plan.proven_optimal = plan.cost == plan.lower_bound;
    for (const CutSize& size : model.sizes) plan.certificate.lengths.push_back(size.length);
    for (const PriceRow& row : found.rows) plan.certificate.prices.push_back(row.prices);
    plan.certificate.cases = found.cases;
    return plan;
}

}  // namespace
}  // namespace saw

SawOutcome plan_saw(const SawTask& task, const SawWatch& watch)
{
    if (auto refusal = saw::check_task(task)) return std::move(*refusal);
    const saw::Model model = saw::make_model(task);
    auto start = saw::first_packing(model, watch);
    if (std::holds_alternative<SawRefusal>(start)) return std::get<SawRefusal>(std::move(start));
    saw::Found found = saw::search_cheapest(model, std::get<saw::Packing>(std::move(start)), watch);
    found.packing = saw::finished(task, model, std::move(found.packing), found.pool, watch);
    return saw::make_plan(task, model, found);
}

std::vector<std::vector<std::size_t>> deal_pieces(const SawTask& task, const SawPlan& plan)
{
    std::map<Length, std::vector<std::size_t>> piles;  // last ones first, to be taken from the back
    for (std::size_t i = task.pieces.size(); i-- > 0;)
        piles[task.pieces[i].length].insert(piles[task.pieces[i].length].end(), static_cast<std::size_t>(task.pieces[i].count), i);
    std::vector<std::vector<std::size_t>> dealt;
    for (const SawBar& bar : plan.bars)
        for (std::int64_t b = 0; b < bar.count; ++b) {
            std::vector<std::size_t> pieces;
            for (const std::size_t piece : bar.pieces) {
                std::vector<std::size_t>& pile = piles[task.pieces[piece].length];
                pieces.push_back(pile.back());
                pile.pop_back();
            }
            dealt.push_back(std::move(pieces));
        }
    return dealt;
}

}  // namespace shaftcut

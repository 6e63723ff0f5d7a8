#include "shaftcut/trade/saw_greedy.hpp"

#include <algorithm>
#include <numeric>

namespace shaftcut::saw {
namespace {

struct OpenBars {
    PackedBars packed;
    std::int64_t room = 0;
};

OpenBars with_pieces(const Model& model, const OpenBars& open, std::size_t size, std::int64_t each, std::int64_t count)
{
    OpenBars more = open;
    more.packed.count = count;
    if (each > 0) {
        more.packed.pattern.parts.push_back({size, each});
        more.room -= each * model.sizes[size].size;
    }
    return more;
}

// Puts as many of `left` pieces as fit into the equal bars one after another: some bars full of them, one with the rest, some
// untouched.
std::vector<OpenBars> shared_out(const Model& model, const OpenBars& open, std::size_t size, std::int64_t& left)
{
    const std::int64_t each = open.room / model.sizes[size].size;
    const std::int64_t full = each == 0 ? 0 : std::min(open.packed.count, left / each);
    left -= full * each;
    const std::int64_t rest = each > 0 && full < open.packed.count ? left : 0;
    left -= rest;
    std::vector<OpenBars> parts;
    if (full > 0) parts.push_back(with_pieces(model, open, size, each, full));
    if (rest > 0) parts.push_back(with_pieces(model, open, size, rest, 1));
    const std::int64_t untouched = open.packed.count - full - (rest > 0 ? 1 : 0);
    if (untouched > 0) parts.push_back(with_pieces(model, open, size, 0, untouched));
    return parts;
}

// New bars for `left` pieces of a size; fewer when the stock runs out.
std::vector<OpenBars> opened(const Model& model, std::size_t size, std::int64_t& left, Counts& bars, const std::vector<std::size_t>& order)
{
    std::vector<OpenBars> fresh;
    for (const std::size_t k : order) {
        const std::int64_t each = model.bars[k].capacity / model.sizes[size].size;
        if (each == 0 || left == 0 || bars[k] == 0) continue;
        const std::int64_t count = std::min(bars[k], (left + each - 1) / each);
        bars[k] -= count;
        for (OpenBars& part : shared_out(model, {{{k, {}}, count}, model.bars[k].capacity}, size, left)) fresh.push_back(std::move(part));
    }
    return fresh;
}

std::vector<std::size_t> kinds(const Model& model)
{
    std::vector<std::size_t> order(model.bars.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    return order;
}

std::vector<std::size_t> longest_first(const Model& model)
{
    std::vector<std::size_t> order = kinds(model);
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return model.bars[a].capacity > model.bars[b].capacity; });
    return order;
}

std::vector<std::size_t> cheapest_first(const Model& model)
{
    std::vector<std::size_t> order = kinds(model);
    const auto per_length = [&](std::size_t k) { return static_cast<double>(model.bars[k].cost) / static_cast<double>(model.bars[k].capacity); };
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return per_length(a) < per_length(b); });
    return order;
}

}  // namespace

std::optional<Packing> first_fit_decreasing(const Model& model, const Counts& counts, const Counts& bars,
                                            const std::vector<std::size_t>& order)
{
    std::vector<OpenBars> open;
    Counts left_in_stock = bars;
    for (std::size_t size = 0; size < counts.size(); ++size) {
        std::int64_t left = counts[size];
        if (left == 0) continue;
        std::vector<OpenBars> next;
        for (const OpenBars& group : open) {
            if (left == 0 || group.room < model.sizes[size].size) next.push_back(group);
            else
                for (OpenBars& part : shared_out(model, group, size, left)) next.push_back(std::move(part));
        }
        for (OpenBars& part : opened(model, size, left, left_in_stock, order)) next.push_back(std::move(part));
        if (left > 0) return std::nullopt;
        open = std::move(next);
    }
    Packing packing;
    for (OpenBars& group : open)
        if (!group.packed.pattern.parts.empty()) packing.push_back(std::move(group.packed));
    return tidied(model, std::move(packing));
}

Packing on_cheapest_bars(const Model& model, Packing packing, const Counts& bars)
{
    Counts left = bars;
    const Counts used = bars_used(model, packing);
    for (std::size_t k = 0; k < left.size(); ++k) left[k] -= used[k];
    std::vector<std::size_t> order = kinds(model);
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) { return model.bars[a].cost < model.bars[b].cost; });
    Packing cheap;
    std::stable_sort(packing.begin(), packing.end(),
                     [&](const auto& a, const auto& b) { return filled(model, a.pattern) > filled(model, b.pattern); });
    for (const PackedBars& packed : packing) {
        std::int64_t rest = packed.count;
        for (const std::size_t k : order) {
            if (model.bars[k].cost >= model.bars[packed.pattern.bar].cost) break;
            if (model.bars[k].capacity < filled(model, packed.pattern)) continue;
            const std::int64_t moved = std::min(rest, left[k]);
            left[k] -= moved;
            left[packed.pattern.bar] += moved;
            rest -= moved;
            cheap.push_back({{k, packed.pattern.parts}, moved});
        }
        cheap.push_back({packed.pattern, rest});
    }
    return tidied(model, std::move(cheap));
}

std::optional<Packing> greedy_packing(const Model& model, const Counts& counts, const Counts& bars)
{
    std::vector<std::vector<std::size_t>> orders{cheapest_first(model), longest_first(model)};
    for (const std::size_t k : kinds(model)) {
        std::vector<std::size_t> order = cheapest_first(model);
        std::erase(order, k);
        order.insert(order.begin(), k);
        orders.push_back(std::move(order));
    }
    std::optional<Packing> best;
    for (const auto& order : orders) {
        auto packing = first_fit_decreasing(model, counts, bars, order);
        if (!packing) continue;
        Packing cheap = on_cheapest_bars(model, std::move(*packing), bars);
        if (!best || cost_of(model, cheap) < cost_of(model, *best)) best = std::move(cheap);
    }
    return best;
}

}  // namespace shaftcut::saw

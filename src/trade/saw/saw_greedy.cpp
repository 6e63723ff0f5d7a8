#include "saw/saw_greedy.hpp"

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

// First-fit decreasing in progress.
class FirstFit {
public:
    FirstFit(const Model& model, const Counts& bars, const std::vector<std::size_t>& order) : model_(model), bars_(bars), order_(order) {}

    // False when the stock runs out.
    bool place(std::size_t size, std::int64_t count)
    {
        left_ = count;
        std::vector<OpenBars> before = std::move(open_);
        open_.clear();
        for (OpenBars& group : before) {
            if (left_ == 0 || group.room < model_.sizes[size].size) open_.push_back(std::move(group));
            else share_out(group, size);
        }
        for (const std::size_t k : order_) open_new(k, size);
        return left_ == 0;
    }

    Packing packing() const
    {
        Packing packing;
        for (const OpenBars& group : open_) packing.push_back(group.packed);
        return tidied(model_, std::move(packing));
    }

private:
    // Puts as many of the pieces left as fit into the equal bars one after another: some bars full of them, one with the
    // rest, some untouched.
    void share_out(const OpenBars& open, std::size_t size)
    {
        const std::int64_t each = open.room / model_.sizes[size].size;
        const std::int64_t full = std::min(open.packed.count, left_ / each);
        left_ -= full * each;
        const std::int64_t rest = full < open.packed.count ? left_ : 0;
        left_ -= rest;
        if (full > 0) open_.push_back(with_pieces(model_, open, size, each, full));
        if (rest > 0) open_.push_back(with_pieces(model_, open, size, rest, 1));
        const std::int64_t untouched = open.packed.count - full - (rest > 0 ? 1 : 0);
        if (untouched > 0) open_.push_back(with_pieces(model_, open, size, 0, untouched));
    }

    void open_new(std::size_t k, std::size_t size)
    {
        const std::int64_t each = model_.bars[k].capacity / model_.sizes[size].size;
        if (each == 0 || left_ == 0 || bars_[k] == 0) return;
        const std::int64_t count = std::min(bars_[k], (left_ + each - 1) / each);
        bars_[k] -= count;
        share_out({{{k, {}}, count}, model_.bars[k].capacity}, size);
    }

    const Model& model_;
    Counts bars_;
    const std::vector<std::size_t>& order_;
    std::vector<OpenBars> open_;
    std::int64_t left_ = 0;
};

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
    FirstFit fit(model, bars, order);
    for (std::size_t size = 0; size < counts.size(); ++size)
        if (counts[size] > 0 && !fit.place(size, counts[size])) return std::nullopt;
    return fit.packing();
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

std::optional<Packing> greedy_packing(const Model& model, const Counts& counts, const Counts& bars, const SawWatch& watch)
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
        if (best && watch.seconds_left() <= 0) break;
        auto packing = first_fit_decreasing(model, counts, bars, order);
        if (!packing) continue;
        Packing cheap = on_cheapest_bars(model, std::move(*packing), bars);
        if (!best || cost_of(model, cheap) < cost_of(model, *best)) best = std::move(cheap);
    }
    return best;
}

}  // namespace shaftcut::saw

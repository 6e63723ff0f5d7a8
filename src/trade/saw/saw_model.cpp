#include "saw/saw_model.hpp"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

namespace shaftcut::saw {
namespace {

constexpr std::int64_t most_reachable_steps = 50'000'000;  // beyond this the reachable lengths are not worth their time
constexpr std::int64_t most_reachable_capacity = 2'000'000;

std::vector<CutSize> merged_sizes(const SawTask& task)
{
    std::map<Length, std::int64_t, std::greater<>> counts;
    for (const SawPiece& piece : task.pieces)
        if (piece.count > 0) counts[piece.length] += piece.count;
    std::vector<CutSize> sizes;
    for (const auto& [length, count] : counts) sizes.push_back({length, (length + task.kerf).um(), count});
    return sizes;
}

// Which lengths up to `most` some choice of pieces fills exactly.
std::vector<bool> reachable_lengths(const std::vector<CutSize>& sizes, std::int64_t most)
{
    const auto end = static_cast<std::size_t>(most) + 1;
    std::vector<bool> reachable(end, false);
    std::vector<std::int64_t> used(end);
    reachable[0] = true;
    for (const CutSize& size : sizes) {
        std::fill(used.begin(), used.end(), 0);
        const auto step = static_cast<std::size_t>(size.size);
        for (std::size_t at = step; at < end; ++at) {
            if (reachable[at] || !reachable[at - step] || used[at - step] >= size.count) continue;
            reachable[at] = true;
            used[at] = used[at - step] + 1;
        }
    }
    return reachable;
}

void cap_at_reachable(Model& model)
{
    std::int64_t most = 0;
    for (const BarKind& bar : model.bars) most = std::max(most, bar.capacity);
    if (most > most_reachable_capacity || most * static_cast<std::int64_t>(model.sizes.size()) > most_reachable_steps) return;
    const std::vector<bool> reachable = reachable_lengths(model.sizes, most);
    for (BarKind& bar : model.bars)
        while (!reachable[static_cast<std::size_t>(bar.capacity)]) --bar.capacity;
}

void add_bars(Model& model, const SawTask& task)
{
    for (std::size_t k = 0; k < task.stock.size(); ++k) {
        const SawStock& stock = task.stock[k];
        const std::int64_t capacity = (stock.length - task.trim_start - task.trim_end + task.kerf).um();
        const std::int64_t count = std::min(stock.count.value_or(model.pieces), model.pieces);
        if (count > 0 && capacity >= model.sizes.back().size) model.bars.push_back({k, capacity, count, stock.cost});
    }
}

void divide_lengths(Model& model)
{
    std::int64_t divisor = 0;
    for (const CutSize& size : model.sizes) divisor = std::gcd(divisor, size.size);
    for (CutSize& size : model.sizes) size.size /= divisor;
    for (BarKind& bar : model.bars) bar.capacity /= divisor;
}

void divide_costs(Model& model)
{
    std::int64_t divisor = 0;
    for (const BarKind& bar : model.bars) divisor = std::gcd(divisor, bar.cost);
    model.cost_scale = std::max<std::int64_t>(divisor, 1);
    for (BarKind& bar : model.bars) bar.cost /= model.cost_scale;
}

}  // namespace

Model make_model(const SawTask& task)
{
    Model model;
    model.sizes = merged_sizes(task);
    for (const CutSize& size : model.sizes) model.pieces += size.count;
    add_bars(model, task);
    divide_lengths(model);
    divide_costs(model);
    cap_at_reachable(model);
    return model;
}

Counts wanted(const Model& model)
{
    Counts counts;
    for (const CutSize& size : model.sizes) counts.push_back(size.count);
    return counts;
}

Counts available(const Model& model)
{
    Counts counts;
    for (const BarKind& bar : model.bars) counts.push_back(bar.available);
    return counts;
}

Counts bars_used(const Model& model, const Packing& packing)
{
    Counts used(model.bars.size(), 0);
    for (const PackedBars& packed : packing) used[packed.pattern.bar] += packed.count;
    return used;
}

std::int64_t filled(const Model& model, const Pattern& pattern)
{
    std::int64_t sum = 0;
    for (const Part& part : pattern.parts) sum += part.count * model.sizes[part.size].size;
    return sum;
}

std::int64_t cost_of(const Model& model, const Packing& packing)
{
    std::int64_t cost = 0;
    for (const PackedBars& packed : packing) cost += packed.count * model.bars[packed.pattern.bar].cost;
    return cost;
}

Packing tidied(const Model& model, Packing packing)
{
    const auto key = [&](const PackedBars& packed) {
        return std::tuple(packed.pattern.bar, -filled(model, packed.pattern));
    };
    const auto parts_before = [](const std::vector<Part>& a, const std::vector<Part>& b) {
        return std::lexicographical_compare(a.begin(), a.end(), b.begin(), b.end(), [](const Part& p, const Part& q) {
            return std::tuple(p.size, -p.count) < std::tuple(q.size, -q.count);
        });
    };
    std::sort(packing.begin(), packing.end(), [&](const PackedBars& a, const PackedBars& b) {
        if (key(a) != key(b)) return key(a) < key(b);
        return parts_before(a.pattern.parts, b.pattern.parts);
    });
    Packing tidy;
    for (PackedBars& packed : packing) {
        if (packed.count == 0 || packed.pattern.parts.empty()) continue;
        if (!tidy.empty() && tidy.back().pattern == packed.pattern) tidy.back().count += packed.count;
        else tidy.push_back(std::move(packed));
    }
    return tidy;
}

}  // namespace shaftcut::saw

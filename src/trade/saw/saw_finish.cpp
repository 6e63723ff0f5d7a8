#include "saw/saw_finish.hpp"

#include <algorithm>
#include <numeric>

namespace shaftcut::saw {
namespace {

constexpr int most_attempts = 8;
constexpr std::size_t sizes_for_one_attempt_less = 20;
constexpr std::uint64_t most_dives = 3;
constexpr std::size_t sizes_for_one_dive = 60;
constexpr std::size_t most_merged_patterns = 300;

std::int64_t room_in(const Model& model, const Pattern& pattern)
{
    return model.bars[pattern.bar].capacity - filled(model, pattern);
}

// The position of the bar with the most room.
std::size_t roomiest(const Model& model, const Packing& packing)
{
    std::size_t best = 0;
    for (std::size_t b = 1; b < packing.size(); ++b)
        if (room_in(model, packing[b].pattern) > room_in(model, packing[best].pattern)) best = b;
    return best;
}

// Both groups of bars cut alike, when their pieces together can be shared out evenly. The average of two patterns that fit, fits.
std::optional<PackedBars> merged(const PackedBars& a, const PackedBars& b)
{
    if (a.pattern.bar != b.pattern.bar) return std::nullopt;
    PackedBars both{{a.pattern.bar, {}}, a.count + b.count};
    auto from_a = a.pattern.parts.begin();
    auto from_b = b.pattern.parts.begin();
    while (from_a != a.pattern.parts.end() || from_b != b.pattern.parts.end()) {
        // One of the two has more, or the loop had ended.
        // cppcheck-suppress derefInvalidIteratorRedundantCheck
        const std::size_t size = from_b == b.pattern.parts.end() ? from_a->size : from_a == a.pattern.parts.end() ? from_b->size : std::min(from_a->size, from_b->size);
        std::int64_t sum = 0;
        if (from_a != a.pattern.parts.end() && from_a->size == size) sum += a.count * (from_a++)->count;
        if (from_b != b.pattern.parts.end() && from_b->size == size) sum += b.count * (from_b++)->count;
        if (sum % both.count != 0) return std::nullopt;
        both.pattern.parts.push_back({size, sum / both.count});
    }
    return both;
}

// Two of the packing's patterns joined, not the one at `keep`; nothing when no pair can be.
std::optional<Packing> with_merged_pair(const Packing& packing, std::size_t keep)
{
    for (std::size_t a = 0; a < packing.size(); ++a)
        for (std::size_t b = a + 1; b < packing.size(); ++b) {
            const auto both = a == keep || b == keep ? std::nullopt : merged(packing[a], packing[b]);
            if (!both) continue;
            Packing fewer = packing;
            fewer[a] = *both;
            fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(b));
            return fewer;
        }
    return std::nullopt;
}

// Joins pairs of patterns as long as it can; the roomiest bar keeps its room.
Packing with_merged_pairs(const Model& model, Packing packing, const SawWatch& watch)
{
    if (packing.size() > most_merged_patterns) return packing;
    while (watch.seconds_left() > 0) {
        auto fewer = with_merged_pair(packing, roomiest(model, packing));
        if (!fewer) break;
        packing = tidied(model, std::move(*fewer));
    }
    return packing;
}

// The model with one more piece, of the room that is to be left free.
Model with_free_room(const Model& model, std::int64_t room)
{
    Model more = model;
    more.sizes.push_back({Length(), room, 1});
    ++more.pieces;
    return more;
}

std::optional<Packing> pack_with_free_room(const Model& model, const Packing& packing, std::int64_t room, ColumnPool pool,
                                           const SawWatch& watch)
{
    const Model more = with_free_room(model, room);
    Knapsack knapsack(more, watch);
    for (const PackedBars& packed : packing) pool.add(packed.pattern);
    MixPacker packer(more, knapsack, pool, watch);
    const Mix mix = bars_used(model, packing);
    if (packer.test(mix).verdict != MixVerdict::fractions_fit) return std::nullopt;
    std::optional<Packing> best;
    const std::uint64_t dives = model.sizes.size() < sizes_for_one_dive ? most_dives : 1;
    for (std::uint64_t number = 0; number < dives && watch.seconds_left() > 0; ++number) {
        Dive dive = packer.dive(mix, number);
        if (!dive.complete) continue;
        for (PackedBars& packed : dive.packing)
            std::erase_if(packed.pattern.parts, [&](const Part& part) { return part.size == model.sizes.size(); });
        Packing found = with_merged_pairs(model, tidied(model, std::move(dive.packing)), watch);
        if (!best || found.size() < best->size()) best = std::move(found);
    }
    return best;
}

// What could be left free in one bar at most, in the model's unit: all the room there is, or a bar with its shortest piece.
std::int64_t most_free_room(const Model& model, const Packing& packing)
{
    std::int64_t room = 0;
    std::int64_t longest = 0;
    for (const PackedBars& packed : packing) {
        room += packed.count * room_in(model, packed.pattern);
        longest = std::max(longest, model.bars[packed.pattern.bar].capacity);
    }
    const auto shortest = std::min_element(model.sizes.begin(), model.sizes.end(), [](const auto& a, const auto& b) { return a.size < b.size; });
    return std::min(room, longest - shortest->size);
}

}  // namespace

Length leftover_of(const SawTask& task, const Model& model, const Pattern& pattern)
{
    Length left = task.stock[model.bars[pattern.bar].stock].length - task.trim_start - task.trim_end;
    for (const Part& part : pattern.parts) left -= part.count * (model.sizes[part.size].length + task.kerf);
    return std::max(left, Length());
}

Packing finished(const SawTask& task, const Model& model, Packing packing, const ColumnPool& known, const SawWatch& watch)
{
    packing = with_merged_pairs(model, tidied(model, std::move(packing)), watch);
    const std::int64_t unit = (model.sizes[0].length + task.kerf).um() / model.sizes[0].size;
    std::int64_t least = room_in(model, packing[roomiest(model, packing)].pattern) + 1;
    least = std::max(least, (task.reusable + task.kerf).um() / unit);
    std::int64_t most = most_free_room(model, packing);
    const int attempts = most_attempts - static_cast<int>(std::min<std::size_t>(most_attempts - 1, model.sizes.size() / sizes_for_one_attempt_less));
    for (int attempt = 0; attempt < attempts && least <= most && watch.seconds_left() > 0; ++attempt) {
        const std::int64_t room = attempt == 0 ? most : least + (most - least) / 2;
        if (auto better = pack_with_free_room(model, packing, room, known, watch)) {
            packing = std::move(*better);
            least = room_in(model, packing[roomiest(model, packing)].pattern) + 1;
        } else {
            most = room - 1;
        }
    }
    return packing;
}

}  // namespace shaftcut::saw

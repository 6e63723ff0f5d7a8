#include "saw/saw_search.hpp"

#include <algorithm>

#include "saw/saw_greedy.hpp"
#include "saw/saw_tree.hpp"

namespace shaftcut::saw {
namespace {

constexpr int most_rounds = 12;
constexpr std::size_t most_plain_patterns = 20'000;
constexpr int rounds_before_cases = 2;
constexpr std::int64_t first_case_tests = 400;
constexpr std::int64_t most_case_prices = 2'000'000;  // of a proof by cases: 16 MB
constexpr std::uint64_t first_dives = 4;
constexpr std::uint64_t most_dives = 64;
constexpr std::size_t most_tried = 200;
constexpr std::int64_t nodes_to_prove = 5'000'000;
constexpr std::int64_t nodes_to_try = 300'000;
constexpr std::int64_t nodes_to_check = 500'000;
constexpr double almost_one = 1.0 - 1e-6;

class CheapestSearch {
public:
    CheapestSearch(const Model& model, Packing start, const SawWatch& watch)
        : model_(model), watch_(watch), best_(std::move(start)), cost_(cost_of(model, best_)), knapsack_(model, watch)
    {
    }

    Found run()
    {
        add_row(price_row(model_, knapsack_, prices_by_length()));
        if (!done()) {
            know_first_patterns();
            const GeneratedColumns columns = generate_columns(model_, knapsack_, pool_, static_cast<double>(cost_) - almost_one, watch_);
            near_ = columns.bars;
            if (columns.row) add_row(price_row(model_, knapsack_, columns.row->prices));
        }
        if (!done()) {
            MixPacker packer(model_, knapsack_, pool_, watch_);
            for (int round = 0; round < most_rounds && !done(); ++round) {
                walk_mixes(packer, std::min(most_dives, first_dives << round));
                if (round >= rounds_before_cases && !done()) try_cases(std::min(first_case_tests << round, most_case_prices / static_cast<std::int64_t>(model_.sizes.size())));
            }
        }
        if (cases_.empty()) drop_idle_rows();
        return {std::move(best_), bound_, std::move(rows_), std::move(cases_), std::move(pool_)};
    }

private:
    bool done() const { return bound_ >= cost_ || watch_.seconds_left() <= 0; }

    std::vector<std::int64_t> prices_by_length() const
    {
        std::vector<double> lengths;
        for (const CutSize& size : model_.sizes) lengths.push_back(static_cast<double>(size.size));
        std::vector<std::int64_t> prices;
        for (const CutSize& size : model_.sizes) prices.push_back(size.size);
        return values_fit(model_, prices) ? prices : whole_prices(model_, lengths).prices;
    }

    // The plan's patterns pack all pieces. Those of one size each help the prices; there may be too many of them.
    void know_first_patterns()
    {
        for (const PackedBars& packed : best_) pool_.add(packed.pattern);
        if (model_.bars.size() * model_.sizes.size() > most_plain_patterns) return;
        for (std::size_t k = 0; k < model_.bars.size(); ++k)
            for (std::size_t i = 0; i < model_.sizes.size(); ++i) {
                const std::int64_t count = std::min(model_.sizes[i].count, model_.bars[k].capacity / model_.sizes[i].size);
                if (count > 0) pool_.add({k, {{i, count}}});
            }
    }

    void add_row(PriceRow row)
    {
        // The strongest row first: it leads the search for mixes.
        rows_.push_back(std::move(row));
        std::stable_sort(rows_.begin(), rows_.end(), [&](const PriceRow& a, const PriceRow& b) { return linear_value(model_, a) > linear_value(model_, b); });
        raise_bound();
    }

    void raise_bound()
    {
        const std::int64_t bound = cheapest_mix(model_, rows_, {.limit = cost_, .near = near_}, watch_).bound;
        if (bound <= bound_) return;
        bound_ = bound;
        tell();
    }

    void tell() const
    {
        if (watch_.news) watch_.news(cost_ * model_.cost_scale, std::min(bound_, cost_) * model_.cost_scale);
    }

    void adopt(Packing packing)
    {
        packing = on_cheapest_bars(model_, std::move(packing), available(model_));
        const std::int64_t cost = cost_of(model_, packing);
        if (cost >= cost_) return;
        best_ = std::move(packing);
        cost_ = cost;
        tell();
    }

    // What a dive left over goes into further bars, whatever the stock still holds.
    void adopt_with_rest(Dive dive)
    {
        Counts bars = available(model_);
        const Counts used = bars_used(model_, dive.packing);
        for (std::size_t k = 0; k < bars.size(); ++k) bars[k] -= used[k];
        auto rest = greedy_packing(model_, dive.missing, bars, watch_);
        if (!rest) return;
        dive.packing.insert(dive.packing.end(), rest->begin(), rest->end());
        adopt(std::move(dive.packing));
    }

    // Bars that cost nothing are there to be used.
    Mix with_free_bars(Mix mix) const
    {
        for (std::size_t k = 0; k < mix.size(); ++k)
            if (model_.bars[k].cost == 0) mix[k] = model_.bars[k].available;
        return mix;
    }

    // First the cheapest mix that the rows allow, then mixes ever nearer to the best plan's cost: where costs are
    // fine-grained there are too many in between to try each.
    void walk_mixes(MixPacker& packer, std::uint64_t dives)
    {
        std::vector<Mix> tried;
        std::int64_t least = 0;
        while (!done() && tried.size() < most_tried) {
            const auto mix = cheapest_mix(model_, rows_, {tried, least, cost_, near_, least > 0 ? nodes_to_try : nodes_to_prove}, watch_).mix;
            if (!mix) return;
            const MixTest tested = packer.test(*mix);
            if (tested.verdict == MixVerdict::forbidden) {
                add_row(*tested.row);
                continue;
            }
            const std::int64_t cost = cost_of_mix(model_, *mix);
            if (tested.verdict == MixVerdict::unknown || !pack(packer, *mix, dives)) tried.push_back(*mix);
            const std::int64_t from = std::max(bound_, std::min(cost, cost_));
            least = cost < cost_ ? from + (cost_ - from) / 2 : bound_;
        }
    }

    // Where prices cannot decide: branches on the pieces that share a bar.
    void try_cases(std::int64_t most_tests)
    {
        TreeSearch search = search_tree(model_, rows_, pool_, cost_, most_tests, watch_);
        if (search.packing) adopt(std::move(*search.packing));
        if (search.proof.empty()) return;
        cases_ = std::move(search.proof);
        bound_ = cost_;
        tell();
    }

    bool pack(MixPacker& packer, const Mix& cheapest, std::uint64_t dives)
    {
        const std::int64_t target = cost_of_mix(model_, cheapest);
        const Mix mix = with_free_bars(cheapest);
        for (std::uint64_t number = 0; number < dives && cost_ > target && watch_.seconds_left() > 0; ++number) {
            Dive dive = packer.dive(mix, next_dive_++);
            if (dive.complete) adopt(std::move(dive.packing));
            else adopt_with_rest(std::move(dive));
        }
        return cost_ <= target;
    }

    // The proof is read by people: rows that it does not need are left out.
    void drop_idle_rows()
    {
        bound_ = std::min(bound_, cost_);
        for (std::size_t r = rows_.size(); r-- > 0 && rows_.size() > 1 && watch_.seconds_left() > 0;) {
            std::vector<PriceRow> fewer = rows_;
            fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(r));
            if (cheapest_mix(model_, fewer, {.limit = bound_, .most_nodes = nodes_to_check}, watch_).bound >= bound_) rows_ = std::move(fewer);
        }
        // The search that certifies() makes, with fewer nodes: no more is claimed than it will find. It is short, so it is made
        // even when time is up.
        const SawWatch no_limit{[] { return 1.0; }, {}};
        bound_ = cheapest_mix(model_, rows_, {.limit = bound_, .most_nodes = nodes_to_check}, no_limit).bound;
    }

    const Model& model_;
    const SawWatch& watch_;
    Packing best_;
    std::int64_t cost_;
    std::int64_t bound_ = 0;
    std::vector<PriceRow> rows_;
    std::vector<SawProofNode> cases_;  // prove the bound together with the rows, when not empty
    ColumnPool pool_;
    std::vector<double> near_;  // bars of each kind in the linear master
    Knapsack knapsack_;
    std::uint64_t next_dive_ = 0;
};

}  // namespace

Found search_cheapest(const Model& model, Packing start, const SawWatch& watch)
{
    return CheapestSearch(model, std::move(start), watch).run();
}

}  // namespace shaftcut::saw

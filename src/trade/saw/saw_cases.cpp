#include "saw/saw_cases.hpp"

#include <algorithm>

namespace shaftcut::saw {
namespace {

// Walks the cases from first to last. Depth is bounded: each step down joins two pieces or keeps a new pair apart.
class Walk {
public:
    Walk(const Model& model, const std::vector<PriceRow>& rows, const std::vector<SawProofNode>& cases, std::int64_t limit)
        : model_(model), rows_(rows), cases_(cases), limit_(limit), knapsack_(model_, watch_)
    {
    }

    bool proves() { return refuted(whole_task(model_), 0) && next_ == cases_.size(); }

private:
    bool refuted(const Branch& branch, std::size_t depth)
    {
        if (next_ == cases_.size() || depth > most_case_depth) return false;
        const SawProofNode& node = cases_[next_++];
        const std::size_t rows_before = rows_.size();
        knapsack_.keep_apart(branch.apart);
        for (const auto& prices : node.prices) {
            if (!well_formed(model_, prices)) return false;
            rows_.push_back(price_row(model_, knapsack_, branch.counts, prices));
        }
        const bool closed = node.halves ? both_refuted(branch, *node.halves, depth) : cheapest_mix(model_, rows_, {.limit = limit_}, watch_).bound >= limit_;
        rows_.resize(rows_before);
        return closed;
    }

    bool both_refuted(const Branch& branch, const std::pair<std::size_t, std::size_t>& pair, std::size_t depth)
    {
        const auto [a, b] = pair;
        if (!can_join(branch, a, b)) return false;
        model_.sizes.push_back(joint_size(model_, a, b));
        const bool first = refuted(joined(branch, a, b, model_.sizes.size() - 1), depth + 1);
        model_.sizes.pop_back();
        return first && refuted(kept_apart(branch, a, b), depth + 1);
    }

    Model model_;
    std::vector<PriceRow> rows_;
    const std::vector<SawProofNode>& cases_;
    std::int64_t limit_;
    SawWatch watch_{[] { return 1.0; }, {}};
    Knapsack knapsack_;
    std::size_t next_ = 0;
};

}  // namespace

bool cases_prove(const Model& model, const std::vector<PriceRow>& rows, const std::vector<SawProofNode>& cases, std::int64_t limit)
{
    return Walk(model, rows, cases, limit).proves();
}

bool well_formed(const Model& model, const std::vector<std::int64_t>& prices)
{
    return prices.size() == model.sizes.size() && std::all_of(prices.begin(), prices.end(), [](auto price) { return price >= 0; })
        && values_fit(model, prices);
}

}  // namespace shaftcut::saw

#include "saw/saw_tree.hpp"

#include <algorithm>
#include <cmath>
#include <map>

#include "saw/saw_cases.hpp"

namespace shaftcut::saw {
namespace {

constexpr double whole_tolerance = 1e-6;
constexpr double least_share = 1e-3;  // so that pairs whose share is whole by chance have an order too

bool is_whole(double amount)
{
    return std::abs(amount - std::round(amount)) < whole_tolerance;
}

class Tree {
public:
    Tree(const Model& model, const std::vector<PriceRow>& rows, const ColumnPool& known, std::int64_t limit, std::int64_t most_tests, const SawWatch& watch)
        : whole_sizes_(model.sizes.size()), model_(model), rows_(rows), limit_(limit), tests_left_(most_tests), watch_(watch), knapsack_(model_, watch),
          pool_(known), packer_(model_, knapsack_, pool_, watch)
    {
    }

    TreeSearch run()
    {
        const bool closed = refuted(whole_task(model_), {}, 0);
        if (!closed) proof_.clear();
        return {std::move(packing_), std::move(proof_)};
    }

private:
    using Joints = std::vector<std::size_t>;  // sizes of the pieces joined on the way to a branch
    struct Pair {
        std::size_t a = 0, b = 0;
        double score = -1;
    };

    // False when a packing was found, or the search was cut off.
    bool refuted(const Branch& branch, const Joints& joints, std::size_t depth)
    {
        if (depth > most_case_depth) return false;
        const std::size_t here = proof_.size();
        proof_.emplace_back();
        const std::size_t rows_before = rows_.size();
        const bool closed = forbidden(branch, joints, here) || (open_ && branched(branch, joints, here, depth));
        rows_.resize(rows_before);
        return closed;
    }

    // Adds rows for the branch until they forbid every mix below the limit, or until fractions fit one (open_ is true then).
    bool forbidden(const Branch& branch, const Joints& joints, std::size_t here)
    {
        packer_.enter(branch);
        for (open_ = false; --tests_left_ >= 0 && watch_.seconds_left() > 0;) {
            const MixSearch mixes = cheapest_mix(model_, rows_, {.limit = limit_}, watch_);
            if (!mixes.mix) return mixes.bound >= limit_;
            const MixTest tested = packer_.test(*mixes.mix);
            open_ = tested.verdict == MixVerdict::fractions_fit;
            if (tested.verdict != MixVerdict::forbidden) return false;
            proof_[here].prices.push_back(prices_of_case(tested.row->prices, joints));
            rows_.push_back(*tested.row);
        }
        return false;
    }

    // The prices of the whole task's sizes and of those joined on the way.
    std::vector<std::int64_t> prices_of_case(const std::vector<std::int64_t>& prices, const Joints& joints) const
    {
        std::vector<std::int64_t> some(prices.begin(), prices.begin() + static_cast<std::ptrdiff_t>(whole_sizes_));
        for (const std::size_t joint : joints) some.push_back(prices[joint]);
        return some;
    }

    bool branched(const Branch& branch, const Joints& joints, std::size_t here, std::size_t depth)
    {
        const std::vector<double> fractions = packer_.fractions();
        if (std::all_of(fractions.begin(), fractions.end(), is_whole)) {
            packing_ = packing_of(fractions);
            return false;
        }
        const Pair pair = best_pair(branch, fractions);
        if (pair.score < 0) return false;
        proof_[here].halves = {place_in_case(pair.a, joints), place_in_case(pair.b, joints)};
        const std::size_t joint = joint_of(pair, joints);
        Joints more = joints;
        more.push_back(joint);
        return refuted(joined(branch, pair.a, pair.b, joint), more, depth + 1) && refuted(kept_apart(branch, pair.a, pair.b), joints, depth + 1);
    }

    std::size_t place_in_case(std::size_t size, const Joints& joints) const
    {
        if (size < whole_sizes_) return size;
        return whole_sizes_ + static_cast<std::size_t>(std::find(joints.begin(), joints.end(), size) - joints.begin());
    }

    // Two sizes whose share of common bars is far from whole, long ones first. None when no pair can be joined.
    Pair best_pair(const Branch& branch, const std::vector<double>& fractions) const
    {
        std::map<std::pair<std::size_t, std::size_t>, double> together;
        for (std::size_t c = 0; c < fractions.size(); ++c) {
            if (is_whole(fractions[c])) continue;
            const std::vector<Part>& parts = pool_.patterns()[c].parts;
            for (std::size_t p = 0; p < parts.size(); ++p)
                for (std::size_t q = p; q < parts.size(); ++q)
                    if (p != q || parts[p].count > 1) together[{parts[p].size, parts[q].size}] += fractions[c];
        }
        Pair best;
        for (const auto& [sizes, amount] : together) {
            const auto [a, b] = sizes;
            if (!can_join(branch, a, b)) continue;
            const double score = (std::abs(amount - std::round(amount)) + least_share) * static_cast<double>(model_.sizes[a].size + model_.sizes[b].size);
            if (score > best.score) best = {a, b, score};
        }
        return best;
    }

    // The same size in every case, but not twice in one: what an earlier piece of it may lie beside, a later one may not.
    std::size_t joint_of(const Pair& pair, const Joints& joints)
    {
        for (std::size_t j = 0; j < joints_.size(); ++j)
            if (joints_[j] == std::pair(pair.a, pair.b) && std::find(joints.begin(), joints.end(), whole_sizes_ + j) == joints.end()) return whole_sizes_ + j;
        joints_.emplace_back(pair.a, pair.b);
        model_.sizes.push_back(joint_size(model_, pair.a, pair.b));
        const std::size_t joint = model_.sizes.size() - 1;
        const std::vector<Pattern> patterns = pool_.patterns();
        for (const Pattern& pattern : patterns) add_with_joint(pattern, pair.a, pair.b, joint);
        return joint;
    }

    void add_with_joint(const Pattern& pattern, std::size_t a, std::size_t b, std::size_t joint)
    {
        Pattern other{pattern.bar, {}};
        std::int64_t taken = 0;
        for (Part part : pattern.parts) {
            const std::int64_t less = std::min<std::int64_t>(part.count, (part.size == a ? 1 : 0) + (part.size == b ? 1 : 0));
            taken += less;
            part.count -= less;
            if (part.count > 0) other.parts.push_back(part);
        }
        other.parts.push_back({joint, 1});
        if (taken == 2) pool_.add(other);
    }

    // The patterns as often as the amounts say, which are whole; pieces that they hold beyond those wanted are left out.
    std::optional<Packing> packing_of(const std::vector<double>& amounts) const
    {
        Packing packing;
        Counts left(model_.sizes.size());
        for (std::size_t i = 0; i < whole_sizes_; ++i) left[i] = model_.sizes[i].count;
        for (std::size_t c = 0; c < amounts.size(); ++c)
            for (std::int64_t bars = std::llround(amounts[c]); bars > 0;) {
                const PackedBars some = part_of({{pool_.patterns()[c].bar, unjoined(pool_.patterns()[c].parts)}, bars}, left);
                for (const Part& part : some.pattern.parts) left[part.size] -= part.count * some.count;
                bars -= some.count;
                packing.push_back(some);
            }
        const bool all = std::all_of(left.begin(), left.end(), [](std::int64_t count) { return count == 0; });
        return all ? std::optional(tidied(model_, std::move(packing))) : std::nullopt;
    }

    // As many of the bars as can be filled like the pattern, or else one with what is left for it.
    static PackedBars part_of(PackedBars packed, const Counts& left)
    {
        std::int64_t full = packed.count;
        for (const Part& part : packed.pattern.parts) full = std::min(full, left[part.size] / part.count);
        if (full > 0) return {std::move(packed.pattern), full};
        for (Part& part : packed.pattern.parts) part.count = std::min(part.count, left[part.size]);
        std::erase_if(packed.pattern.parts, [](const Part& part) { return part.count == 0; });
        return {packed.pattern, packed.pattern.parts.empty() ? packed.count : 1};
    }

    // The pieces that were joined, each for itself.
    std::vector<Part> unjoined(const std::vector<Part>& parts) const
    {
        Counts counts(model_.sizes.size(), 0);
        for (const Part& part : parts) counts[part.size] += part.count;
        for (std::size_t i = counts.size(); i-- > whole_sizes_;) {
            counts[joints_[i - whole_sizes_].first] += counts[i];
            counts[joints_[i - whole_sizes_].second] += counts[i];
        }
        std::vector<Part> plain;
        for (std::size_t i = 0; i < whole_sizes_; ++i)
            if (counts[i] > 0) plain.push_back({i, counts[i]});
        return plain;
    }

    std::size_t whole_sizes_;  // sizes of the whole task
    Model model_;  // grows by a size for each pair that is joined somewhere
    std::vector<PriceRow> rows_;
    std::int64_t limit_;
    std::int64_t tests_left_;
    const SawWatch& watch_;
    Knapsack knapsack_;
    ColumnPool pool_;
    MixPacker packer_;
    std::vector<std::pair<std::size_t, std::size_t>> joints_;  // what the sizes beyond the whole task's are made of
    std::vector<SawProofNode> proof_;
    bool open_ = false;
    std::optional<Packing> packing_;
};

}  // namespace

TreeSearch search_tree(const Model& model, const std::vector<PriceRow>& rows, const ColumnPool& known, std::int64_t limit, std::int64_t most_tests,
                       const SawWatch& watch)
{
    return Tree(model, rows, known, limit, most_tests, watch).run();
}

}  // namespace shaftcut::saw

#include "saw/saw_packer.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <span>

namespace shaftcut::saw {
namespace {

constexpr double nothing_short = 1e-7;  // of the longest bar: the LP's rounding
constexpr double whole_tolerance = 1e-6;
constexpr double share_left_out = 0.3;  // of the whole parts, in all dives but the plain one
constexpr int most_steps_back = 12;
constexpr std::size_t most_candidates = 3;
constexpr std::size_t most_from_dives = 4'000;
constexpr std::size_t bars_for_one_more = 40;

std::int64_t total(const Counts& counts)
{
    return std::accumulate(counts.begin(), counts.end(), std::int64_t{0});
}

}  // namespace

// Shares from 0 to 1 by SplitMix64 (Steele, Lea, Flood, OOPSLA 2014): the same on every machine. Number 0: always 1.
class MixPacker::Shares {
public:
    explicit Shares(std::uint64_t number) : plain_(number == 0), state_(number) {}

    double next()
    {
        if (plain_) return 1.0;
        state_ += 0x9E3779B97F4A7C15U;
        std::uint64_t z = state_;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9U;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBU;
        return static_cast<double>((z ^ (z >> 31)) >> 11) * 0x1p-53;
    }

private:
    bool plain_;
    std::uint64_t state_;
};

MixPacker::MixPacker(const Model& model, Knapsack& knapsack, ColumnPool& pool, const SawWatch& watch)
    : model_(model), knapsack_(knapsack), pool_(pool), watch_(watch), branch_(whole_task(model))
{
    load_master();
}

void MixPacker::load_master()
{
    if (!master_) master_ = std::make_unique<Master>(model_, Aim::least_shortage, watch_);
    master_->add_sizes();
    master_->add_all(pool_.patterns(), allowed_.size());
    allowed_.resize(pool_.patterns().size(), true);
}

void MixPacker::enter(const Branch& branch)
{
    branch_ = branch;
    branch_.counts.resize(model_.sizes.size(), 0);
    branch_.apart.resize(model_.sizes.size());
    knapsack_.keep_apart(branch_.apart);
    load_master();
}

void MixPacker::forget_surplus()
{
    if (pool_.patterns().size() < tested_ + most_from_dives) return;
    pool_.keep_first(tested_);
    master_.reset();
    allowed_.clear();
    load_master();
}

bool MixPacker::fits_pattern(const Pattern& pattern, const State& state) const
{
    if (state.bars[pattern.bar] == 0 || !permitted(branch_.apart, pattern)) return false;
    return std::all_of(pattern.parts.begin(), pattern.parts.end(), [&](const Part& part) { return part.count <= state.counts[part.size]; });
}

// Only patterns that could be cut from what is left: otherwise fractions of impossible patterns hide a shortage.
void MixPacker::limit_master(const State& state)
{
    master_->set_wanted(state.counts);
    master_->set_bars(state.bars);
    for (std::size_t c = 0; c < allowed_.size(); ++c) {
        const bool allow = fits_pattern(pool_.patterns()[c], state);
        if (allow != allowed_[c]) master_->allow(c, allow);
        allowed_[c] = allow;
    }
}

bool MixPacker::add_columns(const State& state, Effort effort)
{
    const Pricing judge{answer_.prices, answer_.bar_prices};
    const PricedPatterns priced = price_patterns(model_, knapsack_, state.bars, state.counts, answer_.prices, judge, effort);
    Worth worth = 0;
    for (std::size_t k = 0; k < priced.most.size(); ++k) worth += static_cast<Worth>(priced.most[k]) * state.bars[k];
    for (std::size_t i = 0; i < state.counts.size(); ++i) worth -= static_cast<Worth>(priced.whole.prices[i]) * state.counts[i];
    forbidden_ = worth < 0;
    if (forbidden_) forbidding_prices_ = priced.whole.prices;
    bool any = false;
    for (const Pattern& pattern : priced.improving) any = pool_.add(pattern) || any;
    load_master();
    return any && !forbidden_;
}

MixPacker::Rest MixPacker::restore(const State& state)
{
    limit_master(state);
    while (watch_.seconds_left() > 0) {
        answer_ = master_->solve(watch_);
        if (!answer_.solved) return Rest::out_of_time;
        if (answer_.objective < nothing_short) return Rest::fits;
        if (add_columns(state, Effort::quick)) continue;
        if (forbidden_ || !add_columns(state, Effort::exact)) return watch_.seconds_left() > 0 ? Rest::short_of_bars : Rest::out_of_time;
    }
    return Rest::out_of_time;
}

MixTest MixPacker::test(const Mix& mix)
{
    const Rest rest = restore({branch_.counts, mix, {}});
    tested_ = pool_.patterns().size();
    if (rest == Rest::fits) return {MixVerdict::fractions_fit, {}};
    if (rest == Rest::out_of_time || !forbidden_) return {};
    PriceRow row = price_row(model_, knapsack_, branch_.counts, forbidding_prices_);
    if (satisfies(row, mix)) return {};
    return {MixVerdict::forbidden, std::move(row)};
}

MixPacker::State MixPacker::with_column(State state, std::size_t column, std::int64_t times) const
{
    Pattern pattern{pool_.patterns()[column].bar, {}};
    for (Part part : pool_.patterns()[column].parts) {
        part.count = std::min(part.count, state.counts[part.size] / times);
        if (part.count == 0) continue;
        pattern.parts.push_back(part);
        state.counts[part.size] -= times * part.count;
    }
    state.bars[pattern.bar] -= times;
    state.packing.push_back({std::move(pattern), times});
    return state;
}

// The whole parts of the amounts leave fractions that still fit. Later dives leave some of them out.
MixPacker::State MixPacker::with_whole_parts(State state, const MasterAnswer& fractions, Shares& shares) const
{
    for (std::size_t c = 0; c < fractions.amounts.size(); ++c) {
        auto times = static_cast<std::int64_t>(std::floor(fractions.amounts[c] + whole_tolerance));
        if (times == 0) continue;
        if (shares.next() < share_left_out) --times;
        for (const Part& part : pool_.patterns()[c].parts) times = std::min(times, state.counts[part.size] / part.count);
        times = std::min(times, state.bars[pool_.patterns()[c].bar]);
        if (times > 0) state = with_column(std::move(state), c, times);
    }
    return state;
}

std::vector<MixPacker::Candidate> MixPacker::candidates(const State& state, const MasterAnswer& fractions, double noise,
                                                        Shares& shares) const
{
    std::vector<Candidate> all;
    for (std::size_t c = 0; c < fractions.amounts.size(); ++c) {
        const double share = fractions.amounts[c] - std::floor(fractions.amounts[c] + whole_tolerance);
        const bool worth_it = fractions.amounts[c] > whole_tolerance && fits_pattern(pool_.patterns()[c], state);
        if (worth_it) all.push_back({c, std::max(share, 0.5 * whole_tolerance) + noise * shares.next()});
    }
    std::stable_sort(all.begin(), all.end(), [](const Candidate& a, const Candidate& b) { return a.score > b.score; });
    return all;
}

// While many bars are open, a step fixes more than one of them.
MixPacker::State MixPacker::with_several(State state, const std::vector<Candidate>& ranked) const
{
    std::size_t most = ranked.size() / bars_for_one_more;
    for (const Candidate& candidate : ranked) {
        if (most == 0) break;
        if (!fits_pattern(pool_.patterns()[candidate.column], state)) continue;
        state = with_column(std::move(state), candidate.column, 1);
        --most;
    }
    return state;
}

Dive MixPacker::dive(const Mix& mix, std::uint64_t number)
{
    forget_surplus();
    State state{branch_.counts, mix, {}};
    Shares shares(number);
    const double noise = number == 0 ? 0.0 : 0.1 + 0.1 * static_cast<double>(number % 8);
    int steps_back = 0;
    bool going = restore(state) == Rest::fits;
    while (going && total(state.counts) > 0) {
        const MasterAnswer fractions = answer_;
        const State whole = with_whole_parts(state, fractions, shares);
        if (whole.packing.size() > state.packing.size() && restore(whole) == Rest::fits) {
            state = whole;
            continue;
        }
        going = false;
        const std::vector<Candidate> next = candidates(state, fractions, noise, shares);
        const State several = with_several(state, next);
        if (several.packing.size() > state.packing.size() + 1 && restore(several) == Rest::fits) {
            state = several;
            going = true;
            continue;
        }
        for (const Candidate& candidate : std::span(next).first(std::min(next.size(), most_candidates))) {
            const State fixed = with_column(state, candidate.column, 1);
            const Rest rest = restore(fixed);
            if (rest == Rest::fits) {
                state = fixed;
                going = true;
                break;
            }
            if (rest == Rest::out_of_time || ++steps_back > most_steps_back) break;
        }
    }
    const bool complete = total(state.counts) == 0;
    return {tidied(model_, std::move(state.packing)), std::move(state.counts), complete};
}

}  // namespace shaftcut::saw

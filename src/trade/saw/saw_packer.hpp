// Packing all pieces into exactly given numbers of bars: fractions first, then dives that fix pattern after pattern.
#pragma once

#include "saw/saw_branch.hpp"
#include "saw/saw_columns.hpp"

namespace shaftcut::saw {

enum class MixVerdict {
    fractions_fit,  // the linear master packs all pieces into the mix
    forbidden,      // proven: a row of prices forbids the mix
    unknown,        // out of time, or too close for the LP's rounding
};

struct MixTest {
    MixVerdict verdict = MixVerdict::unknown;
    std::optional<PriceRow> row;  // when forbidden
};

struct Dive {
    Packing packing;  // of the pieces packed
    Counts missing;   // of each size, pieces left over; all 0 when the dive succeeded
    bool complete = false;
};

// Works on one mix at a time; the pool's patterns carry over from mix to mix, those that only dives found until there are
// too many of them.
class MixPacker {
public:
    MixPacker(const Model& model, Knapsack& knapsack, ColumnPool& pool, const SawWatch& watch);

    MixTest test(const Mix& mix);
    // From now on tests are about this branch of all plans; the model may have got sizes since.
    void enter(const Branch& branch);
    // The fractions that fit, of each pattern of the pool, after a test that says so.
    const std::vector<double>& fractions() const { return answer_.amounts; }

    // Fixes patterns from the linear master one by one, solving again after each; steps back a few times when the rest does
    // not fit any more. Equal numbers give equal dives; number 0 is the plain one.
    Dive dive(const Mix& mix, std::uint64_t number);

private:
    class Shares;
    enum class Rest { fits, short_of_bars, out_of_time };
    struct State {
        Counts counts;
        Mix bars;
        Packing packing;
    };
    struct Candidate {
        std::size_t column = 0;
        double score = 0;
    };

    Rest restore(const State& state);
    void limit_master(const State& state);
    bool add_columns(const State& state, Effort effort);
    void load_master();
    void forget_surplus();
    State with_whole_parts(State state, const MasterAnswer& fractions, Shares& shares) const;
    State with_column(State state, std::size_t column, std::int64_t times) const;
    std::vector<Candidate> candidates(const State& state, const MasterAnswer& fractions, double noise, Shares& shares) const;
    State with_several(State state, const std::vector<Candidate>& ranked) const;
    bool fits_pattern(const Pattern& pattern, const State& state) const;

    const Model& model_;
    Knapsack& knapsack_;
    ColumnPool& pool_;
    const SawWatch& watch_;
    Branch branch_;
    std::unique_ptr<Master> master_;
    std::vector<bool> allowed_;  // of each pool pattern, in the master in the same order
    std::size_t tested_ = 0;  // pool patterns after the last test of a mix
    MasterAnswer answer_;
    bool forbidden_ = false;
    std::vector<std::int64_t> forbidding_prices_;
};

}  // namespace shaftcut::saw

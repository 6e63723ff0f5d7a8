// Saw tasks for tests, and answers to small ones that do not come from the solver.
#pragma once

#include <cstdint>

#include "shaftcut/trade/saw/saw.hpp"

namespace shaftcut::test {

// Numbers that are the same on every machine (SplitMix64, Steele, Lea, Flood, OOPSLA 2014).
class Numbers {
public:
    explicit Numbers(std::uint64_t start) : state_(start) {}
    std::int64_t between(std::int64_t least, std::int64_t most);

private:
    std::uint64_t state_;
};

struct LengthAndCount {
    std::int64_t length;
    std::int64_t count;
};

// One kind of bar, as many as needed, at cost 1; lengths in whole millimetres, no kerf, no trims.
SawTask plain_task(std::int64_t bar, const std::vector<LengthAndCount>& pieces);

// Bars of 1000 cut into three pieces of 250 or more without waste, so that the optimum is the number of bars
// (recipe: E. Falkenauer, Journal of Heuristics 2 (1996)).
SawTask triplets(std::int64_t bars, std::uint64_t start);

// A few lengths, kerf, trims, two or three kinds of bars, some limited, with costs that are not their lengths.
SawTask small_task(std::uint64_t start);

// The least cost by trying every pattern for every bar in every state of what is left; nothing when the stock does not do.
// For a few thousand states at most.
std::optional<std::int64_t> exhaustive_cost(const SawTask& task);

// Whether the certificate proves the bound, by enumeration of all patterns and all mixes. For small tasks.
bool exhaustively_certifies(const SawTask& task, const SawCertificate& certificate, std::int64_t bound);

// A watch that never stops.
SawWatch no_hurry();

}  // namespace shaftcut::test

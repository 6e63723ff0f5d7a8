// Random jobs with the catalogue and the workshop that they need, the same for the same number on every machine.
#pragma once

#include <cstdint>
#include <random>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"

namespace shaftcut::test {

// Whole numbers only: the standard library's distributions differ between implementations, its engine does not.
class Dice {
public:
    explicit Dice(std::uint64_t number) : engine_(number) {}
    std::int64_t up_to(std::int64_t count) { return static_cast<std::int64_t>(engine_() % static_cast<std::uint64_t>(count + 1)); }
    std::int64_t from(std::int64_t least, std::int64_t greatest) { return least + up_to(greatest - least); }
    bool one_in(std::int64_t count) { return up_to(count - 1) == 0; }
    // Mostly whole millimetres, sometimes halves, sixteenths of an inch or any micrometre.
    Length length(std::int64_t least_mm, std::int64_t greatest_mm);
    // Nothing, or a little to either side of what a comparison ignores.
    Length nudge();

private:
    std::mt19937_64 engine_;
};

struct World {
    Job job;
    Catalogue catalogue;
    Workshop workshop;
    Units units = Units::mm;
};

// Anything that the readers let through: contradictions, missing values and figures on their limits included.
World random_world(std::uint64_t number);

// A measured shaft and one fit without contradictions; most are cut, some refused, some fit.
World sound_world(std::uint64_t number);

}  // namespace shaftcut::test

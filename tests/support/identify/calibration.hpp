// How often the program is right about true shafts, beside how often it claims to be.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "support/identify/invented.hpp"

namespace shaftcut::test {

// Of answers with one verdict: how many, how many of them are right, and the sum of what they claim.
struct Said {
    int count = 0, right = 0;
    double claimed = 0;  // of 1 each
    void add(bool is_right, double claim);
    double right_percent() const;
    double claimed_percent() const;
};

struct Calibration {
    Said one, mixed, none;
    int several = 0;
    int of_one_series = 0, listed = 0;  // shafts of one series, and of these how many have it in their list
    int wrong_mixed = 0, wrong_none = 0, wrong_other = 0;  // what those truly are that were said to be one series
    std::vector<Said> best, mixed_bins;  // of the most probable series, and of mixed, by what they claim: 0 to 10 %, 10 to 30, 30 to 50, 50 to 70, 70 to 90, 90 to 95, 95 to 98, 98 to 100
};

struct Study {
    int series = 100, shafts = 2000;
    World world{};
    std::uint64_t start = 1;
};

// Each shaft measured as somebody would, and answered.
Calibration calibrate(const Study& study);

// Each shaft asked in the program's own order, until nothing is worth measuring or, `at_verdict`, until there is a verdict.
struct Asked {
    Said decided;
    int undecided = 0;
    double measurements = 0, minutes = 0;  // a shaft
    std::vector<int> counts{};             // of measurements, of each shaft, ascending
    double bits_told = 0, bits_came = 0;   // a shaft: what the measurements were expected to tell, and what they did
};
Asked ask(const Study& study, bool at_verdict);

std::string as_markdown(const std::string& name, const Calibration& calibration);
std::string bins_as_markdown(const std::string& name, const std::vector<Said>& bins);
std::string as_markdown(const std::string& name, const Asked& asked);

}  // namespace shaftcut::test

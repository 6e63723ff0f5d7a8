// The options of a saw plan, for every command that makes one.
#pragma once

#include <boost/program_options.hpp>
#include <string>

#include "call/options.hpp"

namespace shaftcut {

struct SawOptionTexts {
    std::string stock, kerf, trim_start = "0", trim_end = "0", seconds = "10";
};

// Adds them to `described`. `stock`: what the stock file holds.
void add_saw_options(boost::program_options::options_description& described, SawOptionTexts& texts, OptionText stock, const Wording& w);

// Turns all but the stock file into wishes; lengths without a unit are in `units`.
Checked<SawWishes> checked(const SawOptionTexts& texts, Units units, const Wording& w);

}  // namespace shaftcut

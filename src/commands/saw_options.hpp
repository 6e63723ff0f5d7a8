// The options of a saw plan, for every command that makes one.
#pragma once

#include <boost/program_options.hpp>
#include <string>

#include "options.hpp"

namespace shaftcut {

struct SawOptionTexts {
    std::string stock, kerf, trim_start = "0", trim_end = "0", seconds = "10";
};

// Adds them to `described`. `stock_help` says what the stock file holds.
void add_saw_options(boost::program_options::options_description& described, SawOptionTexts& texts, const char* stock_help);

// Turns all but the stock file into wishes; lengths without a unit are in `units`.
Checked<SawWishes> checked(const SawOptionTexts& texts, Units units);

// Empty where documents can be named after the list `path`; else the fault in words. `what` says what the list holds.
std::string list_name_fault(const std::string& path, const std::string& what);

}  // namespace shaftcut

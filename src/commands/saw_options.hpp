// The options of a saw plan, for every command that makes one.
#pragma once

#include <boost/program_options.hpp>
#include <optional>
#include <string>

#include "shaftcut/words/length.hpp"

namespace shaftcut {

struct SawOptionTexts {
    std::string stock, kerf, trim_start = "0", trim_end = "0", seconds = "10";
};

struct BladeOptions {
    std::optional<Length> kerf;  // nothing: the workshop's saw's
    Length trim_start, trim_end;
    double seconds = 0;
};

// Adds them to `described`. `stock_help` says what the stock file holds.
void add_saw_options(boost::program_options::options_description& described, SawOptionTexts& texts, const char* stock_help);

// Turns all but the stock file into options; lengths without a unit are in `units`. `fault` is empty, or the fault in words.
struct CheckedBladeOptions {
    BladeOptions options;
    std::string fault;
};
CheckedBladeOptions checked(const SawOptionTexts& texts, Units units);

// Empty where documents can be named after the list `path`; else the fault in words. `what` says what the list holds.
std::string list_name_fault(const std::string& path, const std::string& what);

}  // namespace shaftcut

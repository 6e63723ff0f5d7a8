// A saw task as one integer programme, solved by a general solver: glpsol (Debian package glpk-utils), run as a program of its own.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>

#include "shaftcut/trade/saw/saw.hpp"

namespace shaftcut::test {

bool general_solver_is_there();

// Each bar on its own: open or not, and how many of each piece are cut from it. most_bars[k]: bars of stock k in the model. Costs are in
// whole cost units, rounded down. CPLEX LP format.
std::string full_model(const SawTask& task, const std::vector<std::int64_t>& most_bars);

struct GeneralAnswer {
    std::optional<std::int64_t> cost;  // of the best plan it found, in cost units
    double bound = 0;                  // it says that no plan costs less, in cost units
    bool proven = false;
    double seconds = 0;                // of processor, reading the model included
};

// Searches for so many seconds at most, besides reading the model. The folder must exist; files in it are overwritten.
GeneralAnswer solve_in_general(const std::string& model, int seconds, const std::filesystem::path& folder);

}  // namespace shaftcut::test

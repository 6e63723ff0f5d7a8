// The linear master problem: which known patterns to use, fractions allowed. The only file that knows the LP library (CLP,
// Eclipse Public License). Nothing it returns is trusted in a proof: bounds are recomputed in whole numbers (saw_mix.hpp).
#pragma once

#include <memory>

#include "saw/saw_model.hpp"

namespace shaftcut::saw {

// What the master makes small.
enum class Aim {
    least_cost,      // cost of the bars, as a share of the dearest bar's
    least_shortage,  // length of the pieces left over, as a share of the longest bar's; bars are free within their numbers
};

struct MasterAnswer {
    bool solved = false;
    double objective = 0;
    std::vector<double> prices;      // of each size, in the objective's unit
    std::vector<double> bar_prices;  // of each bar: what one more would save, 0 or more
    std::vector<double> amounts;     // of each column
};

class Master {
public:
    // Uses of `watch` what finds the library's functions, now.
    Master(const Model& model, Aim aim, const SawWatch& watch);
    ~Master();
    Master(const Master&) = delete;
    Master& operator=(const Master&) = delete;

    // Takes up the sizes that the model has got since; so far nothing of them is wanted.
    void add_sizes();
    void add(const Pattern& pattern);
    void add_all(const std::vector<Pattern>& patterns, std::size_t from);  // those from there on
    std::size_t columns() const;
    void set_wanted(const Counts& counts);
    void set_bars(const Counts& available);
    void allow(std::size_t column, bool allowed);
    // Not solved: infeasible, or time is up.
    MasterAnswer solve(const SawWatch& watch);

private:
    struct Program;
    std::unique_ptr<Program> program_;
};

}  // namespace shaftcut::saw

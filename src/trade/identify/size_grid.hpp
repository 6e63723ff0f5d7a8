// Where readings of a size are counted: cells two and a half of which make a reading's deviation, with the density of a reading tabulated once.
#pragma once

#include <cstddef>
#include <functional>
#include <vector>

#include "identify/densities.hpp"

namespace shaftcut::identifying {

struct SizeGrid {
    double low = 0, step = 0;     // millimetres
    std::size_t reach = 0;        // cells from a size to the end of its readings' table
    std::vector<double> table;    // density of a reading that is no slip, times 1 − slip; 2·reach + 1 cells
    std::vector<double> unknown;  // density where the size is not known, times 1 − slip; one a cell
    double slips = 0;             // density of slips, everywhere

    std::size_t cells() const { return unknown.size(); }
    // The first cell of the table of a size, which lies within those that the grid was made for.
    std::size_t first_cell(double size) const;
    // Σ over sizes of weight·table; `weights` by first cell.
    std::vector<double> spread(const std::vector<double>& weights) const;
};

// For sizes from `sizes.low` to `sizes.high` (low > high: there is none); `unknown`: the density of a reading of an unknown size.
SizeGrid make_grid(SizeKind kind, Interval sizes, const std::function<double(double)>& unknown);

}  // namespace shaftcut::identifying

// Faults found in a file, each with its place and with what would be right.
#pragma once

#include <string>
#include <vector>

namespace shaftcut {

// Where something stands in a file. Line and column count from 1; a column counts characters, not bytes.
struct Place {
    std::string file;
    int line = 1;
    int column = 1;
    auto operator<=>(const Place&) const = default;
};

struct Problem {
    Place place;
    std::string wrong;  // what is wrong, naming the value found
    std::string right;  // what would be right, naming what is allowed
};

using Problems = std::vector<Problem>;

// "FILE:LINE:COLUMN"
std::string to_string(const Place& place);

// "FILE:LINE:COLUMN: what is wrong; what would be right"
std::string to_string(const Problem& problem);

}  // namespace shaftcut

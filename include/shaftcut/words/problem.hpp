// What is said of faults found in a file, each with its place and with what would be right.
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

// `path`: the element that it is about, from below the file's own, with the attribute, "shaft/half[2]@length"; of a list the row under its
// header and the column, "row[3]@length". An element of which there are several is numbered from 1; what is missing is named where it
// would be. Empty where it is the file as a whole.
struct Problem {
    Place place;
    std::string wrong;  // what is wrong, naming the value found
    std::string right;  // what would be right, naming what is allowed
    std::string path = {};
};

using Problems = std::vector<Problem>;

// "FILE:LINE:COLUMN"
std::string to_string(const Place& place);

// "FILE:LINE:COLUMN: what is wrong; what would be right"
std::string to_string(const Problem& problem);

}  // namespace shaftcut

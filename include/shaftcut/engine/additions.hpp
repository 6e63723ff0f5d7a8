// What is added to the configuration's files: an office's map of its lists, a series. All that stands there already stays as it is, byte for byte.
// Checked in tests/engine/additions_test.cpp.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// What a heading is: a column's name, "article", or "left-out"; and what a text in a column of words or names means.
struct LearntHeading {
    std::string heading, is;
};
struct LearntValue {
    std::string column, text, means;
};
struct Learnt {
    std::vector<LearntHeading> headings = {};
    std::vector<LearntValue> values = {};
};

// `first_values`: at most two, of the rows below it that have one. `nearest`: the column, or the word or name, that may be meant; or empty.
struct HeadingAsked {
    std::string heading;
    std::vector<std::string> first_values;
    std::string nearest;
};
struct ValueAsked {
    std::string column, text;
    std::vector<std::string> known;
    std::string nearest;
};
// Headings in the order of the file, values in that of the columns, each once and at most 100. `columns`: what a heading can be.
// `problems`: where the list cannot be read at all.
struct ListQuestions {
    std::vector<HeadingAsked> headings;
    std::vector<ValueAsked> values;
    std::vector<std::string> columns;
    Problems problems;
};

// The file with the addition, or why there can be none: what is wrong with the addition, each at its place there, or with the file.
struct Addition {
    std::optional<std::string> bytes;
    Problems problems;
    std::vector<std::string> names;  // of the series that were added
    Units units = Units::mm;         // of the lengths of the file that carry none
};

}  // namespace shaftcut

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
// What an article of the office is: what it states in columns that the list leaves to it. A length without a unit is in the map's units.
struct LearntStatement {
    std::string column, text;
};
struct LearntArticle {
    std::string number;
    std::vector<LearntStatement> states = {};
};
struct Learnt {
    std::vector<LearntHeading> headings = {};
    std::vector<LearntValue> values = {};
    std::optional<Units> units = {};  // of its lengths that carry none
    std::string dates = {};           // which of day and month stands first, by its word; empty: not asked, or left open
    std::vector<LearntArticle> articles = {};
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
// `known`: the words or names that can stand there; empty: a figure.
struct FieldAsked {
    std::string column;
    std::vector<std::string> known;
};
// Headings in the order of the file, values in that of the columns, each once and at most 100. `columns`: what a heading can be.
// `problems`: where the list cannot be read at all.
struct ListQuestions {
    std::vector<HeadingAsked> headings;
    std::vector<ValueAsked> values;
    std::vector<std::string> columns;
    Problems problems;
    bool units = false;                      // its lengths carry none, and neither map nor call says which they are in
    std::vector<std::string> days;           // at most two that can be read in two ways; else empty
    std::vector<std::string> date_orders;    // the words for them
    std::vector<std::string> articles;       // numbers that the map does not hold, each once and at most 100
    std::vector<FieldAsked> article_fields;  // what each may state
};

// The file with the addition, or why there can be none: what is wrong with the addition, each at its place there, or with the file.
struct Addition {
    std::optional<std::string> bytes;
    Problems problems;
    std::vector<std::string> names;  // of the series that were added
    Units units = Units::mm;         // of the lengths of the file that carry none
};

}  // namespace shaftcut

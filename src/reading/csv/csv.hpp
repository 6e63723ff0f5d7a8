// A strict reader of small CSV files: UTF-8, commas, a header line that names the columns, fields in double quotes where they
// hold commas or quotes. Every fault of the file comes back at once, each with its place.
// Checked by tests/reading/csv/csv_test.cpp.
#pragma once

#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "source/faults.hpp"

namespace shaftcut {

inline constexpr std::size_t most_csv_bytes = std::size_t{16} * 1024 * 1024;
inline constexpr std::size_t most_csv_fields = 100;  // in a line: no list has so many columns

struct CsvColumn {
    std::string name;
    bool required = true;
};

struct CsvCell {
    std::string text;  // empty for a column that the file does not have
    Spot spot;         // of the field's first character
    std::size_t row = 0;           // under the header, from 1
    std::string_view column = {};  // the name of one that was asked for
};

// "row[3]@length": of the third row under the header.
std::string path_of_cell(std::size_t row, std::string_view column);
// Of a fault in this cell, once it stands in a row.
Whereabouts where(const CsvCell& cell);

// One line with fields; its cells in the order of the columns asked for, not of the file.
using CsvRow = std::vector<CsvCell>;

// How many lines with fields a list may have under its header, and what they are.
struct CsvLimit {
    std::size_t most = 0;
    ManyOf what = ManyOf::lines;
};

// Gives each line that can be read to `take`, one after the other, so that a long list is never held as text and as cells at once. `take`
// may add what it finds wrong with a line to the faults. Returns all faults.
// `text` is the whole file, `file` its name in messages. A byte order mark, CR LF and empty lines are accepted; columns may stand in
// any order; spaces around a field are dropped unless it is quoted. Refused, and nothing taken: more than most_csv_bytes, text that is
// not UTF-8, no header, a column unknown, twice or missing, more lines than `limit.most`. Refused line by line: more or fewer fields than
// the header or more than most_csv_fields, a quote left open on its line or followed by anything but a comma, a quote inside a field
// without quotes, a character that nobody sees (is_hidden in text.hpp), with its code. Blanks of every kind are read as plain ones,
// and soft hyphens dropped. A file with nothing under its header has no fault.
Faults read_csv(std::string_view text, const std::string& file, const std::vector<CsvColumn>& columns, const CsvLimit& limit,
                const std::function<void(const CsvRow&, Faults&)>& take);

}  // namespace shaftcut

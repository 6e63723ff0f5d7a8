// A strict reader of lists as CSV: a heading line that names the columns, separators that it shows (commas, semicolons or tabs), fields in
// double quotes where they hold separators or quotes. Every fault of the file comes back at once, each with its place.
// Checked by tests/reading/csv/csv_test.cpp.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "table/table.hpp"

namespace shaftcut {

inline constexpr std::size_t most_csv_bytes = std::size_t{16} * 1024 * 1024;
inline constexpr std::size_t most_csv_fields = 100;  // in a line: no list has so many columns

// Gives each line that can be read to `take`, one after the other, so that a long list is never held as text and as cells at once. `take`
// may add what it finds wrong with a line to the faults. Returns all faults.
// `text` is the whole file, `file` its name in messages: UTF-8 or UTF-16, with a byte order mark or without. CR LF, empty rows and empty columns,
// and a first line "sep=;" are accepted; the separator is the one of which most stand in the heading line; where it is no comma, decimals have one
// (values.hpp). Spaces around a field are dropped unless it is quoted. Refused, and nothing taken: more than most_csv_bytes, text in another
// encoding, no heading, a column unknown, twice or missing, more lines than `limit.most`. Refused line by line: more or fewer fields than
// the heading or more than most_csv_fields, a quote left open on its line or followed by anything but a separator, a quote inside a field
// without quotes, a character that nobody sees (is_hidden in text.hpp), with its code. Blanks of every kind are read as plain ones,
// and soft hyphens dropped. A file with nothing under its heading has no fault.
Faults read_csv(std::string_view text, const std::string& file, const std::vector<TableColumn>& columns, const TableLimit& limit, const TakeRow& take);

}  // namespace shaftcut

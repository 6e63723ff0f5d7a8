// A strict reader of small CSV files: UTF-8, commas, a header line that names the columns, fields in double quotes where they
// hold commas or quotes. Every fault of the file comes back at once, each with its place.
// Checked by tests/reading/csv_test.cpp.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "shaftcut/reading/faults.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

inline constexpr std::size_t most_csv_bytes = 16 * 1024 * 1024;
inline constexpr std::size_t most_problems = Faults::most_listed;  // further faults are counted, not listed

struct CsvColumn {
    std::string name;
    bool required = true;
};

struct CsvCell {
    std::string text;  // empty for a column that the file does not have
    Place place;       // of the field's first character
};

// One row for each line with fields; its cells in the order of the columns asked for, not of the file.
using CsvRows = std::vector<std::vector<CsvCell>>;

// `text` is the whole file, `file` its name in messages. A byte order mark, CR LF and empty lines are accepted; columns may stand in
// any order; spaces around a field are dropped unless it is quoted. Refused: more than most_csv_bytes, text that is not UTF-8,
// no header, a column unknown, twice or missing, a line with more or fewer fields than the header, a quote left open on its line or
// followed by anything but a comma, a quote inside a field without quotes, a control character.
// A file with nothing under its header gives no rows.
std::variant<CsvRows, Problems> read_csv(std::string_view text, const std::string& file, const std::vector<CsvColumn>& columns);

// The lines that can be read, and what is wrong with the others: for lists whose good lines are still worked on. Where the
// header or the file as a whole is at fault there are no rows.
struct CsvReading {
    CsvRows rows;
    Faults faults;
};
CsvReading read_sound_lines(std::string_view text, const std::string& file, const std::vector<CsvColumn>& columns);

}  // namespace shaftcut

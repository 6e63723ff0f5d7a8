// A list as rows of cells under a heading line, whatever the form of its file: which column is which, what of a cell a spreadsheet has
// left there, and which rows are none. Checked by tests/reading/csv/european_lists_test.cpp and tests/reading/csv/csv_test.cpp.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "source/faults.hpp"
#include "table/values.hpp"

namespace shaftcut {

// `headings`, `values`, `days`: an office's own, beside what everybody may write: a heading or value exactly so, the value with what it is read as.
// A heading that one column has as its own stands for no other. `left_out`: what stands under its headings is not read.
struct TableColumn {
    std::string name;
    bool required = true;
    Holds holds = Holds::text;
    std::vector<std::string> headings = {};
    std::map<std::string, std::string> values = {};
    std::optional<DateOrder> days = {};
    bool left_out = false;
};

struct TableCell {
    std::string text = {};  // empty for a column that the file does not have; as plain_value() makes it
    Spot spot = {};         // of the cell's first character
    std::size_t row = 0;           // under the heading, from 1
    std::string_view column = {};  // the name of one that was asked for
    bool is_figure = false;        // a workbook's number or day: its form is not in doubt
    bool in_doubt = false;         // its value has a fault already: nobody need look at it
};

// "row[3]@length": of the third row under the heading.
std::string path_of_cell(std::size_t row, std::string_view column);
// "header", "row[3]".
std::string path_of_row(std::size_t row);
// Of a fault in this cell, once it stands in a row.
Whereabouts where(const TableCell& cell);

// One line with fields; its cells in the order of the columns asked for, not of the file.
using TableRow = std::vector<TableCell>;
using TakeRow = std::function<void(const TableRow&, Faults&)>;

// How many lines with fields a list may have under its heading, and what they are.
struct TableLimit {
    std::size_t most = 0;
    ManyOf what = ManyOf::lines;
};

// Takes a list's lines in their order. What is wrong with them goes to the faults; each row is given on to `take` with what can be read of it.
// All must outlive it.
class TableReader {
public:
    TableReader(const std::vector<TableColumn>& columns, DecimalMark mark, const TakeRow& take, Faults& faults)
        : columns_(columns), mark_(mark), take_(take), faults_(faults) {}

    // The heading line, which begins at `start`: columns in any order, by their names or their headings in
    // one of six languages. At fault are columns that are unknown or stand there twice, and, in
    // one message, all that are missing. A cell without a name is an empty column: only what stands under it is at fault.
    void heading(const std::vector<TableCell>& cells, Spot start);

    // The next line under it; nothing where all its cells are empty. Cells beyond the heading's are let pass where they are empty; fewer or more are at fault.
    void line(std::vector<TableCell> cells, Spot start);

    // The row that line() takes next.
    std::size_t next_row() const { return row_ + 1; }
    // For a line that cannot be split into cells: its row is counted.
    void skip_line() { ++row_; }

private:
    bool is_named(const TableCell& cell, const TableColumn& column) const;
    void add_missing(Spot start);
    void add_unknown(const TableCell& cell);
    void add_named(const std::vector<TableCell>& cells, const TableColumn& column);
    bool find_nameless(const std::vector<TableCell>& cells);
    TableRow sorted(const std::vector<TableCell>& cells, Spot start);
    TableCell plain(TableCell cell, const TableColumn& column);

    const std::vector<TableColumn>& columns_;
    DecimalMark mark_;
    const TakeRow& take_;
    Faults& faults_;
    std::vector<bool> nameless_;                           // of the heading's cells
    std::vector<std::optional<std::size_t>> positions_;  // of each column asked for
    std::size_t row_ = 0;
};

// The names of the columns that are read.
std::vector<std::string> names_of(const std::vector<TableColumn>& columns);

}  // namespace shaftcut

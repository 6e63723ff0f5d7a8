#include "xlsx/xlsx.hpp"

#include <algorithm>

#include "source/hidden_text.hpp"
#include "text.hpp"
#include "xlsx/workbook.hpp"
#include "xlsx/zip.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_bytes = std::size_t{16} * 1024 * 1024;
constexpr std::size_t most_fields = 100;  // in a row: no list has so many columns

Spot spot_of(const SheetCell& cell) { return {cell.row, cell.column}; }

std::string without_blanks_around(std::string text)
{
    const std::size_t first = text.find_first_not_of(' ');
    return first == std::string::npos ? std::string() : text.substr(first, text.find_last_not_of(' ') - first + 1);
}

// Every cell of a sheet's row up to its last one, the empty ones too; what is wrong with one goes to the faults.
class RowReader {
public:
    RowReader(const SheetRow& row, std::size_t number, Faults& faults) : row_(row), number_(number), faults_(faults) {}

    // Nothing where the row is at fault.
    std::optional<std::vector<TableCell>> read()
    {
        if (row_.back().column > static_cast<int>(most_fields)) fault(row_.back(), TooMany{ManyOf::fields, most_fields});
        for (const SheetCell& cell : row_)
            if (sound_) add(cell);
        return sound_ ? std::optional(std::move(cells_)) : std::nullopt;
    }

private:
    void fault(const SheetCell& cell, FaultFinding what)
    {
        faults_.add({spot_of(cell), path_of_row(number_), {}, std::to_string(cell.column)}, std::move(what));
        sound_ = false;
    }

    void add(const SheetCell& cell)
    {
        if (cell.wrong) fault(cell, WrongValue{*cell.wrong, {"", cell.text}});
        for (const char32_t point : hidden_in(cell.text, U"\u00AD")) fault(cell, Hidden{HiddenIn::text, "", point});
        while (cells_.size() + 1 < static_cast<std::size_t>(cell.column)) cells_.push_back({"", {cell.row, static_cast<int>(cells_.size()) + 1}});
        TableCell read{without_blanks_around(with_plain_blanks(cell.text)), spot_of(cell)};
        read.is_figure = cell.is_figure;
        cells_.push_back(std::move(read));
    }

    const SheetRow& row_;
    std::size_t number_;
    Faults& faults_;
    bool sound_ = true;
    std::vector<TableCell> cells_;
};

void read_rows(const std::vector<SheetRow>& rows, const std::vector<TableColumn>& columns, const TableLimit& limit, const TakeRow& take, Faults& faults)
{
    if (rows.empty()) return faults.add(Spot{}, NoHeader{names_of(columns)});
    TableReader table(columns, DecimalMark::comma, take, faults);
    const auto names = RowReader(rows.front(), 0, faults).read();
    if (!names) return;
    table.heading(*names, {rows.front().front().row, 1});
    if (rows.size() - 1 > limit.most) faults.add(Spot{}, TooMany{limit.what, limit.most});
    if (!faults.none()) return;
    for (std::size_t i = 1; i < rows.size(); ++i) {
        auto cells = RowReader(rows[i], table.next_row(), faults).read();
        if (!cells) {
            table.skip_line();
            continue;
        }
        while (cells->size() < names->size()) cells->push_back({"", {rows[i].front().row, static_cast<int>(cells->size()) + 1}});
        table.line(std::move(*cells), {rows[i].front().row, 1});
    }
}

}  // namespace

bool is_xlsx(std::string_view bytes) { return is_zip(bytes); }

Faults read_xlsx(std::string_view bytes, const std::string& file, const std::vector<TableColumn>& columns, const TableLimit& limit, const TakeRow& take)
{
    Faults faults(file);
    if (bytes.size() > most_bytes) {
        faults.add(Spot{}, FormFault::workbook_too_large);
        return faults;
    }
    const auto rows = rows_of_first_sheet(bytes);
    if (const auto* fault = std::get_if<FormFault>(&rows)) faults.add(Spot{}, *fault);
    else read_rows(std::get<std::vector<SheetRow>>(rows), columns, limit, take, faults);
    return faults;
}

}  // namespace shaftcut

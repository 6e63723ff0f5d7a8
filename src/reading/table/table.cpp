#include "table/table.hpp"

#include <algorithm>

#include "table/terms.hpp"
#include "text.hpp"

namespace shaftcut {

std::string path_of_row(std::size_t row) { return row == 0 ? "header" : "row[" + std::to_string(row) + "]"; }

std::string path_of_cell(std::size_t row, std::string_view column) { return path_of_row(row) + "@" + std::string(column); }

Whereabouts where(const TableCell& cell) { return {cell.spot, path_of_cell(cell.row, cell.column), {}, std::string(cell.column)}; }

std::vector<std::string> names_of(const std::vector<TableColumn>& columns)
{
    std::vector<std::string> names;
    for (const TableColumn& column : columns)
        if (!column.left_out) names.push_back(column.name);
    return names;
}

namespace {

bool has_as_own(const TableColumn& column, const std::string& heading) { return std::find(column.headings.begin(), column.headings.end(), heading) != column.headings.end(); }

}  // namespace

bool TableReader::is_named(const TableCell& cell, const TableColumn& column) const
{
    if (has_as_own(column, cell.text)) return true;
    const bool is_others = std::any_of(columns_.begin(), columns_.end(), [&](const TableColumn& other) { return has_as_own(other, cell.text); });
    return !is_others && !column.left_out && is_heading_of(cell.text, column.name);
}

void TableReader::heading(const std::vector<TableCell>& cells, Spot start)
{
    for (const TableColumn& column : columns_) add_named(cells, column);
    add_missing(start);
    for (const TableCell& cell : cells) {
        nameless_.push_back(cell.text.empty());
        const bool is_known = std::any_of(columns_.begin(), columns_.end(), [&](const TableColumn& column) { return is_named(cell, column); });
        if (!cell.text.empty() && !is_known) add_unknown(cell);
    }
}

void TableReader::add_named(const std::vector<TableCell>& cells, const TableColumn& column)
{
    if (column.left_out) return positions_.push_back(std::nullopt);
    const auto is_it = [&](const TableCell& cell) { return is_named(cell, column); };
    const auto first = std::find_if(cells.begin(), cells.end(), is_it);
    if (std::count_if(cells.begin(), cells.end(), is_it) > 1) faults_.add({first->spot, path_of_row(0)}, SecondNamed{SecondOf::column, column.name});
    positions_.push_back(first == cells.end() ? std::nullopt : std::optional(static_cast<std::size_t>(first - cells.begin())));
}

void TableReader::add_missing(Spot start)
{
    std::vector<std::string> missing;
    for (std::size_t i = 0; i < columns_.size(); ++i)
        if (columns_[i].required && !positions_[i]) missing.push_back(columns_[i].name);
    if (!missing.empty()) faults_.add({start, path_of_row(0)}, MissingColumns{std::move(missing), names_of(columns_)});
}

void TableReader::add_unknown(const TableCell& cell)
{
    const std::vector<std::string> names = names_of(columns_);
    std::vector<std::string> headings = names;
    for (const std::string& name : names)
        for (std::string& heading : headings_of(name)) headings.push_back(std::move(heading));
    faults_.add({cell.spot, path_of_row(0)}, UnknownColumn{cell.text, nearest_name(cell.text, headings), names});
}

// What stands under no name would be left out unseen.
bool TableReader::find_nameless(const std::vector<TableCell>& cells)
{
    const auto stray = [&](const TableCell& cell) { return !cell.text.empty() && nameless_[static_cast<std::size_t>(&cell - cells.data())]; };
    const auto found = std::find_if(cells.begin(), cells.end(), stray);
    if (found == cells.end()) return false;
    faults_.add({found->spot, path_of_row(row_), {}, std::to_string(found - cells.begin())}, WrongValue{Unfit::under_no_name, {"", found->text}});
    return true;
}

void TableReader::line(std::vector<TableCell> cells, Spot start)
{
    ++row_;
    if (std::all_of(cells.begin(), cells.end(), [](const TableCell& cell) { return cell.text.empty(); })) return;
    while (cells.size() > nameless_.size() && cells.back().text.empty()) cells.pop_back();
    if (cells.size() != nameless_.size()) faults_.add({start, path_of_row(row_), {}, "line"}, FieldCount{cells.size(), nameless_.size()});
    else if (!find_nameless(cells)) take_(sorted(cells, start), faults_);
}

TableRow TableReader::sorted(const std::vector<TableCell>& cells, Spot start)
{
    TableRow row;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        TableCell cell = positions_[i] ? cells[*positions_[i]] : TableCell{"", start};
        cell.row = row_;
        cell.column = columns_[i].name;
        row.push_back(plain(std::move(cell), columns_[i]));
    }
    return row;
}

TableCell TableReader::plain(TableCell cell, const TableColumn& column)
{
    if (const auto own = column.values.find(cell.text); own != column.values.end()) {
        cell.text = own->second;
        return cell;
    }
    if (cell.is_figure) return cell;
    auto value = plain_value(cell.text, column.name, column.holds, mark_, column.days);
    if (auto* text = std::get_if<std::string>(&value)) {
        cell.text = std::move(*text);
        return cell;
    }
    cell.in_doubt = true;
    faults_.add(where(cell), std::get<FaultFinding>(std::move(value)));
    return cell;
}

}  // namespace shaftcut

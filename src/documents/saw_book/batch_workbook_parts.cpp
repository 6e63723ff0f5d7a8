// The sheets Parts and PartsByOrder: what to pick for the whole batch, and which orders it is for.
#include <fmt/format.h>

#include <map>
#include <memory>

#include "build/build_words.hpp"
#include "saw_book/batch_workbook_sheets.hpp"
#include "saw_book/saw_book_words.hpp"
#include "spreadsheet/sheet_builder.hpp"

namespace shaftcut::batch_workbook {
namespace {

using saw_book_words::Caption;
using workbook::SheetBuilder;
namespace style = workbook::style;

constexpr int first_row = 1;

// One order's need of one part, by their indices.
struct Need {
    std::size_t order = 0, part_of_order = 0;
};

// All needs, those of one part together, parts in the batch's order; and the first need of each part, with the end behind the last.
struct Needs {
    std::vector<Need> all;
    std::vector<std::size_t> first;
};

Needs needs_of(const Batch& batch)
{
    std::map<PartName, std::size_t> part_at;
    for (std::size_t i = 0; i < batch.parts.size(); ++i) part_at.emplace(batch.parts[i].name, i);
    std::vector<std::vector<Need>> of_part(batch.parts.size());
    for (std::size_t order = 0; order < batch.orders.size(); ++order)
        for (std::size_t i = 0; i < batch.orders[order].parts.size(); ++i) of_part[part_at.at(batch.orders[order].parts[i].name)].push_back({order, i});
    Needs needs;
    for (const std::vector<Need>& part : of_part) {
        needs.first.push_back(needs.all.size());
        needs.all.insert(needs.all.end(), part.begin(), part.end());
    }
    needs.first.push_back(needs.all.size());
    return needs;
}

Worksheet headed(SheetBuilder sheet, const std::vector<Caption>& heads, const std::string& footer, const Wording& w)
{
    for (std::size_t column = 0; column < heads.size(); ++column) sheet.put(static_cast<int>(column), say(heads[column], w), style::table_head());
    sheet.end_row(20);
    return sheet.take(say(Caption::parts_header, w), footer, first_row);
}

SheetRow part_row(const PartCount& part, std::size_t first, std::size_t end, const Wording& w)
{
    const auto cell = [](std::size_t need) { return absolute_cell(first_row + static_cast<int>(need), 4); };
    const CellFormula sum{"SUM(PartsByOrder!" + cell(first) + ":" + cell(end - 1) + ")", static_cast<double>(part.count)};
    return {18, {{0, 0, style::label(), say(part.name, w), 1}, {0, 1, style::great(), sum, 1}, {0, 2, style::written(), {}, 1}}};
}

SheetRow need_row(int row, const BatchOrder& order, std::size_t order_index, const PartCount& part, const Wording& w)
{
    const std::string number = std::to_string(row + 1);
    const std::int64_t of_one = part.count / order.count;  // the order's is a multiple
    return {15, {{0, 0, style::label(), say(part.name, w), 1},
                 {0, 1, style::label(), order.order, 1},
                 {0, 2, style::figure(), static_cast<double>(of_one), 1},
                 {0, 3, style::figure(), CellFormula{count_cell(order_index), static_cast<double>(order.count)}, 1},
                 {0, 4, style::figure(), CellFormula{"C" + number + "*D" + number, static_cast<double>(part.count)}, 1}}};
}

}  // namespace

std::vector<Worksheet> parts_sheets(const Batch& batch, const std::string& footer)
{
    const Wording w = wording_of(batch);
    const auto needs = std::make_shared<const Needs>(needs_of(batch));
    Worksheet parts = headed(SheetBuilder("Parts", {52, 12, 14}), {Caption::part, Caption::to_pick, Caption::picked}, footer, w);
    parts.rows_begin = first_row;
    parts.rows_end = first_row + static_cast<int>(batch.parts.size());
    parts.make_row = [&batch, needs, w](int row) {
        const auto part = static_cast<std::size_t>(row - first_row);
        return part_row(batch.parts[part], needs->first[part], needs->first[part + 1], w);
    };
    Worksheet by_order = headed(SheetBuilder("PartsByOrder", {52, 18, 14, 10, 12}), {Caption::part, Caption::order, Caption::for_one_shaft, Caption::shafts, Caption::in_all}, footer, w);
    by_order.rows_begin = first_row;
    by_order.rows_end = first_row + static_cast<int>(needs->all.size());
    by_order.make_row = [&batch, needs, w](int row) {
        const Need& need = needs->all[static_cast<std::size_t>(row - first_row)];
        const BatchOrder& order = batch.orders[need.order];
        return need_row(row, order, need.order, order.parts[need.part_of_order], w);
    };
    return {std::move(parts), std::move(by_order)};
}

}  // namespace shaftcut::batch_workbook

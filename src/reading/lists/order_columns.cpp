#include "lists/order_columns.hpp"

#include "shaftcut/trade/data/build_order.hpp"

namespace shaftcut {
namespace {

Holds held_by(OrderColumn column)
{
    switch (column) {
    case OrderColumn::order: return Holds::order;
    case OrderColumn::count:
    case OrderColumn::speed: return Holds::whole;
    case OrderColumn::closed:
    case OrderColumn::shortest:
    case OrderColumn::longest_working:
    case OrderColumn::longest_turning:
    case OrderColumn::longest_standing: return Holds::length;
    case OrderColumn::due: return Holds::date;
    case OrderColumn::tractor_lock:
    case OrderColumn::implement_lock:
    case OrderColumn::tractor_device:
    case OrderColumn::implement_device: return Holds::text;  // their words have no others (terms.hpp)
    default: break;
    }
    return words_of_column(column).empty() ? Holds::text : Holds::word;
}

bool is_required(OrderColumn column)
{
    switch (column) {
    case OrderColumn::order:
    case OrderColumn::series:
    case OrderColumn::role:
    case OrderColumn::inner_tube:
    case OrderColumn::tractor_joint:
    case OrderColumn::implement_joint: return true;
    default: return false;
    }
}

void add_own(TableColumn& table, OrderColumn column, const ListMap& map)
{
    for (const MappedHeading& heading : map.headings)
        if (heading.is == column) table.headings.push_back(heading.heading);
    for (const MappedValue& value : map.values)
        if (value.column == column) table.values.emplace(value.text, value.means);
    table.days = map.dates;
    if (!map.articles.empty() && column != OrderColumn::order) table.required = false;
}

}  // namespace

std::vector<std::string> words_of_column(OrderColumn column)
{
    switch (column) {
    case OrderColumn::role: return words_of<Role>();
    case OrderColumn::inner_tube: return words_of<End>();
    case OrderColumn::tractor_joint:
    case OrderColumn::implement_joint: return words_of<JointKind>();
    case OrderColumn::tractor_lock:
    case OrderColumn::implement_lock: return words_of<Lock>();
    case OrderColumn::tractor_device:
    case OrderColumn::implement_device: return words_of<Device>();
    case OrderColumn::guard: return words_of<Guarded>();
    case OrderColumn::closed_reference:
    case OrderColumn::fit_reference: return words_of<Reference>();
    case OrderColumn::fit_between: return words_of<Between>();
    default: return {};
    }
}

std::vector<TableColumn> order_columns(const ListMap* map)
{
    std::vector<TableColumn> columns;
    const int last = static_cast<int>(map ? OrderColumn::left_out : OrderColumn::due);
    for (int i = 0; i <= last; ++i) {
        const auto column = static_cast<OrderColumn>(i);
        TableColumn table{to_word(column), is_required(column), held_by(column)};
        table.left_out = column == OrderColumn::left_out;
        if (map) add_own(table, column, *map);
        columns.push_back(std::move(table));
    }
    return columns;
}

}  // namespace shaftcut

#include "saw_book/saw_workbook.hpp"

#include "saw_book/saw_workbook_parts.hpp"

namespace shaftcut {

std::string saw_workbook_of(const SawOrder& order, Paper paper)
{
    const std::string footer = "&L&9Change pale cells only&R&9Page &P of &N";
    saw_workbook::PlanSheet plan = saw_workbook::plan_sheet(order, footer);
    Spreadsheet book;
    book.title = "Saw plan " + order.name;
    book.author = order.owner;
    book.paper = paper;
    book.names = std::move(plan.names);
    book.sheets.push_back(std::move(plan.sheet));
    book.sheets.push_back(saw_workbook::bars_sheet(order, footer));
    return xlsx_of(book);
}

}  // namespace shaftcut

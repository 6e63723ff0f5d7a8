#include "saw_book/saw_workbook.hpp"

#include "saw_book/saw_book_words.hpp"
#include "saw_book/saw_workbook_parts.hpp"
#include "work_order_book/sheet_words.hpp"

namespace shaftcut {

std::string saw_workbook_of(const SawOrder& order, Paper paper)
{
    const Wording w(order.units);
    const std::string footer = say(saw_book_words::Caption::footer, w);
    saw_workbook::PlanSheet plan = saw_workbook::plan_sheet(order, footer);
    Spreadsheet book;
    book.title = saw_book_words::plan_title(order.name, w);
    book.author = order.owner;
    book.paper = paper;
    book.refusal_title = workbook::refused_entry(Wording(order.units));
    book.names = std::move(plan.names);
    book.sheets.push_back(std::move(plan.sheet));
    book.sheets.push_back(saw_workbook::bars_sheet(order, footer));
    return xlsx_of(book);
}

}  // namespace shaftcut


#include "work_order_book/sheet_words.hpp"
#include "work_order_book/work_order_workbook.hpp"
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut {
namespace workbook {
namespace {

std::string foot_of_sheets(const Wording& w)
{
    return "&L&9" + foot(Foot::pale_cells, w) + "&C&9" + foot(Foot::danger, w) + "&R&9" + page_of_pages("&P", "&N", w);
}

}  // namespace
}  // namespace workbook

std::string workbook_of(const WorkOrder& order, const Wording& w, Paper paper)
{
    const std::string footer = workbook::foot_of_sheets(w);
    workbook::BasisSheet basis = workbook::basis_sheet(order, footer, w);
    workbook::OrderSheets front = workbook::order_sheets(order, basis.findings, footer, w);
    Spreadsheet book;
    book.title = workbook::work_order_title(order.order, w);
    book.author = order.owner;
    book.date = order.date;
    book.paper = paper;
    book.refusal_title = workbook::refused_entry(w);
    book.names = front.names;
    book.names.insert(book.names.end(), basis.names.begin(), basis.names.end());
    book.sheets.push_back(std::move(front.order));
    book.sheets.push_back(std::move(front.checks));
    book.sheets.push_back(workbook::parts_sheet(order, footer, w));
    book.sheets.push_back(std::move(basis.sheet));
    for (std::size_t i = 0; i < order.machines.size(); ++i) {
        const std::string number = order.machines.size() > 1 ? " " + std::to_string(i + 1) : "";
        book.sheets.push_back(workbook::machine_sheet(order, order.machines[i], workbook::machine_sheet_id + number, footer, w));
    }
    return xlsx_of(book);
}

}  // namespace shaftcut

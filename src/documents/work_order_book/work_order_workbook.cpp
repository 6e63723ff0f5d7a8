#include "work_order_book/work_order_workbook.hpp"

#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut {

std::string workbook_of(const WorkOrder& order, Paper paper)
{
    const std::string footer = "&L&9Change pale cells only&C&9DANGER: engine off, key out, before anyone touches the shaft&R&9Page &P of &N";
    workbook::BasisSheet basis = workbook::basis_sheet(order, footer);
    workbook::OrderSheet front = workbook::order_sheet(order, basis.findings, footer);
    Spreadsheet book;
    book.title = "Work order " + order.order;
    book.author = order.owner;
    book.date = order.date;
    book.paper = paper;
    book.names = front.names;
    book.names.insert(book.names.end(), basis.names.begin(), basis.names.end());
    book.sheets.push_back(std::move(front.sheet));
    book.sheets.push_back(workbook::parts_sheet(order, footer));
    book.sheets.push_back(std::move(basis.sheet));
    for (std::size_t i = 0; i < order.machines.size(); ++i) {
        const std::string number = order.machines.size() > 1 ? " " + std::to_string(i + 1) : "";
        book.sheets.push_back(workbook::machine_sheet(order, order.machines[i], "Machine" + number, footer));
    }
    return xlsx_of(book);
}

}  // namespace shaftcut

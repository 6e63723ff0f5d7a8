#include "saw_book/batch_workbook.hpp"

#include "saw_book/batch_workbook_sheets.hpp"

namespace shaftcut {

std::string batch_workbook_of(const Batch& batch, Paper paper)
{
    using namespace batch_workbook;
    const std::string footer = "&L&9Change pale cells only&R&9Page &P of &N";
    Spreadsheet book;
    book.title = "Batch " + batch.name;
    book.author = batch.owner;
    book.paper = paper;
    book.long_sheets = true;
    const auto add = [&](NamedSheet named) {
        book.sheets.push_back(std::move(named.sheet));
        book.names.insert(book.names.end(), named.names.begin(), named.names.end());
    };
    add(orders_sheet(batch, footer));
    for (Worksheet& sheet : parts_sheets(batch, footer)) book.sheets.push_back(std::move(sheet));
    add(saw_sheet(batch, footer));
    return xlsx_of(book);
}

}  // namespace shaftcut

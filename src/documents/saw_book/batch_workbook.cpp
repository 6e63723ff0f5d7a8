#include "saw_book/batch_workbook.hpp"

#include "build/build_words.hpp"
#include "saw_book/batch_workbook_sheets.hpp"
#include "work_order_book/sheet_words.hpp"
#include "saw_book/saw_book_words.hpp"

namespace shaftcut {

std::string batch_workbook_of(const Batch& batch, Paper paper)
{
    using namespace batch_workbook;
    const Wording w = wording_of(batch);
    const std::string footer = say(saw_book_words::Caption::footer, w);
    Spreadsheet book;
    book.title = saw_book_words::batch_title(batch.name, w);
    book.author = batch.owner;
    book.paper = paper;
    book.refusal_title = workbook::refused_entry(Wording(batch.units));
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

#include "quote_book/quote_workbook.hpp"

#include "quote_book/quote_workbook_sheets.hpp"
#include "quote_sheet/quote_sheet_words.hpp"
#include "work_order_book/sheet_words.hpp"

namespace shaftcut {
namespace quote_book {

std::int64_t minor_in_unit(const Currency& currency)
{
    std::int64_t count = 1;
    for (int digit = 0; digit < currency.digits; ++digit) count *= 10;
    return count;
}

double units_of(Money amount, const Currency& currency) { return static_cast<double>(amount.minor()) / static_cast<double>(minor_in_unit(currency)); }

std::string money_format(const Currency& currency) { return currency.digits == 0 ? "#,##0" : "#,##0." + std::string(static_cast<std::size_t>(currency.digits), '0'); }

std::string desk_cell(int row, int column) { return "Desk!" + absolute_cell(row, column); }

}  // namespace quote_book

std::string quote_workbook_of(const Quote& quote, const Wording& w, Paper paper)
{
    const quote_book::Figures figures = quote_book::figures_of(quote);
    quote_book::DeskSheet desk = quote_book::desk_sheet(quote, figures, w);
    Spreadsheet book;
    book.title = quote_sheet::document_title(quote.number, w);
    book.author = quote.firm.name;
    book.date = quote.dates.date;
    book.paper = paper;
    book.refusal_title = workbook::refused_entry(w);
    book.names = std::move(desk.names);
    book.sheets.push_back(quote_book::customer_sheet(quote, figures, desk.rows, w));
    book.sheets.push_back(std::move(desk.sheet));
    return xlsx_of(book);
}

}  // namespace shaftcut

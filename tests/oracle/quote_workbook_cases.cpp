// Writes quotes' workbooks into a folder, and what each is made of: cases.json. What they come to for other inputs is not computed here.
// usage: quote_workbook_cases FOLDER
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>

#include "documents/quote_sheet/quote_cases.hpp"
#include "quote_book/quote_figures.hpp"
#include "quote_book/quote_workbook.hpp"

namespace {

using namespace shaftcut;
using namespace shaftcut::test;
using Json = nlohmann::json;

Json lines_of(const quote_book::Figures& figures)
{
    Json lines = Json::array();
    for (const quote_book::Figures::Line& one : figures.lines) {
        const QuoteLine& line = *one.line;
        const bool known = line.missing != NotPriced::minutes;
        lines.push_back({{"rate", one.rate}, {"per", line.per}, {"work", std::holds_alternative<Labour>(line.what)}, {"quantity", known ? Json(line.quantity.thousandths) : Json()},
                         {"price", line.each ? Json(line.each->minor()) : Json()}, {"most", line.up_to ? Json(line.up_to->minor()) : Json()}});
    }
    return lines;
}

Json minor(const std::optional<Money>& amount) { return amount ? Json(amount->minor()) : Json(); }

// `totals`: what the program itself says of the quote as it is.
Json book_of(const std::string& folder, const std::string& file, const QuoteCase& one)
{
    const Quote& quote = one.quote;
    const quote_book::Figures figures = quote_book::figures_of(quote);
    std::ofstream(folder + "/" + file, std::ios::binary) << quote_workbook_of(quote, Wording(quote.units), Paper::a4);
    Json rates = Json::array();
    for (const OwnTax& rate : figures.rates) rates.push_back(rate.percent.thousandths);
    Json off;
    if (quote.discount && !quote.discount->percent) off = -figures.discounts.front()->minor();
    const bool by_percent = quote.discount && quote.discount->percent;
    return {{"file", file}, {"name", one.name}, {"digits", quote.currency.digits}, {"within", quote.stated == PricesStated::with_tax}, {"charges", figures.has_charges},
            {"estimate", figures.is_estimate}, {"minimum", minor(quote.minimum)}, {"rates", rates}, {"lines", lines_of(figures)}, {"hourly", minor(quote.hourly_rate)},
            {"percent", by_percent ? Json(quote.discount->percent->thousandths) : Json()}, {"off", off},
            {"deposit", figures.has_charges && figures.ordered && quote.deposit ? Json({{"percent", quote.deposit->thousandths}, {"from", quote.deposit_from.minor()}}) : Json()},
            {"totals", quote.totals ? Json({{"net", quote.totals->net.minor()}, {"total", quote.totals->total.minor()}, {"deposit", minor(quote.totals->deposit)}}) : Json()},
            {"total_up_to", minor(quote.total_up_to)}};
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::cerr << "usage: quote_workbook_cases FOLDER\n";
        return 2;
    }
    Json books = Json::array();
    for (const QuoteCase& one : quote_cases()) books.push_back(book_of(argv[1], "quote-" + std::to_string(books.size() + 1) + ".xlsx", one));
    std::ofstream(std::string(argv[1]) + "/cases.json") << books.dump();
    return 0;
}

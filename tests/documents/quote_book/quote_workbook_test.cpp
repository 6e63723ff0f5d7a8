#include "quote_book/quote_workbook.hpp"

#include <fstream>
#include <regex>

#include "documents/quote_sheet/quote_cases.hpp"
#include "documents/spreadsheet/workbook_parts.hpp"
#include "quote_book/quote_figures.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

WorkbookParts workbook_of(const Quote& quote) { return parts_of(quote_workbook_of(quote, Wording(quote.units), Paper::a4)); }

double shown(const WorkbookParts& book, const std::string& name)
{
    const SheetCell* cell = book.cell_named(name);
    REQUIRE(cell);
    REQUIRE(cell->number);
    return std::stod(cell->value);
}

std::string words(const WorkbookParts& book, const std::string& name)
{
    const SheetCell* cell = book.cell_named(name);
    REQUIRE(cell);
    return cell->value;
}

double units(Money amount, const Quote& quote) { return std::stod(decimal_text(amount, quote.currency)); }

const SheetPart& sheet(const WorkbookParts& book, const std::string& name)
{
    for (const SheetPart& one : book.sheets)
        if (one.name == name) return one;
    throw std::logic_error(name);
}

}  // namespace

TEST_CASE("quote workbook: before anyone changes it, it shows the quote's own figures")
{
    for (const QuoteCase& one : quote_cases()) {
        if (!one.quote.totals || one.name == "long names") continue;  // there an amount is set by hand
        INFO(one.name);
        const WorkbookParts book = workbook_of(one.quote);
        CHECK(shown(book, "net") == units(one.quote.totals->net, one.quote));
        CHECK(shown(book, "total") == units(one.quote.totals->total, one.quote));
        if (one.quote.total_up_to) CHECK(shown(book, "total_up_to") == units(*one.quote.total_up_to, one.quote));
        if (one.quote.totals->deposit) CHECK(shown(book, "deposit") == units(*one.quote.totals->deposit, one.quote));
        std::size_t at = 0;
        for (const QuoteLine& line : one.quote.lines) {
            if (std::holds_alternative<MinimumCharge>(line.what)) CHECK(shown(book, "minimum_amount") == units(*line.amount, one.quote));
            else if (std::holds_alternative<Discount>(line.what)) CHECK(shown(book, "discount_1_amount") == units(*line.amount, one.quote));
            else CHECK(shown(book, "line_" + std::to_string(++at) + "_amount") == units(*line.amount, one.quote));
        }
        CHECK(words(book, "verdict") == "complete");
    }
}

TEST_CASE("quote workbook: a line without a price says so, and there is no total")
{
    const WorkbookParts book = workbook_of(incomplete_quote());
    CHECK(words(book, "line_2_amount") == "NOT PRICED");
    CHECK(words(book, "verdict") == "NOT PRICED");
    for (const char* name : {"net", "total", "tax_1_amount"}) CHECK(words(book, name).empty());
    CHECK(shown(book, "open_lines") == 2);
}

TEST_CASE("quote workbook: quantities, prices, rate and discount are unlocked, and nothing else")
{
    const std::regex input("hourly_rate|discount_(percent|amount)|line_\\d+_(quantity|price|most)");
    for (const QuoteCase& one : quote_cases()) {
        INFO(one.name);
        const WorkbookParts book = workbook_of(one.quote);
        std::size_t unlocked = 0, named = 0;
        for (const SheetPart& part : book.sheets) {
            CHECK(part.is_protected);
            for (const auto& [reference, cell] : part.cells) unlocked += cell.locked ? 0 : 1;
        }
        for (const auto& [name, place] : book.names) {
            const SheetCell* cell = book.cell_named(name);
            if (!cell) continue;
            INFO(name);
            // The price of work is the hourly rate, which is typed in once.
            const bool of_work = cell->formula.find("hourly_rate") != std::string::npos;
            CHECK(cell->locked == !(std::regex_match(name, input) && !of_work));
            named += cell->locked ? 0 : 1;
        }
        CHECK(named == unlocked);
    }
}

TEST_CASE("quote workbook: the customer's sheet prints on one page and shows neither minutes nor the rate nor a length")
{
    const std::regex never(R"(\bminutes?\b|\bmin\b(?!⁻)|hour|\d ?mm\b|62\.00|\bcosts?\b|safe|invoice)", std::regex::icase);
    for (const QuoteCase& one : quote_cases()) {
        INFO(one.name);
        const WorkbookParts book = workbook_of(one.quote);
        const SheetPart& customer = sheet(book, "Customer");
        CHECK(customer.one_page);
        for (const auto& [reference, cell] : customer.cells) {
            INFO(reference << ": " << cell.value);
            CHECK_FALSE(std::regex_search(cell.value, never));
            CHECK(cell.value != "62");
        }
    }
}

TEST_CASE("quote workbook: a line that is too great to be counted exactly is not counted")
{
    QuoteMaker maker("K-1");
    maker.service("at the limit", cents(quote_book::greatest_product / 1000)).finished(QuoteVerdict::complete);
    CHECK(words(workbook_of(maker.finished(QuoteVerdict::complete)), "verdict") == "complete");
    maker.service("above it", cents(quote_book::greatest_product / 1000 + 1));
    const WorkbookParts book = workbook_of(maker.finished(QuoteVerdict::complete));
    CHECK(words(book, "line_2_amount") == "TOO GREAT");
    CHECK(words(book, "verdict") == "TOO GREAT");
    CHECK(words(book, "total").empty());
}

TEST_CASE("quote workbook: a tax rate is a share in its lowest terms")
{
    const auto is = [](quote_book::Share share, std::int64_t numerator, std::int64_t denominator) { return share.numerator == numerator && share.denominator == denominator; };
    CHECK(is(quote_book::tax_share({21'000}, PricesStated::without_tax), 21, 100));
    CHECK(is(quote_book::tax_share({21'000}, PricesStated::with_tax), 21, 121));
    CHECK(is(quote_book::tax_share({5'500}, PricesStated::without_tax), 11, 200));
    CHECK(is(quote_book::tax_share({0}, PricesStated::with_tax), 0, 1));
}

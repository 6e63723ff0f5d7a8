// The example invoices published with the European standard's validation artefacts (published_invoices/SOURCE.md), by the rules of that
// standard that a quote follows: a line's rounding, the sum of lines, tax once a rate, and the total. EN 16931-1:2017, BR-CO-10, -13, -15, -17.
#include <fstream>
#include <map>
#include <sstream>

#include "parse.hpp"
#include "shaftcut/trade/quote/totals.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

namespace {

using Row = std::map<std::string, std::string>;

std::vector<std::string> split(const std::string& text, char at)
{
    std::vector<std::string> parts;
    std::istringstream stream(text);
    for (std::string part; std::getline(stream, part, at);) parts.push_back(part);
    if (!text.empty() && text.back() == at) parts.emplace_back();
    return parts;
}

std::vector<Row> rows_of(const std::string& name)
{
    std::ifstream file(std::string(SHAFTCUT_SOURCE_DIR) + "/tests/trade/quote/published_invoices/" + name);
    REQUIRE(file);
    std::string line;
    std::getline(file, line);
    const auto names = split(line, ',');
    std::vector<Row> rows;
    while (std::getline(file, line)) {
        if (!line.empty() && line.back() == '\r') line.pop_back();
        const auto fields = split(line, ',');
        Row row;
        for (std::size_t i = 0; i < names.size(); ++i) row[names[i]] = i < fields.size() ? fields[i] : "";
        rows.push_back(row);
    }
    return rows;
}

// A signed decimal as a whole number of 10^-places.
std::int64_t scaled(std::string text, int places)
{
    if (text.empty()) return 0;
    const bool minus = text.front() == '-';
    if (minus) text.erase(0, 1);
    const auto point = text.find('.');
    std::string decimals = point == std::string::npos ? "" : text.substr(point + 1);
    decimals.resize(static_cast<std::size_t>(places), '0');
    const std::int64_t value = std::stoll(text.substr(0, point) + decimals);
    return minus ? -value : value;
}

Money money(const std::string& text) { return Money::minor_units(scaled(text, 2)); }
Percent percent(const std::string& text) { return {scaled(text, 3)}; }

Money sum_of_list(const std::string& text)
{
    Money sum;
    for (const std::string& one : split(text, ' ')) sum = sum + money(one);
    return sum;
}

// The published lines whose amount is not their quantity and price: the source's own slips, each with its reason.
const std::map<std::string, const char*> not_by_the_rule{
    {"guide-example1 20", "goods that came back: the amount is negative, its quantity is not"},
    {"ubl-tc434-example1 20", "the same invoice again"},
    {"ubl-tc434-example10 20", "the same invoice again"},
    {"guide-example2 1", "the quantity is 2, the amount that of one"},
    {"ubl-tc434-example2 1", "the same invoice again"},
    {"guide-example3 1", "the quantity is 2, the amount half of one"},
    {"guide-example3 2", "the quantity is 2, the amount half of one"},
    {"ubl-tc434-example3 1", "the quantity is 2, the amount that of one"},
    {"ubl-tc434-example3 2", "the quantity is 2, the amount that of one"},
};

QuoteLine line_of(Money amount, Percent rate)
{
    QuoteLine line;
    line.amount = amount;
    line.tax = {rate, {}};
    return line;
}

std::vector<QuoteLine> lines_of(const Row& invoice, const std::vector<Row>& lines)
{
    std::vector<QuoteLine> of_invoice;
    for (const Row& row : lines)
        if (row.at("invoice") == invoice.at("invoice")) of_invoice.push_back(line_of(money(row.at("line_amount")), percent(row.at("tax_percent"))));
    for (const std::string& charge : split(invoice.at("document_allowances_charges_at_percent"), ' ')) {
        const auto parts = split(charge, '@');
        of_invoice.push_back(line_of(money(parts[0]), percent(parts[1])));
    }
    return of_invoice;
}

}  // namespace

TEST_CASE("each published line is its quantity at its price, rounded once")
{
    std::size_t slips = 0;
    const auto lines = rows_of("lines.csv");
    REQUIRE(lines.size() == 98);
    for (const Row& row : lines) {
        // A price for a part of a minor unit is one of a hundred thousand pieces.
        const std::int64_t base = row.at("base_quantity").empty() ? 1 : scaled(row.at("base_quantity"), 0);
        const Money each = Money::minor_units(scaled(row.at("unit_price"), 5));
        const Money amount = line_amount(each, {scaled(row.at("quantity"), 3)}, base * 1'000) + sum_of_list(row.at("line_allowances_charges"));
        const std::string name = row.at("invoice") + " " + row.at("line");
        INFO(name);
        const bool follows = amount == money(row.at("line_amount"));
        CHECK(follows != not_by_the_rule.contains(name));
        slips += follows ? 0 : 1;
    }
    CHECK(slips == not_by_the_rule.size());
}

TEST_CASE("each published invoice adds up, its tax once a rate")
{
    const auto lines = rows_of("lines.csv"), tax = rows_of("tax.csv");
    const auto invoices = rows_of("totals.csv");
    REQUIRE(invoices.size() == 15);
    for (const Row& invoice : invoices) {
        INFO(invoice.at("invoice"));
        const QuoteTotals totals = totals_of(lines_of(invoice, lines), Prices{}, false);
        CHECK(totals.net == money(invoice.at("total_without_tax")));
        CHECK(totals.total == money(invoice.at("total_with_tax")));
        CHECK_FALSE(totals.deposit);
        std::map<Percent, std::pair<Money, Money>> published;
        for (const Row& row : tax) {
            if (row.at("invoice") != invoice.at("invoice")) continue;
            auto& [base, amount] = published[percent(row.at("tax_percent"))];
            base = base + money(row.at("taxable_amount"));
            amount = amount + money(row.at("tax_amount"));
        }
        CHECK(totals.tax.size() == published.size());
        for (const TaxSum& sum : totals.tax) {
            CHECK(sum.base == published[sum.rate.percent].first);
            CHECK(sum.amount == published[sum.rate.percent].second);
        }
    }
}

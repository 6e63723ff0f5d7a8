// Reads bills as figures on standard input and adds each up as a quote does, for tests/oracle/quote_arithmetic.py to compare.
// A bill: "STATED USUAL_TAX DEPOSIT FROM COIN COUNT" and COUNT lines "EACH QUANTITY PER TAX"; amounts in minor units, quantities and per cents in
// thousandths, STATED 0 without tax and 1 with it, COIN 0 for none. Answer: each line's amount, then "net total deposit coin", then "TAX BASE AMOUNT" of each rate.
#include <iostream>

#include "shaftcut/trade/quote/totals.hpp"

using namespace shaftcut;

namespace {

std::int64_t next()
{
    std::int64_t number = 0;
    std::cin >> number;
    return number;
}

QuoteLine read_line()
{
    QuoteLine line;
    line.each = Money::minor_units(next());
    line.quantity = {next()};
    line.per = next();
    line.tax = {{next()}, {}};
    line.amount = line_amount(*line.each, line.quantity, line.per);
    return line;
}

void add_up(PricesStated stated)
{
    Prices prices;
    prices.stated = stated;
    prices.tax = {next()};
    prices.deposit = Percent{next()};
    prices.deposit_from = Money::minor_units(next());
    if (const std::int64_t coin = next(); coin > 0) prices.cash_rounding = Money::minor_units(coin);
    std::vector<QuoteLine> lines;
    for (std::int64_t count = next(); count > 0; --count) lines.push_back(read_line());
    const QuoteTotals totals = totals_of(lines, prices, true);
    for (const QuoteLine& line : lines) std::cout << line.amount->minor() << ' ';
    std::cout << totals.net.minor() << ' ' << totals.total.minor() << ' ' << totals.deposit.value_or(Money()).minor() << ' ' << totals.in_cash.value_or(totals.total).minor();
    for (const TaxSum& sum : totals.tax) std::cout << ' ' << sum.rate.percent.thousandths << ' ' << sum.base.minor() << ' ' << sum.amount.minor();
    std::cout << '\n';
}

}  // namespace

int main()
{
    std::ios::sync_with_stdio(false);
    for (std::int64_t stated = 0; std::cin >> stated;) add_up(stated == 0 ? PricesStated::without_tax : PricesStated::with_tax);
    return 0;
}

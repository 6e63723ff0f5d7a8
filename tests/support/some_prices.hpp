// Prices and lines of quotes, invented.
#pragma once

#include "shaftcut/trade/quote/quoting.hpp"

namespace shaftcut::test {

inline Money minor(std::int64_t count) { return Money::minor_units(count); }

inline Prices some_prices()
{
    Prices prices;
    prices.currency = {"EUR", 2};
    prices.tax = {21'000};
    prices.tax_name = "VAT";
    prices.hourly_rate = minor(6'000);
    prices.minutes = {{PricedWork::cut_tube, {6'000}}, {PricedWork::cut_guard, {3'000}}, {PricedWork::deburr, {3'000}}, {PricedWork::grease, {4'000}},
                      {PricedWork::refit, {5'000}}, {PricedWork::closing_test, {6'000}}};
    prices.services["measuring"] = {minor(3'000), {}, {}};
    prices.services["collection"] = {minor(2'500), {}, OwnTax{{9'000}, "carriage"}};
    prices.valid_days = 30;
    return prices;
}

inline QuoteLine line(Money amount, Percent tax = {21'000})
{
    QuoteLine one;
    one.what = Service{"x"};
    one.each = one.amount = amount;
    one.tax = {tax, {}};
    return one;
}

}  // namespace shaftcut::test

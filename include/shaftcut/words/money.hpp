// Money as whole minor units of a currency, so that no sum depends on binary or decimal fractions.
//
// A bill's figures add up because each line is rounded once, half away from zero, and everything after it is computed from the rounded
// lines (EN 16931-1:2017, BR-CO-10, -13, -15 and -17). Products are made in 128 bits; what does not fit into 64 in the end is an error.
// Checked in tests/words/money_test.cpp, on the published example invoices of the European standard's validation artefacts, and against
// Python's decimal by tests/oracle/quote_arithmetic.py.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <stdexcept>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace shaftcut {

// An amount that is too great to be counted.
struct MoneyOverflow : std::overflow_error {
    MoneyOverflow() : std::overflow_error("money: an amount above 9.2e18 minor units") {}
};

// `digits`: decimals of its minor unit, 0, 2 or 3 (ISO 4217). The euro, where none is named.
struct Currency {
    std::string code = "EUR";
    int digits = 2;
    bool operator==(const Currency&) const = default;
};

// The currency of this code; nothing where there is none. Codes and digits: ISO 4217:2015 with its list one, from memory.
std::optional<Currency> find_currency(std::string_view code);
std::vector<std::string> currency_codes();

// A signed amount in minor units. What does not fit throws MoneyOverflow.
class Money {
public:
    constexpr Money() = default;
    static constexpr Money minor_units(std::int64_t count) { return Money(count); }

    constexpr std::int64_t minor() const { return minor_; }
    constexpr auto operator<=>(const Money&) const = default;
    Money operator-() const;
    friend Money operator+(Money a, Money b);
    friend Money operator-(Money a, Money b);

private:
    constexpr explicit Money(std::int64_t minor) : minor_(minor) {}
    std::int64_t minor_ = 0;
};

// Thousandths of what is counted: pieces, minutes, metres. Thousandths of a per cent.
struct BilledQuantity {
    std::int64_t thousandths = 1000;
    auto operator<=>(const BilledQuantity&) const = default;
};
struct Percent {
    std::int64_t thousandths = 0;
    auto operator<=>(const Percent&) const = default;
};

// quantity · each ÷ per, rounded half away from zero once. `per`: how many the price is for, above 0.
Money line_amount(Money each, BilledQuantity quantity, std::int64_t per = 1);
// percent · base, rounded half away from zero: tax on a sum without it, a discount.
Money percent_of(Percent percent, Money base);
// The same rounded toward zero.
Money percent_of_rounded_down(Percent percent, Money base);
// What of a sum that contains it is tax: gross · percent ÷ (100 + percent), rounded half away from zero.
Money tax_within(Percent percent, Money gross);
// To the nearest multiple of `step`, half away from zero; `step` above 0.
Money rounded_to(Money amount, Money step);

// "1234.50", "-3", "0.125": the figure alone with all decimals of the currency.
std::string decimal_text(Money amount, const Currency& currency);
// "1.5", "3", of a quantity or a per cent: no zeros behind.
std::string decimal_text(BilledQuantity quantity);
std::string decimal_text(Percent percent);

inline constexpr std::int64_t most_price = 100'000'000;  // in whole units of the currency, that a file may state (the project's own choice)

}  // namespace shaftcut

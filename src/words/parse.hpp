// The one strict reader of lengths, angles and numbers in text: everything must be read, nothing is guessed.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

#include "shaftcut/words/angle.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/money.hpp"

namespace shaftcut {

// Why a text is not what it should be.
enum class NotRead {
    length, below_zero, unknown_unit, fraction_of_millimetre, over_100_metres, angle, over_180_degrees, fraction, number, number_of_3_decimals, number_of_6_decimals, whole_number, money
};

// `text`: what was read. `least` and `most`: of a number; of money, `least` is how many decimals its currency has.
struct ParseFault {
    NotRead why = NotRead::length;
    std::string text;
    std::int64_t least = 0, most = 0;
    bool operator==(const ParseFault&) const = default;
};

template <class T>
using Parsed = std::variant<T, ParseFault>;

enum class Sign { none, allowed };

// "742", "742.5 mm", "29.25 in", "29-3/16 in": digits, a decimal point with digits after it, or a fraction of an inch;
// then nothing or a unit. Without a unit it is in `units`. Rounded to the nearest micrometre, half away from zero.
// Refused: over 100 m, exponents, thousands separators, decimal commas, signs (a minus is taken under Sign::allowed),
// fractions of millimetres, a fraction of 1 or more after a whole number, a denominator of 0 or over 1000.
Parsed<Length> parse_length(std::string_view text, Units units, Sign sign = Sign::none);

// Degrees as a decimal number, at most 180, rounded to 0.001.
Parsed<Angle> parse_angle(std::string_view text, Sign sign = Sign::none);

// "1/2", "0.5" or "1": a number above 0 and at most 1. In lowest terms; at most 6 decimals, a denominator of 1 to 1000.
Parsed<Fraction> parse_fraction(std::string_view text);

// Thousandths of a plain decimal number that is not negative and at most `most`: "10" is 10000.
Parsed<std::int64_t> parse_thousandths(std::string_view text, std::int64_t most);

// Thousandths of a per cent, from 0 to 100 with at most 3 decimals: "12.5" is 12500.
Parsed<std::int64_t> parse_percent(std::string_view text);

// Millionths of a plain decimal number that is not negative, at most `most`, and has at most 6 decimals: "2.5" is 2500000.
Parsed<std::int64_t> parse_millionths(std::string_view text, std::int64_t most);

// A plain decimal number that is not negative, at most most_price, with at most the currency's decimals.
Parsed<Money> parse_money(std::string_view text, const Currency& currency);

// A whole number, digits only, from `least` to `most`.
Parsed<std::int64_t> parse_whole(std::string_view text, std::int64_t least, std::int64_t most);

}  // namespace shaftcut

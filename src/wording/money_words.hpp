// Amounts and days as every paper of a price says them. Checked in tests/wording/money_words_test.cpp.
#pragma once

#include <string>

#include "shaftcut/words/money.hpp"
#include "wording.hpp"

namespace shaftcut {

// "1 234.50", "-3", "0.125": all decimals of the currency; digits in groups of three, with spaces that do not break (ISO 80000-1:2009, 7.3.1).
std::string bare_amount(Money amount, const Currency& currency);
// "1 234.50 EUR".
std::string say(Money amount, const Currency& currency, const Wording& w);
// "12.5 %".
std::string say(Percent percent, const Wording& w);

// "24 December 2026" of "2026-12-24": the month as a word, since no two countries read figures alike. What is no such day stays as it is.
std::string day_in_words(const std::string& date, const Wording& w);

}  // namespace shaftcut

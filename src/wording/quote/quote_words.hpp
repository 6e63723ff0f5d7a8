// A quote's lines and offers, as every document of it says them. Checked in tests/wording/quote/quote_words_test.cpp.
#pragma once

#include <string>

#include "shaftcut/trade/quote/quote.hpp"
#include "wording.hpp"

namespace shaftcut {

// "saw a tube to its length", "cross 22 x 54", "new shaft Alder 2, 705 mm closed".
std::string say(const LineFor& what, const Wording& w);
// Why a line has no amount, and where its price can be stated.
std::string say_not_priced(const QuoteLine& line, const Wording& w);
// "COMPLETE", "INCOMPLETE", "DO NOT CUT", "ESTIMATE BEFORE MEASURING".
std::string say(QuoteVerdict verdict, const Wording& w);
// What is offered instead, for a customer.
std::string say(const Alternative& alternative, const Wording& w);
// Where a cut is refused and nothing is offered: lengths between the crosses of a shaft are of that shaft's series alone.
std::string no_alternative(const Wording& w);

// Of what the call asks for, sentences for whoever made it.
std::string no_prices(const Wording& w);                                    // workshop.xml states none
std::string no_discount(const std::string& text, int decimals, const Wording& w);  // neither 5% nor 12.50
std::string discount_too_great(const std::string& text, const Wording& w);
std::string no_quantity(const std::string& text, const Wording& w);          // no 2:12.5
std::string no_such_line(const Wording& w);                                 // a quantity is asked of a line that has none
std::string too_great(const Wording& w);                                    // amounts that cannot be counted
std::string no_such_service(const std::string& name, const std::string& nearest, const std::vector<std::string>& known, const Wording& w);

}  // namespace shaftcut

// What a quote says to the customer. No length of the shaft, no figure of a check, no time of work and no promise beyond the price stands on it.
// Checked in tests/documents/quote_sheet.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/quote/quote.hpp"
#include "wording.hpp"

namespace shaftcut::quote_sheet {

// By so much the bill may differ from an estimate before the customer is asked: the project's own choice.
inline constexpr int estimate_percent = 15;

// Of the file.
std::string document_title(const std::string& number, const Wording& w);
std::string document_subject(const Wording& w);

// Without a figure.
enum class Caption {
    quote, number, date, valid_until, customer_name,
    what_is_done, why_not, what_would_serve, what_it_comes_to, what_was_done, what_it_would_be, alternatives, when_and_how, order,
    line, count, each, not_priced, free_of_charge, net, without_tax,
    cheapest, soonest, price_open, time_not_known,
    name, day, signature, by_telephone, taken_by
};
std::string say(Caption caption, const Wording& w);

// What of the firm is printed below its name: address, telephone, mail, numbers. What is not stated is not among them.
std::vector<std::string> firm_lines(const Firm& firm, const Wording& w);
std::string customer_phone(const Quote& quote, const Wording& w);  // empty where none is stated

// The kind of paper in a few loud words, and what that means.
enum class Kind { offer, estimate, incomplete, refused, before_measuring };
Kind kind_of(const Quote& quote);
std::string loudly(const Quote& quote, const Wording& w);
std::string meaning(const Quote& quote, const Wording& w);

// What is done with a shaft, for which machine and tractors, of several by its order's number; that it cannot be undone; and what was found and is not included.
std::string what_is_done(const Quote& quote, const QuotedWork& work, const Wording& w);
std::string cannot_be_undone(const Quote& quote, const Wording& w);  // empty where nothing is sawn or made
std::string found(const Quote& quote, const QuotedWork& work, const Wording& w);  // empty where nothing was
// Why a shaft is not cut, in a customer's words, each reason once.
std::vector<std::string> why_not(const QuotedWork& work, const Wording& w);

// Over the column of amounts: "Amount, EUR".
std::string amount_head(const Currency& currency, const Wording& w);
// What a line is for; a new shaft without its length.
std::string line_text(const LineFor& what, const Wording& w);
// How many pieces; empty of labour, of tubes, of what is said by its amount alone and of an estimate's two amounts.
std::string count_of(const QuoteLine& line);
std::string amount_of(const QuoteLine& line, const Currency& currency, const Wording& w);  // "not priced", "free of charge", "75.00 to 95.00"

// "VAT 21 % on 216.65", and where prices hold it "VAT 21 % in 262.15".
std::string tax_line(const Quote& quote, const TaxSum& sum, const Wording& w);
std::string total_name(const Quote& quote, const Wording& w);
std::string total(const Quote& quote, const Wording& w);  // "262.15 EUR", "90.00 to 120.00 EUR"

// How long it holds, when it is done, what is due on order, the firm's terms.
std::vector<std::string> conditions(const Quote& quote, const Wording& w);

// One of those that are offered instead, or of which the quote is one: "A", "B" by its place.
std::string letter(std::size_t place);
std::string headline(const Alternative& alternative, const Wording& w);
std::string explained(const Alternative& alternative, const Wording& w);
std::vector<std::string> included(const Alternative& alternative, const Wording& w);
std::string price(const Alternative& alternative, const Quote& quote, const Wording& w);
std::vector<std::string> beside_price(const Alternative& alternative, const Quote& quote, const Wording& w);
// One that has no price yet, in a line.
std::string open_offer(const std::string& letter, const std::string& headline, const std::string& explained, const Wording& w);
// What is to be done at the machine, without figures.
std::string change_at_machine(const WayOut& way, const Wording& w);

// What the customer signs; empty of a paper that cannot be ordered from. `choose`: among offers side by side.
std::string acceptance(const Quote& quote, bool choose, const Wording& w);
std::string by_telephone(const Firm& firm, const Wording& w);

}  // namespace shaftcut::quote_sheet

// What is said of the shafts that would serve, and why the others do not. Checked in tests/wording/choose/choose_words_test.cpp.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/choose/choose.hpp"
#include "wording.hpp"

namespace shaftcut {

// "3 OF 42 SERVE", "NONE OF 42 SERVES".
std::string verdict_words(const Choices& choices, const Wording& w);
std::string chosen_for(const std::string& machine, const Wording& w);

// "as it is", "cut 94 mm", "no".
std::string result_words(const Choice& choice, const Wording& w);
// "Alder 2, closed length 830 mm from the outer cross; wide-angle joint at the tractor, standard joint at the implement".
std::string shaft_words(const Choice& choice, const Wording& w);
std::string shaft_words(const ChoiceToOrder& choice, const Wording& w);
// The same with the price of such a new shaft, where the workshop states it.
std::string priced_words(const Choice& choice, const Choices& all, const Wording& w);

// Why a shaft does not serve, in a sentence or few.
std::string say(const WhyNotServed& why, const Wording& w);

// The least margin, the checks on lengths with what they leave and what is asked, then those that warn and those that were not made.
std::string checks_words(const AllFigures& checks, const std::optional<Margin>& least, const Wording& w);

// How many more serve, or could be made to order, than are said one by one.
std::string more_serve(std::size_t count, const Wording& w);
std::string more_to_order(std::size_t count, const Wording& w);
std::string more_refused(std::size_t count, const Wording& w);
// What must be known of a shaft before it is made to order.
std::string open_first(std::size_t count, const Wording& w);
std::string none_to_order(const Wording& w);

// Of a series, its lengths that do not serve by their first reasons: "overlap turning: 480, 590 mm; tube left: 705 mm".
std::string refused_words(const std::vector<const Choice*>& of_one_series, const Wording& w);
std::string lists_no_lengths(const std::vector<std::string>& series, const Wording& w);

}  // namespace shaftcut

// What names an order and its day, written alike in jobs and in lists of orders.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "shaftcut/reading/element.hpp"
#include "shaftcut/words/parse.hpp"

namespace shaftcut {

// What is wrong with an order number: it is not 1 to 40 letters, digits, ".", "_" or "-", it begins with ".", or what stands before
// its first dot is a device's name on Windows (CON, PRN, AUX, NUL, COM0-9, LPT0-9). Empty where it can name files anywhere.
std::vector<ParseFault> order_faults(std::string_view order);

// Empty where `date` is a day of the calendar as YYYY-MM-DD.
std::vector<ParseFault> date_faults(std::string_view date);

// The attribute as it stands, what is wrong with it recorded.
std::string read_order(const Attribute& attribute);
std::string read_date(const Attribute& attribute);

}  // namespace shaftcut

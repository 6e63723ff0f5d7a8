// What names an order and its day, written alike in jobs and in lists of orders.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "xml/element.hpp"

namespace shaftcut {

// What is wrong with an order number: it is not 1 to 40 letters, digits, ".", "_" or "-", it begins with ".", or what stands before
// its first dot is a device's name on Windows (CON, PRN, AUX, NUL, COM0-9, LPT0-9). Empty where it can name files anywhere.
std::vector<WrongValue> order_faults(std::string_view order);

// What a folder that does not tell capitals from small letters (Windows, macOS, most sticks) tells orders by: two of one key would
// name the same files there.
std::string order_key(std::string_view order);

// The order numbers of a list that were met so far, each with its line.
class OrderNumbers {
public:
    // What is wrong with `order` in line `line`: it, or one that differs in capitals only, was met before.
    std::optional<SecondOrder> add(const std::string& order, int line);

private:
    struct Met {
        std::string order;
        int line = 1;
    };
    std::map<std::string, Met> met_;  // by key
};

// Empty where `date` is a day of the calendar as YYYY-MM-DD.
std::vector<WrongValue> date_faults(std::string_view date);

// The attribute as it stands, what is wrong with it recorded.
std::string read_order(const Attribute& attribute);
std::string read_date(const Attribute& attribute);

}  // namespace shaftcut

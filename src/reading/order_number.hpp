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

// Of an order in a CSV list, whose number is kept as somebody else has given it: it is not 1 to 40 characters.
std::vector<WrongValue> listed_order_faults(std::string_view order);

// What names the files of an order: its number, with "-" for what cannot stand in a file's name anywhere, and "_" behind a device's. Of a
// number without order_faults() itself. Checked in tests/reading/order_number_test.cpp.
std::string file_name_of(std::string_view order);

// What a folder that does not tell capitals from small letters (Windows, macOS, most sticks) tells orders by: two of one key would
// name the same files there.
std::string order_key(std::string_view order);

// The order numbers of a list that were met so far, each with its line. Those of one file name are one number.
class OrderNumbers {
public:
    // What is wrong with `order` in line `line`: it, or one that names the same files, was met before.
    std::optional<SecondOrder> add(const std::string& order, int line);

    // Whether it was met more than once: then nobody knows which is meant, and none is built.
    bool met_twice(const std::string& order) const;

private:
    struct Met {
        std::string order;
        int line = 1;
        bool twice = false;
    };
    std::map<std::string, Met> met_;  // by key
};

// Empty where `date` is a day of the calendar as YYYY-MM-DD.
std::vector<WrongValue> date_faults(std::string_view date);

// The attribute as it stands, what is wrong with it recorded.
std::string read_order(const Attribute& attribute);
std::string read_date(const Attribute& attribute);

}  // namespace shaftcut

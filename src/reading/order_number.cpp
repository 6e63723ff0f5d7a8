#include "order_number.hpp"

#include <algorithm>
#include <string>

#include "day.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_order = 40;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

bool may_stand_in_order(char c)
{
    return is_digit(c) || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '.' || c == '_' || c == '-';
}

bool is_order(std::string_view text)
{
    return !text.empty() && text.size() <= most_order && text.front() != '.' && std::all_of(text.begin(), text.end(), may_stand_in_order);
}

// CON.json opens the console instead of a file on Windows, whatever stands after the first dot and in whatever case
// ("Naming Files, Paths, and Namespaces", Microsoft, from memory): papers on a shared folder or a stick must open anywhere.
bool is_device(std::string_view order)
{
    std::string stem = order_key(order.substr(0, order.find('.')));
    if (stem.size() == 4 && is_digit(stem.back())) stem.back() = '#';
    return stem == "con" || stem == "prn" || stem == "aux" || stem == "nul" || stem == "com#" || stem == "lpt#";
}

std::string read_checked(const Attribute& attribute, std::vector<WrongValue> (*faults_of)(std::string_view))
{
    if (!attribute.given()) return {};
    for (WrongValue& fault : faults_of(attribute.value())) attribute.fault(std::move(fault));
    return attribute.value();
}

}  // namespace

std::vector<WrongValue> order_faults(std::string_view order)
{
    const Stated stated{"order", std::string(order)};
    std::vector<WrongValue> faults;
    if (is_device(order)) faults.push_back({Unfit::order_of_device, stated});
    if (!is_order(order)) faults.push_back({Unfit::order_number, stated});
    return faults;
}

std::vector<WrongValue> listed_order_faults(std::string_view order)
{
    const std::size_t characters = code_points(order).size();
    if (characters > 0 && characters <= most_order) return {};
    return {{Unfit::listed_order, {"order", std::string(order)}}};
}

std::string file_name_of(std::string_view order)
{
    std::string name;
    for (const char32_t point : code_points(order)) name += point < 0x80 && may_stand_in_order(static_cast<char>(point)) ? static_cast<char>(point) : '-';
    if (name.starts_with('.')) name.front() = '-';
    if (is_device(name)) name.insert(std::min(name.find('.'), name.size()), "_");
    return name;
}

std::string order_key(std::string_view order)
{
    std::string key(order);
    for (char& c : key) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return key;
}

std::optional<SecondOrder> OrderNumbers::add(const std::string& order, int line)
{
    const auto [earlier, added] = met_.try_emplace(order_key(file_name_of(order)), Met{order, line});
    if (added) return std::nullopt;
    earlier->second.twice = true;
    return SecondOrder{order, earlier->second.order, earlier->second.line};
}

bool OrderNumbers::met_twice(const std::string& order) const
{
    const auto met = met_.find(order_key(file_name_of(order)));
    return met != met_.end() && met->second.twice;
}

std::vector<WrongValue> date_faults(std::string_view date)
{
    if (parse_day(date)) return {};
    return {{Unfit::date, {"date", std::string(date)}}};
}

std::string read_order(const Attribute& attribute) { return read_checked(attribute, order_faults); }
std::string read_date(const Attribute& attribute) { return read_checked(attribute, date_faults); }

}  // namespace shaftcut

#include "xlsx/cell_values.hpp"

#include <array>
#include <charconv>
#include <chrono>
#include <cmath>

namespace shaftcut {
namespace {

std::optional<double> number(std::string_view value)
{
    double read = 0;
    const auto [end, error] = std::from_chars(value.data(), value.data() + value.size(), read);
    if (error != std::errc() || end != value.data() + value.size() || !std::isfinite(read)) return std::nullopt;
    return read;
}

std::string two_digits(unsigned value) { return (value < 10 ? "0" : "") + std::to_string(value); }

}  // namespace

std::optional<std::string> plain_number(std::string_view value)
{
    constexpr int digits = 15;
    const auto read = number(value);
    if (!read || *read < 0 || *read >= 1e15) return std::nullopt;
    const int before_point = *read < 1 ? 1 : static_cast<int>(std::floor(std::log10(*read))) + 1;
    std::array<char, 64> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), *read, std::chars_format::fixed, digits - before_point).ptr;
    std::string text(buffer.data(), end);
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

std::optional<std::string> day_of_serial(std::string_view value, bool since_1904)
{
    using namespace std::chrono;
    constexpr int from_1900_to_1904 = 1462, first = 61, last = 2'958'465;
    const auto read = number(value);
    if (!read) return std::nullopt;
    const double serial = std::floor(*read) + (since_1904 ? from_1900_to_1904 : 0);
    if (serial < first || serial > last) return std::nullopt;
    const year_month_day day = sys_days(year(1899) / December / 30) + days(static_cast<int>(serial));
    return std::to_string(static_cast<int>(day.year())) + "-" + two_digits(static_cast<unsigned>(day.month())) + "-" + two_digits(static_cast<unsigned>(day.day()));
}

bool is_day_format(std::string_view format)
{
    char until = 0;  // what ends the part that shows nothing of the number
    for (std::size_t i = 0; i < format.size(); ++i) {
        const char c = format[i];
        if (until != 0) until = c == until ? '\0' : until;
        else if (c == '"') until = '"';
        else if (c == '[') until = ']';
        else if (c == '\\' || c == '_' || c == '*') ++i;
        else if (c == 'd' || c == 'D' || c == 'm' || c == 'M' || c == 'y' || c == 'Y') return true;
    }
    return false;
}

bool is_day_format(int built_in) { return (built_in >= 14 && built_in <= 17) || built_in == 22 || (built_in >= 27 && built_in <= 36) || (built_in >= 50 && built_in <= 58); }

}  // namespace shaftcut

#include "day.hpp"

#include <array>

namespace shaftcut {
namespace {

int days_of_month(int year, int month)
{
    constexpr std::array days{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    const bool leaps = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    return days[static_cast<std::size_t>(month - 1)] + (month == 2 && leaps ? 1 : 0);
}

// Nothing where a character is no digit.
std::optional<int> number(std::string_view digits)
{
    int value = 0;
    for (const char c : digits) {
        if (c < '0' || c > '9') return std::nullopt;
        value = value * 10 + (c - '0');
    }
    return value;
}

std::string padded(int number, std::size_t wide)
{
    std::string digits = std::to_string(number);
    return std::string(wide > digits.size() ? wide - digits.size() : 0, '0') + digits;
}

}  // namespace

std::optional<Day> parse_day(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
    const auto year = number(text.substr(0, 4)), month = number(text.substr(5, 2)), day = number(text.substr(8, 2));
    if (!year || !month || !day || *year < 1 || *month < 1 || *month > 12 || *day < 1 || *day > days_of_month(*year, *month)) return std::nullopt;
    return Day{*year, *month, *day};
}

std::string day_text(const Day& day) { return padded(day.year, 4) + "-" + padded(day.month, 2) + "-" + padded(day.day, 2); }

Day later(Day day, int count)
{
    for (; count > 0; --count) {
        if (++day.day <= days_of_month(day.year, day.month)) continue;
        day.day = 1;
        if (++day.month <= 12) continue;
        day.month = 1;
        ++day.year;
    }
    return day;
}

}  // namespace shaftcut

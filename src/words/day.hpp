// Days of the Gregorian calendar, as files write them: YYYY-MM-DD. Checked in tests/words/day_test.cpp against the standard library's calendar.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace shaftcut {

struct Day {
    int year = 1, month = 1, day = 1;  // year 1 to 9999
    bool operator==(const Day&) const = default;
};

// Nothing where the text is no day of the calendar, written with four, two and two digits.
std::optional<Day> parse_day(std::string_view text);

std::string day_text(const Day& day);

// `count` days later, 0 or more.
Day later(Day day, int count);

}  // namespace shaftcut

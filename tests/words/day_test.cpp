#include "day.hpp"

#include <chrono>

#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("a day is one of the calendar, written in one way")
{
    CHECK(parse_day("2024-02-29") == Day{2024, 2, 29});
    for (const char* none : {"", "2023-02-29", "2100-02-29", "0000-01-01", "2024-13-01", "2024-00-01", "2024-01-00", "2024-04-31", "24-01-01", "2024-1-01", "2024/01/01", "2024-01-01 ", "20x4-01-01"})
        CHECK_FALSE(parse_day(none));
    CHECK(day_text({987, 6, 5}) == "0987-06-05");
}

TEST_CASE("days are counted as the standard library's calendar counts them")
{
    using namespace std::chrono;
    int wrong = 0;
    for (int offset = 0; offset < 150'000; offset += 7) {
        const year_month_day first = sys_days(year(1799) / 12 / 28) + days(offset), then = sys_days(first) + days(offset % 1001);
        const auto as_day = [](const year_month_day& day) { return Day{static_cast<int>(day.year()), static_cast<int>(static_cast<unsigned>(day.month())), static_cast<int>(static_cast<unsigned>(day.day()))}; };
        wrong += later(as_day(first), offset % 1001) == as_day(then) ? 0 : 1;
        wrong += parse_day(day_text(as_day(first))) == as_day(first) ? 0 : 1;
    }
    CHECK(wrong == 0);
}

// Numbers and days as a workbook stores them.
#include "xlsx/cell_values.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("a workbook's number is read as it is shown, without what a binary fraction adds")
{
    CHECK(plain_number("742.5") == "742.5");
    CHECK(plain_number("742.50000000000011") == "742.5");
    CHECK(plain_number("0.30000000000000004") == "0.3");
    CHECK(plain_number("8.3E2") == "830");
    CHECK(plain_number("123456789012345") == "123456789012345");
    CHECK(plain_number("0") == "0");
    for (const char* none : {"", "-1", "1e15", "nan", "inf", "1,5", "12x", " 1"}) CHECK_FALSE(plain_number(none));
}

TEST_CASE("days count from the end of 1899 or the start of 1904")
{
    CHECK(day_of_serial("46360", false) == "2026-12-04");
    CHECK(day_of_serial("46360.75", false) == "2026-12-04");
    CHECK(day_of_serial("44898", true) == "2026-12-04");
    CHECK(day_of_serial("61", false) == "1900-03-01");
    CHECK(day_of_serial("2958465", false) == "9999-12-31");
    for (const char* none : {"60", "2958466", "-1", "x", ""}) CHECK_FALSE(day_of_serial(none, false));
}

TEST_CASE("which formats show a day")
{
    for (const char* day : {"dd.mm.yyyy", "yyyy-mm-dd", "[$-407]D. MMMM YYYY", "m/d/yy"}) CHECK(is_day_format(day));
    for (const char* none : {"0.00", "General", "0 \"mm\"", "[Red]0", "0\\d", "#,##0"}) CHECK_FALSE(is_day_format(none));
    CHECK(is_day_format(14));
    CHECK_FALSE(is_day_format(2));
}

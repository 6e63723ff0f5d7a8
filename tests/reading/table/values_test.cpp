// What spreadsheets leave in cells, and what is asked of them.
#include "table/values.hpp"

#include "reading/said.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

namespace {

// The value, or both halves of the fault's sentence.
std::string plain(const std::string& text, Holds holds, DecimalMark mark = DecimalMark::comma)
{
    const auto value = plain_value(text, "c", holds, mark);
    if (const auto* read = std::get_if<std::string>(&value)) return *read;
    const Said said = say(std::get<FaultFinding>(value), Wording(Units::mm));
    return said.wrong + "; " + said.right;
}

}  // namespace

TEST_CASE("figures as spreadsheets write them where decimals have a comma")
{
    CHECK(plain("742,5", Holds::length) == "742.5");
    CHECK(plain("742,5 mm", Holds::length) == "742.5 mm");
    CHECK(plain("29-3/16 in", Holds::length) == "29-3/16 in");
    CHECK(plain("742.5", Holds::length) == "742.5");
    CHECK(plain("0,125 in", Holds::length) == "0.125 in");
    CHECK(plain("0830", Holds::length) == "0830");
    CHECK(plain("2,00", Holds::whole) == "2");
    CHECK(plain("2.0", Holds::whole) == "2");
    CHECK(plain("12,5", Holds::number) == "12.5");
    CHECK(plain("742,5", Holds::length, DecimalMark::point) == "742,5");
    CHECK(plain("1.250", Holds::length, DecimalMark::point) == "1.250");
    CHECK(plain("2,00", Holds::whole, DecimalMark::point) == "2");
    CHECK(plain("1.250", Holds::text) == "1.250");
}

TEST_CASE("a figure that can be read in two ways, or has its digits in groups, is asked, and told how it would be right")
{
    CHECK(plain("1.250", Holds::length) == "c \"1.250\" can be read in two ways; write 1250 or 1,25, whichever it is");
    CHECK(plain("1.250 mm", Holds::length) == "c \"1.250 mm\" can be read in two ways; write 1250 mm or 1,25 mm, whichever it is");
    CHECK(plain("1,250", Holds::length) == "c \"1,250\" can be read in two ways; write 1250 or 1,25, whichever it is");
    CHECK(plain("1,000", Holds::length, DecimalMark::point) == "c \"1,000\" can be read in two ways; write 1000 or 1.0, whichever it is");
    CHECK(plain("742.125", Holds::length) == "c \"742.125\" can be read in two ways; write 742125 or 742,1250, whichever it is");
    CHECK(plain("2.000", Holds::whole, DecimalMark::point) == "c \"2.000\" can be read in two ways; write 2000 or 2, whichever it is");
    CHECK(plain("1.250,5", Holds::length) == "c \"1.250,5\" has its digits in groups; write 1250,5");
    CHECK(plain("1 250", Holds::length) == "c \"1 250\" has its digits in groups; write 1250");
    CHECK(plain("1'250.5", Holds::length, DecimalMark::point) == "c \"1'250.5\" has its digits in groups; write 1250.5");
}

TEST_CASE("a number that a spreadsheet has shortened has lost digits, in a figure and in an order's number")
{
    const std::string lost = " is what a spreadsheet makes of a long number, with digits lost; make the column a text column there and write the number again";
    CHECK(plain("1,2E+05", Holds::order) == "c \"1,2E+05\"" + lost);
    CHECK(plain("1.2E+05", Holds::length) == "c \"1.2E+05\"" + lost);
    CHECK(plain("00123", Holds::order) == "00123");
    CHECK(plain("1E5", Holds::order) == "1E5");
}

TEST_CASE("days: with points taken, with slashes or a short year asked")
{
    CHECK(plain("04.12.2026", Holds::date) == "2026-12-04");
    CHECK(plain("4.12.2026", Holds::date) == "2026-12-04");
    CHECK(plain("2026-12-04", Holds::date) == "2026-12-04");
    CHECK(plain("31.2.2026", Holds::date) == "31.2.2026");
    const std::string asked = " is no day that is clear to everybody; write ";
    CHECK(plain("4/12/26", Holds::date) == "c \"4/12/26\"" + asked + "2026-12-04 or 2026-04-12");
    CHECK(plain("24/12/2026", Holds::date) == "c \"24/12/2026\"" + asked + "2026-12-24");
    CHECK(plain("4.12.26", Holds::date) == "c \"4.12.26\"" + asked + "2026-12-04");
    CHECK(plain("4/4/2026", Holds::date) == "c \"4/4/2026\"" + asked + "2026-04-04");
}

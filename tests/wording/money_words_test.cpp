#include "money_words.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("amounts and days are said in one way on every paper")
{
    const Wording w(Units::mm);
    const Currency euro, yen{"JPY", 0};
    CHECK(bare_amount(Money::minor_units(123'456'789), euro) == "1\u00a0234\u00a0567.89");
    CHECK(bare_amount(Money::minor_units(-99'999), euro) == "-999.99");
    CHECK(bare_amount(Money::minor_units(-100'000), euro) == "-1\u00a0000.00");
    CHECK(bare_amount(Money::minor_units(1'000), yen) == "1\u00a0000");
    CHECK(say(Money::minor_units(5), euro, w) == "0.05\u00a0EUR");
    CHECK(say(Percent{12'500}, w) == "12.5\u00a0%");
    CHECK(day_in_words("2026-12-04", w) == "4 December 2026");
    CHECK(day_in_words("2026-13-04", w) == "2026-13-04");
    CHECK(day_in_words("", w).empty());
}

#include "shaftcut/words/money.hpp"

#include <limits>
#include <random>

#include "parse.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

namespace {

const Currency euro{"EUR", 2}, yen{"JPY", 0}, dinar{"KWD", 3};

Money minor(std::int64_t count) { return Money::minor_units(count); }

std::optional<Money> read(const char* text, const Currency& currency)
{
    const auto parsed = parse_money(text, currency);
    const auto* money = std::get_if<Money>(&parsed);
    return money ? std::optional(*money) : std::nullopt;
}

}  // namespace

TEST_CASE("an amount is read with at most its currency's decimals")
{
    CHECK(read("12.50", euro) == minor(1250));
    CHECK(read("12.5", euro) == minor(1250));
    CHECK(read("12", euro) == minor(1200));
    CHECK(read("0", euro) == minor(0));
    CHECK(read("12", yen) == minor(12));
    CHECK(read("0.125", dinar) == minor(125));
    CHECK(read("100000000", euro) == minor(10'000'000'000));
    for (const char* wrong : {"", "12.505", "-1", "12,50", "1e3", "12.", ".5", "100000000.01", "100000001", "1000000000", "99999999999999999999", "12 EUR", "nan"}) CHECK_FALSE(read(wrong, euro));
    CHECK_FALSE(read("12.5", yen));
    CHECK_FALSE(read("0.1255", dinar));
}

TEST_CASE("an amount is written with all decimals of its currency")
{
    CHECK(decimal_text(minor(123'450), euro) == "1234.50");
    CHECK(decimal_text(minor(5), euro) == "0.05");
    CHECK(decimal_text(minor(-5), euro) == "-0.05");
    CHECK(decimal_text(minor(-123), yen) == "-123");
    CHECK(decimal_text(minor(0), dinar) == "0.000");
    CHECK(decimal_text(BilledQuantity{1'500}) == "1.5");
    CHECK(decimal_text(BilledQuantity{3'000}) == "3");
    CHECK(decimal_text(Percent{5'500}) == "5.5");
    CHECK(decimal_text(Percent{0}) == "0");
}

TEST_CASE("a line is rounded once, half away from zero")
{
    CHECK(line_amount(minor(333), {1'500}) == minor(500));        // 4.995 -> 5.00
    CHECK(line_amount(minor(-333), {1'500}) == minor(-500));
    CHECK(line_amount(minor(6'200), {4'000}, 60) == minor(413));  // four minutes at 62.00 an hour: 4.1333…
    CHECK(line_amount(minor(1), {499}) == minor(0));
    CHECK(line_amount(minor(1), {500}) == minor(1));
    CHECK(percent_of({21'000}, minor(50)) == minor(11));          // 10.5
    CHECK(percent_of_rounded_down({25'000}, minor(199)) == minor(49));
    CHECK(tax_within({21'000}, minor(12'100)) == minor(2'100));
    CHECK(rounded_to(minor(1'002), minor(5)) == minor(1'000));
    CHECK(rounded_to(minor(1'003), minor(5)) == minor(1'005));
    CHECK(rounded_to(minor(-1'003), minor(5)) == minor(-1'005));
}

TEST_CASE("tax put on and taken out again is the same")
{
    std::mt19937_64 random(41);
    int differing = 0;
    for (int i = 0; i < 100'000; ++i) {
        const Percent percent{static_cast<std::int64_t>(random() % 100'001)};
        const Money net = minor(static_cast<std::int64_t>(random() % 10'000'000'000));
        const Money tax = percent_of(percent, net);
        differing += tax_within(percent, net + tax) == tax ? 0 : 1;
    }
    CHECK(differing == 0);
}

TEST_CASE("what cannot be counted is an error, not another amount")
{
    const Money most = minor(std::numeric_limits<std::int64_t>::max());
    CHECK_THROWS_AS(most + minor(1), MoneyOverflow);
    CHECK_THROWS_AS(-most - minor(1), MoneyOverflow);
    CHECK_THROWS_AS(line_amount(most, {1'001}), MoneyOverflow);
    CHECK(line_amount(most, {1'000}) == most);
    CHECK(percent_of({100'000}, most) == most);
    CHECK_THROWS_AS(percent_of({100'001}, most), MoneyOverflow);
}

TEST_CASE("currencies have the minor units of ISO 4217")
{
    CHECK(find_currency("EUR") == euro);
    CHECK(find_currency("JPY") == yen);
    CHECK(find_currency("KWD") == dinar);
    for (const char* none : {"", "EU", "eur", "EUR ", "XXX", "UR ", "R J", "CLP DJF"}) CHECK_FALSE(find_currency(none));
    const auto codes = currency_codes();
    CHECK(codes.size() > 140);
    for (const std::string& code : codes) CHECK(find_currency(code));
}

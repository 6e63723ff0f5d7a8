#include "prices_reader.hpp"

#include "lists/price_list.hpp"
#include "reading/support.hpp"
#include "workshop_reader.hpp"

using namespace reading_test;
using namespace shaftcut;

namespace {

Money minor(std::int64_t count) { return Money::minor_units(count); }

std::string lines_of_list(const std::string& text)
{
    Prices prices;
    return lines_of(add_price_list({"prices.csv", text}, prices));
}

}  // namespace

TEST_CASE("prices are read as they are stated")
{
    const auto read = read_workshop({"f", bytes_of(folder / "good/workshop_everything.xml")});
    REQUIRE(read.value);
    REQUIRE(read.value->prices);
    const Prices& prices = *read.value->prices;
    CHECK(prices.currency == Currency{"EUR", 2});
    CHECK(prices.tax == Percent{21'000});
    CHECK(prices.tax_name == "VAT");
    CHECK(prices.stated == PricesStated::with_tax);
    CHECK(prices.hourly_rate == minor(6'200));
    CHECK(prices.minimum == minor(3'550));
    CHECK(prices.valid_days == 30);
    CHECK(prices.deposit == Percent{33'333});
    CHECK(prices.deposit_from == minor(30'000));
    CHECK(prices.binding == Binding::fixed);
    CHECK(prices.cash_rounding == minor(5));
    CHECK(prices.minutes.at(PricedWork::cut_tube) == BilledQuantity{6'500});
    CHECK(prices.minutes.at(PricedWork::papers) == BilledQuantity{0});
    CHECK(prices.parts.at("cross 22 x 54").each == minor(1'840));
    CHECK(prices.parts.at("cross 22 x 54").lead_days == 2);
    CHECK_FALSE(prices.parts.at("cross 22 x 54").tax);
    CHECK(prices.profiles.at("lemon tube 43 x 3.4").each == minor(3'150));
    CHECK(prices.shafts.at({"Alder 2", Length::millimetres(705)}).tax == OwnTax{{9'000}, "why"});
    CHECK(prices.services.at("collection").each == Money());
    CHECK(prices.ranges.at("cut, standard").to == minor(7'500));
    CHECK(prices.terms == "A. B.");
}

TEST_CASE("a workshop need not state prices")
{
    const auto read = read_workshop({"f", bytes_of(folder / "good/workshop_other_order.xml")});
    REQUIRE(read.value);
    CHECK_FALSE(read.value->prices);
}

TEST_CASE("a wholesaler's list adds what the workshop has no price for")
{
    Prices prices;
    prices.parts["a"] = {minor(100), std::nullopt, std::nullopt};
    CHECK(add_price_list({"prices.csv", "part;each;per_metre;lead_days\na;2,50;;\nb;1,25;;3\ntube;;9,40;\n"}, prices).empty());
    CHECK(prices.parts.at("a").each == minor(100));
    CHECK(prices.parts.at("b").each == minor(125));
    CHECK(prices.parts.at("b").lead_days == 3);
    CHECK(prices.profiles.at("tube").each == minor(940));
}

TEST_CASE("every fault of a wholesaler's list has its place, and nothing of it is added")
{
    CHECK(lines_of_list("part,each\na,1\n").empty());
    CHECK(lines_of_list("each\n1\n").find("prices.csv:1:1") == 0);
    CHECK(lines_of_list("part,each\na,1.255\n").find("prices.csv:2:3: each \"1.255\" is not an amount of money") == 0);
    CHECK(lines_of_list("part,each\na,-1\n").find("prices.csv:2:3") == 0);
    CHECK(lines_of_list("part,each,per_metre\na,1,2\n").find("the line states no price, or two") != std::string::npos);
    CHECK(lines_of_list("part,each,per_metre\na,,\n").find("the line states no price, or two") != std::string::npos);
    CHECK(lines_of_list("part,each\na,1\na,1\n").find("prices.csv:3:1: a second price for \"a\"") == 0);
    CHECK(lines_of_list("part,each,lead_days\na,1,1.5\n").find("prices.csv:2:5") == 0);
    Prices prices;
    CHECK_FALSE(add_price_list({"prices.csv", "part,each\na,1\nb,x\n"}, prices).empty());
    CHECK(prices.parts.empty());
}

// A quote's lines and what they add up to.
#include "quote/lines.hpp"

#include <random>

#include "shaftcut/trade/quote/totals.hpp"
#include "support/catch.hpp"
#include "support/jobs.hpp"
#include "support/some_prices.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("a deposit is a share of the total rounded down, where something is ordered")
{
    Prices prices = some_prices();
    prices.deposit = Percent{25'000};
    prices.deposit_from = minor(10'000);
    const std::vector<QuoteLine> lines{line(minor(8'265))};  // 100.01 with tax
    CHECK(totals_of(lines, prices, true).total == minor(10'001));
    CHECK(totals_of(lines, prices, true).deposit == minor(2'500));
    CHECK_FALSE(totals_of(lines, prices, false).deposit);
    prices.deposit_from = minor(10'002);
    CHECK_FALSE(totals_of(lines, prices, true).deposit);
}

TEST_CASE("prices with their tax come out as what is paid")
{
    Prices prices = some_prices();
    prices.stated = PricesStated::with_tax;
    const QuoteTotals totals = totals_of({line(minor(12'100)), line(minor(10'900), {9'000})}, prices, false);
    CHECK(totals.total == minor(23'000));
    CHECK(totals.net == minor(20'000));
    REQUIRE(totals.tax.size() == 2);
    CHECK(totals.tax[0].amount == minor(2'100));
    CHECK(totals.tax[1].amount == minor(900));
}

TEST_CASE("the order of lines changes no total")
{
    std::mt19937_64 random(5);
    const Prices prices = some_prices();
    for (int i = 0; i < 2'000; ++i) {
        std::vector<QuoteLine> lines;
        for (int k = 0; k < 8; ++k) lines.push_back(line(minor(static_cast<std::int64_t>(random() % 100'000)), {static_cast<std::int64_t>(random() % 3) * 7'000}));
        const QuoteTotals before = totals_of(lines, prices, true);
        std::shuffle(lines.begin(), lines.end(), random);
        const QuoteTotals after = totals_of(lines, prices, true);
        REQUIRE(before.total == after.total);
        REQUIRE(before.net == after.net);
    }
}

TEST_CASE("a count split in two lines moves the sum by a minor unit a line at most")
{
    std::mt19937_64 random(6);
    for (int i = 0; i < 100'000; ++i) {
        const Money each = minor(static_cast<std::int64_t>(random() % 1'000'000));
        const std::int64_t first = static_cast<std::int64_t>(random() % 100'000), second = static_cast<std::int64_t>(random() % 100'000);
        const Money whole = line_amount(each, {first + second}), split = line_amount(each, {first}) + line_amount(each, {second});
        REQUIRE(std::abs((whole - split).minor()) <= 1);
    }
}

TEST_CASE("lines for the same thing are one, rounded once")
{
    Prices prices = some_prices();
    prices.profiles["tube"] = {minor(333), {}, {}};
    const LineMaker make(prices);
    const auto lines = merged({make.tube("tube", mm(500)), make.labour(PricedWork::grease, 1), make.tube("tube", mm(1000))});
    REQUIRE(lines.size() == 2);
    CHECK(lines[0].quantity.thousandths == 1'500);
    CHECK(lines[0].amount == minor(500));
}

TEST_CASE("a tube is sold by whole millimetres, rounded up")
{
    Prices prices = some_prices();
    prices.profiles["tube"] = {minor(1'000), {}, {}};
    CHECK(LineMaker(prices).tube("tube", Length::micrometres(500'001)).quantity.thousandths == 501);
    CHECK(LineMaker(prices).tube("tube", mm(500)).quantity.thousandths == 500);
}

TEST_CASE("a shaft's price waits for what must be ordered, free or not")
{
    Prices prices = some_prices();
    prices.parts["a"] = {minor(100), 3, {}};
    prices.parts["free at hand"] = {Money(), std::nullopt, {}};
    prices.parts["free"] = {Money(), 7, {}};
    prices.parts["nobody knows"] = {minor(1), std::nullopt, {}};
    const LineMaker make(prices);
    const auto named = [](const char* name) { PartName part; part.known = name; return part; };
    CHECK(lead_days_of({make.part(named("a"), 1), make.part(named("free at hand"), 1)}) == 3);
    CHECK(lead_days_of({make.part(named("a"), 1), make.part(named("free"), 1)}) == 7);
    CHECK_FALSE(lead_days_of({make.part(named("a"), 1), make.part(named("nobody knows"), 1)}));
    CHECK(lead_days_of({make.labour(PricedWork::grease, 1)}) == 0);
}

TEST_CASE("each reason for a rate stays")
{
    std::vector<QuoteLine> lines{line(minor(100), {0}), line(minor(100), {0}), line(minor(100), {0})};
    lines[0].tax.note = "abroad";
    lines[1].tax.note = "used goods";
    lines[2].tax.note = "abroad";
    const QuoteTotals totals = totals_of(lines, some_prices(), false);
    REQUIRE(totals.tax.size() == 1);
    CHECK(totals.tax[0].rate.note == "abroad; used goods");
}

#include "workshop_reader.hpp"

#include "reading/support.hpp"

using namespace reading_test;
using namespace shaftcut;

TEST_CASE("the demonstration's workshop is read as it stands")
{
    const auto read = read_workshop({"f", bytes_of(project / "config/workshop.xml")});
    REQUIRE(read.value);
    CHECK(read.value->name == "Demonstration workshop (invented)");
    CHECK(read.value->saw.step == Length::millimetres(1));
    CHECK(read.value->saw.kerf == Length::millimetres(3));
    CHECK(read.value->saw.plus_minus == Length::millimetres(1));
    CHECK(read.value->saw.least_cut == Length::millimetres(5));
    CHECK(read.value->measuring_plus_minus == Length::millimetres(2));
    CHECK(read.value->saw.reusable_leftover == Length::millimetres(500));
    REQUIRE(read.value->stock.size() == 2);
    CHECK(read.value->stock[0].length == Length::millimetres(6000));
    CHECK_FALSE(read.value->stock[0].count.has_value());
    CHECK(read.value->stock[0].cost == 6000 * cost_unit);
    // It sets no limit looser or tighter than the defaults, so that the demonstration shows those.
    for (const LimitRow& row : limit_rows())
        if (const auto& setting = read.value->limits[row.limit]) CHECK(setting->value == row.standard);
}

TEST_CASE("a workshop may think in inches")
{
    const auto read = read_workshop({"f", bytes_of(folder / "good/workshop_other_order.xml")});
    REQUIRE(read.value);
    CHECK(read.value->name.empty());
    CHECK(read.value->saw.step.um() == 1'588);   // 1/16 in
    CHECK(read.value->saw.kerf == Length());
    CHECK(read.value->saw.least_cut == Length::millimetres(5));
    CHECK(read.value->limits[Limit::overlap_turning]->value == LimitValue{1, 1});
    CHECK_FALSE(read.value->saw.reusable_leftover.has_value());
    REQUIRE(read.value->stock.size() == 1);
    CHECK(read.value->stock[0].length.um() == 3'000'375);
    CHECK(read.value->stock[0].count == 0);
    CHECK(read.value->stock[0].cost == 0);
}

TEST_CASE("stock states a count and a cost, exact to the millionth")
{
    const auto read = read_workshop({"f", bytes_of(folder / "good/workshop_everything.xml")});
    REQUIRE(read.value);
    REQUIRE(read.value->stock.size() == 2);
    CHECK(read.value->stock[0].count == 4);
    CHECK(read.value->stock[0].cost == 61'500'000);
}

TEST_CASE("a workshop names its firm, or nobody")
{
    const auto all = read_workshop({"f", bytes_of(folder / "good/workshop_everything.xml")});
    REQUIRE(all.value);
    const Firm& firm = all.value->firm;
    CHECK(firm.name == "A");
    CHECK(firm.address == "B 1");
    CHECK(firm.phone == "555 0100");
    CHECK(firm.mail == "a@b.example");
    CHECK(firm.tax_number == "T 1");
    CHECK(firm.register_number == "R 1");
    const auto none = read_workshop({"f", bytes_of(folder / "good/workshop_other_order.xml")});
    REQUIRE(none.value);
    CHECK(none.value->firm.name.empty());
}

TEST_CASE("each limit is read in its own kind, and at its own place")
{
    // One row of the table each: what is written, and what is stored.
    const auto sample = [](LimitKind kind) -> std::pair<const char*, LimitValue> {
        switch (kind) {
        case LimitKind::length: return {"1-1/2 in", {38'100, 1}};
        case LimitKind::fraction: return {"2/3", {2, 3}};
        case LimitKind::angle: return {"12.5", {12'500, 1}};
        case LimitKind::percent: break;
        }
        return {"2.5", {2'500, 1}};
    };
    for (const LimitRow& row : limit_rows()) {
        INFO(row.name);
        const auto [written, stored] = sample(row.kind);
        const std::string text = "<workshop units=\"mm\"><limits " + std::string(row.name) + "=\"" + written +
                                 "\"/><saw step=\"1\" kerf=\"3\" plus-minus=\"1\" least-cut=\"5\"/><measuring plus-minus=\"2\"/></workshop>";
        const auto read = read_workshop({"f", text});
        REQUIRE(read.value);
        CHECK(read.value->limits[row.limit]->value == stored);
        CHECK(read.value->limits[row.limit]->place == Place{"f", 1, 30});
    }
}

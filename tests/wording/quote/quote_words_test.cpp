#include "quote/quote_words.hpp"

#include "quote/quote_lines.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

namespace {

const Wording w(Units::mm);

Money minor(std::int64_t count) { return Money::minor_units(count); }

QuoteLine labour()
{
    QuoteLine line;
    line.what = Labour{PricedWork::grease};
    line.quantity = {4'000};
    line.unit = QuoteUnit::minute;
    line.each = minor(6'200);
    line.per = 60;
    line.amount = minor(413);
    return line;
}

}  // namespace

TEST_CASE("each kind of line says what it is for")
{
    CHECK(say(LineFor(Labour{PricedWork::cut_tube}), w) == "saw a tube to its length");
    CHECK(say(LineFor(TubeSold{"lemon tube 43 x 3.4"}), w) == "lemon tube 43 x 3.4");
    CHECK(say(LineFor(ShaftSold{"Alder 2", Length::millimetres(705)}), w) == "new shaft Alder 2, 705 mm closed");
    CHECK(say(LineFor(Service{"collection"}), w) == "collection");
    CHECK(say(LineFor(Service{"lift-stop"}), w) == "a stop on the lift");
    CHECK(say(LineFor(Discount{Percent{5'500}}), w) == "discount of 5.5\u00a0%");
    CHECK(say(LineFor(Discount{}), w) == "discount");
}

TEST_CASE("what has no price says where to state it")
{
    QuoteLine line = labour();
    line.missing = NotPriced::minutes;
    CHECK(say_not_priced(line, w) == "its minutes are not stated; write operation name=\"grease\" minutes=… in workshop.xml");
    line.what = Service{"lift-stop"};
    line.missing = NotPriced::service;
    CHECK(say_not_priced(line, w) == "no price is stated; write item service=\"lift-stop\" each=… in workshop.xml");
    line.what = ShaftSold{"Alder 2", Length::millimetres(705)};
    line.missing = NotPriced::shaft;
    CHECK(say_not_priced(line, w) == "no price is stated; write item series=\"Alder 2\" closed-length=\"705 mm\" each=… in workshop.xml");
}

TEST_CASE("an amount is one, two, nothing or free")
{
    const Currency euro;
    QuoteLine line = labour();
    CHECK(amount_of(line, euro, w) == "4.13");
    CHECK(line_said(line, euro, w) == "grease (4 min at 62.00 an hour)");
    line.up_to = minor(500);
    CHECK(amount_of(line, euro, w) == "4.13 to 5.00");
    line.up_to.reset();
    line.each = line.amount = Money();
    CHECK(amount_of(line, euro, w) == "free of charge");
    line.amount.reset();
    CHECK(amount_of(line, euro, w) == "not priced");
}

TEST_CASE("a change at the machine is said for a customer, with what becomes of the shaft")
{
    Alternative one;
    one.kind = AlternativeKind::change_at_machine;
    one.change = TurnServed{"", Range::turning, Angle::degrees(44), Angle::degrees(60)};
    one.is_cut = true;
    CHECK(say(one, w) == "a stop, so that the machine never turns further than 44° to either side; this shaft is cut");
    one.change = PinMoveServed{"", Length::millimetres(-110)};
    one.is_cut = false;
    CHECK(say(one, w) == "another hole for the hitch pin, 110 mm further forwards; this shaft stays as it is");
}

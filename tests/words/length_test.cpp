#include "shaftcut/words/length.hpp"

#include "parse.hpp"
#include "support/catch.hpp"

using namespace shaftcut;

namespace {
std::int64_t um(std::string_view text, Units units = Units::mm)
{
    const auto parsed = parse_length(text, units);
    REQUIRE(std::holds_alternative<Length>(parsed));
    return std::get<Length>(parsed).um();
}
bool refused(std::string_view text, Units units = Units::mm)
{
    return std::holds_alternative<ParseFault>(parse_length(text, units));
}
}  // namespace

TEST_CASE("lengths are read exactly")
{
    CHECK(um("742") == 742'000);
    CHECK(um("742.5 mm") == 742'500);
    CHECK(um("29.25 in") == 742'950);
    CHECK(um("29-3/16 in") == 741'363);  // 741.3625, half away from zero
    CHECK(um("29-3/16", Units::in) == 741'363);
    CHECK(um("3/16 in") == 4'763);
    CHECK(um("1", Units::in) == 25'400);  // the inch is 25.4 mm exactly
    CHECK(um("0.0005") == 1);
    CHECK(um("0.00049999999999999999999") == 0);
    CHECK(um("742mm") == 742'000);
}

TEST_CASE("what is not a length is refused")
{
    for (const char* text : {"", " ", "742,5", "1 000", "7e2", "nan", "inf", "-5", "+5", "5.", ".5", "742 cm", "742 mm x", "29-16/16 in",
                             "29-3/0 in", "3/16", "29-3/16 mm", "0x10", "742  mm", "99999999999999999999", "100000.1", "1-1-1/2 in", "1/2/3 in"})
        CHECK(refused(text));
    CHECK(refused("29 3/16", Units::in));
    CHECK(std::holds_alternative<Length>(parse_length("-5", Units::mm, Sign::allowed)));
}

TEST_CASE("rounding up to the saw's step ignores under 0.01 mm")
{
    const Fraction whole{1000, 1};
    CHECK(round_up_to_step(Length::micrometres(94'000), whole).um() == 94'000);
    CHECK(round_up_to_step(Length::micrometres(94'009), whole).um() == 94'000);
    CHECK(round_up_to_step(Length::micrometres(94'010), whole).um() == 95'000);
    CHECK(round_up_to_step(Length::micrometres(9), whole).um() == 0);
    CHECK(round_up_to_step(Length::micrometres(-50'000), whole).um() == 0);
    CHECK(round_up_to_step(Length::micrometres(1'600), step_in_sixteenths(Length::millimetres(1))).um() == 3'175);
    // An excess of 9.5 micrometres over 1/16 in is under 0.01 mm and costs no step; one of 10.5 does.
    CHECK(round_up_to_step(Length::micrometres(1'597), step_in_sixteenths(Length::millimetres(1))).um() == 1'588);
    CHECK(round_up_to_step(Length::micrometres(1'598), step_in_sixteenths(Length::millimetres(1))).um() == 3'175);
    CHECK(step_in_sixteenths(Length::millimetres(1)) == Fraction{3175, 2});
    CHECK(step_in_sixteenths(Length::millimetres(2)) == Fraction{6350, 2});
}

TEST_CASE("figures print from integers, half away from zero")
{
    CHECK(figure(Length::micrometres(704'250), Units::mm) == "704.3");
    CHECK(figure(Length::micrometres(-704'250), Units::mm) == "-704.3");
    CHECK(figure(Length::micrometres(704'000), Units::mm) == "704");
    CHECK(figure(Length::micrometres(50), Units::mm, Toward::nearest, 3) == "0.05");
    CHECK(figure(Length::micrometres(704'290), Units::mm, Toward::down) == "704.2");
    CHECK(figure(Length::micrometres(741'363), Units::in, Toward::up) == "29-3/16");
    CHECK(figure(Length::micrometres(741'363), Units::in, Toward::down) == "29-3/16");
    CHECK(figure(Length::micrometres(741'400), Units::in, Toward::up) == "29-1/4");
    CHECK(figure(Length::micrometres(6'350), Units::in) == "1/4");
    CHECK(figure_with_unit(Length(), Units::in) == "0 in");
}

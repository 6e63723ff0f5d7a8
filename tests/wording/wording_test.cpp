// Patterns and their places.
#include <stdexcept>

#include "shaftcut/trade/data/terms.hpp"
#include "support/catch.hpp"
#include "wording.hpp"

using namespace shaftcut;

TEST_CASE("a pattern's places are filled by name")
{
    const Wording w(Units::mm);
    CHECK(w("{closed} is {excess} more than {model}", {{"model", w.length(Rounded::measured, Length::millimetres(700))}, {"closed", "742 mm"}, {"excess", 42}}) ==
          "742 mm is 42 more than 700 mm");
    CHECK(w("Nothing is cut.") == "Nothing is cut.");
    CHECK(Wording(Units::in).both(Rounded::kept, Length::micrometres(741362)) == "29-3/16 in (741.3 mm)");
}

TEST_CASE("an enumerator or a yes and no chooses among a pattern's words")
{
    const Wording w(Units::mm);
    const char* const pattern = "The {tube:inner|outer} half is {longer:less|more} than that.";
    CHECK(w(pattern, {{"tube", Tube::inner}, {"longer", true}}) == "The inner half is more than that.");
    CHECK(w(pattern, {{"tube", Tube::outer}, {"longer", false}}) == "The outer half is less than that.");
    CHECK(w("{range:working|turning|standing} {range:A|B|C}", {{"range", Range::standing}}) == "standing C");
    CHECK(w("1{more:|, and more}", {{"more", false}}) == "1");
}

TEST_CASE("a pattern that cannot be filled is a fault of the program")
{
    const Wording w(Units::mm);
    CHECK_THROWS_AS(w("{closed} and {halves}", {{"closed", "742 mm"}}), std::logic_error);
    CHECK_THROWS_AS(w("{range:working|turning}", {{"range", Range::standing}}), std::logic_error);
    CHECK_THROWS_AS(w("{closed", {{"closed", "742 mm"}}), std::logic_error);
}

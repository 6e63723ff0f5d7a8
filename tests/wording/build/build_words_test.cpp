// Shafts made to order in words, each sentence whole.
#include "build/build_words.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

namespace {

const Wording mm(Units::mm, About::new_shaft), inches(Units::in, About::new_shaft);

}  // namespace

TEST_CASE("a limit that is asked for is rounded to the side on which it still holds")
{
    const BuildWay way = ShortestThatServes{"Alder 2", Length::micrometres(612'040), Length::millimetres(600), false, true};
    CHECK(say(way, mm) == "With the longest lengths as they are, a shaft of series Alder 2 could be built if the shortest position were 612.1 mm between the inner crosses or more (now 600 mm).");
    CHECK(say(BuildWay(LongestThatServes{"Alder 2", Range::turning, Length::micrometres(736'090), false}), mm) ==
          "With the shortest position as it is, a shaft of series Alder 2 could be built for a position with the PTO turning of 736 mm between crosses at most.");
    CHECK(say(BuildWay(LongestThatServes{"Alder 2", Range::standing, std::nullopt, false}), mm) ==
          "With the shortest position as it is, a shaft of series Alder 2 could be built for no position with the PTO stopped at all.");
}

TEST_CASE("millimetres read as inches are asked about with the figure as it stands in the list")
{
    CHECK(say(std::vector<BuildReason>{MillimetresReadAsInches{true, Length::from_mm(830 * 25.4)}}, inches).at(0) ==
          "Were millimetres read as inches? The closed length was read as 830 in; 830 mm would be made of these bars. A length without a unit is in the units of the list: --units of a CSV list, "
          "its root's units in XML.");
}

TEST_CASE("a refused profile names five of its pieces at most")
{
    ProfileRefusal refusal{{SawRefusal::Reason::rack_too_small, SawFault::rack_too_small, {}, {}}, {"A", "B"}};
    CHECK(say(refusal, mm).ends_with("; add a bar, or leave out pieces (A, B)"));
    refusal.labels = {"A", "B", "C", "D", "E", "F", "G"};
    CHECK(say(refusal, mm).ends_with("(A, B, C, D, E and 2 more)"));
    refusal.labels.clear();
    CHECK(say(refusal, mm).ends_with("; add a bar, or leave out pieces"));
}

TEST_CASE("a saw that is not exact enough for class c is said so")
{
    CHECK(say(BuildNote(SawAgainstClassC{Length::millimetres(1), Length::millimetres(2)}), mm) == "Sawn lengths are within ± 1 mm; ISO 2768-1 class c allows ± 2 mm for the shorter tube.");
    CHECK(say(BuildNote(SawAgainstClassC{Length::millimetres(3), Length::millimetres(2)}), mm) ==
          "Sawn lengths are within ± 3 mm; ISO 2768-1 class c allows ± 2 mm for the shorter tube: this saw is not exact enough for that class.");
}

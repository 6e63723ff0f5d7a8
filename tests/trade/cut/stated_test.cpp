#include "cut/stated.hpp"

#include "support/catch.hpp"
#include "support/machines.hpp"

using namespace shaftcut;

namespace {

// Yokes of 0 to 90 mm and spacings of 0 to 110 mm, bent by 0 to 70 degrees.
struct Drawn {
    Reaches reaches;
    PerEach<End, Angle> angles;
};

Drawn drawn(support::Dice& dice)
{
    Drawn one;
    for (const End end : both_ends) {
        one.reaches[end] = {Length::from_mm(dice.between(0, 90)), Length::from_mm(dice.one_in(2) ? 0 : dice.between(50, 110))};
        one.angles[end] = Angle::from_degrees(dice.between(0, 70));
    }
    return one;
}

}  // namespace

TEST_CASE("a distance for a telescoping length is the greatest that is read as no more")
{
    support::Dice dice(4);
    for (int i = 0; i < 2000; ++i) {
        const Drawn one = drawn(dice);
        const Length telescoping = Length::from_mm(dice.between(300, 1500)), distance = distance_bent(telescoping, one.reaches, one.angles);
        CHECK(bent(distance, one.reaches, one.angles) <= telescoping);
        CHECK(bent(distance + Length::micrometres(2), one.reaches, one.angles) > telescoping);
        CHECK(in_line(distance_in_line(telescoping, one.reaches), one.reaches) == telescoping);
    }
}

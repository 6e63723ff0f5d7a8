#include "shaftcut/trade/data/rounding.hpp"


#include "parse.hpp"
#include "shaftcut/trade/checks/checks.hpp"
#include "support/catch.hpp"
#include "support/drawn/random_jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

constexpr std::array all_rounded{Rounded::measured, Rounded::cut,      Rounded::kept,    Rounded::closed_after, Rounded::overlap, Rounded::clearance,
                                 Rounded::shortest, Rounded::longest, Rounded::setback, Rounded::doubt,        Rounded::allowed,
                                 Rounded::at_most,  Rounded::at_least};

Length read_back(const std::string& text) { return std::get<Length>(parse_length(text, Units::mm)); }

}  // namespace

TEST_CASE("a quantity is printed on its own side of what it is, by less than the least that is printed")
{
    Dice dice(20'261'127);
    for (int i = 0; i < 20'000; ++i) {
        const Length length = dice.length(1, 3500);
        for (const Units units : {Units::mm, Units::in})
            for (const Rounded as : all_rounded) {
                // A sixteenth is no whole number of micrometres: what is read back is off by less than one, and so may what was stated be.
                const Length slack = Length::micrometres(units == Units::in ? 2 : 0), step = Length::micrometres(units == Units::in ? 1588 : 100);
                const Length printed = read_back(figure_of_with_unit(as, length, units));
                if (toward_of(as) != Toward::up) CHECK(printed - length <= (as == Rounded::measured ? step : Length()) + slack);
                if (toward_of(as) != Toward::down) CHECK(length - printed <= (as == Rounded::measured ? step : Length()) + slack);
                CHECK(printed - length < step + slack);
                CHECK(length - printed < step + slack);
            }
    }
}

TEST_CASE("a value that meets its limit never reads as if it did not")
{
    Dice dice(7);
    for (int i = 0; i < 20'000; ++i) {
        const Length limit = dice.length(1, 300), value = limit + Length::micrometres(dice.from(0, 3000));
        for (const Units units : {Units::mm, Units::in})
            for (const Rounded as : {Rounded::overlap, Rounded::clearance, Rounded::kept, Rounded::setback})
                CHECK(read_back(figure_of_with_unit(as, value, units)) >= read_back(figure_of_with_unit(as, limit, units)));
    }
}

TEST_CASE("what is below 0 has one figure, with its sign and without")
{
    for (const Rounded as : all_rounded)
        for (const Units units : {Units::mm, Units::in}) {
            const Length below = Length::micrometres(-3040);
            CHECK("-" + size_of_with_millimetres(as, below, Units::mm) == figure_of_with_millimetres(as, below, Units::mm));
            CHECK(figure_of(as, below, units) == "-" + size_of_with_millimetres(as, below, units).substr(0, figure_of(as, below, units).size() - 1));
        }
    CHECK(size_of_with_millimetres(Rounded::overlap, Length::micrometres(-3040), Units::mm) == "3.1 mm");
}

TEST_CASE("tenths are enough but where they do not tell two lengths apart")
{
    const auto um = [](std::int64_t count) { return Length::micrometres(count); };
    CHECK(decimals_that_tell(Rounded::overlap, um(40'010), um(40'050)) == 3);
    CHECK(decimals_that_tell(Rounded::overlap, um(39'990), um(40'000)) == 1);
    CHECK(decimals_that_tell(Rounded::overlap, um(40'000), um(40'000)) == 1);
}

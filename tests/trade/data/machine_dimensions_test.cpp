// What a job states of its machine, as it is printed beside the measuring form.
#include "data/machine_dimensions.hpp"

#include <algorithm>

#include "support/catch.hpp"
#include "support/machine_jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

std::vector<std::string> names_of(const std::vector<StatedDimension>& dimensions)
{
    std::vector<std::string> names;
    for (const StatedDimension& dimension : dimensions) names.push_back(dimension.name);
    return names;
}

const StatedDimension& named(const std::vector<StatedDimension>& dimensions, const std::string& name)
{
    const auto found = std::find_if(dimensions.begin(), dimensions.end(), [&](const StatedDimension& one) { return one.name == name; });
    REQUIRE(found != dimensions.end());
    return *found;
}

template <class Word>
std::vector<std::string> all_words() { return {Words<Word>::all.begin(), Words<Word>::all.end()}; }

}  // namespace

TEST_CASE("a machine's dimensions are those of the job file, in the order of the measuring form")
{
    CHECK(names_of(dimensions_of(turned_machine(30))) == all_words<TrailedDimension>());
    CHECK(names_of(dimensions_of(lifted_machine())) == all_words<MountedDimension>());
    CHECK(names_of(movements_of(turned_machine(30), Range::turning)) == all_words<TrailedMovement>());
    CHECK(names_of(movements_of(lifted_machine(), Range::turning)) == all_words<MountedMovement>());
    Trailed still = turned_machine(30);
    still.ranges.working.reset();
    CHECK(movements_of(still, Range::working).empty());
    CHECK(std::string(kind_word(still)) == "trailed");
    CHECK(std::string(kind_word(lifted_machine())) == "mounted");
}

TEST_CASE("each word of a machine stands beside its own figure")
{
    Mounted machine = lifted_machine();
    const std::array<Dimension Mounted::*, 10> lengths{&Mounted::pto_height, &Mounted::lower_pivot_behind, &Mounted::lower_pivot_height, &Mounted::lower_link, &Mounted::top_pivot_behind,
                                                       &Mounted::top_pivot_height, &Mounted::top_link, &Mounted::mast, &Mounted::input_behind, &Mounted::input_above};
    for (std::size_t i = 0; i < lengths.size(); ++i) (machine.*lengths[i]).value = Length::millimetres(static_cast<std::int64_t>(i) + 1);
    machine.input_tilt.value = Angle::degrees(11);
    const auto dimensions = dimensions_of(machine);
    for (std::size_t i = 0; i < lengths.size(); ++i) CHECK(std::get<Dimension>(dimensions[i].stated).value == Length::millimetres(static_cast<std::int64_t>(i) + 1));
    CHECK(std::get<AngleDimension>(dimensions.back().stated).value == Angle::degrees(11));
}

TEST_CASE("a signed dimension says which way it lies, and one at 0 does not")
{
    Mounted machine = lifted_machine();
    for (const auto& [millimetres, side] : {std::pair(-220, std::optional(Side::in_front)), {220, Side::behind}, {0, std::nullopt}}) {
        machine.lower_pivot_behind.value = Length::millimetres(millimetres);
        CHECK(named(dimensions_of(machine), "lower-pivot-behind").lies == side);
    }
    Trailed trailed = turned_machine(30);
    trailed.input_left.value = Length::millimetres(-40);
    trailed.input_tilt.value = Angle::degrees(-3);
    CHECK(named(dimensions_of(trailed), "input-left").lies == Side::right);
    CHECK(named(dimensions_of(trailed), "input-tilt").lies == Side::falls);
    CHECK(named(dimensions_of(trailed), "pto-height").lies == std::nullopt);
    CHECK(negative_side("top-pivot-behind") == Side::in_front);
    CHECK(negative_side("mast") == std::nullopt);
}

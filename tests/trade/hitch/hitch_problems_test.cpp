#include "hitch/hitch_problems.hpp"

#include "hitch/hitch_problem_words.hpp"
#include "shaftcut/trade/hitch/hitch.hpp"
#include "support/catch.hpp"
#include "support/machines.hpp"

using namespace shaftcut;
using support::angle;
using support::end;
using support::length;

namespace {

const HitchShaft plain_shaft{end(60, 0), end(80, 0)};

// A place that is told apart from every other.
Place line(int number) { return {"job.xml", number, 1}; }

Dimension at_line(double mm, int number) { return {Length::from_mm(mm), std::nullopt, line(number)}; }
AngleDimension angle_at_line(double degrees, int number) { return {Angle::from_degrees(degrees), std::nullopt, line(number)}; }

std::vector<std::string> faults_of(const Machine& machine, const HitchShaft& shaft = plain_shaft, Units units = Units::mm)
{
    const auto result = operating_lengths(machine, shaft, Length::millimetres(2));
    std::vector<std::string> words;
    if (const auto* problems = std::get_if<HitchProblems>(&result))
        for (const HitchProblem& problem : *problems) {
            const FaultWords said = say(problem.fault, Wording(units));
            words.push_back(to_string(Problem{problem.place, said.wrong, said.right}));
        }
    return words;
}

using Sentences = std::vector<std::string>;

}  // namespace

TEST_CASE("a pin in front of the PTO is refused")
{
    Trailed machine = support::level_machine(500, 600, support::turns(40, 0, 0));
    machine.pin_behind = at_line(-30, 3);
    CHECK(faults_of(machine) == Sentences{"job.xml:3:1: the pin is 30 mm in front of the PTO stub's groove; a pin 0 or more behind it"});
    machine.pin_behind = at_line(200, 3);
    CHECK(faults_of(machine).empty());
}

TEST_CASE("movements of a trailed machine have their bounds")
{
    Trailed machine = support::level_machine(500, 600, support::turns(40, 0, 0));
    machine.ranges.turning = TrailedRange{angle_at_line(180, 4), angle_at_line(-1, 5), angle_at_line(90, 6)};
    CHECK(faults_of(machine) ==
          Sentences{"job.xml:4:1: a turn of 180 degrees; plus or minus 0 to under 180 degrees about straight and level",
                "job.xml:5:1: a pitch of -1 degrees; plus or minus 0 to under 90 degrees about straight and level",
                "job.xml:6:1: a roll of 90 degrees; plus or minus 0 to under 90 degrees about straight and level"});
    machine.ranges = {};
    machine.place = line(2);
    CHECK(faults_of(machine) == Sentences{"job.xml:2:1: no range of movement is stated; state working, turning or standing"});
}

TEST_CASE("an input shaft's axis must not double back")
{
    Trailed machine = support::level_machine(500, 600, support::turns(40, 0, 0));
    machine.input_tilt = angle_at_line(-95, 3);
    CHECK(faults_of(machine) ==
          Sentences{"job.xml:3:1: an input-tilt of -95 degrees turns the input shaft's axis back on itself; between -90 and 90 degrees"});
    Mounted mounted = support::common_linkage(support::heights(300, 600));
    mounted.input_tilt = angle_at_line(90, 9);
    CHECK(faults_of(mounted).size() == 1);
}

TEST_CASE("a shaft that folds right back is refused, with the turn up to which it has an answer")
{
    // The crosses 100 and 500 from the pin: turned by nearly 180 degrees the wide-angle joint's bisector vanishes.
    Trailed machine = support::level_machine(160, 580, support::turns(0, 0, 0));
    machine.ranges.standing = TrailedRange{angle_at_line(179, 8), angle(0), angle(0)};
    const HitchShaft wide{end(60, 80), end(80, 0)};
    const Sentences faults = faults_of(machine, wide);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].find("job.xml:8:1: the shaft folds back on itself at turn 179 degrees, pitch 0 degrees, roll 0 degrees; "
                         "on the way there, up to turn ") == 0);
    // What is said to be possible is.
    const double possible = std::stod(faults[0].substr(faults[0].rfind("turn ") + 5));
    CHECK(possible > 150);
    machine.ranges.standing = support::turns(possible - 0.1, 0, 0);
    CHECK(faults_of(machine, wide).empty());
}

TEST_CASE("a shaft without room straight ahead is refused, with the input-behind that makes room")
{
    Trailed machine = support::level_machine(200, 100, support::turns(20, 0, 0));
    machine.input_behind = at_line(100, 5);
    const HitchShaft wide{end(60, 80), end(80, 80)};
    CHECK(faults_of(machine, wide) ==
          Sentences{"job.xml:5:1: an input-behind of 100 mm leaves no room for the shaft at turn 0 degrees, pitch 0 degrees, roll 0 degrees; "
                "more than 100 mm"});
    machine.input_behind = at_line(60, 5);
    CHECK(faults_of(machine, wide).at(0).find("an input-behind of 60 mm leaves no room") != std::string::npos);
    machine.input_behind = at_line(180, 5);
    CHECK(faults_of(machine, wide).empty());
}

TEST_CASE("a lowest height above the highest is refused")
{
    Mounted machine = support::common_linkage({at_line(600, 4), at_line(300, 5)});
    CHECK(faults_of(machine) == Sentences{"job.xml:4:1: a lowest of 600 mm is above the highest of 300 mm; "
                                      "a lowest that is the highest or below it"});
    CHECK(faults_of(machine, plain_shaft, Units::in).at(0).find("a lowest of 23-5/8 in") != std::string::npos);
}

TEST_CASE("a height that the links cannot reach is refused, with the heights that they reach")
{
    Mounted machine = support::common_linkage({at_line(-500, 4), at_line(1500, 5)});
    const Sentences faults = faults_of(machine);
    REQUIRE(faults.size() == 2);
    CHECK(faults[0].find("job.xml:4:1: the links cannot bring the lower hitch point to -500 mm; a height from ") == 0);
    CHECK(faults[1].find("job.xml:5:1: the links cannot bring the lower hitch point to 1500 mm; a height from ") == 0);
    const auto spans = reachable_heights(machine);
    REQUIRE(spans.size() == 1);
    machine.ranges.turning = support::heights(spans[0].lowest + 0.1, spans[0].highest - 0.1);
    CHECK(faults_of(machine).empty());
}

TEST_CASE("heights with a gap between them that the linkage cannot pass are refused")
{
    // Half way up, the lower hitch point comes nearer to the top link's pivot than top link less mast.
    Mounted machine = support::common_linkage({});
    machine.top_pivot_behind = length(450);
    machine.top_pivot_height = length(500);
    machine.mast = length(300);
    const auto spans = reachable_heights(machine);
    REQUIRE(spans.size() == 2);
    machine.ranges.turning = MountedRange{at_line(spans[0].highest - 10, 4), at_line(spans[1].lowest + 10, 5)};
    const Sentences faults = faults_of(machine);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].find("job.xml:5:1: the links cannot pass from ") == 0);
    CHECK(faults[0].find(" or from ") != std::string::npos);
    machine.ranges.turning->highest = at_line(spans[0].highest - 1, 5);
    CHECK(faults_of(machine, {end(60, 0), end(80, 0)}).empty());
}

TEST_CASE("links of no length and a linkage that closes nowhere are refused, with the top link that would close it")
{
    Mounted machine = support::common_linkage(support::heights(300, 600));
    machine.lower_link = at_line(0, 3);
    machine.mast = at_line(0, 4);
    CHECK(faults_of(machine) == Sentences{"job.xml:3:1: a lower-link of 0 mm; a length above 0",
                                      "job.xml:4:1: a mast of 0 mm; a length above 0"});

    machine = support::common_linkage(support::heights(300, 600));
    machine.top_link = at_line(20, 5);
    machine.mast = at_line(30, 6);
    const Sentences faults = faults_of(machine);
    REQUIRE(faults.size() == 1);
    CHECK(faults[0].find("job.xml:5:1: a top-link of 20 mm and a mast of 30 mm meet at no height; "
                         "with the lower hitch point at 300 mm, a top-link from ") == 0);
    machine.top_link = length(std::stod(faults[0].substr(faults[0].find("top-link from ") + 14)));
    machine.ranges.turning = support::heights(300, 300);
    CHECK(faults_of(machine).empty());

    machine.top_pivot_behind = at_line(2000, 7);
    CHECK(faults_of(machine).at(0).find("job.xml:7:1: ") == 0);
}

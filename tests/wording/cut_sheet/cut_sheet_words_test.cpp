// What the cut sheet says where one job alone shows few of its forms: every form once.
#include "cut_sheet/behind_words.hpp"
#include "cut_sheet/front_words.hpp"
#include "condition_words.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::cut_sheet;

namespace {

const Wording w(Units::mm), inches(Units::in);
constexpr Length mm(std::int64_t length) { return Length::millimetres(length); }

}  // namespace

TEST_CASE("the positions of a cut sheet are said as far as they are known")
{
    PositionsSaid said;
    CHECK(positions(said, true, w).empty());
    said.longest[Range::turning] = PositionAt{mm(850), ""};
    CHECK(positions(said, false, w) == "Longest turning 850 mm");
    said.longest[Range::standing] = PositionAt{mm(905), "raised"};
    CHECK(positions(said, true, w) == "Longest turning 850 mm, standing 905 mm (raised), INNER crosses");
    said.shortest = PositionAt{mm(742), "turned left"};
    CHECK(positions(said, false, w) == "Shortest 742 mm (turned left), longest turning 850 mm, standing 905 mm (raised)");
    said.longest = {};
    CHECK(positions(said, true, w) == "Shortest 742 mm (turned left), INNER crosses");
}

TEST_CASE("a half's drawn length says what it was and what is kept")
{
    const auto said = [](bool guard, bool measured, bool cut_known, bool comes_off, std::optional<Length> before, std::optional<Length> kept) {
        return drawn_length({guard, measured, cut_known, comes_off, before, kept}, w);
    };
    CHECK(said(true, false, true, true, std::nullopt, std::nullopt) == "guard not measured");
    CHECK(said(false, false, false, false, std::nullopt, std::nullopt) == "tube not known");
    CHECK(said(false, true, false, false, mm(690), std::nullopt) == "tube 690 mm as measured");
    CHECK(said(false, false, false, false, mm(690), std::nullopt) == "tube 690 mm, worked out");
    CHECK(said(true, true, true, false, mm(690), mm(690)) == "guard 690 mm, stays");
    CHECK(said(true, true, true, true, mm(690), mm(596)) == "guard 596 mm  (was 690)");
    CHECK(said(false, false, true, true, mm(690), mm(596)) == "tube 596 mm  (worked out: 690)");
    CHECK(millimetres_of(Length::micrometres(93700), std::nullopt, inches) == "93.7 mm: hold side by side");
    CHECK(millimetres_of(Length::micrometres(93700), mm(574), inches) == "93.7 mm, keep 574 mm");
}

TEST_CASE("how a length was read says where, in which position and at which angles")
{
    Measured measured{{mm(742), mm(1)}, Rounded::shortest, Run::outer_cross, "", {}};
    CHECK(reading(measured, w) == "742 mm ± 1 mm at the outer cross");
    measured.at = "turned left";
    CHECK(reading(measured, w) == "742 mm ± 1 mm at the outer cross, turned left");
    measured.run = Run::grooves;
    measured.angles[End::tractor] = Angle::degrees(12);
    CHECK(reading(measured, w) == "742 mm ± 1 mm between the locking grooves, turned left, read at joint angles of 12° and 0°");
    measured.at.clear();
    measured.run = Run::inner_cross;
    CHECK(reading(measured, w) == "742 mm ± 1 mm at the inner cross, read at joint angles of 12° and 0°");
    measured.run = Run::crosses;
    CHECK(reading(measured, w).starts_with("742 mm ± 1 mm between the crosses, read"));
    CHECK(longest_name("", Range::turning, w) == "longest, turning");
    CHECK(longest_name("Oak 80", Range::standing, w) == "Oak 80: longest, standing");
}

TEST_CASE("how a shaft came in is said word by word")
{
    Condition found{};
    CHECK(condition_words(found, w).empty());
    found.guard = Completeness::missing;
    found.tubes = TubeState::twisted;
    found.weld = Weld::none;
    found.phase = Phase::in_plane;
    found.slides = Slides::no;
    CHECK(condition_words(found, w) == "guard missing, tubes twisted, no weld, forks in plane, does not slide by hand, though clean");
    found = {};
    found.chains = Completeness::damaged;
    found.crosses = CrossWear::worn;
    found.locks = LockState::stiff;
    found.weld = Weld::cracked;
    found.device = DeviceState::stuck;
    found.slides = Slides::yes;
    CHECK(condition_words(found, w) == "chains damaged, crosses worn, locks stiff, cracked, device stuck, slides by hand");
}

TEST_CASE("what a job states beside its lengths is said as far as it goes")
{
    CHECK(stop_depth(mm(500), mm(190), JointKind::wide_angle, w) == "500 mm from its tube's free end inwards; its shoulder is then 190 mm from its inner cross");
    CHECK(stop_depth(mm(500), std::nullopt, JointKind::standard, w) == "500 mm from its tube's free end inwards");
    CHECK(loosened("", "", w).empty());
    CHECK(loosened("", "Ann", w) == "by Ann");
    CHECK(loosened("old shaft", "", w) == "old shaft");
    CHECK(loosened("old shaft", "Ann", w) == "old shaft; by Ann");
}

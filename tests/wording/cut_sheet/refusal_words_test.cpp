// Why a shaft is refused, as it is said across a counter: every kind of finding that refuses, and every way out.
#include "cut_sheet/refusal_words.hpp"
#include "cut_sheet/refused_parts_words.hpp"
#include "cut_sheet/warning_words.hpp"
#include "support/catch.hpp"

using namespace shaftcut;
using namespace shaftcut::cut_sheet;

namespace {

const Wording w(Units::mm);
constexpr Length mm(std::int64_t length) { return Length::millimetres(length); }

StatedFigure stated(FigureOf of, std::int64_t length) { return {of, mm(length), {"folder/job.xml", 7, 12}, Tube::inner, Range::working, End::tractor}; }

}  // namespace

TEST_CASE("what the tubes hold and the guards cover is said with the position in which it is too little")
{
    CHECK(refused(OverlapLeft{Range::standing, mm(79), mm(100), {}, true}, "lifted right up for the road", w) ==
          "When it is longest standing, lifted right up for the road, the two tubes would hold in each other by only 79 mm; 100 mm is the least.");
    CHECK(refused(OverlapLeft{Range::turning, mm(79), mm(150), {}, true}, "", w) == "When it is longest turning the two tubes would hold in each other by only 79 mm; 150 mm is the least.");
    CHECK(refused(OverlapLeft{Range::working, mm(-14), mm(100), {}, true}, "", w) == "When it is longest at work the two tubes would be 14 mm out of each other.");
    CHECK(refused(OverlapLeft{Range::working, mm(-14), mm(100), {}, true}, "level", w) == "When it is longest at work, level, the two tubes would be 14 mm out of each other.");
    CHECK(refused(OverlapLeft{Range::working, mm(300), mm(100), {}, false}, "", w).empty());
    CHECK(refused(ClearanceLeft{mm(12), mm(40)}, w) == "When it is shortest only 12 mm would be left to close; 40 mm is the least.");
    CHECK(refused(ClearanceLeft{mm(40), mm(40)}, w).empty());
    CHECK(refused(ClearanceAtWorst{mm(-2), mm(25)}, w) == "The shortest and the closed length are not known well enough: it could be pushed hard home.");
    CHECK(refused(ClearanceAtWorst{mm(2), mm(25)}, w).empty());
    CHECK(refused(TubeTooShort{mm(-30)}, w) == "Cut to fit, a tube would be 30 mm shorter than its series allows.");
    CHECK(refused(GuardClearance{mm(-5), mm(40)}, w) == "When it is shortest the guards would stop it: they are 5 mm too long.");
    CHECK(refused(GuardOverlap{mm(-44), mm(50)}, w) == "When it is longest the guards would leave 44 mm of it bare.");
    CHECK(refused(GuardOverlap{mm(4), mm(50)}, w).empty());
    CHECK(refused(GuardsApartAtWorst{mm(-3)}, w) == "When it is longest the guards could leave 3 mm of it bare, by what the lengths may be wrong.");
    CHECK(refused(GuardCutAway{Tube::outer}, w) == "Cut to fit, too little of the outer half's guard would be left.");
}

TEST_CASE("what may not be done with a shaft is said by the thing")
{
    const JointAngles angles{End::implement, JointKind::standard,
                             {{Range::working, Angle::degrees(10), Angle::degrees(25), {}}, {Range::turning, Angle::degrees(40), Angle::degrees(35), {}}, {Range::standing, Angle::degrees(95), Angle::degrees(90), MountedPosture{mm(900)}}}};
    CHECK(refused(angles, w) == "The standard joint at the implement would bend by 40° when turning; 35° is the most. "
                                "The standard joint at the implement would bend by 95° when stopped (with the lower hitch point at 900 mm); 90° is the most.");
    CHECK(refused(ShorteningForbidden{Tube::inner}, w) == "The inner tube of this series must not be shortened.");
    CHECK(refused(HoleCutOff{Tube::inner, mm(720)}, w) == "Cut to fit, the inner tube would lose its lubrication hole, 720 mm from the cross.");
    CHECK(refused(LockStandsOut{End::tractor, Lock::exposed_push_pin, LockRule::under_it}, w) ==
          "The push pin at the tractor end stands out and can catch clothing: not allowed on shafts built from 2021 (EN 12965:2019).");
    CHECK(refused(LockStandsOut{End::tractor, Lock::exposed_push_pin, LockRule::before_it}, w).empty());
    CHECK(refused(CouplingDiffers{End::tractor, "1-3/8-6", "1-3/8-21"}, w) == "The tractor end does not go on: its yoke is 1-3/8-6, the stub 1-3/8-21.");
    CHECK(refused(DeviceAtTractor{Device::slip_clutch}, w) == "The slip clutch sits at the tractor; it belongs at the implement.");
    CHECK(refused(LoadTaken{30000, 26000, "Hazel 3", 540, LoadLevel::above}, w) == "The machine takes 30 kW; at 540 min⁻¹ series Hazel 3 carries 26 kW.");
    CHECK(refused(LoadTaken{25000, 26000, "Hazel 3", 540, LoadLevel::near}, w).empty());
    CHECK(refused(PlainFinding::welded, w) == "The shaft has been welded: put in new parts, do not cut it.");
    CHECK(refused(PlainFinding::overlap_not_known, w) == "How far the two tubes would hold in each other is not known: the halves were not measured.");
    CHECK(refused(PlainFinding::other_half_not_rated, w).empty());
}

TEST_CASE("a contradiction names the things and no place in a file")
{
    const StatedFigure closed = stated(FigureOf::closed, 830), half = stated(FigureOf::half, 665), stop = stated(FigureOf::shoulder, 30);
    const std::vector<std::string> said{
        refused(Contradicting{stated(FigureOf::longest, 810), Relation::less, stated(FigureOf::shortest, 850)}, w),
        refused(Contradicting{stated(FigureOf::guard_half, 810), Relation::more, closed}, w),
        refused(AnglesContradict{End::tractor, Angle::degrees(30), Angle::degrees(20), {"job.xml", 3, 4}}, w),
        refused(TubesDoNotMeet{closed, half, half}, w),
        refused(OutOfBounds{half, mm(100), mm(3000), mm(16891), {}}, w),
        refused(OutOfBounds{half, mm(100), mm(3000), {}, mm(26)}, w),
        refused(OutOfBounds{half, mm(100), mm(3000), {}, {}}, w),
        refused(StopImpossible{stop, mm(40)}, w),
        refused(StopUnlikeSeries{stop, mm(128)}, w),
        refused(ReadAtOtherCross{closed, Reference::outer_cross}, w),
        refused(ListedAtOtherCross{closed, Reference::inner_cross}, w),
        refused(HalvesExchanged{half, half, true}, w),
        refused(LengthsUnreadable{YokeNotKnown{End::tractor, true}}, w),
        refused(LengthsUnreadable{YokeNotKnown{End::tractor, false}}, w)};
    CHECK(said[0] == "Not both can be right: the longest at work of 810 mm is less than the shortest of 850 mm.");
    CHECK(said[3] == "The tubes would not meet: the closed length of 830 mm is not less than the inner half of 665 mm and the inner half of 665 mm together.");
    CHECK(said[9] == "By the halves the closed length of 830 mm is from the inner cross, not from the outer one as stated.");
    CHECK(said[10] == "By its series the closed length of 830 mm is from the outer cross, not from the inner one as stated.");
    for (const std::string& sentence : said) {
        INFO(sentence);
        CHECK(sentence.size() > 40);
        CHECK(sentence.size() < 180);
        for (const char* place : {"line ", "column", "job.xml"}) CHECK(sentence.find(place) == std::string::npos);
    }
    CHECK(refused(HalvesExchanged{half, half, false}, w).empty());
}

TEST_CASE("a warning in full has no place in a file")
{
    Check check{};
    check.id = CheckId::consistency;
    check.findings = {StopRestsAlone{stated(FigureOf::shoulder, 130)}, ClosedNotListed{stated(FigureOf::closed, 830), true}, HalvesExchanged{stated(FigureOf::half, 665), stated(FigureOf::half, 725), false}};
    CHECK(says_without_places(check, w).find("job.xml") == std::string::npos);
    CHECK(says_without_places(check, w).find("130 mm") != std::string::npos);
}

TEST_CASE("a warning of lengths that disagree says which")
{
    Check check{};
    check.id = CheckId::consistency;
    check.findings = {PlainFinding::lengths_agree, ReadInLine{Range::turning, {End::tractor}, mm(12), {}}, ClosedDisagrees{mm(885), mm(860), false, true, ClosedAgreement::longer, {}},
                      LimitLoosened{Limit::closing_clearance, {35000, 1}, {40000, 1}}, StopRestsAlone{stated(FigureOf::shoulder, 130)}, ClosedNotListed{stated(FigureOf::closed, 830), true},
                      HalvesExchanged{stated(FigureOf::half, 665), stated(FigureOf::half, 725), false}};
    CHECK(in_one_line(check, false, w) ==
          std::vector<std::string>{"WARNING: the longest turning was read with the joints in line: bent it may be 12 mm longer.",
                                   "WARNING: it closes at 885 mm, by its halves it should at 860 mm: its guards stop it.",
                                   "WARNING: a limit was made looser than the workshop's: closing-clearance 35 mm instead of 40 mm.",
                                   "WARNING: the inner half's stop, 130 mm from its cross, rests on one figure alone.",
                                   "WARNING: nothing confirms the closed length of 830 mm: was it ever cut?",
                                   "WARNING: the halves of 665 mm and 725 mm are perhaps exchanged: measure both again."});
}

TEST_CASE("a way out is said in few words")
{
    const std::vector<WayOut> ways{Remedy::mend_every_failure, Remedy::measure_halves, Remedy::measure_between_crosses, Remedy::measure_contradictions, Remedy::measure_more_exactly,
                                   Remedy::raise_shortest_in_vain, Remedy::fit_unexposed_locks, Remedy::device_at_implement, Remedy::put_new_parts, LongestServed{Range::turning, mm(816), true, true},
                                   LongestServed{Range::turning, {}, true, false}, GuardsReach{mm(928), false}, GuardsReach{{}, false}, ShortestServed{mm(697), mm(640), true, true, true},
                                   SeriesLengths{"Alder 2", {}, {}, {}, false}, SeriesLengths{"Alder 2", Reference::outer_cross, {mm(705)}, {}, true}, SeriesLengths{"Alder 2", {}, {}, {mm(830)}, false},
                                   SeriesLengths{"Alder 2", Reference::inner_cross, {mm(705)}, {mm(830), mm(960)}, true}, NewShaft{mm(795), {}, true}, LimitMovement{LimitMovement::Of::turn, End::tractor, Angle::degrees(35), Angle::degrees(90), true},
                                   SeriesThatCarries{30000, 540, {"Elm 4", "Larch 6"}}, SeriesThatCarries{30000, 540, {}}, TurnServed{"", Range::turning, Angle::degrees(44), Angle::degrees(50)},
                                   PitchServed{"Demo 90", Range::standing, Angle::degrees(4), Angle::degrees(6)}, LiftRangeServed{"", Range::standing, mm(300), mm(1080), mm(1010), {}},
                                   LiftRangeServed{"", Range::standing, mm(300), mm(1080), {}, mm(400)}, LiftRangeServed{"", Range::standing, mm(300), mm(1080), mm(1010), mm(400)}, PinMoveServed{"", mm(-50)}};
    for (const WayOut& way : ways) {
        const std::string sentence = way_in_short(way, w);
        INFO(sentence);
        CHECK(sentence.size() > 20);
        CHECK(sentence.size() < 190);
    }
    CHECK(way_in_short(ways[9], w) == "Never let it be longer than 816 mm between the INNER crosses with the PTO turning.");
    CHECK(way_in_short(ways[13], w) == "Keep it from getting shorter than 697 mm between the INNER crosses on every tractor (now 640 mm); then it is cut.");
    CHECK(way_in_short(ways[17], w) == "A new shaft of series Alder 2, closed 705 mm from the inner cross: fits; 830 mm and 960 mm: to be cut, if the tubes reach past their lubrication holes.");
    CHECK(way_in_short(ways[23], w) == "Demo 90: Pitch it by 4° at most with the PTO stopped (now 6°).");
    CHECK(way_in_short(ways[27], w) == "Move the pin 50 mm forwards along the drawbar, the machine with it.");
}

TEST_CASE("a warning of a lock or of work after the cut names the thing")
{
    Check check{};
    check.id = CheckId::locking;
    check.findings = {LockNotStated{End::tractor}, LockUnknown{End::implement}, LockStandsOut{End::implement, Lock::exposed_collar, LockRule::before_it}};
    CHECK(in_one_line(check, false, w) == std::vector<std::string>{"WARNING: the lock at the tractor end is not stated: look whether a part of it stands out.",
                                                                   "WARNING: the lock at the implement end is not known: look whether a part of it stands out.",
                                                                   "WARNING: the sliding collar at the implement end stands out and can catch clothing: cover it."});
    check.id = CheckId::shortening_allowed;
    check.findings = {WorkAfterCut{Tube::inner, Feature::coated, {}}, WorkAfterCut{Tube::outer, Feature::end_stop, {}}, WorkAfterCut{Tube::outer, Feature::one_chain_guard, mm(70)}};
    CHECK(in_one_line(check, false, w) == std::vector<std::string>{"WARNING: the inner tube is coated: its bare edge is treated after the cut.",
                                                                   "WARNING: the outer tube has an end stop: off before the cut, on again after it.",
                                                                   "WARNING: the outer half's guard has one chain and loses much: it needs a second one."});
}

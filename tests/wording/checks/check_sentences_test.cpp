// How each finding of the checks is said: the sentence whole, of a shaft that exists and of one made to order, in either unit.
#include "checks/check_sentences.hpp"

#include <set>

#include "checks/finding_sentences.hpp"
#include "support/catch.hpp"
#include "support/jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

const Place at{"folder/job.xml", 7, 12};
const StatedFigure closed{FigureOf::closed_between_inner_crosses, mm(796), at}, as_read{FigureOf::closed, mm(860), at};
const StatedFigure inner{FigureOf::half, mm(690), at, Tube::inner}, outer{FigureOf::half, mm(668.125), {}, Tube::outer};
const StatedFigure stop{FigureOf::shoulder, mm(62.1), at, Tube::inner};

StatedFigure figure_of(FigureOf of, double millimetres, Tube tube)
{
    StatedFigure figure;
    figure.of = of;
    figure.length = mm(millimetres);
    figure.tube = tube;
    return figure;
}

Influence influence(const char* dimension, double millimetres)
{
    Influence found;
    found.dimension = dimension;
    found.effect = mm(millimetres);
    return found;
}

const Influence mast = influence("mast", 1.9), top_link = influence("top-link", 1.3), nothing = influence("mast", 0);
const ExtremeLength reached{mm(729.92), MountedPosture{mm(421)}, mm(7.01), {mast, top_link}};
const DisputedLength past{std::nullopt, {mm(742), mm(2)}, reached}, beyond{Range::turning, {mm(742), mm(2)}, reached};

template <class Hold>
void of_contradictions(const Hold& hold)
{
    hold(PlainFinding::lengths_agree, "The measured lengths agree with each other.");
    hold(PlainFinding::nothing_cut, "Nothing is cut.");
    hold(NotChecked{NoLongest{Range::standing}}, "Not checked: no longest standing length is given.");
    hold(Contradicting{inner, Relation::not_less, closed},
         "Contradiction: inner half 690 mm (line 7, column 12 of job.xml) is not less than closed length between the inner crosses 796 mm (line 7, column 12 of job.xml).");
    hold(AnglesContradict{End::implement, Angle::degrees(12), Angle::millidegrees(10'125), at},
         "Contradiction: the implement end's working angle 12° (line 7, column 12 of job.xml) is more than its turning angle 10.125° (line 7, column 12 of job.xml).");
    hold(TubesDoNotMeet{closed, inner, outer},
         "Contradiction: closed length between the inner crosses 796 mm (line 7, column 12 of job.xml) is not less than inner half 690 mm (line 7, column 12 of job.xml) and outer half 668.125 mm together: "
         "the tubes would not meet.");
    hold(OutOfBounds{figure_of(FigureOf::guard_half, 27, Tube::outer), mm(50), mm(2500), mm(685.8), {}},
         "No shaft has such a length: outer guard half 27 mm is not within 50 mm to 2500 mm: is its unit right? If it was measured in inches (in) it is 685.8 mm.");
    hold(OutOfBounds{figure_of(FigureOf::shortest, 18'846.8, Tube::inner), mm(200), mm(3500), {}, mm(742)},
         "No shaft has such a length: shortest 18846.8 mm is not within 200 mm to 3500 mm: is its unit right? If it was measured in millimetres (mm) it is 742 mm.");
    hold(OutOfBounds{figure_of(FigureOf::shoulder_by_closed, 9, Tube::inner), mm(25), mm(500), {}, {}},
         "No shaft has such a length: inner half's shoulder, closed length less outer half, 9 mm is not within 25 mm to 500 mm.");
    hold(LengthsUnreadable{YokeNotKnown{End::tractor, false}},
         "Refused: lengths between grooves cannot be used: the distance from cross to locking groove of the tractor end's yoke is not known; measure between crosses.");
    hold(LengthsUnreadable{YokeNotKnown{End::implement, true}},
         "Refused: the machine's geometry cannot be used: the distance from cross to locking groove of the implement end's yoke is not known.");
    hold(LengthsUnreadable{GeometryImpossible{HitchProblem{{}, NoRangeStated{}}}}, "Refused: the machine's geometry cannot be used: no range of movement is stated.");
    hold(ReadInLine{Range::turning, {End::implement}, mm(3.01), {}},
         "The longest turning length was read with the joints in line, for no turning angle is given for the implement end; at the limit angle it would be 3.1 mm longer.");
    hold(ReadInLine{Range::working, {End::tractor, End::implement}, mm(3), mm(120.19)},
         "The longest working length was read with the joints in line, for no working angle is given for the tractor and implement ends; at the limit angle it would be 3 mm longer and leave an overlap of "
         "120.1 mm.");
    hold(MachineDisagrees{"Red tractor", past},
         "Red tractor: The machine's geometry goes past the measured shortest, 742 mm between the inner crosses, by 12.1 mm: it comes to 729.9 mm (± 7.1 mm), with the lower hitch point at 421 mm. Measure in "
         "that position; the measurement is used.");
    hold(MachineDisagrees{"", beyond},
         "The measured longest turning, 742 mm between the inner crosses, is 12.1 mm more than the machine's geometry can reach: 730 mm (± 7.1 mm), with the lower hitch point at 421 mm. The measurement is "
         "used.");
    hold(LimitLoosened{Limit::closing_clearance, {30'000, 1}, {40'000, 1}}, "The job's limit closing-clearance 30 mm is looser than the workshop's 40 mm.");
    hold(LimitLoosened{Limit::overlap_turning, {1, 4}, {1, 3}}, "The job's limit overlap-turning 1/4 is looser than the workshop's 1/3.");
}

template <class Hold>
void of_stops(const Hold& hold)
{
    hold(StopImpossible{stop, mm(62.5)},
         "Contradiction: inner half's shoulder 62.1 mm (line 7, column 12 of job.xml) is less than 62.5 mm, the least that it can be: no tube stops that near to the cross. Measure it again.");
    hold(StopUnlikeSeries{figure_of(FigureOf::shoulder_by_stop_depth, 62.1, Tube::outer), mm(128)},
         "Contradiction: outer half's shoulder (half − stop-depth) 62.1 mm is 65.9 mm less than its series' 128 mm, and the closed length does not bear it out. Measure it again; if the half truly is of "
         "another kind, leave the series out and state both halves' shoulders.");
    hold(StopRestsAlone{stop},
         "The inner half's shoulder 62.1 mm (line 7, column 12 of job.xml) rests on this one figure: no series states it and the closed length does not bear it out. Confirm it before sawing.");
    hold(ClosedDisagrees{mm(796), mm(790), true, true, ClosedAgreement::longer, {}},
         "The shaft closes at 796 mm between its inner crosses, but its halves should give 790 mm: the guards stop it before its tubes do. Slide the guards back and measure the closed length of the tubes "
         "alone: less may come off. Each tube is cut as if it were the one that stops.");
    hold(ClosedDisagrees{mm(796), mm(790), false, false, ClosedAgreement::longer, Tube::outer},
         "The shaft closes at 796 mm, but its halves should give 790 mm: the shaft is altered, a figure is wrong, or something stops it early. Clean it, look for what stops it, measure again. Each tube is "
         "cut as if it were the one that stops. Measure the outer half too.");
    hold(ClosedDisagrees{mm(780), mm(790), false, false, ClosedAgreement::shorter, {}},
         "The shaft closes at 780 mm, but its halves should give 790 mm: it closes further than they allow. The shaft is altered or a figure is wrong: measure again. Each tube is cut as if it were the one "
         "that stops.");
    hold(ReadAtOtherCross{as_read, Reference::inner_cross},
         "Contradiction: closed length 860 mm (line 7, column 12 of job.xml), taken from the inner cross, disagrees with the halves by the spacing of the wide-angle joint: it seems to be measured from the "
         "outer cross. State the cross it was measured from; if the shaft truly closes so, state each half's own shoulder as measured.");
    hold(ListedAtOtherCross{as_read, Reference::outer_cross},
         "Contradiction: closed length 860 mm (line 7, column 12 of job.xml), taken from the outer cross, is none of its series' closed lengths, but read from the inner cross it is one. State the cross it "
         "was measured from, or measure both halves.");
    hold(ClosedNotListed{as_read, true},
         "Nothing confirms the closed length 860 mm (line 7, column 12 of job.xml): it is none of its series' closed lengths. Is the shaft uncut? Measure both halves.");
    hold(ClosedNotListed{as_read, false},
         "Nothing confirms the closed length 860 mm (line 7, column 12 of job.xml): its series lists no closed lengths. Is the shaft uncut? Measure both halves.");
    hold(HalvesExchanged{inner, outer, true},
         "Contradiction: inner half 690 mm (line 7, column 12 of job.xml) and outer half 668.125 mm seem to be exchanged: the other way round they give the closed length, as stated they do not. Measure both "
         "again.");
    hold(HalvesExchanged{inner, outer, false},
         "The halves are perhaps exchanged: inner half 690 mm (line 7, column 12 of job.xml) and outer half 668.125 mm give the closed length the other way round. The cut is safe in either reading; measure "
         "both again.");
}

template <class Hold>
void of_lengths(const Hold& hold)
{
    hold(ClearanceLeft{mm(44.09), mm(40)}, "Clearance left at the shortest length is 44 mm; 40 mm is asked.");
    hold(ClearanceLeft{mm(39.999), mm(40)}, "Clearance left at the shortest length is 39.9 mm; 40 mm is asked.");
    hold(ClearanceAtWorst{mm(20), mm(25)}, "Tolerances could leave 20 mm (floor 25 mm).");
    LeftAsCut one, both;
    one.kept[Tube::outer] = both.kept[Tube::outer] = mm(574);
    both.kept[Tube::inner] = mm(596);
    hold(one, "An earlier sheet kept 574 mm of the outer half: it is not cut again. For another machine leave cut-to out.");
    hold(both, "An earlier sheet kept 596 mm of the inner half and 574 mm of the outer half: neither is cut again. For another machine leave cut-to out.");
    hold(OverlapLeft{Range::working, mm(300), mm(250), Fraction{1, 2}, false}, "At the longest working length the overlap is 300 mm; at least 250 mm of overlap is asked (1/2 of the new closed overlap).");
    hold(OverlapLeft{Range::turning, mm(149), mm(150), {}, true},
         "Cut to fit the shortest position, at the longest turning length the overlap would be 149 mm; at least 150 mm of overlap is asked (the least with the PTO turning).");
    hold(OverlapLeft{Range::standing, mm(-3.04), mm(100), {}, true},
         "Cut to fit the shortest position, at the longest standing length the tubes would be 3.1 mm apart; at least 100 mm of overlap is asked (the least with the PTO stopped).");
    hold(OverlapLeft{Range::standing, mm(-0.005), mm(0), {}, false},
         "At the longest standing length the tubes would be 0.1 mm apart; at least 0 mm of overlap is asked (the least with the PTO stopped).");
    hold(OverlapAtWorst{mm(99), mm(100)}, "Tolerances could leave 99 mm.");
    hold(NeverLongEnough{mm(500), mm(140), mm(150)},
         "Even at 500 mm, the shortest that leaves its closing clearance, the overlap would be 140 mm; at least 150 mm is asked with the PTO turning: there is no length at which this shaft may turn.");
    hold(TubeTooShort{mm(-2.01)}, "A tube would be 2.1 mm shorter than the series allows.");
    hold(TubesLeft{mm(20.19)}, "The tubes stay at least 20.1 mm longer than the series' least.");
}

template <class Hold>
void of_guards(const Hold& hold)
{
    hold(GuardClearance{mm(44), mm(40)}, "The guards have 44 mm left to close at the shortest length; 40 mm is asked.");
    hold(GuardOverlap{mm(60), mm(50)}, "The guard tubes overlap by 60 mm at the greatest length; an overlap of 50 mm is asked.");
    hold(GuardOverlap{mm(-4), mm(50)}, "The guard tubes are 4 mm apart at the greatest length; an overlap of 50 mm is asked.");
    hold(GuardsApartAtWorst{mm(-4)}, "Tolerances could leave them 4 mm apart: the shaft would lie bare.");
    hold(GuardCutAway{Tube::outer}, "The outer guard would be cut away: nothing, or too little to cover the shaft, would be left of it.");
    hold(GuardSetback{mm(30.01), mm(25)}, "A guard tube ends up to 30.1 mm short of its drive tube; at most 25 mm is asked.");
    hold(GuardBeyondTube{mm(-3)}, "A guard tube ends 3 mm beyond its drive tube.");
}

template <class Hold>
void of_angles(const Hold& hold)
{
    hold(JointAngles{End::tractor,
         JointKind::standard,
         {{Range::working, Angle::degrees(12), Angle::degrees(25), {}},
         {Range::turning, Angle::millidegrees(35'004), Angle::degrees(35), TrailedPosture{Angle::degrees(60), Angle::degrees(-10), Angle::degrees(5)}}}},
         "The standard joint at the tractor end: working 12°, limit 25°; turning 35.004° (turned 60° to the right, rear 10° up, right side 5° up), limit 35°.");
    hold(SpeedRipple{9'840, 10'000}, "The output's speed ripples by 9.8 % in the working position; limit 10 %.");
    hold(RippleGreatestAt{TrailedPosture{Angle::degrees(-20), Angle::degrees(3), Angle::degrees(-2)}}, "It is greatest turned 20° to the left, rear 3° down, right side 2° down.");
    hold(RippleGreatestAt{TrailedPosture{}}, "It is greatest straight ahead and level.");
    hold(RippleOutOfPhase{Angle::degrees(90), 20'000}, "Put together one step of 90° out of phase it would be up to 20 %.");
    hold(RippleOutOfPhase{Angle::degrees(120), {}}, "Put together one step of 120° out of phase it would not turn.");
}

template <class Hold>
void of_fittings(const Hold& hold)
{
    hold(ShorteningForbidden{Tube::inner}, "The series forbids shortening the inner tube.");
    hold(HoleCutOff{Tube::inner, mm(400)}, "The inner tube would end before its lubrication hole, whose far edge is 400 mm from the cross.");
    hold(WorkAfterCut{Tube::outer, Feature::coated, {}}, "The outer tube is coated: deburr without tearing the coating and treat the bare edge.");
    hold(WorkAfterCut{Tube::outer, Feature::end_stop, {}}, "The outer tube has an end stop: take it off before the cut and fit it again at the new end.");
    hold(WorkAfterCut{Tube::inner, Feature::one_chain_guard, mm(70)}, "The inner guard is held by one chain and loses more than 70 mm: fit a second chain at the tractor end.");
    hold(LockNotStated{End::implement}, "The lock at the implement end is not stated.");
    hold(LockUnknown{End::tractor}, "The lock at the tractor end is unknown: look whether any part of it stands out.");
    hold(LockStandsOut{End::tractor, Lock::exposed_collar, LockRule::secondary},
         "The rule on locks is for primary shafts, but the exposed sliding collar at the tractor end can catch clothing: see that it is shielded.");
    hold(LockStandsOut{End::tractor, Lock::exposed_push_pin, LockRule::before_it}, "An exposed push pin locks the tractor end of a primary shaft built before 2021: it can catch clothing.");
    hold(LockStandsOut{End::implement, Lock::exposed_collar, LockRule::under_it},
         "An exposed sliding collar locks the implement end of a primary shaft: no part of a lock may stand out (EN 12965:2019, built from 2021).");
    hold(LockStandsOut{End::tractor, Lock::exposed_push_pin, LockRule::year_not_known},
         "An exposed push pin locks the tractor end of a primary shaft whose year of building is not known: it can catch clothing, and if the shaft was built in 2021 or later no part of a lock may stand out "
         "(EN 12965:2019).");
    hold(CouplingNotStated{End::tractor}, "Not stated for the tractor end: its connection or what it goes onto.");
    hold(CouplingDiffers{End::tractor, "1-3/8-6", "1-3/8-21"}, "The tractor end's yoke is 1-3/8-6 but goes onto 1-3/8-21.");
    hold(SpeedNotRated{End::implement, "1-3/8-6", {540, 750, 1000}, 1300}, "Connection 1-3/8-6 at the implement end is rated for 540, 750 or 1000 min⁻¹, the shaft is to run at 1300 min⁻¹.");
    hold(DeviceAtTractor{Device::slip_clutch}, "A slip clutch sits on the tractor end of a primary shaft; it belongs at the implement end.");
    hold(DeviceAtTractor{Device::overrunning_clutch}, "An overrunning clutch sits on the tractor end of a primary shaft; it belongs at the implement end.");
}

template <class Hold>
void of_use(const Hold& hold)
{
    hold(LoadTaken{30'500, 40'000, "Alder 2", 540, LoadLevel::within}, "The 30.5 kW taken at the PTO is within the 40 kW that series Alder 2 carries at 540 min⁻¹.");
    hold(LoadTaken{35'000, 40'000, "Alder 2", 540, LoadLevel::near}, "The 35 kW taken at the PTO is more than 80 % of the 40 kW that series Alder 2 carries at 540 min⁻¹.");
    hold(LoadTaken{45'000, 40'000, "Alder 2", 540, LoadLevel::above}, "The 45 kW taken at the PTO is more than the 40 kW that series Alder 2 carries at 540 min⁻¹.");
    hold(HalfWithoutGuard{Tube::inner, GuardUse::none}, "The inner half has no guard: the shaft must not run without one.");
    hold(HalfWithoutGuard{Tube::outer, GuardUse::damaged}, "The outer half's guard is damaged and not used again: fit a new one.");
    hold(OtherTractor{"Red {x}"}, "Another tractor drives the machine and was not measured: Red {x}. Measure it before this shaft runs behind it.");
}

// The sentences that are others where the shaft is made to order.
template <class Hold>
void of_an_order(const Hold& hold)
{
    hold(PlainFinding::lengths_agree, "The lengths agree with each other.");
    hold(PlainFinding::nothing_cut, "Nothing is shortened: its tubes are sawn to their lengths.");
    hold(LimitLoosened{Limit::closing_clearance, {30'000, 1}, {40'000, 1}}, "The order's limit closing-clearance 30 mm is looser than the workshop's 40 mm.");
    hold(OverlapLeft{Range::turning, mm(149), mm(150), {}, true},
         "Built to fit the shortest position, at the longest turning length the overlap would be 149 mm; at least 150 mm of overlap is asked (the least with the PTO turning).");
    hold(OverlapLeft{Range::standing, mm(-3.04), mm(100), {}, true},
         "Built to fit the shortest position, at the longest standing length the tubes would be 3.1 mm apart; at least 100 mm of overlap is asked (the least with the PTO stopped).");
    hold(NotChecked{PlainReason::device_not_stated}, "Not checked: the order does not state whether the tractor end carries a device.");
}

const std::vector<Wording> all_wordings{Wording(Units::mm), Wording(Units::in), Wording(Units::mm, About::new_shaft), Wording(Units::in, About::new_shaft)};

// Of an enumeration that ends with `last`: each is said, and none as another.
template <class Enumerator, class Say>
void hold_all_unlike(Enumerator last, const Say& say_one)
{
    for (const Wording& w : all_wordings) {
        std::set<std::string> sentences;
        for (int i = 0; i <= static_cast<int>(last); ++i) sentences.insert(say_one(static_cast<Enumerator>(i), w));
        CHECK(sentences.size() == static_cast<std::size_t>(last) + 1);
        CHECK(sentences.count("") == 0);
    }
}

}  // namespace

TEST_CASE("each finding of a check has its sentence, of a shaft that exists and of one made to order")
{
    std::set<std::size_t> kinds;
    const auto of_a_job = [&](const CheckFinding& finding, const char* sentence) {
        CHECK(say(finding, Wording(Units::mm)) == sentence);
        for (const Wording& w : all_wordings) CHECK_NOTHROW(say(finding, w));
        kinds.insert(finding.index());
    };
    of_contradictions(of_a_job);
    of_stops(of_a_job);
    of_lengths(of_a_job);
    of_guards(of_a_job);
    of_angles(of_a_job);
    of_fittings(of_a_job);
    of_use(of_a_job);
    CHECK(kinds.size() == std::variant_size_v<CheckFinding>);
    of_an_order([](const CheckFinding& finding, const char* sentence) { CHECK(say(finding, Wording(Units::mm, About::new_shaft)) == sentence); });
}

TEST_CASE("findings, reasons and bases without a figure each have words of their own")
{
    hold_all_unlike(PlainFinding::out_of_phase, [](PlainFinding one, const Wording& w) { return say(CheckFinding(one), w); });
    hold_all_unlike(PlainReason::ordered_without_guard, [](PlainReason one, const Wording& w) { return clause(NotCheckedReason(one), w); });
    hold_all_unlike(PlainBasis::as_it_came_in, [](PlainBasis one, const Wording& w) { return clause(CheckBasis(one), w); });
}

TEST_CASE("a finding in inches has the millimetres of its figures beside them where they decide")
{
    CHECK(say(ClearanceLeft{mm(44), mm(40)}, Wording(Units::in)) == "Clearance left at the shortest length is 1-11/16 in (44 mm); 1-9/16 in (40 mm) is asked.");
    CHECK(say(OutOfBounds{figure_of(FigureOf::half, 50.8, Tube::inner), mm(100), mm(2500), mm(1290.32), {}}, Wording(Units::in)) ==
          "No shaft has such a length: inner half 2 in is not within 3-15/16 in to 98-7/16 in: is its unit right? If it was measured in inches (in) it is 1290.3 mm.");
}

TEST_CASE("each reason and basis of a check has its clause")
{
    const LimitBasis own{Limit::guard_overlap, LimitOrigin::standard}, of_job{Limit::closing_clearance, LimitOrigin::job};
    std::set<std::size_t> kinds;
    const auto hold = [&](const CheckBasis& basis_of, const char* said) {
        CHECK(clause(basis_of, Wording(Units::mm)) == said);
        for (const Wording& w : all_wordings) CHECK_NOTHROW(clause(basis_of, w));
        kinds.insert(basis_of.index());
    };
    hold(PlainBasis::clearance, "shortest − closed length after the cut");
    hold(NotCheckedReason(LongestNotOfAll{Range::standing, {"Red tractor", ""}}), "no longest standing length is given for Red tractor, one fit: it is known only as at least what is stated");
    hold(NotCheckedReason(SeatNotKnown{Tube::outer}), "the seat or the least tube of the outer half is not known");
    hold(NotCheckedReason(GuardNotUsed{Tube::inner}), "the inner guard is missing or not used again: the shaft must not run before a complete guard is fitted");
    hold(NotCheckedReason(NoAngle{End::tractor}), "no angle is given for the tractor end");
    hold(NotCheckedReason(NoRating{"Alder 2"}), "series Alder 2 states no rating");
    hold(NotCheckedReason(NotInCatalogue{{{Tube::inner, HalfFigureKind::shoulder}, {Tube::outer, HalfFigureKind::seat}}}), "the catalogue does not state the inner half's shoulder and the outer half's seat");
    hold(own, "the project's own choice, no published figure was found");
    hold(of_job, "set by the job");
    hold(OverlapOf{Range::working}, "inner half + outer half after the cut − longest working length");
    hold(LimitFloor{mm(25), own}, "floor 25 mm: the project's own choice, no published figure was found");
    hold(LimitAtLeast{mm(150), of_job}, "at least 150 mm: set by the job");
    hold(AngleLimitOf{Range::turning, of_job}, "turning: set by the job");
    hold(AngleNotOfAll{Range::turning}, "not every fit gives the turning angle");
    hold(OneChainLimit{of_job}, "one-chain guards: set by the job");
    hold(GuardKeeps{mm(50)}, "a guard that is cut keeps its seat and 50 mm (the project's own choice)");
    hold(LengthOfGeometry{reached, true},
         "the shortest is computed from the machine's geometry, with the lower hitch point at 421 mm, ± 7.1 mm, most of it from mast (1.9 mm) and top-link (1.3 mm)");
    hold(LengthOfGeometry{{mm(730), TrailedPosture{}, mm(7), {mast}}, false}, "the length is computed from the machine's geometry, straight ahead and level, ± 7 mm, most of it from mast (1.9 mm)");
    hold(LengthOfGeometry{{mm(730), TrailedPosture{}, mm(0), {nothing}}, false}, "the length is computed from the machine's geometry, straight ahead and level, ± 0 mm");
    hold(RatingOf{"Alder 2", 40'000, 540, RatingRule::stated}, "series Alder 2: 40 kW at 540 min⁻¹");
    hold(RatingOf{"Alder 2", 40'000, 1000, RatingRule::next_higher}, "series Alder 2: 40 kW at 1000 min⁻¹, the next higher speed that it states, and the torque of that");
    hold(RatingOf{"Alder 2", 40'000, 540, RatingRule::highest}, "series Alder 2: 40 kW at 540 min⁻¹, the highest speed that it states");
    hold(RatedSpeedsBy{{{"1-3/8-6", "a standard"}, {"1-3/8-21", "another"}}}, "rated speeds by 1-3/8-6: a standard; 1-3/8-21: another");
    CHECK(kinds.size() == std::variant_size_v<CheckBasis>);
    const Wording of_order(Units::mm, About::new_shaft);
    CHECK(clause(CheckBasis(of_job), of_order) == "set by the order");
    CHECK(clause(CheckBasis(OverlapOf{Range::working}), of_order) == "inner half + outer half − longest working length");
    CHECK(clause(CheckBasis(PlainBasis::guard_setback), of_order) == "half − guard half");
}

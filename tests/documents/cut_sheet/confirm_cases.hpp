// Orders of jobs that say all that a job can say, with all that may have to be confirmed first.
#pragma once

#include "documents/cut_sheet/sheet_cases.hpp"
#include "order/instructions.hpp"

namespace shaftcut::test {

// What is confirmed is put in by hand: here it is the paper that is looked at.
inline std::vector<Confirmation> confirmations(std::size_t count)
{
    const auto length = [](Confirmed what, ConfirmedFor why, double expected, double plus_minus) { return Confirmation{what, why, mm(expected), mm(plus_minus), {}, {}}; };
    const auto look = [](Confirmed what, ConfirmedFor why) { return Confirmation{what, why, {}, {}, {}, mm(25)}; };
    std::vector<Confirmation> all{length(Confirmed::inner_half, ConfirmedFor::half_not_measured, 690, 6),
                                  look(Confirmed::inner_guard, ConfirmedFor::guard_not_measured),
                                  length(Confirmed::outer_half, ConfirmedFor::half_not_measured, 668, 6),
                                  look(Confirmed::built, ConfirmedFor::year_not_stated),
                                  length(Confirmed::inner_shoulder, ConfirmedFor::stop_alone, 128, 4),
                                  length(Confirmed::outer_shoulder, ConfirmedFor::stop_alone, 106, 4),
                                  look(Confirmed::outer_guard, ConfirmedFor::guard_not_measured),
                                  length(Confirmed::closed, ConfirmedFor::disagreement, 860, 4),
                                  length(Confirmed::closed_inner_cross, ConfirmedFor::cross_not_known, 796, 4)};
    all[7].from = Reference::outer_cross;
    all.resize(count);
    return all;
}

inline std::string text_of(std::size_t characters, const std::string& words)
{
    std::string text;
    while (text.size() < characters) text += words;
    text.resize(characters);
    while (text.back() == ' ') text.back() = '.';
    return text;
}

// Every text as long as a file may have it.
inline Job everything_job(GuardUse guard)
{
    constexpr std::size_t longest = 200, place = 60;
    Job found = demo_job();
    found.customer = text_of(longest, "Lohnbetrieb ");
    found.machine = text_of(longest, "rear mower ");
    found.tractor = text_of(longest, "tractor with loader ");
    found.circumstances = {text_of(longest, "0123 45 "), text_of(longest, "drawbar, second hole "), 30'500, {}, false, false, {text_of(longest, "Name "), "2026-11-24", text_of(longest, "steel tape ")},
                           text_of(longest, "the owner asks for it "), text_of(longest, "Foreman ")};
    for (const char* name : {"first other ", "second other ", "third other "}) found.circumstances.other_tractors.push_back(text_of(longest, name));
    JobShaft& shaft = found.shaft;
    shaft.number = text_of(40, "S-0412-");
    shaft.condition = Condition{Completeness::damaged, Completeness::missing, CrossWear::worn, TubeState::dented, LockState::stiff, Weld::none, DeviceState::free, Phase::in_plane, Slides::yes, {}};
    shaft.halves[Tube::inner].guard_use = guard;
    if (guard != GuardUse::kept) shaft.halves[Tube::inner].guard.reset();
    shaft.halves[Tube::outer].series = OtherSeries{text_of(place, "Rowan ")};
    shaft.halves[Tube::outer].stop_depth = measured(562);
    shaft.ends[End::tractor].spacing = mm(64);
    shaft.ends[End::tractor].cross_to_groove = mm(60);
    JobFit& fit = found.fits.front();
    fit.shortest_at = text_of(place, "turned left to the stop, level ");
    for (const Range range : all_ranges) fit.longest_at[range] = text_of(place, "lifted and turned right ");
    fit.views[End::tractor] = AngleViews{Range::turning, Angle::degrees(38), Angle::degrees(14)};
    return found;
}

// On the papers of both units, with few and with all that can be confirmed.
inline std::vector<SheetCase> confirm_cases()
{
    std::vector<SheetCase> cases;
    const auto add = [&](const std::string& name, const Job& job_, Units units, std::size_t count) {
        cases.push_back({name + (units == Units::in ? ", inches, " : ", ") + std::to_string(count), worked_in(job_, units)});
        cases.back().order.confirm = confirmations(count);
        cases.back().order.steps = steps_for(cases.back().order);
    };
    for (const Units units : {Units::mm, Units::in}) {
        for (const std::size_t count : {1, 2, 3, 5, 9}) {
            add("plain", demo_job(), units, count);
            add("fits", fits_job(), units, count);
        }
        for (const std::size_t count : {0, 2, 9}) {
            add("everything", everything_job(GuardUse::kept), units, count);
            add("everything, guard none", everything_job(GuardUse::none), units, count);
            add("everything, guard damaged", everything_job(GuardUse::damaged), units, count);
        }
        add("long names", long_names_job(), units, 9);
        add("four cuts", four_cuts_job(), units, 9);
        add("both wide", both_wide_job(), units, 4);
    }
    return cases;
}

}  // namespace shaftcut::test

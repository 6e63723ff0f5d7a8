// Orders of jobs that say all that a job can say, with all that may have to be confirmed first.
#pragma once

#include "documents/cut_sheet/sheet_cases.hpp"

namespace shaftcut::test {

// What is confirmed is put in by hand: here it is the paper that is looked at.
inline std::vector<Confirmation> confirmations(std::size_t count)
{
    const auto length = [](Confirmed what, double expected, double plus_minus, const char* says) { return Confirmation{what, mm(expected), mm(plus_minus), says}; };
    const auto look = [](Confirmed what, const char* says) { return Confirmation{what, std::nullopt, std::nullopt, says}; };
    std::vector<Confirmation> all{
        length(Confirmed::inner_half, 690, 6, "Measure the implement half from its cross to its tube's free end, expected 690 mm ± 6 mm: it was not measured, and the cut is worked out from the closed length."),
        look(Confirmed::inner_guard, "Hold the implement half's guard beside its tube: does the tube stand out of it by 0 to 25 mm? It was not measured."),
        length(Confirmed::outer_half, 668, 6, "Measure the tractor half from its inner cross to its tube's free end, expected 668 mm ± 6 mm: it was not measured."),
        look(Confirmed::built, "Look for the year on the shaft's plate, or ask the owner and write down whom: was it built before 2021? An exposed lock may stay on an older shaft only."),
        length(Confirmed::inner_shoulder, 128, 4, "Measure the implement half from its cross to the face that stops the other tube, expected 128 mm ± 4 mm: no second figure confirms it."),
        length(Confirmed::outer_shoulder, 106, 4, "Measure the tractor half from its inner cross to the face that stops the other tube, expected 106 mm ± 4 mm: no second figure confirms it."),
        look(Confirmed::outer_guard, "Hold the tractor half's guard beside its tube: does the tube stand out of it by 0 to 25 mm? It was not measured."),
        length(Confirmed::closed, 860, 4, "Measure the closed length again from the outer cross, pushed fully together, expected 860 mm ± 4 mm: the halves say another."),
        length(Confirmed::closed_inner_cross, 796, 4, "Measure the closed length between the inner crosses too, expected 796 mm ± 4 mm: which cross was meant rests on one figure.")};
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

// The orders whose sheets the document tests draw: ordinary ones, and those that are hardest to fit on paper.
#pragma once

#include <string>
#include <vector>

#include "support/jobs.hpp"

namespace shaftcut::test {

struct SheetCase {
    std::string name;
    WorkOrder order;
};

inline Job demo_job()
{
    Job found = job();
    found.customer = "Demo customer (invented)";
    found.machine = "Demo tedder";
    found.tractor = "Demo tractor 90";
    return found;
}

inline Job long_names_job()
{
    Job found = demo_job();
    found.order = "A-VERY_LONG.ORDER-number-of-forty-letters";
    found.order.resize(40);
    found.customer = found.machine = found.tractor = "";
    while (found.customer.size() < 200) found.customer += "Landwirtschaftlicher Lohnbetrieb ";
    found.customer.resize(200);
    found.machine = std::string(200, 'W');
    while (found.tractor.size() < 180) found.tractor += "Łąka Żółć Ελλάδα Ферма ";
    return found;
}

inline Job no_glyphs_job()
{
    Job found = demo_job();
    found.customer = "客戶名稱 with 漢字";
    found.machine = "مكنة";
    found.tractor = "Трактор Τρακτέρ Žluťoučký\ttab\x01";
    return found;
}

inline Job bare_job()
{
    Job found = plain_job(1000, 850, 850, 800, 880);
    found.order = "7";
    found.date.clear();
    found.shaft.speed.reset();
    found.shaft.ends[End::tractor].lock.reset();
    found.shaft.ends[End::implement].lock.reset();
    return found;
}

// Two standard joints, halves and guards uneven.
inline Job cut_job(double closed, double shortest, double longest)
{
    Job found = plain_job(closed, closed - 130, closed - 110, shortest, longest);
    found.shaft.halves[Tube::inner].guard = measured(closed - 150);
    found.shaft.halves[Tube::outer].guard = measured(closed - 125);
    return found;
}

inline Job four_cuts_job()
{
    Job found = demo_job();
    found.shaft.halves[Tube::inner] = {measured(690), measured(700), std::nullopt, std::nullopt, {Feature::coated, Feature::end_stop}};
    found.shaft.halves[Tube::outer] = {measured(650), measured(655), std::nullopt, measured(180), {Feature::one_chain_guard}};
    return found;
}

inline Job both_wide_job()
{
    Job found = demo_job();
    found.shaft.ends[End::implement].joint = JointKind::wide_angle;
    found.shaft.closed = measured(924);
    return found;
}

inline Job refused_job()
{
    Job found = demo_job();
    found.fits[0].longest[Range::turning] = measured(990);
    found.fits[0].longest[Range::standing] = measured(1010);
    found.shaft.ends[End::tractor].lock = Lock::exposed_push_pin;
    found.shaft.built = 2022;
    return found;
}

inline Job fits_job()
{
    Job found = demo_job();
    found.shaft.closed = measured(766);
    found.shaft.halves[Tube::inner] = {measured(596), measured(578), std::nullopt, std::nullopt, {}};
    found.shaft.halves[Tube::outer] = {measured(574), measured(556), std::nullopt, std::nullopt, {}};
    return found;
}

inline Job guards_alone_job()
{
    Job found = fits_job();
    for (const Tube tube : both_tubes) found.shaft.halves[tube].guard = measured(tube == Tube::inner ? 600 : 578);
    return found;
}

inline Job several_tractors_job()
{
    Job found = demo_job();
    found.fits[0].tractor = "Demo tractor 90";
    for (const char* name : {"Demo tractor 110 with front loader", "Demo tractor 60"}) {
        found.fits.push_back(found.fits[0]);
        found.fits.back().tractor = name;
        found.fits.back().shortest = measured(750);
    }
    return found;
}

// Stated from the inner cross; the halves follow from the series' shoulders.
inline Job unmeasured_halves_job()
{
    Job found = demo_job();
    found.shaft.closed = measured(796);
    found.shaft.closed_reference = Reference::inner_cross;
    for (const Tube tube : both_tubes) found.shaft.halves[tube].length.reset();
    return found;
}

inline Job between_grooves_job()
{
    Job found = demo_job();
    JobFit& fit = found.fits[0];
    fit.between = Between::grooves;
    fit.reference.reset();
    fit.shortest = measured(742 + 64 + 120);
    fit.longest[Range::working] = measured(800 + 184);
    fit.longest[Range::turning] = measured(850 + 150);
    fit.longest[Range::standing] = measured(905 + 100);
    return found;
}

inline Job contradiction_job()
{
    Job found = demo_job();
    found.fits[0].longest[Range::turning] = measured(700);
    found.fits[0].longest[Range::standing] = measured(690);
    found.shaft.halves[Tube::inner].guard = measured(900);
    return found;
}

inline Job twelve_tractors_job()
{
    Job found = demo_job();
    for (int i = 0; i < 12; ++i) {
        if (i > 0) found.fits.push_back(found.fits[0]);
        found.fits.back().tractor = "Demo tractor " + std::to_string(i + 1) + ", with front loader, pick-up hitch and a name that does not end soon";
    }
    return found;
}

inline WorkOrder worked_in(Job job_, Units units)
{
    Workshop shop = workshop();
    shop.name = "Demo workshop (invented)";
    return work_up(job_, catalogue(), shop, units);
}

inline std::vector<SheetCase> sheet_cases()
{
    const auto mm_case = [](const char* name, const Job& job_) { return SheetCase{name, worked_in(job_, Units::mm)}; };
    const auto inch_case = [](const char* name, const Job& job_) { return SheetCase{name, worked_in(job_, Units::in)}; };
    return {
        mm_case("plain", demo_job()),
        inch_case("inches", demo_job()),
        mm_case("long names", long_names_job()),
        inch_case("long names in inches", long_names_job()),
        mm_case("no glyphs", no_glyphs_job()),
        mm_case("bare", bare_job()),
        mm_case("cut of 5", cut_job(1000, 1037, 1150)),
        mm_case("cut of 400", cut_job(2600, 2240, 2500)),
        inch_case("cut of 400 in inches", cut_job(2600, 2240, 2500)),
        mm_case("short tubes", cut_job(420, 430, 440)),
        mm_case("long tubes", cut_job(2590, 2540, 2700)),
        mm_case("four cuts", four_cuts_job()),
        inch_case("four cuts in inches", four_cuts_job()),
        mm_case("both wide", both_wide_job()),
        inch_case("both wide in inches", both_wide_job()),
        mm_case("refused", refused_job()),
        inch_case("refused in inches", refused_job()),
        mm_case("fits", fits_job()),
        mm_case("unmeasured halves", unmeasured_halves_job()),
        inch_case("between grooves", between_grooves_job()),
        mm_case("contradiction", contradiction_job()),
        inch_case("twelve tractors", twelve_tractors_job()),
        mm_case("several tractors", several_tractors_job()),
    };
}

}  // namespace shaftcut::test

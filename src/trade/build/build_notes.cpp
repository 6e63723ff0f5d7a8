// What an assembly worker and whoever gets the shaft should know besides the checks.
#include <algorithm>

#include "build/build_trial.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {
namespace {

std::string length_text(const BuildPlan& plan, Length length, Toward toward = Toward::nearest) { return figure_with_millimetres(length, plan.units, toward); }

// "850 mm (turning)" at the reference of the closed length.
std::string use_text(const BuildPlan& plan, Range range)
{
    const auto& longest = plan.built->use.longest[range];
    return std::string(to_word(range)) + " " + (longest ? length_text(plan, (*longest)[plan.reference], Toward::down) : "not at all");
}

std::string from_text(const BuildPlan& plan)
{
    if (!plan.has_wide_angle) return "between the crosses";
    return plan.reference == Reference::outer_cross ? "from the outer cross, joints in line" : "from the inner cross";
}

std::string use_note(const BuildPlan& plan)
{
    return "Only a closed length is ordered. Measured " + from_text(plan) + ", it may be pushed together to " +
           length_text(plan, plan.built->use.shortest[plan.reference], Toward::up) + " and pulled apart to: " + use_text(plan, Range::working) + ", " +
           use_text(plan, Range::turning) + ", " + use_text(plan, Range::standing) + ".";
}

void add_rounding_note(std::vector<std::string>& notes, const BuildPlan& plan)
{
    if (!plan.ordered_closed) return;
    const Length below = plan.ordered_closed->length - plan.built->closed_at[plan.reference];
    if (below < negligible) return;
    notes.push_back("Half lengths are rounded down to the saw's step: the shaft closes " + saw_figure_with_unit(below, plan.units) + " below the closed length ordered.");
}

void add_tolerance_note(std::vector<std::string>& notes, const BuildPlan& plan)
{
    std::optional<Length> least;
    for (const Tube tube : both_tubes) {
        const auto& coarse = plan.built->coarse_tolerance[tube];
        if (!coarse) return;
        least = std::min(least.value_or(*coarse), *coarse);
    }
    notes.push_back("Sawn lengths are within ± " + figure_with_unit(plan.saw.plus_minus, Units::mm) + "; ISO 2768-1 class c allows ± " + figure_with_unit(*least, Units::mm) +
                    " for the shorter tube" + (plan.saw.plus_minus > *least ? ": this saw is not exact enough for that class." : "."));
}

void add_part_notes(std::vector<std::string>& notes, const BuildPlan& plan)
{
    const auto& parts = plan.built->parts;
    const auto lacking = std::count_if(parts.begin(), parts.end(), [](const ShaftPart& part) { return !part.in_catalogue; });
    if (lacking > 0)
        notes.push_back(std::to_string(lacking) + " of " + std::to_string(parts.size()) + " lines of the parts list are not in the catalogue: choose those parts by hand.");
    for (const Tube tube : both_tubes)
        if (!plan.built->sawn[tube])
            notes.push_back("The series forbids shortening the " + std::string(to_word(tube)) + " tube: it is fetched made to its length, and is in no saw plan.");
    for (const End end : both_ends)
        if (!plan.ordered.ends[end].connection) notes.push_back(std::string("The connection of the ") + to_word(end) + " end is not stated: ask before it is built.");
}

}  // namespace

std::vector<std::string> build_notes(const BuildPlan& plan, const BuildSetting& setting)
{
    std::vector<std::string> notes;
    if (!plan.guard) notes.emplace_back("Ordered without a guard: it must not turn before a complete guard that suits it is fitted, on it or around it.");
    if (!plan.built) return notes;
    if (setting.order.closed) notes.push_back(use_note(plan));
    add_rounding_note(notes, plan);
    if (setting.fits.size() > 1) notes.emplace_back("The shaft must serve all tractors stated: the least shortest and the greatest longest count.");
    add_tolerance_note(notes, plan);
    add_part_notes(notes, plan);
    return notes;
}

std::vector<std::string> build_cautions(const BuildPlan& plan)
{
    std::vector<std::string> cautions{
        "DANGER: a turning shaft catches clothing and kills. Never turn it by power on the bench or without its complete guard.",
        "WARNING: bottoming or parting breaks gearboxes. Before first use measure the machine's shortest and longest positions.",
        "Manuals and local rules come first; a qualified person checks and signs."};
    if (plan.verdict == BuildVerdict::refused) cautions.insert(cautions.begin(), "Do not build this shaft as it is ordered.");
    return cautions;
}

}  // namespace shaftcut

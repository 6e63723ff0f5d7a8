// What an assembly worker and whoever gets the shaft should know besides the checks.
#include <algorithm>

#include "build/build_trial.hpp"

namespace shaftcut {
namespace {

UsableRange usable_range(const BuildPlan& plan)
{
    const UseRange& use = plan.built->use;
    UsableRange range{measured_from(plan.has_wide_angle, plan.reference), use.shortest[plan.reference], {}};
    for (const Range of : all_ranges)
        if (const auto& longest = use.longest[of]) range.longest[of] = (*longest)[plan.reference];
    return range;
}

void add_rounding_note(std::vector<BuildNote>& notes, const BuildPlan& plan)
{
    if (!plan.ordered_closed) return;
    const Length below = plan.ordered_closed->length - plan.built->closed_at[plan.reference];
    if (below >= negligible) notes.emplace_back(ClosesBelowOrdered{below});
}

void add_tolerance_note(std::vector<BuildNote>& notes, const BuildPlan& plan)
{
    std::optional<Length> least;
    for (const Tube tube : both_tubes) {
        const auto& coarse = plan.built->coarse_tolerance[tube];
        if (!coarse) return;
        least = std::min(least.value_or(*coarse), *coarse);
    }
    notes.emplace_back(SawAgainstClassC{plan.saw.plus_minus, *least});
}

void add_part_notes(std::vector<BuildNote>& notes, const BuildPlan& plan)
{
    for (const Tube tube : both_tubes)
        if (!plan.built->sawn[tube]) notes.emplace_back(TubeMadeToLength{tube});
}

}  // namespace

std::vector<BuildNote> build_notes(const BuildPlan& plan, const BuildSetting& setting)
{
    std::vector<BuildNote> notes;
    if (!plan.guard) notes.emplace_back(BuildRemark::no_guard);
    if (!plan.built) return notes;
    if (setting.order.closed) notes.emplace_back(usable_range(plan));
    add_rounding_note(notes, plan);
    if (setting.fits.size() > 1) notes.emplace_back(BuildRemark::serves_all_tractors);
    add_tolerance_note(notes, plan);
    add_part_notes(notes, plan);
    return notes;
}

std::vector<BuildCaution> build_cautions(const BuildPlan& plan)
{
    std::vector<BuildCaution> cautions{BuildCaution::turning_kills, BuildCaution::bottoming_breaks, BuildCaution::manuals_first};
    if (plan.verdict == BuildVerdict::refused) cautions.insert(cautions.begin(), BuildCaution::do_not_build);
    if (plan.verdict == BuildVerdict::held) cautions.insert(cautions.begin(), BuildCaution::held);
    return cautions;
}

}  // namespace shaftcut

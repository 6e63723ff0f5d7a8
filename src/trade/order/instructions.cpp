#include "order/instructions.hpp"

#include <algorithm>

#include "cut/general_tolerance.hpp"
#include "shaftcut/trade/identify/identify.hpp"

namespace shaftcut {
namespace {

End end_of(const WorkOrder& order, Tube tube) { return order.reading.shaft.halves[tube].end; }

bool guard_unmeasured(const WorkOrder& order)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return guard_is_used(order.shaft, tube) && !order.reading.shaft.halves[tube].guard; });
}

bool is_unchecked(const WorkOrder& order, CheckId id)
{
    return order.cut && check_of(order.checks, id).result == CheckResult::not_checked;
}

FitLengths::Read read_of(const WorkOrder& order, const FitReading& fit)
{
    if (fit.between == Between::grooves) return FitLengths::Read::between_grooves;
    if (!order.reading.has_wide_angle) return FitLengths::Read::between_crosses;
    return fit.reference == Reference::outer_cross ? FitLengths::Read::from_outer_cross : FitLengths::Read::from_inner_cross;
}

void add_fit_notes(std::vector<Note>& notes, const WorkOrder& order)
{
    for (const FitReading& fit : order.fits) {
        const FitLengths::Read read = read_of(order, fit);
        const bool as_worked_with = read == FitLengths::Read::between_crosses || read == FitLengths::Read::from_inner_cross;
        const auto& turning = fit.longest[Range::turning];
        if (!fit.fit.shortest || !fit.shortest || !turning || (order.fits.size() == 1 && as_worked_with)) continue;
        FitLengths note{fit.tractor, read, fit.shortest->value, turning->value, std::nullopt, std::nullopt};
        if (fit.reaches[End::tractor].bends() || fit.reaches[End::implement].bends()) {
            note.shortest_between_inner = fit.fit.shortest->value;
            note.longest_between_inner = fit.fit.longest[Range::turning]->value;
        }
        notes.emplace_back(note);
    }
    if (order.fits.size() > 1) notes.emplace_back(Remark::least_and_greatest_count);
}

// What the job says of the machine and of who answers for a limit; the rest of it is on the sheets alone.
void add_stated_notes(std::vector<Note>& notes, const WorkOrder& order)
{
    const Circumstances& around = order.circumstances;
    if (!around.other_tractors.empty()) notes.emplace_back(UnmeasuredTractors{around.other_tractors});
    if (!around.machine_here) notes.emplace_back(Remark::machine_not_here);
    if (!around.limits_why.empty()) notes.emplace_back(LooserLimit{around.limits_why, around.limits_by});
}

// What the fitter does by hand where a check could not be made.
void add_unchecked_notes(std::vector<Note>& notes, const WorkOrder& order)
{
    if (is_unchecked(order, CheckId::guard_clearance)) notes.emplace_back(Remark::guard_clearance_by_hand);
    if (is_unchecked(order, CheckId::guard_cover)) notes.emplace_back(Remark::guard_cover_by_hand);
    // A step where the tube is sawn.
    if (is_unchecked(order, CheckId::tube_left) && order.verdict == Verdict::fits) notes.emplace_back(Remark::tube_left_by_hand);
}

// The saw's tolerance beside the general one for the shortest of the lengths that are sawn.
void add_tolerance_note(std::vector<Note>& notes, const WorkOrder& order)
{
    std::optional<Length> shortest;
    for (const Tube tube : both_tubes) {
        const CutPlan& plan = order.cut->plan;
        if (plan.cut[tube] != Length()) shortest = std::min(shortest.value_or(plan.half[tube]), plan.half[tube]);
        if (order.cut->plan.cuts_guard(tube) && plan.guard_half[tube])
            shortest = std::min(shortest.value_or(*plan.guard_half[tube]), *plan.guard_half[tube]);
    }
    const auto general = shortest ? coarse_tolerance(*shortest) : std::nullopt;
    if (general) notes.emplace_back(SawnWithin{order.saw.plus_minus, *general});
}

}  // namespace

std::vector<Caution> cautions_for(const WorkOrder& order)
{
    std::vector<Caution> cautions{Caution::turning_shaft_kills, Caution::guards_complete, Caution::bottoming_or_parting, Caution::manuals_come_first};
    if (order.verdict == Verdict::refused) cautions.insert(cautions.begin(), Caution::leave_shaft_alone);
    return cautions;
}

std::optional<GuardWarning> guard_warning_for(const WorkOrder& order)
{
    GuardWarning warning{{}, order.limits.length(Limit::guard_setback)};
    for (const End end : both_ends) {
        const Tube tube = tube_on(order.shaft, end);
        if (!guard_is_used(order.shaft, tube)) warning.halves.push_back({end_of(order, tube), order.shaft.halves[tube].guard_use != GuardUse::none});
    }
    return warning.halves.empty() ? std::nullopt : std::optional(warning);
}

std::optional<IdentifiedBy> measures_like_another(const WorkOrder& order)
{
    const auto& by = order.identified;
    if (!by || !by->stated) return std::nullopt;
    return by->excluded || (by->verdict == IdentifyVerdict::one && by->likeliest != *by->stated) ? by : std::nullopt;
}

std::vector<Note> notes_for(const WorkOrder& order)
{
    std::vector<Note> notes;
    add_fit_notes(notes, order);
    add_stated_notes(notes, order);
    if (order.identified) notes.emplace_back(*order.identified);
    if (order.cut && guard_unmeasured(order)) notes.emplace_back(Remark::guard_not_measured);
    const auto& halves = order.reading.shaft.halves;
    if (order.stops && (!halves[Tube::inner].measured || !halves[Tube::outer].measured))
        notes.emplace_back(order.verdict == Verdict::cut ? Remark::half_not_measured_to_be_sawn : Remark::half_not_measured);
    add_unchecked_notes(notes, order);
    if (order.verdict == Verdict::cut) add_tolerance_note(notes, order);
    return notes;
}

}  // namespace shaftcut

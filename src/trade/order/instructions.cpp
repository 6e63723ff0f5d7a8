#include "order/instructions.hpp"

#include <algorithm>

#include "cut/general_tolerance.hpp"

namespace shaftcut {
namespace {

// Four published texts; from memory also EN ISO 4254-1 and EN 12965.
constexpr Length shields_over_guard = Length::millimetres(50);

End end_of(const WorkOrder& order, Tube tube) { return order.reading.shaft.halves[tube].end; }

// What comes off the guards that are used again.
PerEach<Tube, Length> guard_cuts(const WorkOrder& order)
{
    PerEach<Tube, Length> cuts;
    for (const Tube tube : both_tubes) cuts[tube] = order.cut->plan.guard_cut[tube].value_or(Length());
    return cuts;
}

bool any(const PerEach<Tube, Length>& cut) { return cut[Tube::inner] != Length() || cut[Tube::outer] != Length(); }

bool both(const PerEach<Tube, Length>& cut) { return cut[Tube::inner] != Length() && cut[Tube::outer] != Length(); }

// Both, or the only one that loses something.
TubesToSaw saw_step(const WorkOrder& order, const PerEach<Tube, Length>& cut, bool guards)
{
    if (both(cut)) return {guards, std::nullopt};
    return {guards, end_of(order, cut[Tube::inner] != Length() ? Tube::inner : Tube::outer)};
}

bool has_feature(const WorkOrder& order, Tube tube, Feature feature)
{
    const auto& features = order.reading.shaft.halves[tube].features;
    return std::find(features.begin(), features.end(), feature) != features.end();
}

// Whether a half that loses drive tube has the feature.
bool cut_feature(const WorkOrder& order, Feature feature)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) {
        return order.cut->plan.cut[tube] != Length() && has_feature(order, tube, feature);
    });
}

bool needs_second_chain(const WorkOrder& order)
{
    const PerEach<Tube, Length> cuts = guard_cuts(order);
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) {
        return has_feature(order, tube, Feature::one_chain_guard) &&
               clearly_above(cuts[tube], order.limits.length(Limit::one_chain_shortening));
    });
}

bool has_lubrication_hole(const WorkOrder& order)
{
    return order.reading.shaft.halves[Tube::inner].lubrication_hole || order.reading.shaft.halves[Tube::outer].lubrication_hole;
}

bool guard_unmeasured(const WorkOrder& order)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return guard_is_used(order.shaft, tube) && !order.reading.shaft.halves[tube].guard; });
}

bool is_unchecked(const WorkOrder& order, CheckId id)
{
    return order.cut && check_of(order.checks, id).result == CheckResult::not_checked;
}

void add_saw_steps(std::vector<Step>& steps, const WorkOrder& order)
{
    const CutPlan& plan = order.cut->plan;
    const PerEach<Tube, Length> guard_cut = guard_cuts(order);
    if (order.stops->agreement != ClosedAgreement::agrees) steps.emplace_back(PlainStep::find_out_why_not_closed);
    steps.emplace_back(PlainStep::mark_phase_and_part);
    steps.emplace_back(PlainStep::compare_with_stated);
    if (!order.confirm.empty()) steps.emplace_back(PlainStep::confirm_before_sawing);
    steps.emplace_back(PlainStep::mark_cuts);
    steps.emplace_back(order.circumstances.machine_here ? PlainStep::hold_halves_side_by_side : PlainStep::have_shortest_read_again);
    if (guard_unmeasured(order)) steps.emplace_back(PlainStep::confirm_guard_cut);
    if (is_unchecked(order, CheckId::tube_left)) steps.emplace_back(PlainStep::compare_tube_left);
    if (cut_feature(order, Feature::end_stop)) steps.emplace_back(PlainStep::take_end_stop_off);
    if (any(guard_cut)) steps.emplace_back(saw_step(order, guard_cut, true));
    if (any(plan.cut)) steps.emplace_back(saw_step(order, plan.cut, false));
    steps.emplace_back(PlainStep::deburr);
    if (cut_feature(order, Feature::coated)) steps.emplace_back(PlainStep::treat_coated_edge);
    if (cut_feature(order, Feature::end_stop)) steps.emplace_back(PlainStep::refit_end_stop);
    if (any(plan.cut) && has_lubrication_hole(order)) steps.emplace_back(PlainStep::clear_lubrication);
}

// What one step out of phase would do, of two standard joints on the first machine. On some machines it is not more.
// A joint that could not turn at all has no ripple.
std::optional<Ripple> ripple(const WorkOrder& order)
{
    for (const End end : both_ends)
        if (order.shaft.ends[end].joint == JointKind::wide_angle) return std::nullopt;
    for (const FitReading& fit : order.fits) {
        if (!fit.geometry || !fit.geometry->lengths.irregularity || !fit.geometry->lengths.irregularity_out_of_phase) continue;
        const auto &in_phase = fit.geometry->lengths.irregularity->percent, &out = fit.geometry->lengths.irregularity_out_of_phase->percent;
        return in_phase && out ? std::optional(Ripple{*in_phase, *out, fit.geometry->shaft.phase_step}) : std::nullopt;
    }
    return std::nullopt;
}

void add_assembly_steps(std::vector<Step>& steps, const WorkOrder& order)
{
    steps.emplace_back(PutTogether{ripple(order)});
    if (order.verdict == Verdict::cut) steps.emplace_back(PlainStep::fill_in_boxes);
    for (const Tube tube : both_tubes)
        if (!guard_is_used(order.shaft, tube)) steps.emplace_back(FitNewGuard{end_of(order, tube)});
    if (!order.circumstances.machine_here) steps.emplace_back(PlainStep::go_to_machine);
    steps.emplace_back(TryShortest{order.limits.length(Limit::closing_clearance)});
    steps.emplace_back(PlainStep::try_longest);
    if (order.fits.size() > 1) steps.emplace_back(PlainStep::try_every_tractor);
    steps.emplace_back(ShieldsOverlapGuard{shields_over_guard});
    steps.emplace_back(needs_second_chain(order) ? PlainStep::fit_second_chain : PlainStep::hook_chains);
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

std::vector<Step> steps_for(const WorkOrder& order)
{
    std::vector<Step> steps;
    if (!order.cut) return steps;
    steps.emplace_back(PlainStep::stop_engine);
    if (order.verdict == Verdict::cut) add_saw_steps(steps, order);
    else steps.emplace_back(PlainStep::clean_uncut);
    if (order.verdict == Verdict::fits && !order.confirm.empty()) steps.emplace_back(PlainStep::confirm_before_fitting);
    add_assembly_steps(steps, order);
    return steps;
}

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

std::vector<Note> notes_for(const WorkOrder& order)
{
    std::vector<Note> notes;
    add_fit_notes(notes, order);
    add_stated_notes(notes, order);
    if (order.cut && guard_unmeasured(order)) notes.emplace_back(Remark::guard_not_measured);
    const auto& halves = order.reading.shaft.halves;
    if (order.stops && (!halves[Tube::inner].measured || !halves[Tube::outer].measured))
        notes.emplace_back(order.verdict == Verdict::cut ? Remark::half_not_measured_to_be_sawn : Remark::half_not_measured);
    add_unchecked_notes(notes, order);
    if (order.verdict == Verdict::cut) add_tolerance_note(notes, order);
    return notes;
}

}  // namespace shaftcut

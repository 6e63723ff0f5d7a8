#include "order/instructions.hpp"

#include <algorithm>

#include "cut/general_tolerance.hpp"
#include "cut/geometry_words.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

std::string length_text(const WorkOrder& order, Length length, Rounded as) { return figure_of_with_millimetres(as, length, order.units); }

std::string half_name(const WorkOrder& order, Tube tube)
{
    return std::string(to_word(order.reading.shaft.halves[tube].end)) + " half";
}

std::string limit_length(const WorkOrder& order, Limit limit)
{
    return length_text(order, order.limits.length(limit), rounded_as(limit));
}

// What comes off the guards that are used again.
PerEach<Tube, Length> guard_cuts(const WorkOrder& order)
{
    PerEach<Tube, Length> cuts;
    for (const Tube tube : both_tubes) cuts[tube] = order.cut->plan.guard_cut[tube].value_or(Length());
    return cuts;
}

bool any(const PerEach<Tube, Length>& cut) { return cut[Tube::inner] != Length() || cut[Tube::outer] != Length(); }

bool both(const PerEach<Tube, Length>& cut) { return cut[Tube::inner] != Length() && cut[Tube::outer] != Length(); }

// "Saw the guard tubes, each at its free end." or, where one is left alone, "Saw the implement half's guard tube only."
std::string saw_step(const WorkOrder& order, const PerEach<Tube, Length>& cut, const std::string& tube)
{
    if (both(cut)) return "Saw the " + tube + " tubes, each at its free end.";
    const Tube only = cut[Tube::inner] != Length() ? Tube::inner : Tube::outer;
    return "Saw the " + half_name(order, only) + "'s " + tube + " tube only.";
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

std::string confirm_step(const WorkOrder& order)
{
    const std::string nothing = order.verdict == Verdict::cut ? "saw nothing" : "do not fit it";
    return "Confirm what stands in the frame on sheet 1. Outside, or a no: " + nothing + ".";
}

void add_saw_steps(std::vector<std::string>& steps, const WorkOrder& order)
{
    const CutPlan& plan = order.cut->plan;
    const PerEach<Tube, Length> guard_cut = guard_cuts(order);
    if (order.stops->agreement != ClosedAgreement::agrees) steps.emplace_back("Find out why it does not close as its halves say; measure again.");
    steps.emplace_back("Mark the phase along both tubes, then part the shaft.");
    steps.emplace_back("Closed length and both halves as stated? If not, stop.");
    if (!order.confirm.empty()) steps.push_back(confirm_step(order));
    steps.emplace_back("Mark the cuts from the free ends; check what is kept.");
    steps.emplace_back(order.circumstances.machine_here ? "At the shortest position hold the halves side by side: do the cuts look right? If not, stop."
                                                        : "The machine is not here: have its shortest length read again, without this sheet in sight. Not as stated? Stop.");
    if (guard_unmeasured(order)) steps.emplace_back("Confirm the cut of the guard that was not measured.");
    if (is_unchecked(order, CheckId::tube_left)) steps.emplace_back("Compare what is kept with the least that the maker allows.");
    if (cut_feature(order, Feature::end_stop)) steps.emplace_back("Take the end stop off the tube to be sawn.");
    if (any(guard_cut)) steps.push_back(saw_step(order, guard_cut, "guard"));
    if (any(plan.cut)) steps.push_back(saw_step(order, plan.cut, "drive"));
    steps.emplace_back("Deburr inside and out, clear swarf, grease.");
    if (cut_feature(order, Feature::coated)) steps.emplace_back("Treat the bare edge of the coated tube.");
    if (cut_feature(order, Feature::end_stop)) steps.emplace_back("Fit the end stop again at the new end.");
    if (any(plan.cut) && has_lubrication_hole(order)) steps.emplace_back("Clear the lubrication passage; see grease come out.");
}

std::string ripple_text(const ExtremeIrregularity& ripple)
{
    return ripple.percent ? figure(Angle::from_degrees(*ripple.percent)) + " %" : "no turning at all";
}

// What one step out of phase would do, of two standard joints on the first machine. On some machines it is not more.
std::string phase_reason(const WorkOrder& order)
{
    for (const End end : both_ends)
        if (order.shaft.ends[end].joint == JointKind::wide_angle) return {};
    for (const FitReading& fit : order.fits)
        if (fit.geometry && fit.geometry->lengths.irregularity && fit.geometry->lengths.irregularity_out_of_phase)
            return " The speed then ripples by up to " + ripple_text(*fit.geometry->lengths.irregularity) + ", one step (" + figure(fit.geometry->shaft.phase_step) +
                   "°) out by up to " + ripple_text(*fit.geometry->lengths.irregularity_out_of_phase) + ".";
    return {};
}

void add_assembly_steps(std::vector<std::string>& steps, const WorkOrder& order)
{
    steps.push_back("Put together in phase: the marks meet." + phase_reason(order));
    if (order.verdict == Verdict::cut) steps.emplace_back("Measure what was cut, fill in the boxes.");
    for (const Tube tube : both_tubes)
        if (!guard_is_used(order.shaft, tube)) steps.push_back("Fit a new guard to the " + half_name(order, tube) + ". Without it the shaft goes on no stub.");
    if (!order.circumstances.machine_here) steps.emplace_back("At the machine, before the PTO is used, do what follows.");
    steps.emplace_back("Shortest position: at least " + limit_length(order, Limit::closing_clearance) + " left to close.");
    steps.emplace_back("Longest position: no further apart than stated.");
    if (order.fits.size() > 1) steps.emplace_back("Check both positions with every other tractor.");
    // Four published texts; from memory also EN ISO 4254-1 and EN 12965.
    steps.emplace_back("Both shields overlap the guard by " + figure_with_unit(Length::millimetres(50), order.units, Toward::up) + " or more.");
    steps.push_back(needs_second_chain(order) ? "Fit a second chain at the tractor end. Hook both, slack in every position."
                                               : "Chains hooked, slack in every position.");
}

std::string fit_reference_text(const FitReading& fit)
{
    if (fit.between == Between::grooves) return "between the locking grooves";
    return fit.reference == Reference::outer_cross ? "from the outer cross" : "from the inner cross";
}

void add_fit_notes(std::vector<std::string>& notes, const WorkOrder& order)
{
    for (const FitReading& fit : order.fits) {
        const bool converted = fit.reaches[End::tractor].bends() || fit.reaches[End::implement].bends();
        const bool says_reference = order.reading.has_wide_angle || fit.between == Between::grooves;
        const bool as_worked_with = !says_reference || (fit.reference == Reference::inner_cross && fit.between == Between::crosses);
        if (!fit.fit.shortest || !fit.shortest || !fit.longest[Range::turning] || (order.fits.size() == 1 && as_worked_with)) continue;
        std::string note = fit.tractor.empty() ? "Shortest" : fit.tractor + ": shortest";
        note += " " + length_text(order, fit.shortest->value, Rounded::shortest) + (says_reference ? " " + fit_reference_text(fit) : "");
        if (converted) note += ", " + length_text(order, fit.fit.shortest->value, Rounded::shortest) + " between the inner crosses";
        const auto& turning = fit.longest[Range::turning];
        note += "; longest turning " + length_text(order, turning->value, Rounded::longest);
        if (converted) note += ", " + length_text(order, fit.fit.longest[Range::turning]->value, Rounded::longest) + " between the inner crosses";
        notes.push_back(note + ".");
    }
    if (order.fits.size() > 1) notes.emplace_back("The shaft must serve all of these: the least shortest and the greatest longest count.");
}

// What the job says of the machine and of who answers for a limit; the rest of it is on the sheets alone.
void add_stated_notes(std::vector<std::string>& notes, const WorkOrder& order)
{
    const Circumstances& around = order.circumstances;
    if (!around.other_tractors.empty())
        notes.push_back("Not measured, but drives the machine too: " + listed(around.other_tractors, "and") + ". The shaft goes on no tractor that was not measured.");
    if (!around.machine_here) notes.emplace_back("The machine is not here: the shaft was not tried on it. Try both positions there before the PTO is used.");
    if (!around.limits_why.empty()) notes.push_back("A limit was made looser" + (around.limits_by.empty() ? "" : " by " + around.limits_by) + ": " + around.limits_why + ".");
}

// What the fitter does by hand where a check could not be made.
void add_unchecked_notes(std::vector<std::string>& notes, const WorkOrder& order)
{
    if (is_unchecked(order, CheckId::guard_clearance)) notes.emplace_back("By hand, for the guard clearance: push fully together; the guards must not meet before the tubes.");
    if (is_unchecked(order, CheckId::guard_cover)) notes.emplace_back("By hand, for the guard cover: at the longest position no bare tube may show.");
    // A step where the tube is sawn.
    if (is_unchecked(order, CheckId::tube_left) && order.verdict == Verdict::fits) notes.emplace_back("By hand, for the tube left: compare with the least that the maker allows.");
}

// The saw's tolerance beside the general one for the shortest of the lengths that are sawn.
void add_tolerance_note(std::vector<std::string>& notes, const WorkOrder& order)
{
    std::optional<Length> shortest;
    for (const Tube tube : both_tubes) {
        const CutPlan& plan = order.cut->plan;
        if (plan.cut[tube] != Length()) shortest = std::min(shortest.value_or(plan.half[tube]), plan.half[tube]);
        if (order.cut->plan.cuts_guard(tube) && plan.guard_half[tube])
            shortest = std::min(shortest.value_or(*plan.guard_half[tube]), *plan.guard_half[tube]);
    }
    const auto general = shortest ? coarse_tolerance(*shortest) : std::nullopt;
    if (!general) return;
    notes.push_back("Sawn lengths are within ± " + figure_with_unit(order.saw.plus_minus, Units::mm) + "; ISO 2768-1 class c allows ± " +
                    figure_with_unit(*general, Units::mm) + " for the shortest of them.");
}

}  // namespace

std::vector<std::string> steps_for(const WorkOrder& order)
{
    std::vector<std::string> steps;
    if (!order.cut) return steps;
    steps.emplace_back("PTO off, engine off, key out, machine blocked.");
    if (order.verdict == Verdict::cut) add_saw_steps(steps, order);
    else steps.emplace_back("Mark the phase, part the shaft, saw nothing, clean and grease.");
    if (order.verdict == Verdict::fits && !order.confirm.empty()) steps.push_back(confirm_step(order));
    add_assembly_steps(steps, order);
    return steps;
}

std::vector<std::string> cautions_for(const WorkOrder& order)
{
    std::vector<std::string> cautions{
        "DANGER: a turning shaft catches clothing and kills. PTO off, engine off, key out first.",
        "Run it only with guard, shields, chains complete.",
        "WARNING: bottoming or parting breaks gearboxes.",
        "Manuals and local rules come first; a qualified person checks and signs."};
    if (order.verdict == Verdict::refused)
        cautions.insert(cautions.begin(), "Do not cut this shaft and do not run it on this machine as it is.");
    return cautions;
}

std::vector<std::string> guard_warnings_for(const WorkOrder& order)
{
    std::vector<std::string> found;
    for (const End end : both_ends) {
        const Tube tube = tube_on(order.shaft, end);
        if (guard_is_used(order.shaft, tube)) continue;
        const bool none = order.shaft.halves[tube].guard_use == GuardUse::none;
        found.push_back("the " + half_name(order, tube) + (none ? " has no guard" : "'s guard is damaged and not used again"));
    }
    if (found.empty()) return {};
    return {"The shaft must not run as it is: " + listed(found, "and") + ". Fit a new one, its tube standing out of it by 0 to " + limit_length(order, Limit::guard_setback) + "."};
}

std::vector<std::string> notes_for(const WorkOrder& order)
{
    std::vector<std::string> notes;
    add_fit_notes(notes, order);
    add_stated_notes(notes, order);
    if (order.cut && guard_unmeasured(order))
        notes.emplace_back("A guard was not measured: its cut is that of its tube. Confirm it by holding the halves side by side.");
    const auto& halves = order.reading.shaft.halves;
    if (order.stops && (!halves[Tube::inner].measured || !halves[Tube::outer].measured))
        notes.push_back("A half was not measured: its length follows from the closed length and the other half's shoulder." +
                           std::string(order.verdict == Verdict::cut ? " Measure it before sawing." : ""));
    add_unchecked_notes(notes, order);
    if (order.verdict == Verdict::cut) add_tolerance_note(notes, order);
    return notes;
}

}  // namespace shaftcut

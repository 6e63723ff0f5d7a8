#include "shaftcut/trade/instructions.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

std::string length_text(const WorkOrder& order, Length length, Toward toward)
{
    return figure_with_unit(length, order.units, toward);
}

std::string half_name(const WorkOrder& order, Tube tube)
{
    return std::string(to_word(order.reading.shaft.halves[tube].end)) + " half";
}

Tube tube_on(const WorkOrder& order, End end)
{
    return order.reading.shaft.halves[Tube::inner].end == end ? Tube::inner : Tube::outer;
}

const Check& check_of(const WorkOrder& order, CheckId id) { return order.checks[static_cast<std::size_t>(id)]; }

std::string limit_length(const WorkOrder& order, Limit limit)
{
    return figure_with_unit(order.limits.length(limit), order.units, Toward::up);
}

// "tractor half 94 mm, implement half 94 mm"; a tube that is left alone says so.
std::string cuts_text(const WorkOrder& order, const PerEach<Tube, Length>& cut)
{
    std::string text;
    for (const End end : both_ends) {
        const Tube tube = tube_on(order, end);
        const bool none = cut[tube] == Length();
        text += (text.empty() ? "" : ", ") + half_name(order, tube) + " " + (none ? "nothing" : length_text(order, cut[tube], Toward::up));
    }
    return text;
}

bool any(const PerEach<Tube, Length>& cut) { return cut[Tube::inner] != Length() || cut[Tube::outer] != Length(); }

bool has_feature(const WorkOrder& order, Tube tube, Feature feature)
{
    const auto& features = order.reading.shaft.halves[tube].features;
    return std::find(features.begin(), features.end(), feature) != features.end();
}

// Whether a tube that has this feature is cut.
bool cut_with(const WorkOrder& order, Feature feature)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(),
                       [&](Tube tube) { return order.cut->plan.cut[tube] != Length() && has_feature(order, tube, feature); });
}

bool needs_second_chain(const WorkOrder& order)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) {
        return has_feature(order, tube, Feature::one_chain_guard) &&
               clearly_above(order.cut->plan.guard_cut[tube], order.limits.length(Limit::one_chain_shortening));
    });
}

bool has_lubrication_hole(const WorkOrder& order)
{
    return order.reading.shaft.halves[Tube::inner].lubrication_hole || order.reading.shaft.halves[Tube::outer].lubrication_hole;
}

bool guard_unmeasured(const WorkOrder& order)
{
    return !order.reading.shaft.halves[Tube::inner].guard || !order.reading.shaft.halves[Tube::outer].guard;
}

void add_saw_steps(std::vector<Step>& steps, const WorkOrder& order)
{
    const CutPlan& plan = order.cut->plan;
    steps.push_back({"Draw one line along both tubes, then part the shaft.", "it can be put together out of phase"});
    steps.push_back({"At the shortest position hold the halves side by side, one on each stub. Do the cuts marked on this sheet look right? If not, stop and measure again.",
                     guard_unmeasured(order) ? "a guard was not measured: confirm its cut here" : ""});
    if (cut_with(order, Feature::end_stop)) steps.push_back({"Take the end stop off the tube to be cut.", ""});
    if (any(plan.guard_cut)) steps.push_back({"Cut the guard tubes, each from its free end: " + cuts_text(order, plan.guard_cut) + ".", ""});
    if (any(plan.cut)) steps.push_back({"Cut the drive tubes, each from its free end: " + cuts_text(order, plan.cut) + ".", ""});
    steps.push_back({"Deburr inside and out, clear all swarf, grease the sliding tubes.", ""});
    if (cut_with(order, Feature::coated)) steps.push_back({"Treat the bare edge of the coated tube.", ""});
    if (cut_with(order, Feature::end_stop)) steps.push_back({"Fit the end stop again at the new end.", ""});
    if (any(plan.cut) && has_lubrication_hole(order)) steps.push_back({"Blow the lubrication passage clear and see grease come out of its hole.", ""});
}

void add_assembly_steps(std::vector<Step>& steps, const WorkOrder& order)
{
    steps.push_back({"Put the halves together in phase: the line on both tubes meets, the inner yokes stand in one plane.", ""});
    if (order.verdict == Verdict::cut)
        steps.push_back({"Measure both halves, both guards and the closed length; write them below.", ""});
    steps.push_back({"On the machine, at the shortest position: at least " + limit_length(order, Limit::closing_clearance) + " left to close.", ""});
    const auto& turning = order.cut->overlap.longest[Range::turning];
    const auto& least = check_of(order, CheckId::overlap_turning).limit;
    if (turning && least)
        steps.push_back({"At the longest position with the PTO turning: tubes overlap at least " +
                             length_text(order, Length::micrometres(*least), Toward::up) + " (computed " + length_text(order, *turning, Toward::down) + ").", ""});
    steps.push_back({"Both shields, the tractor's and the machine's, overlap the guard by at least " +
                         figure_with_unit(Length::millimetres(50), order.units, Toward::up) + "; the guard turns freely.", "shaft straight"});
    steps.push_back({needs_second_chain(order) ? "Fit a second chain at the tractor end; hook both chains with slack for every position."
                                               : "Hook the restraint chains with slack for every position; never hang the shaft up by them.", ""});
    if (order.fits.size() > 1) steps.push_back({"Check shortest and longest again with every other tractor.", ""});
}

void add_reference_note(std::vector<std::string>& notes, const WorkOrder& order)
{
    const ShaftReading& reading = order.reading;
    if (!reading.has_wide_angle) return;
    const bool outer = reading.reference == Reference::outer_cross;
    notes.push_back("Closed length as stated: " + length_text(order, reading.closed.value, Toward::nearest) + " from the " +
                    (outer ? "OUTER" : "INNER") + " cross of the wide-angle joint. That is " +
                    length_text(order, reading.closed_at[Reference::outer_cross], Toward::nearest) + " from the outer and " +
                    length_text(order, reading.closed_at[Reference::inner_cross], Toward::nearest) + " from the inner cross.");
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
        if (!fit.fit.shortest || (order.fits.size() == 1 && !says_reference)) continue;
        std::string note = fit.tractor.empty() ? "Shortest" : fit.tractor + ": shortest";
        note += " " + length_text(order, fit.shortest->value, Toward::nearest) + (says_reference ? " " + fit_reference_text(fit) : "");
        if (converted) note += ", " + length_text(order, fit.fit.shortest->value, Toward::down) + " between the inner crosses";
        const auto& turning = fit.longest[Range::turning];
        note += "; longest turning " + length_text(order, turning->value, Toward::nearest);
        if (converted) note += ", " + length_text(order, fit.fit.longest[Range::turning]->value, Toward::up) + " between the inner crosses";
        notes.push_back(note + ".");
    }
    if (order.fits.size() > 1) notes.emplace_back("The shaft must serve all of these: the least shortest and the greatest longest count.");
}

}  // namespace

std::vector<Step> steps_for(const WorkOrder& order)
{
    std::vector<Step> steps;
    if (!order.cut) return steps;
    steps.push_back({"PTO off, engine off, key out, machine lowered or blocked.", ""});
    if (order.verdict == Verdict::cut) add_saw_steps(steps, order);
    else steps.push_back({"Nothing is cut. Clean and grease the sliding tubes.", ""});
    add_assembly_steps(steps, order);
    return steps;
}

std::vector<std::string> cautions_for(const WorkOrder& order)
{
    std::vector<std::string> cautions{
        "DANGER: a turning shaft will catch clothing and kill. PTO off, engine off, key out before anyone comes near.",
        "Never run the shaft without its complete guard and both shields; a damaged guard is replaced first. Chains fitted.",
        "WARNING: a shaft that bottoms or pulls apart can break the gearbox or fly out. Check every position before the PTO turns.",
        "The machine's and the shaft's manuals and local rules come first. A qualified person checks and signs."};
    if (order.verdict == Verdict::refused)
        cautions.insert(cautions.begin(), "Do not cut this shaft and do not run it on this machine as it is.");
    return cautions;
}

std::vector<std::string> notes_for(const WorkOrder& order)
{
    std::vector<std::string> notes;
    add_reference_note(notes, order);
    add_fit_notes(notes, order);
    if (order.cut && guard_unmeasured(order))
        notes.emplace_back("A guard was not measured: its cut is that of its tube. Confirm it by holding the halves side by side.");
    const auto& halves = order.reading.shaft.halves;
    if (order.stops && (!halves[Tube::inner].measured || !halves[Tube::outer].measured))
        notes.emplace_back("A half was not measured: its length follows from the closed length and the other half's shoulder. Measure it before sawing.");
    return notes;
}

}  // namespace shaftcut

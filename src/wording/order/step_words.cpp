// What is done, in order, and the cautions.
#include "order/instruction_words.hpp"
#include "cautions.hpp"

namespace shaftcut {
namespace {

std::string said(PlainStep step, const Wording& w)
{
    switch (step) {
    case PlainStep::stop_engine: return w("PTO off, engine off, key out, machine blocked.");
    case PlainStep::find_out_why_not_closed: return w("Find out why it does not close as its halves say; measure again.");
    case PlainStep::mark_phase_and_part: return w("Mark the phase along both tubes, then part the shaft.");
    case PlainStep::compare_with_stated: return w("Closed length and both halves as stated? If not, stop.");
    case PlainStep::confirm_before_sawing: return w("Confirm what stands in the frame on sheet 1. Outside, or a no: saw nothing.");
    case PlainStep::confirm_before_fitting: return w("Confirm what stands in the frame on sheet 1. Outside, or a no: do not fit it.");
    case PlainStep::mark_cuts: return w("Mark the cuts from the free ends; check what is kept.");
    case PlainStep::hold_halves_side_by_side: return w("At the shortest position hold the halves side by side: do the cuts look right? If not, stop.");
    case PlainStep::have_shortest_read_again: return w("The machine is not here: have its shortest length read again, without this sheet in sight. Not as stated? Stop.");
    case PlainStep::confirm_guard_cut: return w("Confirm the cut of the guard that was not measured.");
    case PlainStep::compare_tube_left: return w("Compare what is kept with the least that the maker allows.");
    case PlainStep::take_end_stop_off: return w("Take the end stop off the tube to be sawn.");
    case PlainStep::deburr: return w("Deburr inside and out, clear swarf, grease.");
    case PlainStep::treat_coated_edge: return w("Treat the bare edge of the coated tube.");
    case PlainStep::refit_end_stop: return w("Fit the end stop again at the new end.");
    case PlainStep::clear_lubrication: return w("Clear the lubrication passage; see grease come out.");
    case PlainStep::clean_uncut: return w("Mark the phase, part the shaft, saw nothing, clean and grease.");
    case PlainStep::fill_in_boxes: return w("Measure what was cut, fill in the boxes.");
    case PlainStep::go_to_machine: return w("At the machine, before the PTO is used, do what follows.");
    case PlainStep::try_longest: return w("Longest position: no further apart than stated.");
    case PlainStep::try_every_tractor: return w("Check both positions with every other tractor.");
    case PlainStep::fit_second_chain: return w("Fit a second chain at the tractor end. Hook both, slack in every position.");
    case PlainStep::hook_chains: break;
    }
    return w("Chains hooked, slack in every position.");
}

std::string said(const TubesToSaw& step, const Wording& w)
{
    if (!step.only) return w("Saw the {guards:drive|guard} tubes, each at its free end.", {{"guards", step.guards}});
    return w("Saw the {end:tractor|implement} half's {guards:drive|guard} tube only.", {{"end", *step.only}, {"guards", step.guards}});
}

std::string percent(double value) { return figure(Angle::from_degrees(value)); }

std::string said(const PutTogether& step, const Wording& w)
{
    const std::string in_phase = w("Put together in phase: the marks meet.");
    if (!step.ripple) return in_phase;
    return running_text({in_phase, w("The speed then ripples by up to {in_phase} %, one step ({step}) out by up to {out_of_phase} %.",
                                     {{"in_phase", percent(step.ripple->in_phase)}, {"step", w.angle(step.ripple->step)}, {"out_of_phase", percent(step.ripple->out_of_phase)}})});
}

std::string said(const FitNewGuard& step, const Wording& w)
{
    return running_text({w("Fit a new guard to the {end:tractor|implement} half.", {{"end", step.end}}), w("Without it the shaft goes on no stub.")});
}

std::string said(const TryShortest& step, const Wording& w)
{
    return w("Shortest position: at least {clearance} left to close.", {{"clearance", w.both(Rounded::clearance, step.clearance)}});
}

std::string said(const ShieldsOverlapGuard& step, const Wording& w)
{
    return w("Both shields overlap the guard by {overlap} or more.", {{"overlap", w.length(Rounded::at_least, step.overlap)}});
}

}  // namespace

std::string say(const Step& step, const Wording& w)
{
    return std::visit([&w](const auto& one) { return said(one, w); }, step);
}

std::string say(Caution caution, const Wording& w)
{
    switch (caution) {
    case Caution::leave_shaft_alone: return w("Do not cut this shaft and do not run it on this machine as it is.");
    case Caution::turning_shaft_kills: return w("DANGER: a turning shaft catches clothing and kills. PTO off, engine off, key out first.");
    case Caution::guards_complete: return w("Run it only with guard, shields, chains complete.");
    case Caution::bottoming_or_parting: return w("WARNING: bottoming or parting breaks gearboxes.");
    case Caution::manuals_come_first: break;
    }
    return manuals_come_first(w);
}

std::string say(const GuardWarning& warning, const Wording& w)
{
    std::vector<std::string> halves;
    for (const GuardWarning::Half& half : warning.halves)
        halves.push_back(w("the {end:tractor|implement} half{damaged: has no guard|'s guard is damaged and not used again}", {{"end", half.end}, {"damaged", half.damaged}}));
    return running_text({w("The shaft must not run as it is: {halves}.", {{"halves", w.all_of(halves)}}),
                         w("Fit a new one, its tube standing out of it by 0 to {setback}.", {{"setback", w.both(Rounded::setback, warning.setback)}})});
}

}  // namespace shaftcut

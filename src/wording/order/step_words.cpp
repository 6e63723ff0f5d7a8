// What is done up to the bare ends.
#include "order/step_words.hpp"

#include "hitch/geometry_figures.hpp"
#include "order/step_parts_words.hpp"

namespace shaftcut {

std::string letter_of(SawnPart part)
{
    switch (part) {
    case SawnPart::inner_guard: return "A";
    case SawnPart::outer_guard: return "B";
    case SawnPart::inner_tube: return "C";
    case SawnPart::outer_tube: break;
    }
    return "D";
}

std::string say(const Task& task, const Wording& w)
{
    return std::visit([&w](const auto& one) { return steps::said(one, w); }, task);
}

std::string say(const Step& step, const Wording& w)
{
    std::vector<std::string> sentences;
    for (const Task& task : step.tasks) sentences.push_back(say(task, w));
    return running_text(sentences);
}

namespace steps {
namespace {

std::string confirmed_length(const Confirmation& one, const Wording& w)
{
    const NamedValue box{"box", expected_box(Rounded::measured, *one.expected, *one.plus_minus, w)};
    switch (one.what) {
    case Confirmed::closed:
        if (!one.from) return w("CONFIRM closed length: {box}.", {box});
        return w("CONFIRM closed length from the {from:OUTER|INNER} cross: {box}.", {{"from", *one.from}, box});
    case Confirmed::closed_inner_cross: return w("CONFIRM closed length between the INNER crosses: {box}.", {box});
    case Confirmed::inner_half: return w("CONFIRM inner half, inner cross to tube end: {box}.", {box});
    case Confirmed::outer_half: return w("CONFIRM outer half, inner cross to tube end: {box}.", {box});
    case Confirmed::inner_shoulder: return w("CONFIRM inner half, inner cross to the face that stops the other tube: {box}.", {box});
    default: return w("CONFIRM outer half, inner cross to the face that stops the other tube: {box}.", {box});
    }
}

std::string sawn_first(const SawCuts& task, const Wording& w)
{
    const NamedValue tubes{"tubes", letters(task.tubes, w)}, guards{"guards", letters(task.guards, w)};
    if (task.guards.empty()) return w("At the mark from the cross, blade on the waste side: saw {tubes}.", {tubes});
    if (task.tubes.empty()) return w("Blade on the waste side: saw {guards}.", {guards});
    return w("At the mark from the cross, blade on the waste side: saw {guards}, then {tubes}.", {guards, tubes});
}

}  // namespace

std::string in_one_piece(const std::string& text)
{
    std::string out;
    for (const char letter : text) out += letter == ' ' ? std::string("\u00a0") : std::string(1, letter);
    return out;
}

std::string expected_box(Rounded as, Length value, Length plus_minus, const Wording& w)
{
    return in_one_piece(w("{value} ± {tolerance} ▭", {{"value", w.both(as, value)}, {"tolerance", w.length(Rounded::allowed, plus_minus)}}));
}

std::string letters(const std::vector<SawnPart>& parts, const Wording& w)
{
    std::vector<std::string> names;
    for (const SawnPart part : parts) names.push_back(letter_of(part));
    return w.all_of(names);
}

std::string said(PlainTask task, const Wording& w)
{
    switch (task) {
    case PlainTask::slide_or_stop: return running_text({w("Welded, cracked, bent, twisted: stop."), w("Will not slide by hand: clean it; still not: stop.")});
    case PlainTask::find_out_why_not_closed: return w("It does not close as its halves say: find out why.");
    case PlainTask::open_guards: return w("If still together: pull it out a hand, unlatch the guards, slide them to the middle.");
    case PlainTask::look_at_forks: return w("Tube-yoke forks in one plane? yes ☐ no ☐ (it goes together in one plane).");
    case PlainTask::stroke_and_part: return running_text({w("One paint stroke on each tube yoke, in line; part it."), w("Came apart already: strokes after 4, both forks flat on the bench.")});
    case PlainTask::guards_off: return w("Guards off, keep the bearings.");
    case PlainTask::guard_that_stays:
        return w("One that will not come off whole: mark its letter from the free end only, saw it first in 7, by hand, plastic only, turning the half; then mark the bare tube and do 6 (ii) again.");
    case PlainTask::take_end_stop_off: return w("Take the end stop off.");
    case PlainTask::compare_tube_left: return w("Is what is kept as long as the maker's least?");
    case PlainTask::part_and_stroke: return w("One paint stroke on each tube yoke, in line; part it, guards on.");
    case PlainTask::no_hole_in_waste: return w("No lubrication hole in the waste.");
    case PlainTask::hold_to_saw: return running_text({w("Half on two supports, joint tied; wood jaws on tube or waste, never the joint in the vice."), w("Eyes, ears.")});
    case PlainTask::saw_coated: return w("Coated: abrasive disc, plastic and grease well away.");
    case PlainTask::deburr: return w("Deburr inside and out; pull a rag through; no compressed air into the joints.");
    case PlainTask::treat_coated_edge: return w("Treat the bare edge of the coated tube.");
    case PlainTask::refit_end_stop: return w("Fit the end stop again at the new end.");
    case PlainTask::clear_lubrication: return w("Clear the lubrication passage; see grease come out.");
    case PlainTask::grease_and_guards_on:
        return running_text({w("Grease inner tube, guard bearings, crosses."), w("Guards on until they latch; pull each: it does not come off ☐, it turns freely ☐.")});
    case PlainTask::fit_new_guard: return running_text({w("GUARD MISSING OR DAMAGED: fit a new one first."), w("Without it this sheet ends here: the shaft goes on no stub.")});
    case PlainTask::together: return w("Push it together, strokes in line.");
    case PlainTask::push_home: return w("Push it fully together.");
    case PlainTask::two_rings:
        return running_text({w("Two rings all round, tape or paint: ring 1 on the wider guard tube, ring 2 on the hard collar in which the narrower one sits, not on a soft cone, at least 250 mm apart."),
                             w("Guards pushed to their joints, fully together, tape along the shaft from ring to ring: {box}.", {{"box", in_one_piece(w("P = ▭"))}})});
    case PlainTask::go_to_machine: return w("The machine is elsewhere: do 13 to 16 there, before the PTO is used.");
    case PlainTask::hook_chains: return w("Chains to a fixed part, slack in both extreme positions ☐.");
    case PlainTask::fit_second_chain: return w("Fit a second chain; both to a fixed part, slack in both extreme positions ☐.");
    case PlainTask::turn_by_hand: return w("One round by hand where the machine's book lets you, hands out of the joints, tools away: nothing rubs ☐, the guard stands when held ☐.");
    case PlainTask::try_every_tractor: return w("Every other tractor: 13 to 16 again; P stays ☐.");
    case PlainTask::sign_and_hand_out: break;
    }
    return w("Tag to the driver; older sheets torn up; readings to the office.");
}

std::string said(const LookOver& task, const Wording& w)
{
    return running_text({w("As it came in: guard complete ☐ missing ☐ broken ☐ · chains ☐ · locks spring back ☐ · crosses free, without play ☐ · tubes straight ☐."),
                         task.device ? w("Clutch free ☐.") : ""});
}

std::string said(const ConfirmTask& task, const Wording& w)
{
    const Confirmation& one = task.confirm;
    if (!one.is_look()) return confirmed_length(one, w);
    if (one.what == Confirmed::built) return w("CONFIRM: built before 2021, by the plate, or by the owner's word and whose: yes ☐ no ☐ ____________.");
    return w("CONFIRM {outer:inner|outer} guard {letter}, still on: its tube stands out of it by 0 to {setback}: yes ☐ no ☐.",
             {{"outer", one.what == Confirmed::outer_guard}, {"letter", letter_of(guard_part(one.what == Confirmed::outer_guard ? Tube::outer : Tube::inner))},
              {"setback", w.both(Rounded::allowed, one.setback.value_or(Length()))}});
}

std::string said(const NewGuard& task, const Wording& w)
{
    return w("{guards} off for good: cut a new one so that its tube stands out of it by 0 to {setback}.", {{"guards", letters(task.guards, w)}, {"setback", w.both(Rounded::setback, task.setback)}});
}

std::string said(const MarkCuts& task, const Wording& w)
{
    std::vector<std::string> sentences;
    if (!task.tubes.empty())
        sentences.push_back(w("Mark {tubes} square, all round, from the free end AND from the cross (middle of the cap in the tube yoke's ear): the two marks within {apart}, else a length is wrong: stop.",
                              {{"tubes", letters(task.tubes, w)}, {"apart", w.both(Rounded::allowed, task.apart)}}));
    if (!task.guards.empty()) sentences.push_back(w("Mark {guards} from the free end.", {{"guards", letters(task.guards, w)}}));
    if (!task.guess.empty()) sentences.push_back(w("{guards} not measured: hold it beside its tube first.", {{"guards", letters(task.guess, w)}}));
    if (!task.not_cut.empty()) sentences.push_back(w("NOT cut: {parts}.", {{"parts", letters(task.not_cut, w)}}));
    return running_text(sentences);
}

std::string said(const SideBySide& task, const Wording& w)
{
    const std::string from_face = task.from_face_at_least ? in_one_piece(w("at least {length} ▭", {{"length", w.both(Rounded::at_least, task.from_face - task.plus_minus)}}))
                                                         : expected_box(Rounded::measured, task.from_face, task.plus_minus, w);
    const std::string where = task.posture ? in_words(*task.posture, w) : task.at;
    std::vector<std::string> sentences;
    if (where.empty()) sentences.push_back(w("Machine to its shortest position, both stubs bare; engine off, key in your pocket."));
    else sentences.push_back(w("Machine to its shortest position ({where}), both stubs bare; engine off, key in your pocket.", {{"where", where}}));
    sentences.push_back(w("A half on each stub (a flange by two bolts, hand tight), side by side, two straps round both."));
    sentences.push_back(w("Along the tubes: (i) from the face on the inner half's yoke to {outer_cut:the end of D|mark D}: {from_face};", {{"outer_cut", task.outer_cut}, {"from_face", from_face}}));
    if (task.past < Length())
        sentences.push_back(w("(ii) {inner_cut:the end of C|mark C} lies short of {outer_cut:the end of D|mark D} by {past}.",
                              {{"inner_cut", task.inner_cut}, {"outer_cut", task.outer_cut}, {"past", expected_box(Rounded::measured, -task.past, task.plus_minus, w)}}));
    else
        sentences.push_back(w("(ii) {inner_cut:the end of C|mark C} lies past {outer_cut:the end of D|mark D} by {past}.",
                              {{"inner_cut", task.inner_cut}, {"outer_cut", task.outer_cut}, {"past", expected_box(Rounded::measured, task.past, task.plus_minus, w)}}));
    sentences.push_back(w("Either outside: do not saw."));
    sentences.push_back(w("Both halves off before the engine starts."));
    sentences.push_back(w("Cannot be done, why ________: shortest read again, this sheet out of sight: {shortest} ± {tolerance} ☐.",
                          {{"shortest", w.both(Rounded::shortest, task.otherwise.shortest)}, {"tolerance", w.length(Rounded::allowed, task.otherwise.plus_minus)}}));
    return running_text(sentences);
}

std::string said(const ReadShortestAgain& task, const Wording& w)
{
    return running_text({w("The machine is not here: have its shortest read again without this sheet in sight: {box}.", {{"box", expected_box(Rounded::shortest, task.shortest, task.plus_minus, w)}}),
                         w("Outside: do not saw."), w("Cannot be read, why: ____________.")});
}

std::string said(const SawCuts& task, const Wording& w)
{
    return running_text({sawn_first(task, w), task.not_cut.empty() ? "" : w("NOT {parts}.", {{"parts", letters(task.not_cut, w)}})});
}

}  // namespace steps
}  // namespace shaftcut

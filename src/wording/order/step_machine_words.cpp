// What is read of the shaft after the saw, and what is done with it on its machine.
#include "hitch/geometry_figures.hpp"
#include "order/step_parts_words.hpp"

namespace shaftcut {
namespace {

constexpr int whole_millimetres = 0;

std::string where_of(const ReadRings& position, const Wording& w) { return position.posture ? in_words(*position.posture, w) : position.at; }

}  // namespace

std::string pulled_out(Rounded as, Length length, const Wording& w) { return w.both(as, length, whole_millimetres); }

std::string position_of(const ReadRings& position, const Wording& w)
{
    const std::string length = position.longest ? w.both(Rounded::longest, position.length) : w.both(Rounded::shortest, position.length);
    std::string name = position.longest ? w("Longest {range:working|turning|standing}: {length}{inner:| between the INNER crosses}", {{"range", *position.longest}, {"length", length}, {"inner", position.from.has_value()}})
                                        : w("Shortest: {length}{inner:| between the INNER crosses}", {{"length", length}, {"inner", position.from.has_value()}});
    if (!position.tractor.empty()) name = w("{name}, {where}", {{"name", name}, {"where", position.tractor}});
    if (const std::string where = where_of(position, w); !where.empty()) name = w("{name}, {where}", {{"name", name}, {"where", where}});
    return name;
}

std::string sum_on_rings(const std::string& pulled_out, const Wording& w) { return w("P + {pulled_out} {box}", {{"pulled_out", pulled_out}, {"box", steps::in_one_piece(w("= ▭"))}}); }

std::string when_outside(const ReadRings& position, const Wording& w)
{
    if (!position.longest) return w("More: this is not the shortest, go on in small steps to the least. Less: machine back, sheet back.");
    return w("Outside: write it down, sheet back before the PTO is used.");
}

std::string never(const ReadRings& position, const Wording& w)
{
    if (!position.longest) return w("Under NEVER: no further, shaft off.");
    return *position.longest == Range::standing ? w("Over NEVER: no further, the halves part.") : w("Over NEVER: the PTO stays off.");
}

namespace steps {
namespace {

std::string part_box(SawnPart part, const Expected& expected, Rounded as, const Wording& w)
{
    return in_one_piece(w("{letter} {box}", {{"letter", letter_of(part)}, {"box", expected_box(as, expected.value, expected.most - expected.value, w)}}));
}

}  // namespace

std::string said(const CloseDry& task, const Wording& w)
{
    const NamedValue most{"most", in_one_piece(w("at most {most} ▭", {{"most", w.both(Rounded::at_most, task.closed.most)}}))}, least{"least", w.both(Rounded::at_least, task.closed.least)};
    std::string closed = w("Closed length: {most}.", {most});
    if (task.from) {
        const NamedValue other{"other", w.both(Rounded::at_most, task.at_other_cross.value())};
        closed = w("Closed length from the {from:OUTER cross|INNER cross}: {most} ({other} from the {from:inner|outer}).", {{"from", *task.from}, most, other});
    }
    return running_text({w("Dry, guards off, strokes in line, joints straight: push fully together (on wood, hands on the tubes: the fork pinches)."), closed,
                         w("More: a burr, chips; look, then 10."), w("Less than {least}: sawn short or a deeper stop; do 10 first.", {least}),
                         w("Over both outer ends, between two edges that stay in sight with the guards on: {box}.", {{"box", in_one_piece(w("O = ▭"))}})});
}

std::string said(const KeptTubes& task, const Wording& w)
{
    return running_text({w("Kept, inner cross to tube end: {inner} {outer}.",
                           {{"inner", part_box(SawnPart::inner_tube, task.half[Tube::inner], Rounded::kept, w)}, {"outer", part_box(SawnPart::outer_tube, task.half[Tube::outer], Rounded::kept, w)}}),
                         w("Outside: on no stub; write all lengths down, sheet back: the office says what it is.")});
}

std::string said(const StandsOut& task, const Wording& w)
{
    std::vector<std::string> sentences{w("Pushed to their joints, the tube stands out of its guard by:")};
    for (const Tube tube : both_tubes) {
        if (!task.used[tube]) continue;
        const SawnPart guard = guard_part(tube);
        if (task.by[tube]) sentences.push_back(part_box(guard, *task.by[tube], Rounded::measured, w));
        else sentences.push_back(in_one_piece(w("{letter} 0 to {setback} ▭", {{"letter", letter_of(guard)}, {"setback", w.both(Rounded::allowed, task.setback)}})));
    }
    if (sentences.size() == 1) return "";
    sentences.push_back(w("Under 0: shorten the guard."));
    return running_text(sentences);
}

std::string said(const CloseGreased& task, const Wording& w)
{
    const NamedValue apart{"apart", in_one_piece(w("{apart} ▭", {{"apart", w.both(Rounded::allowed, task.apart)}}))};
    const std::string again = w("More: push, wait, push: grease and air.");
    if (!task.shorten || *task.shorten == Length())
        return running_text({w("O again, as in 9 within {apart}.", {apart}), again, w("Still more, a guard's end against the other's cone or bearing: sheet back.")});
    return running_text({w("O again, as in 9 within {apart}.", {apart}), again,
                         w("Still more, a guard's end against the other's cone or bearing: only then part it, shorten that guard by the excess, at most {most}, again from 11.",
                           {{"most", w.both(Rounded::allowed, *task.shorten)}})});
}

std::string said(const Ripple& ripple, const Wording& w)
{
    const auto percent = [](double value) { return figure(Angle::from_degrees(value)); };
    return w("The speed then ripples by up to {in_phase} %, one step ({step}) out by up to {out_of_phase} %.",
             {{"in_phase", percent(ripple.in_phase)}, {"step", w.angle(ripple.step)}, {"out_of_phase", percent(ripple.out_of_phase)}});
}

std::string said(const Couple& task, const Wording& w)
{
    return running_text({w("Straight, level, long enough to push a yoke on: bolted or clamped end first, quick lock last, the free half on a stand."), w("Pull each lock hard: it holds ☐; bolts at their torque ☐."),
                         w("Shields over the guards by {shields} at both ends, shaft straight ☐ ☐; less: the PTO stays off.", {{"shields", w.both(Rounded::at_least, task.shields)}})});
}

std::string said(const ReadRings& task, const Wording& w)
{
    const OnRings& rings = task.rings;
    const NamedValue name{"position", position_of(task, w)}, from{"from", pulled_out(Rounded::at_least, rings.good_from, w)}, to{"to", pulled_out(Rounded::at_most, rings.good_to, w)};
    const std::string read = w("{position}: the rings read P + {from} to P + {to}.", {name, from, to});
    if (rings.never_under) return running_text({read, w("Never under P + {least}.", {{"least", pulled_out(Rounded::at_least, *rings.never_under, w)}}), never(task, w), when_outside(task, w)});
    return running_text({read, w("Never over P + {most}.", {{"most", pulled_out(Rounded::at_most, rings.never_over.value_or(rings.good_to), w)}}), never(task, w), when_outside(task, w)});
}

std::string said(const StandingNotMeasured&, const Wording& w) { return w("Standing was not measured: do not lift or fold with this shaft on."); }

}  // namespace steps
}  // namespace shaftcut

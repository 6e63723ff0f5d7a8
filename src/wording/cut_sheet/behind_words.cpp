#include "cut_sheet/behind_words.hpp"

#include "whose.hpp"

namespace shaftcut::cut_sheet {
namespace {

std::string with_tolerance(const Toleranced& length, Rounded as, const Wording& w)
{
    return w("{length} ± {tolerance}", {{"length", w.both(as, length.value)}, {"tolerance", w.length(Rounded::doubt, length.plus_minus)}});
}

}  // namespace

Run run_of(const ShaftReading& reading, Between between, Reference reference)
{
    if (between == Between::grooves) return Run::grooves;
    if (!reading.has_wide_angle) return Run::crosses;
    return reference == Reference::outer_cross ? Run::outer_cross : Run::inner_cross;
}

std::string reading(const Measured& measured, const Wording& w)
{
    const NamedValue length{"length", with_tolerance(measured.length, measured.as, w)}, run{"run", measured.run}, at{"position", measured.at};
    const bool bent = measured.angles != PerEach<End, Angle>();
    const NamedValue tractor{"tractor", w.angle(measured.angles[End::tractor])}, implement{"implement", w.angle(measured.angles[End::implement])};
    if (measured.at.empty() && !bent) return w("{length} {run:between the locking grooves|at the outer cross|at the inner cross|between the crosses}", {length, run});
    if (!bent) return w("{length} {run:between the locking grooves|at the outer cross|at the inner cross|between the crosses}, {position}", {length, run, at});
    if (measured.at.empty())
        return w("{length} {run:between the locking grooves|at the outer cross|at the inner cross|between the crosses}, read at joint angles of {tractor} and {implement}",
                 {length, run, tractor, implement});
    return w("{length} {run:between the locking grooves|at the outer cross|at the inner cross|between the crosses}, {position}, read at joint angles of {tractor} and {implement}",
             {length, run, at, tractor, implement});
}

std::string closed_reading(const ShaftReading& reading, const Wording& w)
{
    const Run run = run_of(reading, Between::crosses, reading.reference);
    if (run != Run::inner_cross) return cut_sheet::reading({reading.closed, Rounded::measured, run, "", {}}, w);
    return w("{length} at the inner cross ({outer} at the outer cross)",
             {{"length", with_tolerance(reading.closed, Rounded::measured, w)}, {"outer", w.both(Rounded::measured, reading.closed_at[Reference::outer_cross])}});
}

std::string half_reading(const Toleranced& length, bool measured, const Wording& w)
{
    const std::string figure = with_tolerance(length, Rounded::measured, w);
    return measured ? figure : w("{length}, worked out from the closed length and the shoulder", {{"length", figure}});
}

std::string shortest_name(const std::string& tractor, const Wording& w) { return of_tractor(tractor, w("shortest"), w); }

std::string longest_name(const std::string& tractor, Range range, const Wording& w)
{
    return of_tractor(tractor, w("longest, {range:working|turning|standing}", {{"range", range}}), w);
}

std::string closed_name(const Wording& w) { return w("closed"); }

std::string half_part_name(End end, Tube tube, bool guard, const Wording& w)
{
    if (guard) return w("{end:tractor|implement} half, guard", {{"end", end}});
    return w("{end:tractor|implement} half, {tube:inner|outer} tube", {{"end", end}, {"tube", tube}});
}

std::string one_by_one(const std::vector<std::string>& parts)
{
    std::string all;
    for (const std::string& part : parts) all += (part.empty() || all.empty() ? "" : ", ") + part;
    return all;
}

std::string half_row(End end, const Wording& w) { return w("{end:tractor|implement} half", {{"end", end}}); }
std::string half_guard_row(End end, const Wording& w) { return w("{end:tractor|implement} half's guard", {{"end", end}}); }
std::string half_stop_row(End end, const Wording& w) { return w("{end:tractor|implement} half's stop", {{"end", end}}); }
std::string joint_row(End end, const Wording& w) { return w("{end:tractor|implement} joint", {{"end", end}}); }

std::string joint_angle_row(const std::string& tractor, End end, Range range, const Wording& w)
{
    return of_tractor(tractor, w("{end:tractor|implement} joint, {range:working|turning|standing}", {{"end", end}, {"range", range}}), w);
}

std::string of_series(const std::string& series, const Wording& w) { return w("of series {series}", {{"series", series}}); }

std::string stop_depth(Length depth, const std::optional<Length>& shoulder, JointKind joint, const Wording& w)
{
    const NamedValue stop{"depth", w.both(Rounded::measured, depth)};
    if (!shoulder) return w("{depth} from its tube's free end inwards", {stop});
    return w("{depth} from its tube's free end inwards; its shoulder is then {shoulder} from its {joint:cross|inner cross}",
             {stop, {"shoulder", w.both(Rounded::measured, *shoulder)}, {"joint", joint}});
}

std::string joint_lengths(const JobEnd& stated, const Wording& w)
{
    std::vector<std::string> parts;
    if (stated.spacing) parts.push_back(w("crosses {spacing} apart", {{"spacing", w.both(Rounded::measured, *stated.spacing)}}));
    if (stated.cross_to_groove) parts.push_back(w("cross to locking groove {length}", {{"length", w.both(Rounded::measured, *stated.cross_to_groove)}}));
    return one_by_one(parts);
}

std::string seen_in_two_views(const std::optional<Angle>& angle, const AngleViews& views, const Wording& w)
{
    const NamedValue side{"side", w.angle(views.side_view)}, plan{"plan", w.angle(views.plan)};
    if (!angle) return w("from {side} seen from the side and {plan} seen from above", {side, plan});
    return w("{angle}: from {side} seen from the side and {plan} seen from above", {{"angle", w.angle(*angle)}, side, plan});
}

std::string power_at_pto(std::int64_t watts, const Wording& w) { return w("{power} at the PTO", {{"power", w.power(watts)}}); }
std::string telephone(const std::string& number, const Wording& w) { return number.empty() ? "" : w("telephone {number}", {{"number", number}}); }

std::string not_measured(const std::vector<std::string>& tractors, const Wording& w)
{
    std::string names;
    for (const std::string& name : tractors) names += (names.empty() ? "" : "; ") + name;
    return w("NOT MEASURED: {tractors}", {{"tractors", names}});
}

std::string measured_by(const MeasuredBy& by, const Wording& w)
{
    return one_by_one({by.name, by.date, by.with.empty() ? "" : w("with {instrument}", {{"instrument", by.with}})});
}

std::string loosened(const std::string& why, const std::string& by, const Wording& w)
{
    if (why.empty()) return by.empty() ? "" : w("by {name}", {{"name", by}});
    return by.empty() ? why : w("{why}; by {name}", {{"why", why}, {"name", by}});
}

}  // namespace shaftcut::cut_sheet

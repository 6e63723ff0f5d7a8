#include "work_order_book/figure_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(FigureName which)
{
    switch (which) {
    case FigureName::stops_known: return "Both halves are known";
    case FigureName::path_confirmed: return "The closed length bears that out";
    case FigureName::modelled_closed: return "Closed length that halves and shoulders give";
    case FigureName::agreement: return "The measured closed length, beside that";
    case FigureName::guards_stop: return "The guards' own closed length is the measured one";
    case FigureName::exchanged_closed: return "Closed length if the two half lengths were exchanged";
    case FigureName::closed_most: return "Closed length, at most";
    case FigureName::cut_known: return "A cut can be computed";
    case FigureName::clearance: return "Clearance at the shortest";
    case FigureName::clearance_worst: return "Clearance at the shortest: worst";
    case FigureName::tube_left: return "Tube left beyond the least";
    case FigureName::guard_clearance: return "Guards: left to close";
    case FigureName::guard_cover: return "Guard on guard";
    case FigureName::guard_cover_worst: return "Guard on guard: worst";
    case FigureName::guard_setback: return "Guard tube short of its drive tube";
    case FigureName::greatest_longest: return "Greatest known longest";
    case FigureName::greatest_longest_at_most: return "Greatest known longest, at most";
    case FigureName::guard_cut_away: return "A guard that is cut keeps less than its least";
    case FigureName::saw_step: return "Saw: step";
    case FigureName::least_cut: return "Saw: least cut";
    case FigureName::saw_plus_minus: break;
    }
    return "Saw: ± of a cut";
}

const char* english(HalfFigure which)
{
    switch (which) {
    case HalfFigure::guard_shoulder: return "{end:Tractor|Implement} half ({tube:inner|outer} tube): guard shoulder";
    case HalfFigure::least_guard: return "{end:Tractor|Implement} half ({tube:inner|outer} tube): least that is kept of a guard that is cut";
    case HalfFigure::seat: return "{end:Tractor|Implement} half ({tube:inner|outer} tube): seat";
    case HalfFigure::least_tube: return "{end:Tractor|Implement} half ({tube:inner|outer} tube): least tube";
    case HalfFigure::cut_to: return "{end:Tractor|Implement} half ({tube:inner|outer} tube): kept length by an earlier sheet";
    case HalfFigure::lubrication_hole: break;
    }
    return "{end:Tractor|Implement} half ({tube:inner|outer} tube): lubrication hole, far edge";
}

const char* english(OverlapFigure which)
{
    switch (which) {
    case OverlapFigure::value: return "Overlap, longest {range:working|turning|standing}";
    case OverlapFigure::worst: return "Overlap, longest {range:working|turning|standing}: worst";
    case OverlapFigure::limit: break;
    }
    return "Overlap, longest {range:working|turning|standing}: limit";
}

const char* english(Origin from)
{
    switch (from) {
    case Origin::measured: return "measured on this shaft";
    case Origin::earlier_sheet: return "an earlier sheet, by the job";
    case Origin::series: return "the series";
    case Origin::half_series: return "the half's own series";
    case Origin::workshop: break;
    }
    return "the workshop";
}

}  // namespace

std::string name_of(FigureName which, const Wording& w) { return w(english(which)); }

std::string path_name(Tube tube, const Wording& w) { return w("Closed length if the {tube:inner|outer} tube is the one that stops", {{"tube", tube}}); }
std::string most_name(Tube tube, const Wording& w) { return w("{tube:inner|outer} half and the shoulder it meets, at most", {{"tube", tube}}); }
std::string shoulder_name(End end, Tube tube, const Wording& w)
{
    return w("{end:Tractor|Implement} half ({tube:inner|outer} tube): shoulder", {{"end", end}, {"tube", tube}});
}
std::string stop_name(End end, Tube tube, const Wording& w)
{
    return w("{end:Tractor|Implement} half ({tube:inner|outer} tube): cross to the face that stops the other tube, as the cut takes it", {{"end", end}, {"tube", tube}});
}

std::string name_of(HalfFigure which, End end, Tube tube, const Wording& w) { return w(english(which), {{"end", end}, {"tube", tube}}); }
std::string overlap_name(Range range, OverlapFigure which, const Wording& w) { return w(english(which), {{"range", range}}); }

std::string origin(Origin from, const Wording& w) { return w(english(from)); }

std::string origin_by_stop_depth(Length depth, const Wording& w)
{
    return w("half length less stop depth {depth}, as measured", {{"depth", figure_with_unit(depth, w.units(), Toward::nearest, 3)}});
}

std::string origin_of_least_guard(bool seat_known, Length free, const Wording& w)
{
    const std::string millimetres = figure(free, Units::mm, Toward::nearest, 3);
    return seat_known ? w("guard seat + {free} mm (the project's own choice)", {{"free", millimetres}})
                      : w("guard seat (not known: 0) + {free} mm (the project's own choice)", {{"free", millimetres}});
}

}  // namespace shaftcut::workbook

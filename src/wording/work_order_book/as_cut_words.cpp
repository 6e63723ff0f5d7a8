#include "work_order_book/as_cut_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(AsCutName which)
{
    switch (which) {
    case AsCutName::clearance: return "Clearance at the shortest";
    case AsCutName::overlap_working: return "Overlap, longest working";
    case AsCutName::overlap_turning: return "Overlap, longest turning";
    case AsCutName::overlap_standing: return "Overlap, longest with PTO stopped";
    case AsCutName::guard_clearance: return "Guard clearance at the shortest";
    case AsCutName::guard_cover: return "Guard on guard at the greatest longest";
    case AsCutName::guard_setback: break;
    }
    return "Guard tube short of its drive tube";
}

const char* english(AsCutFigure which)
{
    switch (which) {
    case AsCutFigure::kept: return "Half with the {tube:inner|outer} tube: kept, ± what it may be off";
    case AsCutFigure::length: return "Half with the {tube:inner|outer} tube: as read now, else as kept";
    case AsCutFigure::need: return "{tube:Inner|Outer} tube: what must still come off";
    case AsCutFigure::again: return "{tube:Inner|Outer} tube: what is sawn off again";
    case AsCutFigure::within: return "{tube:Inner|Outer} tube, then: as the sheet allows";
    case AsCutFigure::judged: return "Half with the {tube:inner|outer} tube: length that is judged";
    case AsCutFigure::at_worst: return "Closed length of the {tube:inner|outer} tube's path at worst";
    case AsCutFigure::own_lack: return "{tube:Inner|Outer} tube: short of its own least by";
    case AsCutFigure::blamed: return "{tube:Inner|Outer} tube: answers for an overlap that lacks";
    case AsCutFigure::short_by: return "{tube:Inner|Outer} tube: too short by";
    case AsCutFigure::guard_kept: return "Guard of the {tube:inner|outer} tube: kept, ± what it may be off";
    case AsCutFigure::guard_length: return "Guard of the {tube:inner|outer} tube: as read now, else as kept";
    case AsCutFigure::guard_most: return "Guard of the {tube:inner|outer} tube: the most it may read";
    case AsCutFigure::guard_need: return "Guard of the {tube:inner|outer} tube: what must still come off";
    case AsCutFigure::guard_again: return "Guard of the {tube:inner|outer} tube: what is sawn off again";
    case AsCutFigure::guard_within: return "Guard of the {tube:inner|outer} tube, then: as the sheet allows";
    case AsCutFigure::guard_judged: return "Guard of the {tube:inner|outer} tube: length that is judged";
    case AsCutFigure::guard_sawn: return "Guard of the {tube:inner|outer} tube: was sawn";
    case AsCutFigure::guard_short_by: break;
    }
    return "Guard of the {tube:inner|outer} tube: too short by";
}

const char* english(AsCutFact which)
{
    switch (which) {
    case AsCutFact::known: return "Something was measured after the cut";
    case AsCutFact::closes: return "Closed length then";
    case AsCutFact::stops_early: return "At worst it would stop before the shortest";
    case AsCutFact::closed_overlap: return "Overlap when closed";
    case AsCutFact::overlap_lacks: return "The greatest that an overlap lacks";
    case AsCutFact::tube_too_little: return "A tube is shorter than its least";
    case AsCutFact::tube_forbidden: return "A tube was sawn that must not be, or its lubrication hole is gone";
    case AsCutFact::exchanged: return "The two halves may be each other's readings";
    case AsCutFact::guards_within: return "Guards as the sheet allows";
    case AsCutFact::guard_cover_worst: return "Guard on guard at worst";
    case AsCutFact::guards_stop: break;
    }
    return "The guards would stop the shaft";
}

}  // namespace

std::string as_cut_heading(const Wording& w) { return w("4  Shaft as cut: type in what is measured after the cut"); }
std::string as_cut_gives_heading(const Wording& w) { return w("7  What the shaft as cut gives"); }
std::vector<std::string> as_cut_part_heads(const Wording& w) { return {w("Part"), w("Measured"), w("Unit"), w("By"), w("Result")}; }
std::vector<std::string> as_cut_heads(const Wording& w) { return {w("Sawn again as said"), w("Value"), w("Unit"), w("Limit"), w("Result")}; }

std::string as_cut_legend(const Wording& w)
{
    return running_text({w("RIGHT: as the sheet allows."), w("SAW MORE: by so much, then measure again."), w("TOO SHORT: by so much; not to be used."),
                         w("MEASURE: nothing can be said before it is measured, or measured again.")});
}

std::string as_cut_verdict(const Wording& w) { return w("Verdict as cut"); }

std::string name_of(AsCutName which, const Wording& w) { return w(english(which)); }
std::string name_of(AsCutFigure which, Tube tube, const Wording& w) { return w(english(which), {{"tube", tube}}); }
std::string name_of(AsCutFact which, const Wording& w) { return w(english(which)); }

std::string next_step(std::optional<AfterCutVerdict> verdict, const Wording& w)
{
    if (!verdict) return w("Measure both halves and both guards after the cut.");
    switch (*verdict) {
    case AfterCutVerdict::right: return w("As the sheet allows: now check shortest and longest on the machine.");
    case AfterCutVerdict::saw_more: return w("Saw again what is said above; deburr, then measure again.");
    case AfterCutVerdict::measure: return w("Saw nothing on this: measure what is said above, or both halves again and the closed length.");
    case AfterCutVerdict::too_short: break;
    }
    return w("Do not use it: a part that is longer by so much would serve.");
}

std::string overlap_as_cut(Range range, const Wording& w) { return w("Overlap at the longest, {range:working|turning|standing}", {{"range", range}}); }
std::string least_overlap_as_cut(Range range, const Wording& w) { return w("Least overlap at the longest, {range:working|turning|standing}", {{"range", range}}); }

}  // namespace shaftcut::workbook

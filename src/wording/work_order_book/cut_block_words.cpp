#include "work_order_book/cut_block_words.hpp"

#include "order/step_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(HowToSaw how)
{
    switch (how) {
    case HowToSaw::tube: return "off the tube's free end; keep: inner cross to its new end";
    case HowToSaw::guard: return "off the guard tube's free end; keep: inner cross to its new end";
    case HowToSaw::guard_unmeasured: return "guard not measured: its cut is its tube's; confirm it with the halves held side by side";
    case HowToSaw::guard_not_used: return "missing or not used again: nothing to cut; fit a complete guard before the shaft runs";
    case HowToSaw::not_at_all: break;
    }
    return "DO NOT CUT";
}

const char* english(AfterName which)
{
    switch (which) {
    case AfterName::closed: return "Closed length after the cut";
    case AfterName::clearance: return "Clearance left at the shortest";
    case AfterName::overlap_closed_before: return "Overlap closed, before the cut";
    case AfterName::overlap_closed: return "Overlap closed, after the cut";
    case AfterName::overlap_shortest: return "Overlap at the shortest";
    case AfterName::overlap_working: return "Overlap at the longest, working";
    case AfterName::overlap_turning: return "Overlap at the longest, PTO turning";
    case AfterName::overlap_standing: break;
    }
    return "Overlap at the longest, PTO stopped";
}

const char* english(AfterRemark which)
{
    switch (which) {
    case AfterRemark::inner_crosses: return "between the inner crosses";
    case AfterRemark::outer_cross: return "from the OUTER cross, as the closed length above";
    case AfterRemark::clearance: return "shortest less closed length after the cut";
    case AfterRemark::overlap_closed_before: return "inner half + outer half − closed length";
    case AfterRemark::overlap_closed: break;
    }
    return "of this the limits take their fraction";
}

}  // namespace

std::string cut_heading(const Wording& w) { return w("3  Cut off, and keep"); }
std::vector<std::string> cut_heads(const Wording& w) { return {w("Tube"), w("CUT OFF"), w("Unit"), w("±"), w("Keep"), w("How"), w("cut off, mm"), w("keep, mm")}; }

std::string piece_name(const CutPiece& piece, const Wording& w)
{
    return w("{letter}  {end:Tractor|Implement} half ({tube:inner|outer} tube): {guard:tube|guard}",
             {{"letter", letter_of(piece.guard ? guard_part(piece.tube) : tube_part(piece.tube))}, {"end", piece.end}, {"tube", piece.tube}, {"guard", piece.guard}});
}

std::string how_to_saw(HowToSaw how, const Wording& w) { return w(english(how)); }

std::string after_heading(const Wording& w) { return w("5  The shaft after the cut"); }
std::string name_of(AfterName which, const Wording& w) { return w(english(which)); }
std::string remark(AfterRemark which, const Wording& w) { return w(english(which)); }

}  // namespace shaftcut::workbook

#include "work_order_book/confirm_words.hpp"

namespace shaftcut::workbook {
namespace {

std::string closed_name_from(std::optional<Reference> cross, const Wording& w)
{
    return cross ? w("Closed length: pushed fully together, from the {cross:OUTER|INNER} cross", {{"cross", *cross}}) : w("Closed length: pushed fully together");
}

const char* english(ConfirmReason why)
{
    switch (why) {
    case ConfirmReason::not_measured: return "not measured: the cut rests on the closed length and the series";
    case ConfirmReason::lengths_disagree: return "closed length and halves disagree";
    case ConfirmReason::short_alone: return "short by its own figure alone";
    case ConfirmReason::cross_unknown: return "no other figure tells from which cross it was measured";
    case ConfirmReason::nothing_bears_it_out: return "no other figure bears it out; cut too short by it, the shaft bottoms";
    case ConfirmReason::guard_not_measured: return "not measured: it is cut as its tube is";
    case ConfirmReason::series_by_measures: return "the series was told by measuring: what measures alike may stop elsewhere";
    case ConfirmReason::lock_exposed: break;
    }
    return "from 2021 on no part of a lock may stand out (EN 12965:2019)";
}

}  // namespace

std::string confirm_heading(const Wording& w) { return w("2  Confirm before sawing"); }
std::string confirm_remark(const Wording& w) { return w("asked now; a figure outside its ± means a new job, not a new guess"); }
std::vector<std::string> confirm_heads(const Wording& w) { return {w("What is measured or looked at"), w("Expected"), w("Unit"), w("±"), w("Found"), w("Why")}; }

std::string confirm_name(Confirmed what, std::optional<Reference> cross, Length guard_setback, const Wording& w)
{
    const auto most = [&] { return figure_with_unit(guard_setback, w.units(), Toward::down); };
    switch (what) {
    case Confirmed::closed: return closed_name_from(cross, w);
    case Confirmed::closed_inner_cross: return w("Closed length, inner crosses: pushed fully together, between the INNER crosses");
    case Confirmed::inner_half: return w("Inner half: inner cross to the tube's free end");
    case Confirmed::outer_half: return w("Outer half: inner cross to the tube's free end");
    case Confirmed::inner_shoulder: return w("Inner half's shoulder: inner cross to the face that stops the other tube");
    case Confirmed::outer_shoulder: return w("Outer half's shoulder: inner cross to the face that stops the other tube");
    case Confirmed::inner_guard: return w("Inner guard: its tube stands out of it by 0 to {most}", {{"most", most()}});
    case Confirmed::outer_guard: return w("Outer guard: its tube stands out of it by 0 to {most}", {{"most", most()}});
    case Confirmed::built: break;
    }
    return w("Year of building: before 2021, by the plate, or by the owner's word and whose");
}

std::string reason(ConfirmReason why, const Wording& w) { return w(english(why)); }

std::string found_as_expected(bool as_expected, const Wording& w) { return as_expected ? w("as expected") : w("NOT AS EXPECTED: do not saw; write a new job"); }

}  // namespace shaftcut::workbook

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

}  // namespace

std::string as_cut_heading(const Wording& w) { return w("6  Shaft as cut: write down what is measured after the cut"); }
std::vector<std::string> as_cut_heads(const Wording& w) { return {w("What it gives"), w("Value"), w("Unit"), w("Limit"), w("Result")}; }

std::string as_cut_legend(const Wording& w)
{
    return running_text({w("PASS: as asked."),
                         w("WARN: the clearance is short by no more than the saw's ±, a guard has less than is asked, or a guard tube is longer than its drive tube or ends too far short of it."),
                         w("FAIL: not to be used.")});
}

std::string as_cut_verdict(const Wording& w) { return w("Verdict as cut"); }

std::string name_of(AsCutName which, const Wording& w) { return w(english(which)); }

std::string next_step(AsCutNext next, const Wording& w)
{
    switch (next) {
    case AsCutNext::fits: return w("Fits: now check shortest and longest on the machine.");
    case AsCutNext::fits_with_warning: return w("Fits, but a check says WARN: put that right. Then check shortest and longest on the machine.");
    case AsCutNext::refused: return w("DO NOT USE: a check says FAIL, or a tube is too short.");
    case AsCutNext::measure: break;
    }
    return w("Measure both halves (and both guards) after the cut.");
}

}  // namespace shaftcut::workbook

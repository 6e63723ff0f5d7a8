#include "work_order_book/cell_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(CellWord word)
{
    switch (word) {
    case CellWord::yes: return "yes";
    case CellWord::no: return "no";
    case CellWord::pass: return "PASS";
    case CellWord::warn: return "WARN";
    case CellWord::fail: return "FAIL";
    case CellWord::not_checked: return "NOT-CHECKED";
    case CellWord::cut: return "cut";
    case CellWord::fits: return "fits";
    case CellWord::refused: return "refused";
    case CellWord::measure: return "measure";
    case CellWord::right: return "RIGHT";
    case CellWord::saw_more: return "SAW MORE";
    case CellWord::not_measured: return "MEASURE";
    case CellWord::too_short: return "TOO SHORT";
    case CellWord::agrees: return "agrees";
    case CellWord::longer: return "longer";
    case CellWord::shorter: return "shorter";
    case CellWord::look: return "look";
    case CellWord::not_asked: break;
    }
    return "—";
}

}  // namespace

std::string cell_word(CellWord word, const Wording& w) { return w(english(word)); }

std::string yes_or_no(bool found, const Wording& w) { return cell_word(found ? CellWord::yes : CellWord::no, w); }

CellWord word_of(CheckResult result)
{
    switch (result) {
    case CheckResult::pass: return CellWord::pass;
    case CheckResult::warn: return CellWord::warn;
    case CheckResult::fail: return CellWord::fail;
    case CheckResult::not_checked: break;
    }
    return CellWord::not_checked;
}

CellWord word_of(Verdict verdict)
{
    switch (verdict) {
    case Verdict::cut: return CellWord::cut;
    case Verdict::fits: return CellWord::fits;
    case Verdict::refused: break;
    }
    return CellWord::refused;
}

CellWord word_of(ClosedAgreement agreement)
{
    switch (agreement) {
    case ClosedAgreement::agrees: return CellWord::agrees;
    case ClosedAgreement::longer: return CellWord::longer;
    case ClosedAgreement::shorter: break;
    }
    return CellWord::shorter;
}

CellWord word_of(AfterCutVerdict result)
{
    switch (result) {
    case AfterCutVerdict::right: return CellWord::right;
    case AfterCutVerdict::saw_more: return CellWord::saw_more;
    case AfterCutVerdict::measure: return CellWord::not_measured;
    case AfterCutVerdict::too_short: break;
    }
    return CellWord::too_short;
}

}  // namespace shaftcut::workbook

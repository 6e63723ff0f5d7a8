// The words that cells of a work order's workbook hold and that its formulas compare: both take them from here, so that a word that is
// translated is compared with its own translation.
#pragma once

#include <string>

#include "shaftcut/trade/cut/stops.hpp"
#include "shaftcut/trade/order/after_cut.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

enum class CellWord {
    yes, no,                         // what is found or known
    pass, warn, fail, not_checked,   // a check's result
    cut, fits, refused, measure,     // a verdict; of the shaft as cut: not measured yet
    right, saw_more, not_measured, too_short,  // a part as it is after the cut
    agrees, longer, shorter,         // the closed length beside that of the halves
    look, not_asked                  // a confirmation without a figure; one that is not asked for
};
std::string cell_word(CellWord word, const Wording& w);

std::string yes_or_no(bool found, const Wording& w);

CellWord word_of(CheckResult result);
CellWord word_of(Verdict verdict);
CellWord word_of(ClosedAgreement agreement);
// Of a part, not of the whole shaft.
CellWord word_of(AfterCutVerdict result);

}  // namespace shaftcut::workbook

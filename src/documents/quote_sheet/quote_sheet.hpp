// A quote on paper, for the customer: what is done, what it comes to, how long that holds, and where to sign.
//
// One page, unless its lines are many: then they go on over further ones. It shows no length of the shaft, no figure of a check and no time of
// work; a quote with a line that has no price shows no total and cannot be signed. Checked in tests/documents/quote_sheet.
#pragma once

#include <vector>

#include "shaftcut/documents/page/document.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/quote/quote.hpp"
#include "wording.hpp"

namespace shaftcut {

std::vector<Page> draw_quote_sheet(const Quote& quote, Paper paper, const FontFiles& files, const Wording& w);

DocumentInfo quote_sheet_info(const Quote& quote, const Wording& w);

}  // namespace shaftcut

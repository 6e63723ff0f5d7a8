// The tag that goes with a shaft: a sticker for its wider guard tube, or a card for the machine's papers, to be cut out of one sheet.
//
// It tells the driver for which machine and tractors the shaft was measured, which end goes to the tractor, and what he must not do; and
// the next fitter what it measures. Only what the answer holds stands on it, with boxes for what is read once it is on the machine.
// Checked in tests/documents/tag.
#pragma once

#include <vector>

#include "shaftcut/documents/page/document.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "shaftcut/documents/page/paper.hpp"
#include "shaftcut/trade/data/firm.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut {

struct Tag {
    const WorkOrder& order;  // one for which why_no_tag() says nothing
    Firm firm;
};

std::vector<Page> draw_tag(const Tag& tag, Paper paper, const FontFiles& files, const Wording& w);

DocumentInfo tag_info(const Tag& tag, const Wording& w);

}  // namespace shaftcut

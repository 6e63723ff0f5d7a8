// What stands on the front of a cut sheet, chosen and put in order: the sheet and a screen say the same.
// Checked in tests/wording/cut_sheet and tests/documents/cut_sheet.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "order/tube_view.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut::cut_sheet {

// What can hurt, one line each, the worst first. What is confirmed is said where it is confirmed.
std::vector<std::string> warning_lines(const WorkOrder& order, const Wording& w);

// A line under what would serve instead. `of`: which of the order's ways out it says. `number`: 0 for what is no way by itself.
struct WayLine {
    std::size_t number = 0;
    std::string says;
    std::vector<std::size_t> of;
};
// What is no way out comes first, among it that no new shaft serves; then what needs no part, the shortest first. Longer guards alone let no
// tubes hold better: then they come last.
std::vector<WayLine> ways_out(const WorkOrder& order, const Wording& w);

// positions() of the order; each with its place as the job names it, if wished.
std::string positions_of(const WorkOrder& order, bool with_place, const Wording& w);

// What comes off a tube and what is kept of it: "94 mm", "94 mm ?" where the guard was not measured; "(keep 574)".
std::string cut_said(const TubeView& view, const Wording& w);
std::string kept_said(const TubeView& view, const Wording& w);
// Of one that is not cut: "(stays 574 mm)".
std::string stays_said(const TubeView& view, const Wording& w);

// What the rings read in a position, each a sum with boxes: "good from P ▭ + 37 mm = ▭", and when a reading lies outside.
struct RingLines {
    std::string from, to, expected, never, remarks;
};
RingLines ring_lines(const ReadRings& position, const Wording& w);

// The number of the last step on the front. A shaft that fits may have all of its steps there. `order` must have steps.
int last_of_front(const WorkOrder& order);

}  // namespace shaftcut::cut_sheet

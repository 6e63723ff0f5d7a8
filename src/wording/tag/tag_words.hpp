// What the tag says, which goes with the shaft to whoever drives it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/firm.hpp"
#include "shaftcut/trade/order/tag.hpp"
#include "wording.hpp"

namespace shaftcut::tag {

// Of the file.
std::string document_title(const std::string& order, const Wording& w);
std::string document_subject(const Wording& w);

// Of the page around the tag: where it goes.
enum class PageCaption { as_sticker, as_card, never_tie };
// Without a figure.
enum class TagCaption {
    not_yet_tried, other_machine, tractor, machine, speed_not_stated, grease, engine_off, stand_clear, guard_complete, never_step_over, more_on_the_sheet, overall_box, rings_box
};
std::string say(PageCaption caption, const Wording& w);
std::string say(TagCaption caption, const Wording& w);
std::string say(WhyNoTag why, const std::string& order, const Wording& w);

// "Cut for mower on tractor A and tractor B, drawbar, second hole, as on 2026-11-24": the first line.
std::string made_for(const WorkOrder& order, const Wording& w);
std::string speed(int per_minute, const Wording& w);
// What the driver can see of the position up to which the PTO may turn: one for each tractor that says so.
std::vector<std::string> position_limits(const WorkOrder& order, const Wording& w);
// Which half holds what: "outer tube".
std::string tube_name(Tube tube, const Wording& w);
// "Alder Workshop, telephone 555 0100": empty where neither is stated.
std::string firm_line(const Firm& firm, const Wording& w);
std::string numbers(const std::string& order, const std::string& shaft, const Wording& w);
// For the next fitter: closed length, shortest, longest turning, all between the same crosses. `order.cut` must be there.
std::string lengths(const WorkOrder& order, const Wording& w);

}  // namespace shaftcut::tag

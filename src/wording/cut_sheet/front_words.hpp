// What the cut sheet says with figures: title, verdict, halves, lists.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut::cut_sheet {

// The file's title, and what the title block is about.
std::string document_title(const std::string& order, const Wording& w);
std::string subject(const std::string& shaft_number, const Wording& w);

// "Closed now: 860 mm from the outer cross = 796 mm from the inner cross", the cross that the job stated first.
std::string closed_now(const WorkOrder& order, const Wording& w);
std::string closed_after(const WorkOrder& order, const Wording& w);

// A position's length, with the place where the job says that it was measured; none where that is empty.
struct PositionAt {
    Length length;
    std::string at;
};
struct PositionsSaid {
    std::optional<PositionAt> shortest;
    PerEach<Range, std::optional<PositionAt>> longest;
};
// "Shortest 742 mm, longest working 800 mm (level), turning 850 mm, INNER crosses": what the steps refer to. Empty where none is known.
std::string positions(const PositionsSaid& positions, bool has_wide_angle, const Wording& w);

std::string half_name(End end, const Wording& w);                   // "TRACTOR HALF"
std::string part_name(End end, bool guard, const Wording& w);       // "TRACTOR HALF · GUARD"
std::string part_to_cut(End end, bool guard, const Wording& w);     // "TRACTOR HALF · GUARD cut off"
std::string carried(Tube tube, JointKind joint, const Wording& w);  // "carries the inner tube · standard joint, one cross"

// Of what is cut off and kept, in its box.
std::string kept_in_brackets(Length kept, const Wording& w);       // "(keep 574)"
std::string stays_in_brackets(Length kept, const Wording& w);      // "(stays 574 mm)"
std::string cut_plus_minus(Length plus_minus, const Wording& w);   // "± 1 mm": what the worst cases count with, never in inches
std::string doubted(const std::string& cut, const Wording& w);     // "94 mm ?": of a guard that was not measured
// On paper in inches, the millimetres; a guard that was not measured has no kept length.
std::string millimetres_of(Length cut, const std::optional<Length>& kept, const Wording& w);

// A length of a half in its drawing: what it was, and what is kept of it.
struct DrawnLength {
    bool guard = false, measured = false, cut_known = false, comes_off = false;
    std::optional<Length> before, kept;
    bool alone = false;  // no room for that it stays, which its letter says
};
std::string drawn_length(const DrawnLength& length, const Wording& w);

// What is confirmed first.
std::string confirm_outside(Verdict verdict, const Wording& w);

std::string step_number(int number, const Wording& w);  // "7"

// In the lists.
std::string warning(CheckId check, const std::string& says, const Wording& w);
std::string not_checked(CheckId check, const std::string& why, const Wording& w);
std::string numbered_source(std::size_t number, const std::string& source, const Wording& w);  // "[3] EN 12965:2019 … ."

}  // namespace shaftcut::cut_sheet

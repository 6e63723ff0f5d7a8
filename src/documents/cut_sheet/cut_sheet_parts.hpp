// The parts of the cut sheet, each drawn by one function.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "cut_sheet/behind_words.hpp"
#include "cut_sheet/captions.hpp"
#include "cut_sheet/front_words.hpp"
#include "page/boxed_text.hpp"
#include "page/sheet_parts.hpp"
#include "order/step_words.hpp"
#include "order/tube_view.hpp"
#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut::cut_sheet {

using namespace sheet;

// `type`: what the document is, as in Heading.
Heading heading_of(const WorkOrder& order, TitleCaption type, const Wording& w);
// Customer, machine, tractors, with what the job says of each.
std::vector<std::pair<std::string, std::string>> heading_fields(const WorkOrder& order, const Wording& w);

// How much room the first sheet leaves each of its parts: the nearer, the more stands on it.
struct Front {
    std::size_t title_lines = 3;  // of a field in the title block
    bool low_halves = false;      // halves drawn lower, without what can be left out
    bool positions_at = true;     // each position with the place where the job says that it was measured
    double gap = 1.2;             // between the halves and what stands over and under them
    BoxedText steps{};
    bool halves_beside = false;   // one half beside the other, of a shaft that is not sawn
};

// Each draws within the width of `room` from its top down and returns the y below itself.
double draw_verdict(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w, const Front& front = {});
double draw_warnings(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w);
double draw_half(Canvas& canvas, Rect room, const WorkOrder& order, End end, const Front& front, const Wording& w);
// Strikes out a letter in its ring: from ring to ring on both sides of the letter, which stays readable.
void draw_strike(Canvas& canvas, Point centre);
// Draws what comes off one tube in its box at `room`.
void draw_cut_box(Canvas& canvas, Rect room, const WorkOrder& order, const TubeView& view, const Wording& w);
double cut_box_height(const Canvas& canvas, double width, const WorkOrder& order, const Wording& w);

double draw_sign_off(Canvas& canvas, Rect room, const Wording& w);
inline constexpr double sign_off_height = 12;

// What is never forgotten, over the steps of a side from number `from` on, and what is done where a length is not confirmed.
double draw_rules(Canvas& canvas, Rect room, const WorkOrder& order, std::size_t from, const Wording& w);

// The steps from number `from` on, up to `last` of the bench, on the sheet while they fit, all of them with `foot` below. The first that did not,
// or that behind the last.
std::size_t draw_steps(Sheets& sheets, const WorkOrder& order, std::size_t from, int last, double foot, const BoxedText& style, const Wording& w);
// Whether those from number `from` on stand on the sheet down to `bottom`.
bool steps_fit(Sheets& sheets, const WorkOrder& order, std::size_t from, int last, double bottom, const BoxedText& style, const Wording& w);
// Where the rings are read, each position in a frame.
double draw_position(Canvas& canvas, Rect room, const ReadRings& position, const Wording& w);
double position_height(const Canvas& canvas, double width, const ReadRings& position, const Wording& w);

void draw_refusal(Sheets& sheets, const WorkOrder& order, const Wording& w);
// Leaf 2.
void draw_checks(Sheets& sheets, const WorkOrder& order, const Wording& w);
Table readings_table(Sheets& sheets, const WorkOrder& order, const Wording& w);
Table stated_table(Sheets& sheets, const WorkOrder& order, const Wording& w);

}  // namespace shaftcut::cut_sheet

// The parts of the cut sheet, each drawn by one function.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "cut_sheet/behind_words.hpp"
#include "cut_sheet/captions.hpp"
#include "cut_sheet/front_words.hpp"
#include "page/sheet_parts.hpp"
#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut::cut_sheet {

using namespace sheet;

// One of the four tubes, named by the end that it is on.
struct TubeView {
    int number = 0;  // 1, 2: the tractor half's guard and tube; 3, 4: the implement half's
    End end = End::tractor;
    Tube tube = Tube::inner;
    bool guard = false;
    std::optional<Length> before;  // as measured, or worked out from the closed length
    bool measured = false;
    bool used = true;              // a guard that is damaged or missing is not
    std::optional<Length> cut;     // nothing when refused
    std::optional<Length> kept;    // nothing when refused or not known

    bool comes_off() const { return cut && *cut > Length(); }
};
TubeView tube_view(const WorkOrder& order, End end, bool guard);
std::vector<TubeView> tube_views(const WorkOrder& order);  // by number, those that are used

// `type`: what the document is, as in Heading.
Heading heading_of(const WorkOrder& order, TitleCaption type, const Wording& w);
// Customer, machine, tractors, with what the job says of each.
std::vector<std::pair<std::string, std::string>> heading_fields(const WorkOrder& order, const Wording& w);

// How what is confirmed first stands on the first sheet: each in its own words, or, where many leave no room for them, as names in cells
// with the words behind.
enum class ConfirmForm { rows, cells };
// Both 0 high where nothing is confirmed.
double confirmations_height(const Canvas& canvas, double width, const WorkOrder& order, ConfirmForm form, const Wording& w);
double draw_confirmations(Canvas& canvas, Rect room, const WorkOrder& order, ConfirmForm form, const Wording& w);
Blocks confirmation_blocks(const WorkOrder& order, const Wording& w);  // the words of the cells

Blocks step_blocks(const WorkOrder& order, const Wording& w);
Blocks warning_blocks(const WorkOrder& order, const Wording& w);  // checks that warn
Blocks remark_blocks(const WorkOrder& order, const Wording& w);   // checks that were not made, and notes
// Why the job is refused, and what would serve.
Blocks refusal_blocks(const WorkOrder& order, const Wording& w);

// Whether each of the first sheet's positions is said with the place where the job says that it was measured.
enum class PositionWords { with_place, alone };
// Each draws within the width of `room` from its top down and returns the y below itself.
double draw_verdict(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w, PositionWords positions = PositionWords::with_place);
double draw_half(Canvas& canvas, Rect room, const WorkOrder& order, End end, const Wording& w);
double draw_overlaps(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w);
double draw_sign_off(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w);
double sign_off_height(const WorkOrder& order);

void draw_checks(Sheets& sheets, const WorkOrder& order, const Wording& w);
void draw_stated(Sheets& sheets, const WorkOrder& order, const Wording& w);
void draw_readings(Sheets& sheets, const WorkOrder& order, const Wording& w);
void draw_limits(Sheets& sheets, const WorkOrder& order, const Wording& w);

}  // namespace shaftcut::cut_sheet

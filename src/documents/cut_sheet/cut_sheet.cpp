#include "cut_sheet/cut_sheet.hpp"

#include <algorithm>
#include <array>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "cut_sheet/front_lines.hpp"
#include "drawing/geometry_parts.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"
#include "shaft_title_words.hpp"

namespace shaftcut {
namespace {

using namespace cut_sheet;

constexpr BoxedText wide{{3, Weight::regular, 0.85, 1.5}, {3.5, Weight::regular, 0.85}, 22};
constexpr BoxedText near{{2.5, Weight::regular, 0.78, 1.42}, {3.5, Weight::regular, 0.72}, 17};
constexpr BoxedText nearest{{2.5, Weight::regular, 0.68, 1.4}, {3.5, Weight::regular, 0.66}, 15};
// Too much for one side: low halves, and steps as they are read best.
constexpr Front crowded{2, true, true, 1.2, BoxedText{}};
// From the one that is easiest to read to the one that leaves most room.
constexpr std::array fronts{Front{3, false, true, 2.5, wide}, Front{}, Front{2, false, true, 1.2, near}, Front{2, true, true, 1.2, near}, Front{1, true, false, 1, nearest}};

// Who signs, below the last step.
constexpr double foot = sign_off_height + 1.5;

// Of a shaft that is not sawn the drawing says which half is which.
double draw_halves_beside(Canvas& canvas, Rect room, const WorkOrder& order, const Front& front, const Wording& w)
{
    const double gap = 2, width = (room.width - gap) / 2;
    const double left = draw_half(canvas, {room.x, room.y, width, 0}, order, End::tractor, front, w);
    return std::max(left, draw_half(canvas, {room.x + width + gap, room.y, width, 0}, order, End::implement, front, w));
}

void draw_head(Sheets& sheets, const WorkOrder& order, const Front& front, const Wording& w)
{
    const Rect room = sheets.room();
    Canvas& canvas = sheets.canvas();
    const auto below = [&](double gap) { return Rect{room.x, sheets.y() + gap, room.width, 0}; };
    sheets.move_to(draw_verdict(canvas, below(0), order, w, front));
    sheets.move_to(draw_warnings(canvas, below(0.6), order, w));
    if (front.halves_beside) sheets.move_to(draw_halves_beside(canvas, below(front.gap), order, front, w));
    else for (const End end : both_ends) sheets.move_to(draw_half(canvas, below(front.gap), order, end, front, w));
}

// Over the steps of a side that begins with this one; what a turning shaft does, before the first that is done with it on its machine.
void draw_rules_above(Sheets& sheets, const WorkOrder& order, std::size_t from, double gap, bool with_cautions, const Wording& w)
{
    const Rect room = sheets.room();
    sheets.move_to(draw_rules(sheets.canvas(), {room.x, sheets.y() + gap, room.width, 0}, order, from, w) + 0.6);
    if (!with_cautions) return;
    sheets.canvas().begin(Part::paragraph);
    sheets.move_to(sheets.canvas().paragraph({room.x, sheets.y() - 0.3}, room.width, caution_block(say_all(order.cautions, w)).text, lettering::close_strong) + 0.6);
}

bool is_cut(const WorkOrder& order) { return order.verdict == Verdict::cut; }

// Two wide-angle crosses and their names need the whole width.
bool may_lie_beside(const WorkOrder& order) { return !is_cut(order) && !order.reading.has_wide_angle; }

double foot_of_front(const WorkOrder& order) { return is_cut(order) ? 0 : foot; }

// The head of a front; its steps follow.
Sheets headed(const Fonts& fonts, Heading heading, const WorkOrder& order, Paper paper, const Front& front, const Wording& w)
{
    heading.most_lines = front.title_lines;
    Sheets sheets(fonts, heading, paper);
    draw_head(sheets, order, front, w);
    // No rules over no step.
    Sheets ruled = sheets;
    draw_rules_above(ruled, order, 0, 1 + front.gap / 2, !is_cut(order), w);
    return steps_fit(ruled, order, 0, order.steps.front().number, ruled.y() + ruled.left_over(), front.steps, w) ? ruled : sheets;
}

// The lettering in which the steps from this number on leave room for who signs; where they go on over a further side, one that is read with ease.
const BoxedText& back_style(Sheets& sheets, const WorkOrder& order, std::size_t from, const Wording& w)
{
    for (const Front& one : fronts)
        if (steps_fit(sheets, order, from, order.steps.back().number, sheets.room().bottom() - foot, one.steps, w)) return one.steps;
    return crowded.steps;
}

// What the front left, on the next side.
void draw_back(Sheets& sheets, const WorkOrder& order, std::size_t from, const Wording& w)
{
    const auto side = [&](bool says_so, bool with_cautions) {
        if (says_so && sheets.left_over() > 0) sheets.ensure(sheets.room().height);
        else sheets.next();
        draw_rules_above(sheets, order, from, 0, with_cautions, w);
    };
    side(!is_cut(order) || order.steps[from].number <= last_saw_step, is_cut(order));
    const BoxedText& style = back_style(sheets, order, from, w);
    while ((from = draw_steps(sheets, order, from, order.steps.back().number, foot, style, w)) < order.steps.size()) side(true, false);
}

// Front and back, to the box where who did it signs.
Sheets with_steps(Sheets sheets, const WorkOrder& order, const Front& front, const Wording& w)
{
    const std::size_t next = draw_steps(sheets, order, 0, last_of_front(order), foot_of_front(order), front.steps, w);
    if (next < order.steps.size()) draw_back(sheets, order, next, w);
    draw_sign_off(sheets.canvas(), {sheets.room().x, sheets.y() + 1, sheets.room().width, 0}, w);
    return sheets;
}

// In the first front that has room for all of its steps; where none has, in one that is read with ease, and the steps go on behind: unless
// a nearer one saves a side.
Sheets bench_sides(const Fonts& fonts, const Heading& heading, const WorkOrder& order, Paper paper, const Wording& w)
{
    for (Front front : fronts) {
        front.halves_beside = may_lie_beside(order);
        Sheets sheets = headed(fonts, heading, order, paper, front, w);
        if (steps_fit(sheets, order, 0, last_of_front(order), sheets.room().bottom() - foot_of_front(order), front.steps, w)) return with_steps(std::move(sheets), order, front, w);
    }
    const Front& with_ease = is_cut(order) ? crowded : fronts.front();
    const auto drawn = [&](const Front& front) { return with_steps(headed(fonts, heading, order, paper, front, w), order, front, w); };
    Sheets sheets = drawn(with_ease);
    if (sheets.count() <= 2) return sheets;
    Sheets nearer = drawn(fronts.back());
    return nearer.count() < sheets.count() ? nearer : sheets;
}

// What of the title block had no room and stands in no table.
Blocks in_full(const Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    Blocks blocks = sheets.in_full();
    const auto fields = heading_fields(order, w);
    const auto in_table = [&](const Block& block) {
        return std::any_of(fields.begin(), fields.end(), [&](const auto& field) { return field.first == say(TitleCaption::other_tractors, w) && block.text == field.first + field.second; });
    };
    blocks.erase(std::remove_if(blocks.begin(), blocks.end(), in_table), blocks.end());
    return blocks.size() > 1 ? blocks : Blocks{};
}

void draw_leaf_2(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    sheets.next();
    draw_checks(sheets, order, w);
    Table readings = readings_table(sheets, order, w), stated = stated_table(sheets, order, w);
    const Blocks full = in_full(sheets, order, w);
    const bool has_machine = std::any_of(order.fits.begin(), order.fits.end(), [](const FitReading& fit) { return fit.geometry.has_value(); });
    (stated.rows.empty() ? readings : stated).is_last = full.empty() && !has_machine;
    draw_table(sheets, readings);
    draw_table(sheets, stated);
    sheets.flow(full);
    geometry::draw_extremes(sheets, order, w);
    geometry::draw_machines(sheets, order, w);
}

}  // namespace

std::vector<Page> draw_cut_sheet(const WorkOrder& order, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    const Heading heading = heading_of(order, TitleCaption::type, w);
    if (order.verdict == Verdict::refused) {
        Sheets sheets(fonts, heading, paper);
        draw_refusal(sheets, order, w);
        draw_leaf_2(sheets, order, w);
        return sheets.finished();
    }
    Sheets sheets = bench_sides(fonts, heading, order, paper, w);
    draw_leaf_2(sheets, order, w);
    return sheets.finished();
}

DocumentInfo cut_sheet_info(const WorkOrder& order, const Wording& w)
{
    return document_info(document_title(order.order, w), order.owner, say(order.shaft_title, w), order.date);
}

}  // namespace shaftcut

#include "cut_sheet/cut_sheet.hpp"

#include <array>

#include "cut_sheet/cut_sheet_parts.hpp"
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

void draw_head(Sheets& sheets, const WorkOrder& order, const Front& front, const Wording& w)
{
    const Rect room = sheets.room();
    Canvas& canvas = sheets.canvas();
    const auto below = [&](double gap) { return Rect{room.x, sheets.y() + gap, room.width, 0}; };
    sheets.move_to(draw_verdict(canvas, below(0), order, w, front));
    sheets.move_to(draw_warnings(canvas, below(0.6), order, w));
    for (const End end : both_ends) sheets.move_to(draw_half(canvas, below(front.gap), order, end, front, w));
}

// Over the steps of a side that begins with this one.
void draw_rules_above(Sheets& sheets, const WorkOrder& order, std::size_t from, double gap, const Wording& w)
{
    sheets.move_to(draw_rules(sheets.canvas(), {sheets.room().x, sheets.y() + gap, sheets.room().width, 0}, order, from, w) + 0.6);
}

// The head of a front; its steps follow.
std::pair<Sheets, Front> headed(const Fonts& fonts, Heading heading, const WorkOrder& order, Paper paper, const Front& front, const Wording& w)
{
    heading.most_lines = front.title_lines;
    Sheets sheets(fonts, heading, paper);
    draw_head(sheets, order, front, w);
    // No rules over no step.
    Sheets ruled = sheets;
    draw_rules_above(ruled, order, 0, 1 + front.gap / 2, w);
    const bool room_for_one = steps_fit(ruled, order, 0, order.steps.front().number, ruled.y() + ruled.left_over(), front.steps, w);
    return {room_for_one ? std::move(ruled) : std::move(sheets), front};
}

// In the first front that has room down to the last saw stroke; where none has, in one that is read with ease, and the steps go on behind.
std::pair<Sheets, Front> begin(const Fonts& fonts, const Heading& heading, const WorkOrder& order, Paper paper, const Wording& w)
{
    for (const Front& front : fronts) {
        auto begun = headed(fonts, heading, order, paper, front, w);
        Sheets& sheets = begun.first;
        if (steps_fit(sheets, order, 0, last_saw_step, sheets.room().bottom(), front.steps, w)) return begun;
    }
    return headed(fonts, heading, order, paper, crowded, w);
}

// The lettering in which the steps from this number on leave room for who signs; where they go on over a further side, one that is read with ease.
const BoxedText& back_style(Sheets& sheets, const WorkOrder& order, std::size_t from, double foot, const Wording& w)
{
    for (const Front& one : fronts)
        if (steps_fit(sheets, order, from, order.steps.back().number, sheets.room().bottom() - foot, one.steps, w)) return one.steps;
    return crowded.steps;
}

// From the first file stroke on, on the next side.
void draw_back(Sheets& sheets, const WorkOrder& order, std::size_t from, const Wording& w)
{
    const auto side = [&](bool says_so) {
        if (says_so && sheets.left_over() > 0) sheets.ensure(sheets.room().height);
        else sheets.next();
        draw_rules_above(sheets, order, from, 0, w);
    };
    side(from < order.steps.size() && order.steps[from].number <= last_saw_step);
    const Block cautions = caution_block(say_all(order.cautions, w), Spacing::close);
    const double foot = sign_off_height + height_of(sheets.canvas(), sheets.room().width, cautions) + between_lists + 2.5;
    // The line that says where a sheet goes on is left free too.
    const double strip = sheets.room().bottom() - sheets.y() - sheets.left_over();
    const BoxedText& style = back_style(sheets, order, from, foot + strip, w);
    while ((from = draw_steps(sheets, order, from, order.steps.back().number, style, w)) < order.steps.size()) side(true);
    sheets.ensure(foot);
    sheets.move_to(draw_sign_off(sheets.canvas(), {sheets.room().x, sheets.y() + 1, sheets.room().width, 0}, w) + 1);
    sheets.flow({cautions});
}

void draw_leaf_2(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    sheets.next();
    draw_checks(sheets, order, w);
    draw_readings(sheets, order, w);
    draw_stated(sheets, order, w);
    sheets.flow(sheets.in_full());
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
    auto [sheets, front] = begin(fonts, heading, order, paper, w);
    const std::size_t next = draw_steps(sheets, order, 0, last_saw_step, front.steps, w);
    draw_back(sheets, order, next, w);
    draw_leaf_2(sheets, order, w);
    return sheets.finished();
}

DocumentInfo cut_sheet_info(const WorkOrder& order, const Wording& w)
{
    return document_info(document_title(order.order, w), order.owner, say(order.shaft_title, w), order.date);
}

}  // namespace shaftcut

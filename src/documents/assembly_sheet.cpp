#include "shaftcut/documents/assembly_sheet.hpp"

#include <algorithm>

#include "assembly_parts.hpp"

namespace shaftcut {
namespace assembly_sheet {
namespace {

constexpr double column_gap = 3, continued_line = 5, below_drawing = 0.8;

std::string loud_words(const BuildPlan& plan)
{
    if (!plan.built) return "";
    return plan.count == 1 ? "BUILD 1" : "BUILD " + std::to_string(plan.count) + " ALIKE";
}

cut_sheet::Heading heading_of(const BuildPlan& plan)
{
    return {plan.order, plan.owner, "assembly", plan.shaft_title, {{"Customer: ", plan.customer}, {"Machine: ", plan.machine}},
            {"Due", plan.due}, {"Ordered", count_words(plan)}, loud_words(plan), plan.built ? "" : "DO NOT BUILD"};
}

// Cautions and the fields to sign, across the foot of sheet 1; gives what is left above them.
Rect draw_foot(cut_sheet::Sheets& sheets, const BuildPlan& plan)
{
    Canvas& canvas = sheets.canvas();
    const Rect room = sheets.room();
    const double entries = room.bottom() - entries_height;
    const Block cautions = cut_sheet::caution_block(plan.cautions, Spacing::close);
    const double height = cut_sheet::height_of(canvas, room.width, cautions) + cut_sheet::between_lists;
    cut_sheet::place(canvas, {room.x, entries - height, room.width, height}, {cautions});
    draw_entries(canvas, {room.x, entries, room.width, 0}, plan);
    return {room.x, sheets.y(), room.width, entries - height - sheets.y()};
}

void append(Blocks& blocks, const Blocks& more) { blocks.insert(blocks.end(), more.begin(), more.end()); }

bool fits(const Canvas& canvas, Rect column, const Blocks& blocks)
{
    Canvas trial = canvas;
    return cut_sheet::place(trial, column, blocks).next == blocks.size();
}

// The lists in two columns, what to fetch on the left and what to do on the right if that can be; else one list that runs on.
struct Columns {
    Blocks left, right;
    bool runs_on = false;
};

Blocks joined(std::initializer_list<Blocks> lists)
{
    Blocks blocks;
    for (const Blocks& list : lists) append(blocks, list);
    return blocks;
}

Columns columns_of(const Canvas& canvas, Rect left, Rect right, const BuildPlan& plan)
{
    for (const Spacing spacing : {Spacing::close, Spacing::closest}) {
        const Blocks operations = operation_blocks(plan, spacing), parts = part_blocks(plan, spacing), checks = check_blocks(plan, spacing), notes = note_blocks(plan, spacing);
        for (const auto& [first, second] : {std::pair{joined({parts, checks, notes}), operations}, std::pair{joined({parts, checks}), joined({operations, notes})},
                                            std::pair{parts, joined({operations, checks, notes})}})
            if (fits(canvas, left, first) && fits(canvas, right, second)) return {first, second};
        for (const Blocks& all : {joined({parts, operations, checks, notes}), joined({parts, checks, operations, notes}), joined({parts, notes, operations, checks})}) {
            Canvas trial = canvas;
            if (fits(canvas, right, cut_sheet::remaining(all, cut_sheet::place(trial, left, all).next))) return {all, {}, true};
        }
    }
    return {joined({part_blocks(plan, Spacing::close), operation_blocks(plan, Spacing::close), check_blocks(plan, Spacing::close), note_blocks(plan, Spacing::close)}), {}, true};
}

void draw_lists(cut_sheet::Sheets& sheets, Rect between, const BuildPlan& plan)
{
    Canvas& canvas = sheets.canvas();
    const double width = (between.width - column_gap) / 2;
    const Rect left{between.x, between.y, width, between.height};
    Rect right{between.x + width + column_gap, between.y, width, between.height};
    const Columns columns = columns_of(canvas, left, right, plan);
    const std::size_t next = cut_sheet::place(canvas, left, columns.left).next;
    const Blocks beside = columns.runs_on ? cut_sheet::remaining(columns.left, next) : columns.right;
    const bool continued = !fits(canvas, right, beside);
    if (continued) right.height -= continued_line;
    const std::size_t rest = cut_sheet::place(canvas, right, beside).next;
    if (!continued) return;
    canvas.begin(Part::paragraph);
    canvas.text({right.x, right.bottom() + continued_line - 1.2}, "▼ continued on sheet " + std::to_string(sheets.count() + 1), lettering::strong);
    sheets.next();
    sheets.flow(beside, rest);
}

void draw_work(cut_sheet::Sheets& sheets, const BuildPlan& plan)
{
    const auto below = [&](double gap) { return Rect{sheets.room().x, sheets.y() + gap, sheets.room().width, 0}; };
    sheets.move_to(draw_use(sheets.canvas(), below(-1.8), plan));
    sheets.move_to(draw_shaft(sheets.canvas(), below(0), plan));
    sheets.move_to(draw_blanks(sheets.canvas(), below(0.5), plan) + below_drawing);
    draw_lists(sheets, draw_foot(sheets, plan), plan);
}

void draw_refusal(cut_sheet::Sheets& sheets, const BuildPlan& plan)
{
    sheets.move_to(draw_refused(sheets.canvas(), {sheets.room().x, sheets.y() - 0.5, sheets.room().width, 0}));
    const Rect between = draw_foot(sheets, plan);
    Blocks blocks = refusal_blocks(plan);
    append(blocks, check_blocks(plan, Spacing::close));
    const bool continued = !fits(sheets.canvas(), between, blocks);
    const Rect column{between.x, between.y, between.width, between.height - (continued ? continued_line : 0)};
    const std::size_t rest = cut_sheet::place(sheets.canvas(), column, blocks).next;
    if (!continued) return;
    sheets.canvas().text({column.x, column.bottom() + continued_line - 1.2}, "▼ continued on sheet " + std::to_string(sheets.count() + 1), lettering::strong);
    sheets.next();
    sheets.flow(blocks, rest);
}

}  // namespace
}  // namespace assembly_sheet

std::vector<Page> draw_assembly_sheet(const BuildPlan& plan, Paper paper)
{
    using namespace assembly_sheet;
    const Fonts fonts;
    const cut_sheet::Heading heading = heading_of(plan);
    cut_sheet::Sheets sheets(fonts, heading, paper);
    if (plan.built) draw_work(sheets, plan);
    else draw_refusal(sheets, plan);
    const Blocks in_full = cut_sheet::long_field_blocks(sheets.canvas(), heading);
    if (!in_full.empty() && sheets.count() == 1) sheets.next();
    sheets.flow(in_full);
    return sheets.finished();
}

DocumentInfo assembly_sheet_info(const BuildPlan& plan)
{
    return document_info("Assembly work order " + plan.order, plan.owner, plan.shaft_title);
}

}  // namespace shaftcut

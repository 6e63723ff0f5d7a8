#include "assembly/assembly_sheet.hpp"

#include <algorithm>
#include <array>

#include "assembly/assembly_parts.hpp"
#include "shaft_title_words.hpp"

namespace shaftcut {
namespace assembly_sheet {
namespace {

constexpr double equal_share = 0.5;
constexpr std::array narrower_shares{0.5, 0.45, 0.42, 0.39};
constexpr double column_gap = 3, continued_line = 5, below_drawing = 0.8;

sheet::Heading heading_of(const BuildPlan& plan)
{
    const Wording w = wording_of(plan);
    return {SheetWords(w), plan.order, plan.owner, say(Caption::document, w), say(plan.shaft_title, w), {{say(Caption::customer, w), plan.customer}, {say(Caption::machine, w), plan.machine}},
            {say(Caption::due, w), plan.due}, {say(Caption::ordered, w), assembly_words::shafts(plan.count, w)},
            plan.built ? verdict_of(plan) : "", plan.built ? "" : verdict_of(plan)};
}

// Cautions and the fields to sign, across the foot of sheet 1; gives what is left above them.
Rect draw_foot(sheet::Sheets& sheets, const BuildPlan& plan)
{
    Canvas& canvas = sheets.canvas();
    const Rect room = sheets.room();
    const double entries = room.bottom() - entries_height(plan);
    const Block cautions = sheet::caution_block(say(plan.cautions, wording_of(plan)), Spacing::close);
    const double height = sheet::height_of(canvas, room.width, cautions) + sheet::between_lists;
    sheet::place(canvas, {room.x, entries - height, room.width, height}, {cautions});
    draw_entries(canvas, {room.x, entries, room.width, 0}, plan);
    return {room.x, sheets.y(), room.width, entries - height - sheets.y()};
}

void append(Blocks& blocks, const Blocks& more) { blocks.insert(blocks.end(), more.begin(), more.end()); }

bool fits(const Canvas& canvas, Rect column, const Blocks& blocks)
{
    Canvas trial = canvas;
    return sheet::place(trial, column, blocks).next == blocks.size();
}

// The lists in two columns, what to fetch on the left and what to do on the right if that can be; what has no room there follows on
// another sheet.
struct Columns {
    Blocks left, right;
    bool runs_on = false;  // one list: the left column's goes on in the right one
    Blocks rest{};
    bool rest_warns = false;
};

Blocks joined(std::initializer_list<Blocks> lists)
{
    Blocks blocks;
    for (const Blocks& list : lists) append(blocks, list);
    return blocks;
}

struct Lists {
    Blocks parts, operations, warnings, checks, notes;
    SheetWords words;
};

Lists lists_of(const BuildPlan& plan, Spacing spacing)
{
    return {part_blocks(plan, spacing), operation_blocks(plan, spacing), warning_blocks(plan, spacing), check_blocks(plan, spacing), note_blocks(plan, spacing),
            SheetWords(Wording(plan.units))};
}

// Whether one list has room in both columns, running on from the left one.
bool fits_running_on(const Canvas& canvas, Rect left, Rect right, const Blocks& all, const SheetWords& words)
{
    Canvas trial = canvas;
    return fits(canvas, right, sheet::remaining(all, sheet::place(trial, left, all).next, words));
}

// The two columns of one sheet, and for a list that runs on its left one.
using Pair = std::pair<Blocks, Blocks>;

std::optional<Columns> first_that_fits(const Canvas& canvas, Rect left, Rect right, const SheetWords& words, const std::vector<Pair>& pairs, const std::vector<Blocks>& running)
{
    for (const auto& [first, second] : pairs)
        if (fits(canvas, left, first) && fits(canvas, right, second)) return Columns{first, second};
    for (const Blocks& all : running)
        if (fits_running_on(canvas, left, right, all, words)) return Columns{all, {}, true};
    return std::nullopt;
}

std::optional<Columns> on_one_sheet(const Canvas& canvas, Rect left, Rect right, const Lists& lists)
{
    const auto& [parts, operations, warnings, checks, notes, words] = lists;
    return first_that_fits(canvas, left, right, words,
                           {{joined({parts, warnings, checks, notes}), operations}, {joined({parts, warnings, checks}), joined({operations, notes})},
                            {joined({parts, warnings}), joined({operations, checks, notes})}, {parts, joined({operations, warnings, checks, notes})}},
                           {joined({parts, operations, warnings, checks, notes}), joined({parts, warnings, checks, operations, notes}), joined({parts, notes, operations, warnings, checks})});
}

// At the bench parts and work are what counts, and the warnings.
std::optional<Columns> work_and_warnings(const Canvas& canvas, Rect left, Rect right, const Lists& lists)
{
    const auto& [parts, operations, warnings, checks, notes, words] = lists;
    return first_that_fits(canvas, left, right, words, {{joined({parts, warnings}), operations}, {parts, joined({operations, warnings})}},
                           {joined({parts, operations, warnings}), joined({parts, warnings, operations}), joined({warnings, parts, operations})});
}

std::optional<Columns> work_alone(const Canvas& canvas, Rect left, Rect right, const Lists& lists)
{
    return first_that_fits(canvas, left, right, lists.words, {{lists.parts, lists.operations}}, {joined({lists.parts, lists.operations})});
}

struct Sides {
    Rect left, right;
};

Sides split(Rect between, double left_share)
{
    const double width = between.width - column_gap, left = width * left_share;
    return {{between.x, between.y, left, between.height}, {between.x + left + column_gap, between.y, width - left, between.height}};
}

struct Laid {
    Sides sides;
    Columns columns;
};

// All of it on one sheet: in equal columns, else with the checks run on and more width for the work, whose sentences are the longer ones.
std::optional<Laid> laid_on_one_sheet(const Canvas& canvas, Rect between, const BuildPlan& plan, const std::array<Lists, 2>& spaced)
{
    const auto on = [&](double share, const Lists& lists) -> std::optional<Laid> {
        const Sides sides = split(between, share);
        auto columns = on_one_sheet(canvas, sides.left, sides.right, lists);
        return columns ? std::optional(Laid{sides, std::move(*columns)}) : std::nullopt;
    };
    for (const Lists& lists : spaced)
        if (auto laid = on(equal_share, lists)) return laid;
    Lists run_on = spaced.back();
    run_on.checks = check_blocks_run_on(plan);
    for (const double share : narrower_shares)
        if (auto laid = on(share, run_on)) return laid;
    return std::nullopt;
}

Columns columns_of_first_sheet(const Canvas& canvas, Sides sides, const std::array<Lists, 2>& spaced)
{
    const auto& [usual, close] = spaced;
    auto& [left, right] = sides;
    right.height -= continued_line;
    for (const Lists& lists : spaced)
        if (auto columns = work_and_warnings(canvas, left, right, lists)) {
            columns->rest = joined({usual.checks, usual.notes});
            return *columns;
        }
    const Blocks rest = joined({usual.warnings, usual.checks, usual.notes});
    for (const Lists& lists : spaced)
        if (auto columns = work_alone(canvas, left, right, lists)) {
            columns->rest = rest;
            columns->rest_warns = !usual.warnings.empty();
            return *columns;
        }
    return {joined({close.parts, close.operations}), {}, true, rest, !usual.warnings.empty()};
}

Laid laid(const Canvas& canvas, Rect between, const BuildPlan& plan)
{
    const std::array spaced{lists_of(plan, Spacing::usual), lists_of(plan, Spacing::close)};
    if (auto all = laid_on_one_sheet(canvas, between, plan, spaced)) return *all;
    const Sides sides = split(between, equal_share);
    return {sides, columns_of_first_sheet(canvas, sides, spaced)};
}

// `warns`: what follows has a warning, which is not to be missed.
void say_continued(sheet::Sheets& sheets, Rect column, const BuildPlan& plan, bool warns = false)
{
    sheets.canvas().begin(Part::paragraph);
    sheets.canvas().text({column.x, column.bottom() + continued_line - 1.2}, assembly_words::continued_on(sheets.count() + 1, warns, wording_of(plan)), lettering::strong);
    sheets.next();
}

void draw_lists(sheet::Sheets& sheets, Rect between, const BuildPlan& plan)
{
    Canvas& canvas = sheets.canvas();
    const Laid lists = laid(canvas, between, plan);
    const Columns& columns = lists.columns;
    const Rect left = lists.sides.left;
    Rect right = lists.sides.right;
    const std::size_t next = sheet::place(canvas, left, columns.left).next;
    const Blocks beside = columns.runs_on ? sheet::remaining(columns.left, next, sheets.words()) : columns.right;
    const bool continued = !columns.rest.empty() || !fits(canvas, right, beside);
    if (continued) right.height -= continued_line;
    const std::size_t drawn = sheet::place(canvas, right, beside).next;
    if (!continued) return;
    say_continued(sheets, right, plan, columns.rest_warns);
    sheets.flow(beside, drawn);
    sheets.flow(columns.rest);
}

void draw_work(sheet::Sheets& sheets, const BuildPlan& plan)
{
    const auto below = [&](double gap) { return Rect{sheets.room().x, sheets.y() + gap, sheets.room().width, 0}; };
    sheets.move_to(draw_use(sheets.canvas(), below(-1.8), plan));
    sheets.move_to(draw_shaft(sheets.canvas(), below(0), plan));
    sheets.move_to(draw_blanks(sheets.canvas(), below(0.5), plan) + below_drawing);
    draw_lists(sheets, draw_foot(sheets, plan), plan);
}

void draw_refusal(sheet::Sheets& sheets, const BuildPlan& plan)
{
    sheets.move_to(draw_refused(sheets.canvas(), {sheets.room().x, sheets.y() - 0.5, sheets.room().width, 0}, plan));
    const Rect between = draw_foot(sheets, plan);
    Blocks blocks = refusal_blocks(plan);
    append(blocks, joined({warning_blocks(plan, Spacing::usual), check_blocks(plan, Spacing::usual)}));
    const bool continued = !fits(sheets.canvas(), between, blocks);
    const Rect column{between.x, between.y, between.width, between.height - (continued ? continued_line : 0)};
    const std::size_t rest = sheet::place(sheets.canvas(), column, blocks).next;
    if (!continued) return;
    say_continued(sheets, column, plan);
    sheets.flow(blocks, rest);
}

}  // namespace
}  // namespace assembly_sheet

std::vector<Page> draw_assembly_sheet(const BuildPlan& plan, Paper paper, const FontFiles& files)
{
    using namespace assembly_sheet;
    const Fonts fonts(files);
    sheet::Sheets sheets(fonts, heading_of(plan), paper);
    if (plan.built) draw_work(sheets, plan);
    else draw_refusal(sheets, plan);
    draw_more_entries(sheets, plan);
    const Blocks in_full = sheets.in_full();
    if (!in_full.empty() && sheets.count() == 1) sheets.next();
    sheets.flow(in_full);
    return sheets.finished();
}

DocumentInfo assembly_sheet_info(const BuildPlan& plan)
{
    return document_info(assembly_words::title(plan.order, wording_of(plan)), plan.owner, say(plan.shaft_title, wording_of(plan)));
}

}  // namespace shaftcut

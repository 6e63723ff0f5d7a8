#include "saw_sheet/batch_summary.hpp"

#include <algorithm>
#include <set>

#include "build/build_words.hpp"
#include "saw_sheet/saw_sheet_parts.hpp"
#include "saw_sheet/summary_words.hpp"

namespace shaftcut {
namespace {

using saw_sheet::Blocks;
using saw_sheet::Lead;
using saw_sheet::Sheets;
using summary_words::Caption;

constexpr double box_height = 12, box_gap = 3, figure_at = 8.4, inset = 3, column_gap = 4, below_boxes = 2;
constexpr Lettering counted_letters{5, Weight::bold};

std::int64_t orders_of(const Batch& batch, BuildVerdict verdict)
{
    return std::count_if(batch.orders.begin(), batch.orders.end(), [&](const BatchOrder& order) { return order.verdict == verdict; });
}

std::vector<std::string> counts_of(const Batch& batch, const Wording& w)
{
    std::int64_t shafts = 0;
    for (const BatchOrder& order : batch.orders) shafts += order.built ? order.count : 0;
    return {summary_words::to_build(shafts, w), summary_words::held(orders_of(batch, BuildVerdict::held), w), summary_words::refused(orders_of(batch, BuildVerdict::refused), w)};
}

void draw_counts(Sheets& sheets, const Batch& batch)
{
    const std::vector<std::string> counts = counts_of(batch, wording_of(batch));
    const Rect room = sheets.room();
    const double width = (room.width + box_gap) / static_cast<double>(counts.size()) - box_gap;
    sheets.canvas().begin(Part::table);
    double x = room.x;
    for (const std::string& count : counts) {
        sheets.canvas().box({x, sheets.y(), width, box_height}, pen::outline);
        sheets.canvas().fitted({x + inset, sheets.y() + figure_at}, width - 2 * inset, count, counted_letters);
        x += width + box_gap;
    }
    sheets.move_to(sheets.y() + box_height + below_boxes);
}

using OrderSaid = std::string (*)(const BatchOrder&, const Wording&);

Blocks order_blocks(const Batch& batch, BuildVerdict verdict, Caption caption, OrderSaid said)
{
    const Wording w = wording_of(batch);
    Blocks blocks{{Lead::heading, say(caption, w)}};
    for (const BatchOrder& order : batch.orders)
        if (order.verdict == verdict) blocks.push_back({Lead::bullet, said(order, w)});
    return blocks.size() > 1 ? blocks : Blocks();
}

Blocks saw_blocks(const Batch& batch)
{
    const Wording w = wording_of(batch);
    Blocks blocks{{Lead::heading, say(Caption::saw, w)}};
    for (const ProfilePlan& plan : batch.plans)
        if (plan.order) blocks.push_back({Lead::tick, summary_words::sawn(plan.profile, *plan.order, w)});
    for (const NotPlanned& left_out : not_planned(batch)) blocks.push_back({Lead::tick, summary_words::not_planned(left_out.profile, w), true});
    return blocks.size() > 1 ? blocks : Blocks();
}

// What is sawn is fetched as bars.
Blocks pick_blocks(const Batch& batch)
{
    const Wording w = wording_of(batch);
    std::set<std::string> sawn;
    for (const BatchPiece& piece : batch.pieces)
        if (piece.sawn) sawn.insert(piece.profile);
    std::vector<PartCount> parts;
    std::copy_if(batch.parts.begin(), batch.parts.end(), std::back_inserter(parts), [&](const PartCount& part) { return !sawn.contains(part.name.known); });
    std::sort(parts.begin(), parts.end(), [](const PartCount& a, const PartCount& b) { return a.name < b.name; });
    Blocks blocks{{Lead::heading, say(Caption::fetch, w)}};
    for (const PartCount& part : parts) blocks.push_back({Lead::tick, summary_words::fetched(part, w)});
    return blocks.size() > 1 ? blocks : Blocks();
}

// Down the left column, then the right one, then on the next sheet.
void flow_in_columns(Sheets& sheets, Blocks blocks)
{
    while (!blocks.empty()) {
        const Rect room = sheets.room();
        const double width = (room.width - column_gap) / 2;
        std::size_t placed = 0;
        for (const double x : {room.x, room.x + width + column_gap}) {
            const std::size_t next = sheet::place(sheets.canvas(), {x, sheets.y(), width, sheets.left_over()}, blocks).next;
            placed += next;
            blocks = sheet::remaining(blocks, next, sheets.words());
        }
        if (blocks.empty()) return;
        const double before = sheets.y();
        sheets.next();
        if (placed == 0 && sheets.y() >= before) return sheets.flow(blocks);
    }
}

}  // namespace

std::vector<Page> draw_batch_summary(const Batch& batch, Paper paper, const FontFiles& files)
{
    const Fonts fonts(files);
    const Wording w = wording_of(batch);
    Sheets sheets = saw_sheet::sheets_under({w, summary_words::title(batch.name, w), batch.owner, summary_words::subject(w)}, fonts, paper, 0);
    draw_counts(sheets, batch);
    sheets.flow(order_blocks(batch, BuildVerdict::held, Caption::held, summary_words::held_order));
    sheets.flow(order_blocks(batch, BuildVerdict::refused, Caption::refused, summary_words::refused_order));
    sheets.flow(saw_blocks(batch));
    sheets.move_to(sheets.y() + sheet::between_lists);
    flow_in_columns(sheets, pick_blocks(batch));
    return sheets.finished();
}

DocumentInfo batch_summary_info(const Batch& batch)
{
    const Wording w = wording_of(batch);
    return document_info(summary_words::title(batch.name, w), batch.owner, summary_words::subject(w));
}

}  // namespace shaftcut

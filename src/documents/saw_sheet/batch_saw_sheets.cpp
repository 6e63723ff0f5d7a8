#include "saw_sheet/batch_saw_sheets.hpp"

#include "build/build_words.hpp"
#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut {
namespace {

using saw_sheet::Blocks;
using saw_sheet::Caption;
using saw_sheet::Lead;
using saw_sheet::Sheets;

Blocks blocks_of(const NotPlanned& left_out, const Wording& w)
{
    Blocks blocks{{Lead::heading, saw_sheet_words::not_planned(left_out.profile, w), false}, {Lead::none, saw_sheet_words::why(left_out, w), true}};
    for (const BatchPiece& piece : left_out.pieces) blocks.push_back({Lead::tick, saw_sheet_words::piece(piece, w), false});
    return blocks;
}

Sheets not_planned_sheets(const Fonts& fonts, const Batch& batch, const std::vector<NotPlanned>& all, Paper paper, std::size_t before)
{
    const Wording w = wording_of(batch);
    Sheets sheets = saw_sheet::sheets_under({w, saw_sheet_words::not_planned_title(batch.name, w), batch.owner, say(Caption::not_planned, w)}, fonts, paper, before);
    for (const NotPlanned& left_out : all) sheets.flow(blocks_of(left_out, w));
    return sheets;
}

}  // namespace

std::vector<Page> draw_batch_saw_sheets(const Batch& batch, Paper paper, const FontFiles& font_files)
{
    const Fonts fonts(font_files);
    std::vector<Sheets> files;
    const auto before = [&] { return files.empty() ? 0 : files.back().count(); };
    for (const ProfilePlan& plan : batch.plans)
        if (plan.order) files.push_back(saw_sheet::sheets_of(fonts, *plan.order, paper, before()));
    if (const std::vector<NotPlanned> left_out = not_planned(batch); !left_out.empty()) files.push_back(not_planned_sheets(fonts, batch, left_out, paper, before()));
    std::vector<Page> pages;
    for (const Sheets& sheets : files)
        for (Page& page : sheets.finished(files.back().count())) pages.push_back(std::move(page));
    return pages;
}

}  // namespace shaftcut

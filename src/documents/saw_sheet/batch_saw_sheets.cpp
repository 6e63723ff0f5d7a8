#include "saw_sheet/batch_saw_sheets.hpp"

#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut {
namespace {

using saw_sheet::Blocks;
using saw_sheet::Lead;
using saw_sheet::Sheets;

std::string piece_text(const BatchPiece& piece, Units units)
{
    return std::to_string(piece.count) + " × " + saw_figure_with_unit(piece.length, units) + " — order " + piece.order + ", " + piece.part;
}

Blocks blocks_of(const NotPlanned& left_out, Units units)
{
    Blocks blocks{{Lead::heading, "NOT PLANNED: " + left_out.profile, false}, {Lead::none, left_out.why, true}};
    for (const BatchPiece& piece : left_out.pieces) blocks.push_back({Lead::tick, piece_text(piece, units), false});
    return blocks;
}

Sheets not_planned_sheets(const Fonts& fonts, const Batch& batch, const std::vector<NotPlanned>& all, Paper paper, std::size_t before)
{
    Sheets sheets(fonts, {"NOT PLANNED of " + batch.name, batch.owner, "These pieces stand in no saw plan of this file: they are still to be sawn."}, size_of(paper), before);
    for (const NotPlanned& left_out : all) sheets.flow(blocks_of(left_out, batch.units));
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

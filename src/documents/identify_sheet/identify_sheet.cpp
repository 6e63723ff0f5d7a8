#include "identify_sheet/identify_sheet.hpp"

#include "identify_sheet/identify_sheet_parts.hpp"

namespace shaftcut {
namespace {

using namespace identify_sheet;

constexpr double margin = 10, between = 3;

}  // namespace

std::vector<Page> draw_identify_sheet(const IdentifiedShaft& shaft, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    const auto [width, height] = size_of(paper);
    Canvas canvas(fonts, width, height);
    Rect room{margin, margin, width - 2 * margin, 0};
    for (Section* section : {draw_title, draw_band, draw_shaft, draw_parts, draw_how_sure, draw_next, draw_cautions}) room.y = section(canvas, room, shaft, w) + between;
    return {canvas.page()};
}

DocumentInfo identify_sheet_info(const IdentifiedShaft& shaft, const Wording& w)
{
    return document_info(document_title(shaft.measures.shaft, w), shaft.owner, document_subject(w), shaft.measures.date);
}

}  // namespace shaftcut

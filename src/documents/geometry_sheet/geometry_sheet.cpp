#include "geometry_sheet/geometry_sheet.hpp"

#include "cut_sheet/cut_sheet_parts.hpp"
#include "drawing/geometry_parts.hpp"

namespace shaftcut {
namespace {

using namespace cut_sheet;
using namespace geometry;

Blocks listed_under(const char* heading, const std::vector<std::string>& sentences)
{
    if (sentences.empty()) return {};
    Blocks blocks{{Lead::heading, heading}};
    for (const std::string& sentence : sentences) blocks.push_back({Lead::bullet, sentence});
    return blocks;
}

// Which shaft it is, and in the cut sheet's own words that a refused one is not to be cut.
void draw_shaft(Sheets& sheets, const WorkOrder& order)
{
    if (order.verdict != Verdict::refused) return sheets.flow({{Lead::none, order.shaft_title, true}});
    sheets.move_to(draw_verdict(sheets.canvas(), {sheets.room().x, sheets.y(), sheets.room().width, 0}, order));
    sheets.flow(listed_under("Why", order.reasons));
}

// All of an order's sheets, and which of them is the first machine's.
struct GeometrySheets {
    std::vector<Page> pages;
    std::size_t first_machine;
};

GeometrySheets draw_all(const WorkOrder& order, Paper paper, const FontFiles& files)
{
    const Fonts fonts(files);
    Sheets sheets(fonts, heading_of(order, "lengths"), paper);
    draw_shaft(sheets, order);
    draw_extremes(sheets, order);
    sheets.flow(listed_under("Notes", order.machine_notes));
    const std::size_t first_machine = sheets.count();
    draw_machines(sheets, order);
    return {sheets.finished(), first_machine};
}

}  // namespace

std::vector<Page> draw_geometry_sheet(const WorkOrder& order, Paper paper, const FontFiles& files) { return draw_all(order, paper, files).pages; }

Page draw_machine_picture(const WorkOrder& order, Paper paper, const FontFiles& files)
{
    const GeometrySheets sheets = draw_all(order, paper, files);
    return sheets.pages.at(sheets.first_machine);
}

DocumentInfo geometry_sheet_info(const WorkOrder& order)
{
    return document_info("Operating lengths " + order.order, order.owner, order.shaft_title, order.date);
}

}  // namespace shaftcut

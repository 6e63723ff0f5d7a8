#include "geometry_sheet/geometry_sheet.hpp"

#include "cut_sheet/refusal_words.hpp"
#include "cut_sheet/cut_sheet_parts.hpp"
#include "drawing/geometry_parts.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"
#include "shaft_title_words.hpp"
#include "geometry_sheet/geometry_sheet_words.hpp"

namespace shaftcut {
namespace {

using namespace cut_sheet;
using namespace geometry;

Blocks listed_under(const std::string& heading, const std::vector<std::string>& sentences)
{
    if (sentences.empty()) return {};
    Blocks blocks{{Lead::heading, heading}};
    for (const std::string& sentence : sentences) blocks.push_back({Lead::bullet, sentence});
    return blocks;
}

// Which shaft it is, and in the cut sheet's own words that a refused one is not to be cut.
void draw_shaft(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    if (order.verdict != Verdict::refused) return sheets.flow({{Lead::none, say(order.shaft_title, w), true}});
    sheets.move_to(draw_verdict(sheets.canvas(), {sheets.room().x, sheets.y(), sheets.room().width, 0}, order, w));
    sheets.flow(listed_under(say(ListHeading::why, w), cut_sheet::refusal_reasons(order, w)));
}

// All of an order's sheets, and which of them is the first machine's.
struct GeometrySheets {
    std::vector<Page> pages;
    std::size_t first_machine;
};

GeometrySheets draw_all(const WorkOrder& order, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    Sheets sheets(fonts, heading_of(order, TitleCaption::lengths_type, w), paper);
    draw_shaft(sheets, order, w);
    draw_extremes(sheets, order, w);
    sheets.flow(listed_under(say(ListHeading::notes, w), say_all(order.machine_notes, w)));
    const std::size_t first_machine = sheets.count();
    draw_machines(sheets, order, w);
    return {sheets.finished(), first_machine};
}

}  // namespace

std::vector<Page> draw_geometry_sheet(const WorkOrder& order, Paper paper, const FontFiles& files, const Wording& w) { return draw_all(order, paper, files, w).pages; }

Page draw_machine_picture(const WorkOrder& order, Paper paper, const FontFiles& files, const Wording& w)
{
    const GeometrySheets sheets = draw_all(order, paper, files, w);
    return sheets.pages.at(sheets.first_machine);
}

DocumentInfo geometry_sheet_info(const WorkOrder& order, const Wording& w)
{
    return document_info(geometry_sheet::document_title(order.order, w), order.owner, say(order.shaft_title, w), order.date);
}

}  // namespace shaftcut

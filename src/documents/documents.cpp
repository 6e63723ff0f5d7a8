#include "shaftcut/documents/documents.hpp"

#include "shaftcut/documents/cairo_pages.hpp"
#include "shaftcut/documents/cut_sheet.hpp"
#include "shaftcut/documents/json.hpp"
#include "shaftcut/documents/work_order_workbook.hpp"

namespace shaftcut {
namespace {

std::string cut_sheet_pdf(const WorkOrder& order, Paper paper) { return pdf_of(draw_cut_sheet(order, paper), cut_sheet_info(order)); }
std::string work_order_xlsx(const WorkOrder& order, Paper paper) { return workbook_of(order, paper); }
std::string work_order_json(const WorkOrder& order, Paper) { return json_of(order, JsonLayout::indented); }

constexpr double picture_dots_per_inch = 110;

std::string cut_sheet_png(const WorkOrder& order, Paper paper) { return png_of(draw_cut_sheet(order, paper).front(), picture_dots_per_inch); }
std::string cut_sheet_svg(const WorkOrder& order, Paper paper) { return svg_of(draw_cut_sheet(order, paper).front()); }

struct DocumentRow {
    const char* name_end;  // after the order's number
    std::string (*bytes)(const WorkOrder&, Paper);
};

// In the order of Format.
constexpr std::array<DocumentRow, Words<Format>::all.size()> rows{{
    {"-cut-sheet.pdf", cut_sheet_pdf},
    {"-work-order.xlsx", work_order_xlsx},
    {".json", work_order_json},
    {"-cut-sheet.png", cut_sheet_png},
    {"-cut-sheet.svg", cut_sheet_svg},
}};

}  // namespace

Document document_of(const WorkOrder& order, Format format, Paper paper)
{
    const DocumentRow& row = rows[static_cast<std::size_t>(format)];
    return {order.order + row.name_end, row.bytes(order, paper)};
}

}  // namespace shaftcut

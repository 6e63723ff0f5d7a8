#include "shaftcut/documents/documents.hpp"

#include "shaftcut/documents/cairo_pages.hpp"
#include "shaftcut/documents/cut_sheet.hpp"
#include "shaftcut/documents/json.hpp"
#include "shaftcut/documents/saw_sheet.hpp"
#include "shaftcut/documents/saw_workbook.hpp"
#include "shaftcut/documents/work_order_workbook.hpp"

namespace shaftcut {
namespace {

std::string cut_sheet_pdf(const WorkOrder& order, Paper paper) { return pdf_of(draw_cut_sheet(order, paper), cut_sheet_info(order)); }
std::string work_order_xlsx(const WorkOrder& order, Paper paper) { return workbook_of(order, paper); }
std::string work_order_json(const WorkOrder& order, Paper) { return json_of(order, JsonLayout::indented); }

constexpr double picture_dots_per_inch = 110;

std::string cut_sheet_png(const WorkOrder& order, Paper paper) { return png_of(draw_cut_sheet(order, paper).front(), picture_dots_per_inch); }
std::string cut_sheet_svg(const WorkOrder& order, Paper paper) { return svg_of(draw_cut_sheet(order, paper).front()); }

std::string saw_sheet_pdf(const SawOrder& order, Paper paper) { return pdf_of(draw_saw_sheet(order, paper), saw_sheet_info(order)); }
std::string saw_plan_json(const SawOrder& order, Paper) { return json_of(order, JsonLayout::indented); }
std::string saw_sheet_png(const SawOrder& order, Paper paper) { return png_of(draw_saw_sheet(order, paper).front(), picture_dots_per_inch); }
std::string saw_sheet_svg(const SawOrder& order, Paper paper) { return svg_of(draw_saw_sheet(order, paper).front()); }

template <class Order>
struct DocumentRow {
    const char* name_end;  // after the order's number or the list's name
    std::string (*bytes)(const Order&, Paper);
};

// In the order of Format.
template <class Order>
using DocumentRows = std::array<DocumentRow<Order>, Words<Format>::all.size()>;

constexpr DocumentRows<WorkOrder> work_order_rows{{
    {"-cut-sheet.pdf", cut_sheet_pdf},
    {"-work-order.xlsx", work_order_xlsx},
    {".json", work_order_json},
    {"-cut-sheet.png", cut_sheet_png},
    {"-cut-sheet.svg", cut_sheet_svg},
}};
constexpr DocumentRows<SawOrder> saw_order_rows{{
    {"-saw-plan.pdf", saw_sheet_pdf},
    {"-saw-plan.xlsx", saw_workbook_of},
    {"-saw-plan.json", saw_plan_json},
    {"-saw-plan.png", saw_sheet_png},
    {"-saw-plan.svg", saw_sheet_svg},
}};

}  // namespace

Document document_of(const WorkOrder& order, Format format, Paper paper)
{
    const DocumentRow<WorkOrder>& row = work_order_rows[static_cast<std::size_t>(format)];
    return {order.order + row.name_end, row.bytes(order, paper)};
}

Document document_of(const SawOrder& order, Format format, Paper paper)
{
    const DocumentRow<SawOrder>& row = saw_order_rows[static_cast<std::size_t>(format)];
    return {saw_document_name(order.name, format), row.bytes(order, paper)};
}

std::string saw_document_name(const std::string& order_name, Format format)
{
    return order_name + saw_order_rows[static_cast<std::size_t>(format)].name_end;
}

}  // namespace shaftcut

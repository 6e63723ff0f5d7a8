#include "shaftcut/documents/lengths_documents.hpp"

#include <fmt/format.h>

#include "shaftcut/documents/cairo_pages.hpp"
#include "shaftcut/documents/geometry_sheet.hpp"
#include "shaftcut/documents/json.hpp"
#include "shaftcut/trade/geometry_words.hpp"
#include "terminal_lines.hpp"

namespace shaftcut {
namespace {

constexpr double picture_dots_per_inch = 110;

std::string lengths_pdf(const WorkOrder& order, Paper paper) { return pdf_of(draw_geometry_sheet(order, paper), geometry_sheet_info(order)); }
std::string lengths_json(const WorkOrder& order, Paper) { return lengths_json_of(order, JsonLayout::indented); }
std::string lengths_png(const WorkOrder& order, Paper paper) { return png_of(draw_machine_picture(order, paper), picture_dots_per_inch); }
std::string lengths_svg(const WorkOrder& order, Paper paper) { return svg_of(draw_machine_picture(order, paper)); }

struct DocumentRow {
    const char* name_end;  // after the order's number
    std::string (*bytes)(const WorkOrder&, Paper);
};

// In the order of Format; no bytes where there is no such document.
constexpr std::array<DocumentRow, Words<Format>::all.size()> rows{{
    {"-lengths.pdf", lengths_pdf},
    {"", nullptr},
    {"-lengths.json", lengths_json},
    {"-lengths.png", lengths_png},
    {"-lengths.svg", lengths_svg},
}};

std::string length_line(const WorkOrder& order, const std::string& name, const std::optional<ExtremeLength>& extreme, Rounded as)
{
    if (!extreme) return {};
    return wrapped(fmt::format("  {:<17}", name), figure_of_with_millimetres(as, extreme->length, order.units) + " ± " +
                                                      figure_of_with_unit(Rounded::doubt, extreme->plus_minus, order.units) + ", " + in_words(extreme->at, order.units));
}

std::string angle_line(const WorkOrder& order, End end, Range range)
{
    const auto& extreme = order.extremes.angles[end][range];
    if (!extreme) return {};
    return wrapped(fmt::format("  {:<17}", std::string(to_word(end)) + " joint"), figure(extreme->angle) + "° " + to_word(range) + ", " + in_words(extreme->at, order.units));
}

}  // namespace

bool lengths_come_as(Format format) { return rows[static_cast<std::size_t>(format)].bytes != nullptr; }

std::optional<Document> lengths_document_of(const WorkOrder& order, Format format, Paper paper)
{
    const DocumentRow& row = rows[static_cast<std::size_t>(format)];
    if (!row.bytes) return std::nullopt;
    return Document{order.order + row.name_end, row.bytes(order, paper)};
}

std::string lengths_text(const WorkOrder& order, Colour colour)
{
    const std::string machine = order.machine.empty() ? "" : ", for " + order.machine;
    std::string text = order.order + ": " + painted("OPERATING LENGTHS", "1", colour) + " between the inner crosses\n" + wrapped(" ", order.shaft_title + machine);
    text += length_line(order, "shortest", order.extremes.shortest, Rounded::shortest);
    for (const Range range : all_ranges) text += length_line(order, std::string("longest ") + to_word(range), order.extremes.longest[range], Rounded::longest);
    for (const End end : both_ends)
        for (const Range range : all_ranges) text += angle_line(order, end, range);
    for (const std::string& note : order.machine_notes) text += wrapped("  note             ", note);
    return text;
}

}  // namespace shaftcut

#include "form/measuring_form_sheets.hpp"

#include <algorithm>
#include <cctype>

#include "form/measuring_form_parts.hpp"
#include "page/cairo_pages.hpp"

namespace shaftcut {
namespace {

using namespace measuring_form;

constexpr double margin = 10, most_between = 6;

using Section = double (*)(Canvas&, Rect, const MeasuringForm&, const Wording&);

// Draws the sections from the top down with `between` from one to the next; the y below the last.
double draw_sections(Canvas& canvas, const MeasuringForm& form, const Wording& w, const std::vector<Section>& sections, double between)
{
    Rect room{margin, margin, canvas.page().width - 2 * margin, 0};
    double bottom = room.y;
    for (const Section section : sections) {
        bottom = section(canvas, room, form, w);
        room.y = bottom + between;
    }
    return bottom;
}

// The sections, spread over the sheet's height as far as that helps.
Page draw_sheet(const Fonts& fonts, const MeasuringForm& form, const Wording& w, Paper paper, const std::vector<Section>& sections)
{
    const auto [width, height] = size_of(paper);
    Canvas trial(fonts, width, height), canvas(fonts, width, height);
    const double left_over = height - margin - draw_sections(trial, form, w, sections, 0);
    draw_sections(canvas, form, w, sections, std::clamp(left_over / static_cast<double>(sections.size() - 1), 0.0, most_between));
    return canvas.page();
}

bool may_stand_in_a_name(char byte)
{
    const auto value = static_cast<unsigned char>(byte);
    return value >= 0x80 || std::isalnum(value) || byte == '.' || byte == '_';
}

}  // namespace

std::vector<Page> draw_measuring_form(const MeasuringForm& form, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    return {draw_sheet(fonts, form, w, paper, {draw_title, draw_cautions, draw_shaft, draw_condition, draw_closed, draw_ends, draw_limits}),
            draw_sheet(fonts, form, w, paper, {draw_parted_title, draw_halves, draw_machine_cautions, draw_fit, draw_other_tractors}),
            draw_sheet(fonts, form, w, paper, {draw_machine_title, draw_machine_cautions, draw_tractor, draw_positions, draw_angles, draw_afterwards}),
            draw_sheet(fonts, form, w, paper, {draw_trailed_title, draw_machine_cautions, draw_trailed_dimensions, draw_trailed_ranges, draw_machine_whose}),
            draw_sheet(fonts, form, w, paper, {draw_mounted_title, draw_machine_cautions, draw_mounted_dimensions, draw_mounted_ranges, draw_machine_whose})};
}

std::string measuring_form_name(const MeasuringForm& form)
{
    if (!form.series) return "measuring-form";
    std::string name = form.series->name;
    std::replace_if(name.begin(), name.end(), [](char byte) { return !may_stand_in_a_name(byte); }, '-');
    return "measuring-form-" + name;
}

std::string measuring_form_pdf(const MeasuringForm& form, Paper paper, const FontFiles& files, const Wording& w)
{
    const DocumentInfo info = document_info(document_title(w), form.owner, document_subject(form.series, w));
    return pdf_of(draw_measuring_form(form, paper, files, w), info, files);
}

}  // namespace shaftcut

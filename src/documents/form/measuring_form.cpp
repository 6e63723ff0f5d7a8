#include "form/measuring_form_sheets.hpp"

#include <algorithm>
#include <cctype>

#include "form/measuring_form_parts.hpp"
#include "page/cairo_pages.hpp"

namespace shaftcut {
namespace {

using namespace measuring_form;

constexpr double margin = 10, most_between = 5;

// Draws the sections from the top down with `between` from one to the next; the y below the last.
double draw_sections(Canvas& canvas, const MeasuringForm& form, const Wording& w, const std::vector<Section*>& sections, double between)
{
    Rect room{margin, margin, canvas.page().width - 2 * margin, 0};
    double bottom = room.y;
    for (Section* section : sections) {
        bottom = section(canvas, room, form, w);
        room.y = bottom + between;
    }
    return bottom;
}

// The sections, spread over the side's height as far as that helps.
Page draw_side(const Fonts& fonts, const MeasuringForm& form, const Wording& w, Paper paper, const std::vector<Section*>& sections)
{
    const auto [width, height] = size_of(paper);
    Canvas trial(fonts, width, height), canvas(fonts, width, height);
    const double left_over = height - margin - draw_sections(trial, form, w, sections, 0);
    draw_sections(canvas, form, w, sections, std::clamp(left_over / static_cast<double>(sections.size() - 1), 0.0, most_between));
    return canvas.page();
}

std::vector<Section*> back_of(OnMachine machine)
{
    switch (machine) {
    case OnMachine::trailed: return {draw_back_title, draw_halves, draw_machine_cautions, draw_trailed, draw_tractors, draw_measured_by};
    case OnMachine::mounted: return {draw_back_title, draw_halves, draw_machine_cautions, draw_mounted, draw_tractors, draw_measured_by};
    case OnMachine::lengths: break;
    }
    return {draw_back_title, draw_halves, draw_machine_cautions, draw_positions, draw_angles, draw_tractors, draw_measured_by};
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
    if (form.to_identify) return {draw_side(fonts, form, w, paper, {draw_identify_title, draw_gauges, draw_identify_ends, draw_identify_tubes, draw_identify_closed})};
    return {draw_side(fonts, form, w, paper, {draw_front_title, draw_cautions, draw_shaft, draw_tube_sections, draw_condition, draw_ends, draw_closed, draw_limits}),
            draw_side(fonts, form, w, paper, back_of(form.machine))};
}

std::string measuring_form_name(const MeasuringForm& form)
{
    if (form.to_identify) return "identify-form";
    std::string name = "measuring-form";
    if (form.series) name += "-" + form.series->name;
    if (form.machine != OnMachine::lengths) name += std::string("-") + to_word(form.machine);
    std::replace_if(name.begin(), name.end(), [](char byte) { return !may_stand_in_a_name(byte); }, '-');
    return name;
}

std::string measuring_form_pdf(const MeasuringForm& form, Paper paper, const FontFiles& files, const Wording& w)
{
    const DocumentInfo info = document_info(form.to_identify ? say(IdentifyCaption::title, w) : document_title(w), form.owner, document_subject(form.series, w));
    return pdf_of(draw_measuring_form(form, paper, files, w), info, files);
}

}  // namespace shaftcut

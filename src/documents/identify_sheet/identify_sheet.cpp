#include "identify_sheet/identify_sheet.hpp"

#include <algorithm>
#include <array>

#include "identify_sheet/identify_sheet_parts.hpp"

namespace shaftcut {
namespace {

using namespace identify_sheet;

constexpr double margin = 10, least_between = 2.6, most_between = 8;
constexpr double gaps = 6;

// From the most that is useful to what must be there.
constexpr std::array amounts{Amount{6, 3}, Amount{5, 3}, Amount{5, 2}, Amount{4, 2}, Amount{3, 2}, Amount{3, 1}, Amount{2, 1}, Amount{1, 1}};

// The y below the last.
double draw_all(Canvas& canvas, const IdentifiedShaft& shaft, Amount amount, double between, const Wording& w)
{
    Rect room{margin, margin, canvas.page().width - 2 * margin, 0};
    for (Section* section : {draw_title, draw_band, draw_shaft, draw_parts}) room.y = section(canvas, room, shaft, w) + between;
    room.y = draw_how_sure(canvas, room, shaft, amount.series, w) + between;
    room.y = draw_next(canvas, room, shaft, amount.next, w) + between;
    return draw_cautions(canvas, room, shaft, w);
}

}  // namespace

std::vector<Page> draw_identify_sheet(const IdentifiedShaft& shaft, Paper paper, const FontFiles& files, const Wording& w)
{
    const Fonts fonts(files);
    const auto [width, height] = size_of(paper);
    for (std::size_t i = 0;; ++i) {
        Canvas trial(fonts, width, height), canvas(fonts, width, height);
        const double left_over = height - margin - draw_all(trial, shaft, amounts[i], least_between, w);
        if (left_over < 0 && i + 1 < amounts.size()) continue;
        draw_all(canvas, shaft, amounts[i], std::clamp(least_between + left_over / gaps, least_between, most_between), w);
        return {canvas.page()};
    }
}

DocumentInfo identify_sheet_info(const IdentifiedShaft& shaft, const Wording& w)
{
    return document_info(document_title(shaft.measures.shaft, w), shaft.owner, document_subject(w), shaft.measures.date);
}

}  // namespace shaftcut

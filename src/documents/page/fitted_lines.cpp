#include "page/fitted_lines.hpp"

namespace shaftcut {
namespace {

// Nearer than this a line is not to be read.
constexpr double narrowest = 0.66;
constexpr double leading = 1.45;

Lettering narrow(Lettering lettering)
{
    lettering.stretch = narrowest;
    lettering.leading = leading;
    return lettering;
}

bool is_one_line(const Canvas& canvas, double width, std::string_view text, Lettering lettering) { return canvas.width_of(text, narrow(lettering)) <= width; }

}  // namespace

double draw_fitted_lines(Canvas& canvas, Point top_left, double width, std::string_view text, Lettering lettering)
{
    if (!is_one_line(canvas, width, text, lettering)) return canvas.paragraph(top_left, width, text, narrow(lettering));
    canvas.fitted({top_left.x, top_left.y + lettering.cap_height * 1.2}, width, text, lettering);
    return top_left.y + lettering.cap_height * leading;
}

double fitted_lines_height(const Canvas& canvas, double width, std::string_view text, Lettering lettering)
{
    const std::size_t lines = is_one_line(canvas, width, text, lettering) ? 1 : canvas.lines_of(text, width, narrow(lettering)).size();
    return static_cast<double>(lines) * lettering.cap_height * leading;
}

}  // namespace shaftcut

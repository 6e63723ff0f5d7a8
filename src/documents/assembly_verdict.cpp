// Whether to build, in the largest words on the sheet, and what the finished shaft may be used for.
#include "assembly_parts.hpp"

namespace shaftcut::assembly_sheet {
namespace {

std::string use_text(const BuildPlan& plan)
{
    const UseRange& use = plan.built->use;
    std::string text = "Pull to at most:";
    for (const Range range : all_ranges) {
        const auto& longest = use.longest[range];
        text += (range == Range::working ? " " : " · ") + std::string(to_word(range)) + " " + (longest ? figure_with_unit((*longest)[plan.reference], plan.units, Toward::down) : "NOT AT ALL");
    }
    text += "; push to no less than " + figure_with_unit(use.shortest[plan.reference], plan.units, Toward::up);
    if (!plan.has_wide_angle) return text + ".";
    return text + (plan.reference == Reference::outer_cross ? " (OUTER cross)." : " (INNER cross).");
}

}  // namespace

double draw_refused(Canvas& canvas, Rect room)
{
    constexpr Lettering large{11, Weight::bold};
    canvas.begin(Part::heading);
    const Rect word = canvas.text({room.x + 5, room.y + large.cap_height + 3}, "DO NOT BUILD", large);
    const double height = large.cap_height + 6;
    canvas.box({room.x + 1, room.y + 0.5, word.width + 8, height}, 2.0);
    return room.y + height + 2;
}

double draw_use(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    canvas.begin(Part::paragraph);
    const std::string text = use_text(plan);
    constexpr double line = 5.2, most_narrowed = 0.72;
    if (most_narrowed * canvas.width_of(text, lettering::figure) > room.width) return canvas.paragraph(Point{room.x, room.y}, room.width, text, lettering::figure);
    canvas.fitted({room.x, room.y + 4}, room.width, text, lettering::figure);
    return room.y + line;
}

}  // namespace shaftcut::assembly_sheet

// Whether to build, in the largest words on the sheet, and what the finished shaft may be used for.
#include <algorithm>

#include "assembly_parts.hpp"

namespace shaftcut::assembly_sheet {
namespace {

std::string pulled_text(const BuildPlan& plan)
{
    const UseRange& use = plan.built->use;
    std::string text = "Pull to at most:";
    for (const Range range : all_ranges) {
        const auto& longest = use.longest[range];
        text += (range == Range::working ? " " : " · ") + std::string(to_word(range)) + " " + (longest ? figure_with_unit((*longest)[plan.reference], plan.units, Toward::down) : "NOT AT ALL");
    }
    return text;
}

std::string pushed_text(const BuildPlan& plan)
{
    const std::string from = plan.has_wide_angle ? "from the " + cross_words(plan, plan.reference) : "between the crosses";
    return "Push together to no less than " + length_text(plan, plan.built->use.shortest[plan.reference], Toward::up) + "; all measured " + from + ", joints straight.";
}

}  // namespace

double draw_verdict(Canvas& canvas, Rect room, const BuildPlan& plan)
{
    const bool refused = !plan.built;
    const Lettering large{refused ? 11.0 : 5.0, Weight::bold};
    const std::string words = refused ? "DO NOT BUILD" : plan.count == 1 ? "BUILD 1" : "BUILD " + std::to_string(plan.count) + " ALIKE";
    canvas.begin(Part::heading);
    const Rect word = canvas.text({room.x + 3.5, room.y + large.cap_height + 2.4}, words, large);
    const double height = large.cap_height + 4.8;
    canvas.box({room.x + 0.5, room.y + 0.2, word.width + 6, height}, refused ? 2.0 : 1.0);
    if (refused) return room.y + height + 2;
    canvas.begin(Part::paragraph);
    const double x = word.right() + 5.5, width = room.right() - x;
    canvas.fitted({x, room.y + 4.4}, width, pulled_text(plan), lettering::name);
    return std::max(room.y + height + 0.5, canvas.paragraph({x, room.y + 6}, width, pushed_text(plan), lettering::close_note));
}

}  // namespace shaftcut::assembly_sheet

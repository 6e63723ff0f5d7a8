// The title of each sheet of a saw plan.
#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut::saw_sheet {
namespace {

constexpr double inset = 1.8, sheet_number_width = 42, below_title = 3, short_title_height = 8, first_baseline = 6.6, next_baseline = 5.6;
constexpr Lettering large{5, Weight::bold};

}  // namespace

double PlanTitle::draw_first(Canvas& canvas, Rect room) const
{
    canvas.begin(Part::table);
    const double width = room.width - 2 * inset;
    double y = canvas.paragraph({room.x + inset, room.y + 0.8}, width - sheet_number_width, name_, large);
    if (!owner_.empty()) y = canvas.paragraph({room.x + inset, y}, width, owner_, lettering::name);
    if (!settings_.empty()) y = canvas.paragraph({room.x + inset, y}, width, settings_, lettering::note);
    y += 1;
    canvas.box({room.x, room.y, room.width, y - room.y}, pen::outline);
    return y;
}

double PlanTitle::draw_next(Canvas& canvas, Rect room) const
{
    canvas.begin(Part::table);
    canvas.box({room.x, room.y, room.width, short_title_height}, pen::guard);
    const auto lines = canvas.lines_of(name_, room.width - 2 * inset - sheet_number_width, lettering::name);
    canvas.text({room.x + inset, room.y + next_baseline}, lines.front() + (lines.size() > 1 ? " …" : ""), lettering::name);
    return room.y + short_title_height;
}

void PlanTitle::draw_number(Canvas& canvas, Rect room, bool first, std::size_t number, std::size_t of) const
{
    canvas.begin(Part::table);
    const double y = room.y + (first ? first_baseline : next_baseline);
    canvas.text({room.right() - inset, y}, words_.numbered_sheet(number, of), lettering::strong, Align::right);
}

Sheets sheets_under(PlanTitle title, const Fonts& fonts, Paper paper, std::size_t before)
{
    return Sheets(fonts, std::make_shared<const PlanTitle>(std::move(title)), paper, below_title, before);
}

}  // namespace shaftcut::saw_sheet

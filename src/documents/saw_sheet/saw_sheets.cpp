// The sheets of a saw plan, each with its title.
#include "saw_sheet/saw_sheet_parts.hpp"

namespace shaftcut::saw_sheet {
namespace {

constexpr double margin = 10, inset = 1.8, sheet_number_width = 42, continued_height = 5.5, below_title = 3, short_title_height = 8;
constexpr double first_baseline = 6.6;
constexpr Lettering large{5, Weight::bold};

std::string settings(const SawOrder& order)
{
    const auto with_unit = [&](Length length) { return saw_figure_with_unit(length, order.units); };
    std::string text = "Kerf " + with_unit(order.task.kerf) + "  ·  start trim " + with_unit(order.task.trim_start) + "  ·  end trim "
                       + with_unit(order.task.trim_end);
    if (order.plus_minus > Length()) text += "  ·  sawn lengths ± " + figure_with_unit(order.plus_minus, Units::mm, Toward::nearest, 3);
    if (order.reusable) text += "  ·  back to the rack from " + with_unit(*order.reusable);
    return text;
}

}  // namespace

Title title_of(const SawOrder& order) { return {"Saw plan " + order.name, order.owner, settings(order)}; }

double draw_title(Canvas& canvas, Rect room, const Title& title)
{
    canvas.begin(Part::table);
    const double width = room.width - 2 * inset;
    double y = canvas.paragraph({room.x + inset, room.y + 0.8}, width - sheet_number_width, title.name, large);
    if (!title.owner.empty()) y = canvas.paragraph({room.x + inset, y}, width, title.owner, lettering::name);
    if (!title.settings.empty()) y = canvas.paragraph({room.x + inset, y}, width, title.settings, lettering::note);
    y += 1;
    canvas.box({room.x, room.y, room.width, y - room.y}, pen::outline);
    return y;
}

double draw_short_title(Canvas& canvas, Rect room, const Title& title)
{
    canvas.begin(Part::table);
    canvas.box({room.x, room.y, room.width, short_title_height}, pen::guard);
    const auto lines = canvas.lines_of(title.name, room.width - 2 * inset - sheet_number_width, lettering::name);
    canvas.text({room.x + inset, room.y + 5.6}, lines.front() + (lines.size() > 1 ? " …" : ""), lettering::name);
    return room.y + short_title_height;
}

void draw_sheet_number(Canvas& canvas, Rect room, bool first, std::size_t number, std::size_t of)
{
    canvas.begin(Part::table);
    const double y = room.y + (first ? first_baseline : 5.6);
    canvas.text({room.right() - inset, y}, "Sheet " + std::to_string(number) + " of " + std::to_string(of), lettering::strong, Align::right);
}

Sheets::Sheets(const Fonts& fonts, Title title, PaperSize size, std::size_t before) : fonts_(fonts), title_(std::move(title)), size_(size), before_(before)
{
    sheets_.emplace_back(fonts_, size_.width, size_.height);
    y_ = draw_title(canvas(), room(), title_) + below_title;
}

Rect Sheets::room() const
{
    return {margin, margin, size_.width - 2 * margin, size_.height - 2 * margin};
}

double Sheets::left_over() const
{
    return room().bottom() - continued_height - y_;
}

void Sheets::next()
{
    canvas().begin(Part::paragraph);
    canvas().text({room().right(), room().bottom() - 0.9}, "continued on sheet " + std::to_string(count() + 1) + " →", lettering::strong, Align::right);
    sheets_.emplace_back(fonts_, size_.width, size_.height);
    y_ = draw_short_title(canvas(), room(), title_) + below_title;
}

void Sheets::ensure(double height)
{
    if (left_over() < height) next();
}

void Sheets::flow(const Blocks& blocks)
{
    for (std::size_t next_block = 0; next_block < blocks.size();) {
        const sheet::Placed placed = sheet::place(canvas(), {room().x, y_, room().width, left_over()}, blocks, next_block);
        next_block = placed.next;
        y_ = placed.bottom;
        if (next_block < blocks.size()) next();
    }
    y_ += sheet::between_lists;
}

std::vector<Page> Sheets::finished(std::size_t of) const
{
    std::vector<Page> pages;
    for (std::size_t i = 0; i < sheets_.size(); ++i) {
        Canvas sheet = sheets_[i];
        draw_sheet_number(sheet, room(), i == 0, before_ + i + 1, of);
        pages.push_back(sheet.page());
    }
    return pages;
}

}  // namespace shaftcut::saw_sheet

// The title block with the fields that ISO 7200:2004 asks for, and the order's code.
#include <algorithm>

#include "page/qr.hpp"
#include "page/sheet_parts.hpp"

namespace shaftcut::sheet {
namespace {

constexpr double right_part = 66, inset = 1.8, row = 5.4;
constexpr double short_title_height = 8, sheet_number_width = 32;

// A field's text with a word about every sign that cannot be drawn.
std::string field(const Canvas& canvas, const SheetWords& words, const std::string& name, const std::string& text)
{
    const std::string missing = "\xEF\xBF\xBD";
    const std::string shown = name + canvas.fonts().printable(text);
    return text.find(missing) == std::string::npos && shown.find(missing) != std::string::npos ? words.with_missing_sign(shown, missing) : shown;
}

// At most `most_lines` of a field; the y below.
double draw_field(Canvas& canvas, Point top_left, double width, const std::string& text, Lettering lettering, const Heading& heading)
{
    std::vector<std::string> lines = canvas.lines_of(text, width, lettering);
    if (lines.size() > heading.most_lines) {
        lines.resize(heading.most_lines);
        const std::string more = heading.words.in_full_behind();
        lines.back() = canvas.lines_of(lines.back(), width - canvas.width_of(more, lettering) - lettering.cap_height, lettering).front() + more;
    }
    for (const std::string& line : lines) top_left.y = canvas.paragraph(top_left, width, line, lettering);
    return top_left.y;
}

double draw_whom_for(Canvas& canvas, Rect cell, const Heading& heading)
{
    const double x = cell.x + inset, width = cell.width - 2 * inset;
    double y = cell.y + 1;
    if (!heading.owner.empty()) y = draw_field(canvas, {x, y}, width, field(canvas, heading.words, "", heading.owner), lettering::name, heading);
    y = draw_field(canvas, {x, y}, width, heading.subject, lettering::strong, heading);
    for (const auto& [name, text] : heading.fields) y = draw_field(canvas, {x, y}, width, field(canvas, heading.words, name, text), lettering::note, heading);
    return y + 1;
}

double draw_order_number(Canvas& canvas, Rect cell, const Heading& heading)
{
    const Lettering large{5, Weight::bold};
    const double y = cell.y + 7.2, room = cell.width - 2 * inset;
    const Rect label = canvas.text({cell.x + inset, y}, heading.words.order(), lettering::note);
    if (canvas.width_of(heading.order, large) <= room - label.width - 3) {
        canvas.text({cell.x + cell.width - inset, y}, heading.order, large, Align::right);
        return cell.y + 9.4;
    }
    return canvas.paragraph({cell.x + inset, cell.y + 8.4}, room, heading.order, lettering::name) + 1;
}

void draw_cell(Canvas& canvas, Rect cell, const std::string& name, const std::string& value)
{
    canvas.line({cell.x, cell.y}, {cell.right(), cell.y}, pen::dimension);
    const Rect label = canvas.text({cell.x + inset, cell.y + 4}, name, lettering::note);
    const double x = label.right() + 1.5;
    canvas.fitted({x, cell.y + 4}, cell.right() - x - 0.5, value, lettering::strong);
}

double draw_loud(Canvas& canvas, Rect cell, const std::string& words)
{
    const double height = 8.6;
    canvas.line({cell.x, cell.y}, {cell.right(), cell.y}, pen::dimension);
    canvas.fitted({cell.x + inset, cell.y + 6.7}, cell.width - 2 * inset, words, {5, Weight::bold});
    return cell.y + height;
}

double draw_what(Canvas& canvas, Rect cell, const Heading& heading)
{
    double y = draw_order_number(canvas, cell, heading);
    const double half = cell.width / 2;
    draw_cell(canvas, {cell.x, y, half, row}, heading.day.first, heading.day.second.empty() ? "—" : heading.day.second);
    draw_cell(canvas, {cell.x + half, y, half, row}, heading.words.sheet(), "");
    draw_cell(canvas, {cell.x, y + row, half, row}, heading.words.type(), heading.type);
    draw_cell(canvas, {cell.x + half, y + row, half, row}, heading.words.by(), "shaftcut");
    if (!heading.loud.empty()) return draw_loud(canvas, {cell.x, y + 2 * row, cell.width, 0}, heading.loud);
    draw_cell(canvas, {cell.x, y + 2 * row, cell.width, row}, heading.last.first, heading.last.second);
    return y + 3 * row;
}

std::string with_capital(std::string words)
{
    if (words.front() >= 'a' && words.front() <= 'z') words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

bool too_long(const Canvas& canvas, double width, const std::string& text, Lettering lettering, std::size_t most_lines)
{
    return canvas.lines_of(text, width - 2 * inset, lettering).size() > most_lines;
}

double code_side(const Code& code)
{
    return code.box.width + 2 * qr_quiet_modules * qr_module;
}

double whom_for_width(double width, const Heading& heading)
{
    return width - right_part - code_side(qr_code(heading.order));
}

}  // namespace

double draw_title_block(Canvas& canvas, Rect room, const Heading& heading)
{
    const Code code = qr_code(heading.order);
    const double side = code_side(code), left = whom_for_width(room.width, heading);
    canvas.begin(Part::table);
    const double below_left = draw_whom_for(canvas, {room.x, room.y, left, 0}, heading);
    const double below_right = draw_what(canvas, {room.x + left, room.y, right_part, 0}, heading);
    const double height = std::max({below_left - room.y, below_right - room.y, side});
    canvas.line({room.x + left, room.y}, {room.x + left, room.y + height}, pen::dimension);
    canvas.line({room.x + left + right_part, room.y}, {room.x + left + right_part, room.y + height}, pen::dimension);
    canvas.box({room.x, room.y, room.width, height}, pen::outline);
    const double quiet = qr_quiet_modules * qr_module;
    canvas.begin(Part::figure);
    canvas.code(code, {room.right() - side + quiet, room.y + (height - code.box.height) / 2});
    return room.y + height;
}

double draw_short_title(Canvas& canvas, Rect room, const Heading& heading)
{
    canvas.begin(Part::table);
    canvas.box({room.x, room.y, room.width, short_title_height}, pen::guard);
    const double y = room.y + 5.4;
    const Rect label = canvas.text({room.x + inset, y}, with_capital(heading.type) + "   " + heading.words.order(), lettering::note);
    const double x = label.right() + 2, alarm = heading.alarm.empty() ? 0 : canvas.width_of(heading.alarm, lettering::name) + 4;
    const Rect number = canvas.fitted({x, y}, room.right() - sheet_number_width - alarm - x, heading.order, lettering::name);
    if (alarm > 0) canvas.text({number.right() + 4, y}, heading.alarm, lettering::name);
    return room.y + short_title_height;
}

void draw_sheet_number(Canvas& canvas, Rect room, const Heading& heading, bool first, std::size_t number, std::size_t of)
{
    canvas.begin(Part::table);
    if (!first) {
        canvas.text({room.right() - inset, room.y + 5.4}, heading.words.numbered_sheet(number, of), lettering::strong, Align::right);
        return;
    }
    const double cell = room.x + whom_for_width(room.width, heading) + right_part / 2;
    const bool large = canvas.width_of(heading.order, {5, Weight::bold}) <= right_part - 2 * inset - canvas.width_of(heading.words.order(), lettering::note) - 3;
    const std::size_t lines = canvas.lines_of(heading.order, right_part - 2 * inset, lettering::name).size();
    const double top = room.y + (large ? 9.4 : 9.4 + lettering::name.pitch() * static_cast<double>(lines));
    canvas.text({cell + inset + canvas.width_of(heading.words.sheet(), lettering::note) + 1.5, top + 4}, heading.words.number(number, of), lettering::strong);
}

Blocks long_field_blocks(const Canvas& canvas, const Heading& heading)
{
    Blocks blocks;
    const double width = whom_for_width(canvas.page().width - 20, heading);
    const auto add = [&](const std::string& shown, const std::string& in_full, Lettering lettering) {
        if (too_long(canvas, width, shown, lettering, heading.most_lines)) blocks.push_back({Lead::bullet, in_full});
    };
    add(heading.owner, heading.words.owner(heading.owner), lettering::name);
    add(heading.subject, heading.words.subject(heading.subject), lettering::strong);
    for (const auto& [name, text] : heading.fields) add(name + text, name + text, lettering::note);
    if (!blocks.empty()) blocks.insert(blocks.begin(), {Lead::heading, heading.words.in_full(), false});
    return blocks;
}

}  // namespace shaftcut::sheet

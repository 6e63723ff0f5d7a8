// Running text in columns, and the sheets that it runs over.
#include <algorithm>

#include "page/sheet_parts.hpp"

namespace shaftcut::sheet {
namespace {

constexpr double margin = 10, indent = 5, after_close = 0.15, after_block = 0.45, before_heading = 1.6, before_close_heading = 0.9, continued_height = 5.5;

Lettering lettering_of(const Block& block)
{
    if (block.lead == Lead::heading) return block.spacing == Spacing::usual ? lettering::name : lettering::close_name;
    if (block.spacing == Spacing::close) return block.strong ? lettering::close_strong : lettering::close_note;
    return block.strong ? lettering::strong : lettering::note;
}

double indent_of(const Block& block)
{
    return block.lead == Lead::tick || block.lead == Lead::bullet ? indent : 0;
}

double after(const Block& block) { return block.spacing == Spacing::usual ? after_block : after_close; }
double before(const Block& block) { return block.lead != Lead::heading ? 0 : block.spacing == Spacing::usual ? before_heading : before_close_heading; }

void draw_lead(Canvas& canvas, Point at, const Block& block)
{
    const double side = block.spacing == Spacing::usual ? 3.2 : 2.6;
    if (block.lead == Lead::tick) canvas.box({at.x + 0.3, at.y + 0.4, side, side}, pen::dimension);
    if (block.lead == Lead::bullet) canvas.disc({at.x + 1.6, at.y + 1.8}, 0.7, Fill::black);
}

// A block that fills more than most of a sheet in pieces that do not.
Blocks in_pieces(const Canvas& canvas, double width, const Blocks& blocks)
{
    constexpr std::size_t most = 30;
    Blocks pieces;
    for (const Block& block : blocks) {
        const auto lines = canvas.lines_of(block.text, width - indent_of(block), lettering_of(block));
        for (std::size_t i = 0; i < lines.size(); i += most) {
            Block piece{i == 0 ? block.lead : Lead::none, lines[i], block.strong, block.spacing, block.continued};
            for (std::size_t j = i + 1; j < std::min(i + most, lines.size()); ++j) piece.text += " " + lines[j];
            pieces.push_back(lines.size() <= most ? block : piece);
        }
    }
    return pieces;
}

}  // namespace

Blocks remaining(const Blocks& blocks, std::size_t from, const SheetWords& words)
{
    Blocks rest(blocks.begin() + static_cast<std::ptrdiff_t>(from), blocks.end());
    if (rest.empty() || rest.front().lead == Lead::heading) return rest;
    for (std::size_t i = from; i-- > 0;)
        if (blocks[i].lead == Lead::heading) {
            const Block& heading = blocks[i];
            rest.insert(rest.begin(), {Lead::heading, heading.continued ? heading.text : words.continued(heading.text), false, heading.spacing, true});
            break;
        }
    return rest;
}

double height_of(const Canvas& canvas, double width, const Block& block)
{
    const Lettering letters = lettering_of(block);
    const auto lines = canvas.lines_of(block.text, width - indent_of(block), letters);
    return static_cast<double>(lines.size()) * letters.pitch() + after(block) + before(block);
}

Placed place(Canvas& canvas, Rect column, const Blocks& blocks, std::size_t from)
{
    double y = column.y;
    for (std::size_t i = from; i < blocks.size(); ++i) {
        const Block& block = blocks[i];
        double needed = height_of(canvas, column.width, block);
        if (block.lead == Lead::heading && i + 1 < blocks.size()) needed += height_of(canvas, column.width, blocks[i + 1]);
        if (y + needed > column.bottom()) return {i, y};
        if (y > column.y) y += before(block);
        canvas.begin(block.lead == Lead::heading ? Part::heading : Part::paragraph);
        draw_lead(canvas, {column.x, y}, block);
        const double left = indent_of(block);
        y = canvas.paragraph({column.x + left, y}, column.width - left, block.text, lettering_of(block)) + after(block);
    }
    return {blocks.size(), y};
}

void add_list(Blocks& blocks, const std::string& heading, const std::vector<std::string>& texts, bool strong)
{
    if (texts.empty()) return;
    blocks.push_back({Lead::heading, heading});
    for (const std::string& text : texts) blocks.push_back({Lead::bullet, text, strong});
}

Block caution_block(const std::vector<std::string>& cautions, Spacing spacing)
{
    Block block{Lead::none, "", true, spacing};
    for (const std::string& caution : cautions) block.text += (block.text.empty() ? "" : " ") + caution;
    return block;
}

Sheets::Sheets(const Fonts& fonts, std::shared_ptr<const Title> title, Paper paper, double below, std::size_t before)
    : fonts_(fonts), title_(std::move(title)), size_(size_of(paper)), before_(before)
{
    sheets_.emplace_back(fonts_, size_.width, size_.height);
    y_ = top_ = title_->draw_first(canvas(), room()) + below;
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
    sheets_.emplace_back(fonts_, size_.width, size_.height);
    y_ = top_ = title_->draw_next(canvas(), room()) + 3;
}

void Sheets::go_on()
{
    canvas().begin(Part::paragraph);
    canvas().text({room().right(), room().bottom() - 0.9}, words().continued_on(count() + 1), lettering::strong, Align::right);
    next();
}

void Sheets::ensure(double height)
{
    if (left_over() < height) go_on();
}

void Sheets::ensure_last(double height)
{
    if (y_ + height > room().bottom()) go_on();
}

void Sheets::flow(const Blocks& blocks, std::size_t from)
{
    const Blocks pieces = in_pieces(canvas(), room().width, remaining(blocks, from, words()));
    if (!pieces.empty() && y_ > top_) y_ += between_lists;
    for (std::size_t next_block = 0; next_block < pieces.size();) {
        const Placed placed = place(canvas(), {room().x, y_, room().width, left_over()}, pieces, next_block);
        next_block = placed.next;
        y_ = placed.bottom;
        if (next_block < pieces.size()) go_on();
    }
}

std::vector<Page> Sheets::finished(std::size_t of) const
{
    std::vector<Page> pages;
    for (std::size_t i = 0; i < sheets_.size(); ++i) {
        Canvas sheet = sheets_[i];
        title_->draw_number(sheet, room(), i == 0, before_ + i + 1, of);
        pages.push_back(sheet.page());
    }
    return pages;
}

}  // namespace shaftcut::sheet

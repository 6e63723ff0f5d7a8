#include "page/boxed_text.hpp"

#include <algorithm>
#include <string>
#include <vector>

namespace shaftcut {
namespace {

constexpr std::string_view tick_sign = "☐", box_sign = "▭", fixed_space = "\u00a0";
constexpr double tick_side = 3.8, gap = 0.9, below_box = 0.55;

enum class Kind { words, figures, tick, box };

struct Piece {
    Kind kind = Kind::words;
    std::string text;
};

// What is not parted over lines.
struct Group {
    std::vector<Piece> pieces;
    double width = 0;
};

std::string with_spaces(std::string_view text)
{
    std::string out(text);
    for (std::size_t at; (at = out.find(fixed_space)) != std::string::npos;) out.replace(at, fixed_space.size(), " ");
    return out;
}

std::vector<std::string_view> words_of(std::string_view text)
{
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(' '), text.size());
        if (end > 0) words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

// Texts and signs of one word.
std::vector<Piece> pieces_of(std::string_view word)
{
    const Kind kind = word.find(box_sign) == std::string_view::npos ? Kind::words : Kind::figures;
    std::vector<Piece> pieces;
    while (!word.empty()) {
        const std::size_t tick = word.find(tick_sign), box = word.find(box_sign), next = std::min({tick, box, word.size()});
        // What follows a box is not a figure.
        const bool behind = std::any_of(pieces.begin(), pieces.end(), [](const Piece& piece) { return piece.kind == Kind::box; });
        if (next > 0) pieces.push_back({behind ? Kind::words : kind, with_spaces(word.substr(0, next))});
        if (next == word.size()) break;
        pieces.push_back({next == tick ? Kind::tick : Kind::box, ""});
        word.remove_prefix(next + tick_sign.size());
    }
    return pieces;
}

class Setter {
public:
    Setter(const Canvas& canvas, const BoxedText& style) : canvas_(canvas), style_(style), space_(canvas.width_of("n n", style.words) - canvas.width_of("nn", style.words)) {}

    std::vector<std::vector<Group>> lines(std::string_view text, double width) const
    {
        std::vector<std::vector<Group>> lines;
        double used = width + 1;
        for (const Group& group : groups(text, width)) {
            if (used + space_ + group.width > width) {
                lines.emplace_back();
                used = -space_;
            }
            used += space_ + group.width;
            lines.back().push_back(group);
        }
        return lines;
    }

    static bool has_box(const std::vector<Group>& line)
    {
        return std::any_of(line.begin(), line.end(), [](const Group& group) {
            return std::any_of(group.pieces.begin(), group.pieces.end(), [](const Piece& piece) { return piece.kind == Kind::box || piece.kind == Kind::figures; });
        });
    }
    static bool has_tick(const std::vector<Group>& line)
    {
        return std::any_of(line.begin(), line.end(), [](const Group& group) { return std::any_of(group.pieces.begin(), group.pieces.end(), [](const Piece& piece) { return piece.kind == Kind::tick; }); });
    }
    double height(const std::vector<Group>& line) const
    {
        if (has_box(line)) return written_box_height + below_box;
        return std::max(style_.words.pitch(), has_tick(line) ? tick_side + 0.7 : 0);
    }

    // Words that follow one another are one text.
    void draw(Canvas& canvas, Point at, const std::vector<Group>& line) const
    {
        const double baseline = at.y + (has_box(line) ? 5.1 : has_tick(line) ? 3.45 : style_.words.cap_height * 1.2);
        std::string words;
        double start = at.x, x = at.x;
        const auto put_words = [&] {
            if (!words.empty()) canvas.text({start, baseline}, words, style_.words);
            words.clear();
        };
        for (const Group& group : line) {
            if (&group != &line.front()) x += space_;
            for (const Piece& piece : group.pieces) {
                const bool first = &piece == &group.pieces.front();
                if (piece.kind == Kind::words && (first || &piece != &group.pieces.back())) {
                    if (words.empty()) start = x;
                    words += (words.empty() ? "" : " ") + piece.text;
                    x = start + canvas_.width_of(words, style_.words);
                    continue;
                }
                put_words();
                x = put(canvas, {x, baseline}, piece);
            }
        }
        put_words();
    }

private:
    double width_of(const Piece& piece) const
    {
        switch (piece.kind) {
        case Kind::words: return canvas_.width_of(piece.text, style_.words);
        case Kind::figures: return canvas_.width_of(piece.text, style_.figures);
        case Kind::tick: return tick_side + 2 * gap;
        case Kind::box: break;
        }
        return style_.box_width + 2 * gap;
    }

    Group group_of(std::vector<Piece> pieces) const
    {
        Group group{std::move(pieces), 0};
        for (const Piece& piece : group.pieces) group.width += width_of(piece);
        return group;
    }

    // A sign stays with the word before it.
    std::vector<Group> groups(std::string_view text, double width) const
    {
        std::vector<Group> found;
        for (const std::string_view word : words_of(text)) {
            std::vector<Piece> pieces = pieces_of(word);
            const bool sign_first = pieces.front().kind == Kind::tick || pieces.front().kind == Kind::box;
            if (sign_first && !found.empty()) {
                std::vector<Piece> joined = found.back().pieces;
                joined.back().text += joined.back().text.empty() ? "" : " ";
                joined.insert(joined.end(), pieces.begin(), pieces.end());
                if (Group both = group_of(joined); both.width <= width) {
                    found.back() = std::move(both);
                    continue;
                }
            }
            found.push_back(group_of(std::move(pieces)));
        }
        return found;
    }

    double put(Canvas& canvas, Point at, const Piece& piece) const
    {
        const double end = at.x + width_of(piece);
        switch (piece.kind) {
        case Kind::words: canvas.text(at, piece.text, style_.words); break;
        case Kind::figures: canvas.text(at, piece.text, style_.figures); break;
        case Kind::tick: canvas.box({at.x + gap, at.y - 3.1, tick_side, tick_side}, pen::dimension); break;
        case Kind::box: canvas.box({at.x + gap, at.y - 4.6, style_.box_width, written_box_height}, pen::guard); break;
        }
        return end;
    }

    const Canvas& canvas_;
    const BoxedText& style_;
    double space_;
};

}  // namespace

double draw_boxed(Canvas& canvas, Point top_left, double width, std::string_view text, const BoxedText& style)
{
    const Setter setter(canvas, style);
    for (const auto& line : setter.lines(text, width)) {
        setter.draw(canvas, top_left, line);
        top_left.y += setter.height(line);
    }
    return top_left.y;
}

double boxed_height(const Canvas& canvas, double width, std::string_view text, const BoxedText& style)
{
    const Setter setter(canvas, style);
    double height = 0;
    for (const auto& line : setter.lines(text, width)) height += setter.height(line);
    return height;
}

}  // namespace shaftcut

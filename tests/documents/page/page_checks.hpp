// Questions about a drawn page that its display list answers, and what every page is held to.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "page/font.hpp"
#include "shaftcut/documents/page/page.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"
#include "text.hpp"

namespace shaftcut::test {

inline const Fonts& fonts()
{
    static const Fonts loaded(font_files());
    return loaded;
}

inline std::vector<Text> texts_of(const Page& page)
{
    std::vector<Text> texts;
    for (const Mark& mark : page.marks)
        if (const auto* text = std::get_if<Text>(&mark.what)) texts.push_back(*text);
    return texts;
}

inline bool overlap(const Rect& a, const Rect& b)
{
    return a.x < b.right() && b.x < a.right() && a.y < b.bottom() && b.y < a.bottom();
}

inline std::vector<std::string> overlapping_texts(const Page& page)
{
    const std::vector<Text> texts = texts_of(page);
    std::vector<std::string> found;
    for (std::size_t i = 0; i < texts.size(); ++i)
        for (std::size_t j = i + 1; j < texts.size(); ++j)
            if (overlap(texts[i].box, texts[j].box)) found.push_back(texts[i].text + " | " + texts[j].text);
    return found;
}

inline bool inside(const Page& page, const Rect& box, double margin)
{
    return box.x >= margin && box.y >= margin && box.right() <= page.width - margin && box.bottom() <= page.height - margin;
}

// Whether the straight line from `a` to `b` meets the inside of the box: it does where neither axis keeps them apart, and the box has
// corners on both sides of the line (separating axes; the drawing finds it by clipping).
inline bool crosses(Point a, Point b, const Rect& box)
{
    if (std::max(a.x, b.x) <= box.x || std::min(a.x, b.x) >= box.right() || std::max(a.y, b.y) <= box.y || std::min(a.y, b.y) >= box.bottom()) return false;
    const auto side = [&](double x, double y) { return (b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x); };
    const auto [least, greatest] = std::minmax({side(box.x, box.y), side(box.right(), box.y), side(box.x, box.bottom()), side(box.right(), box.bottom())});
    return least < 0 && greatest > 0;
}

// Texts that a drawn line runs through. A line may come as near as to the brackets and descenders, not to the figures.
inline std::vector<std::string> struck_texts(const Page& page)
{
    std::vector<std::string> found;
    for (const Text& text : texts_of(page)) {
        const Rect core{text.box.x, text.baseline.y - text.cap_height, text.box.width, text.cap_height};
        for (const Mark& mark : page.marks) {
            const auto* path = std::get_if<Path>(&mark.what);
            if (!path || path->width == 0) continue;
            const std::size_t count = path->points.size();
            for (std::size_t i = 0; i + (path->closed ? 0 : 1) < count; ++i)
                if (crosses(path->points[i], path->points[(i + 1) % count], core)) found.push_back(text.text);
        }
    }
    return found;
}

// All text in the order in which it was drawn, without spaces: so that a paragraph is found however it was broken.
inline std::string squeezed(const std::string& text)
{
    std::string out = text;
    out.erase(std::remove(out.begin(), out.end(), ' '), out.end());
    return out;
}

inline std::string all_text(const std::vector<Page>& pages)
{
    std::string out;
    for (const Page& page : pages)
        for (const Text& text : texts_of(page)) out += squeezed(text.text);
    return out;
}

// Whether the words stand on the pages, broken over lines or not.
inline bool contains(const std::vector<Page>& pages, const std::string& words)
{
    return all_text(pages).find(squeezed(fonts().printable(words))) != std::string::npos;
}

// The text that is these words and no more, or none.
inline const Text* find(const Page& page, const std::string& words)
{
    for (const Mark& mark : page.marks)
        if (const auto* text = std::get_if<Text>(&mark.what); text && text->text == words) return text;
    return nullptr;
}

// How many texts are these words and no more.
inline std::int64_t count_of(const std::vector<Page>& pages, const std::string& words)
{
    std::int64_t count = 0;
    for (const Page& page : pages)
        for (const Text& text : texts_of(page)) count += text.text == words ? 1 : 0;
    return count;
}

// No text overlaps another, is struck by a line, leaves the margins of 10 mm, is too small or too narrow to read, or lacks a glyph.
inline void check_texts(const Page& page)
{
    const auto joined = [](const std::vector<std::string>& lines) {
        std::string out;
        for (const std::string& line : lines) out += "\n  " + line;
        return out;
    };
    const auto overlapping = overlapping_texts(page), struck = struck_texts(page);
    INFO("overlapping:" << joined(overlapping) << "\nstruck:" << joined(struck));
    CHECK(overlapping.empty());
    CHECK(struck.empty());
    for (const Text& text : texts_of(page)) {
        INFO(text.text);
        CHECK(inside(page, text.box, 9.9));
        CHECK(text.cap_height >= 2.5);
        CHECK(text.stretch >= 0.62);
        for (const char32_t point : code_points(text.text)) CHECK(fonts().can_draw(point));
    }
}

// Every rectangle drawn with four corners, as wide and high as a box to write in.
inline std::vector<Rect> boxes_of(const Page& page)
{
    std::vector<Rect> boxes;
    for (const Mark& mark : page.marks) {
        const auto* path = std::get_if<Path>(&mark.what);
        if (!path || !path->closed || path->points.size() != 4 || path->fill != Fill::none) continue;
        const Point a = path->points[0], c = path->points[2];
        if (path->points[1].y == a.y && path->points[1].x == c.x) boxes.push_back({a.x, a.y, c.x - a.x, c.y - a.y});
    }
    return boxes;
}

// A square to tick, which may stand in a box to write in.
inline bool is_tick(const Path& path)
{
    const double side = 3.8;
    return path.closed && path.points.size() == 4 && std::abs(path.points[2].x - path.points[0].x - side) < 1e-9 && std::abs(path.points[2].y - path.points[0].y - side) < 1e-9;
}

// No drawn line leaves the margin, in mm.
inline void check_lines(const Page& page, double margin)
{
    for (const Mark& mark : page.marks)
        if (const auto* path = std::get_if<Path>(&mark.what))
            for (const Point& point : path->points) CHECK(inside(page, {point.x, point.y, 0, 0}, margin));
}

}  // namespace shaftcut::test

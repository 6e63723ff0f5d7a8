// Questions about a drawn page that its display list answers.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "shaftcut/documents/page.hpp"

namespace shaftcut::test {

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

// Whether the straight line from `a` to `b` meets the inside of the box: clipping by each side in turn (Liang and Barsky).
inline bool crosses(Point a, Point b, const Rect& box)
{
    double from = 0, to = 1;
    const auto clip = [&](double step, double room) {
        if (step == 0) return room > 0;
        const double at = room / step;
        if (step < 0) from = std::max(from, at);
        else to = std::min(to, at);
        return from < to;
    };
    return clip(a.x - b.x, a.x - box.x) && clip(b.x - a.x, box.right() - a.x) && clip(a.y - b.y, a.y - box.y) && clip(b.y - a.y, box.bottom() - a.y);
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

}  // namespace shaftcut::test

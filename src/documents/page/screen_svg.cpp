#include "page/screen_svg.hpp"

#include <cmath>
#include <stdexcept>

#include "page/font.hpp"

namespace shaftcut {
namespace {

// To a hundredth, without trailing zeros.
std::string number(double value)
{
    const auto hundredths = std::llround(value * 100);
    const auto size = std::llabs(hundredths);
    std::string text = (hundredths < 0 ? "-" : "") + std::to_string(size / 100);
    if (const auto part = size % 100) {
        text += part < 10 ? ".0" : ".";
        text += std::to_string(part % 10 == 0 ? part / 10 : part);
    }
    return text;
}

std::string attribute(const char* name, const std::string& value) { return std::string(" ") + name + "=\"" + value + "\""; }

std::string escaped(const std::string& text)
{
    std::string out;
    for (const char letter : text) {
        if (letter == '&') out += "&amp;";
        else if (letter == '<') out += "&lt;";
        else if (letter == '>') out += "&gt;";
        else out += letter;
    }
    return out;
}

const char* colour(Fill fill)
{
    switch (fill) {
    case Fill::none: return "none";
    case Fill::white: return "#fff";
    case Fill::black: return "currentColor";
    case Fill::hatched: break;
    }
    throw std::logic_error("a screen's picture has no waste");
}

std::string outline(double width, Fill fill)
{
    std::string text = attribute("fill", colour(fill));
    if (width > 0) text += attribute("stroke", "currentColor") + attribute("stroke-width", number(width));
    return text;
}

std::string drawn(const Path& path)
{
    std::string points, dashes;
    for (const Point& point : path.points) points += (points.empty() ? "M" : "L") + number(point.x) + " " + number(point.y);
    for (const double dash : path.dashes) dashes += (dashes.empty() ? "" : " ") + number(dash);
    return "<path" + attribute("d", points + (path.closed ? "Z" : "")) + outline(path.width, path.fill) + (dashes.empty() ? "" : attribute("stroke-dasharray", dashes)) + "/>";
}

std::string drawn(const Disc& disc)
{
    return "<circle" + attribute("cx", number(disc.centre.x)) + attribute("cy", number(disc.centre.y)) + attribute("r", number(disc.radius)) + outline(disc.width, disc.fill) + "/>";
}

// As wide as the paper's font sets it, so that it keeps the room that was found for it.
std::string drawn(const Text& text)
{
    return "<text" + attribute("x", number(text.baseline.x)) + attribute("y", number(text.baseline.y)) + attribute("font-size", number(text.cap_height / cap_height_of_em)) +
           (text.weight == Weight::bold ? attribute("font-weight", "bold") : "") + attribute("textLength", number(text.box.width)) + attribute("lengthAdjust", "spacingAndGlyphs") +
           attribute("fill", text.ink == Ink::white ? "#fff" : "currentColor") + ">" + escaped(text.text) + "</text>";
}

std::string drawn(const Code&) { throw std::logic_error("a screen's picture has no code"); }

}  // namespace

std::string screen_svg_of(const Page& page)
{
    std::string svg = "<svg" + attribute("xmlns", "http://www.w3.org/2000/svg") + attribute("viewBox", "0 0 " + number(page.width) + " " + number(page.height)) +
                      attribute("font-family", "sans-serif") + attribute("stroke-linejoin", "round") + ">";
    for (const Mark& mark : page.marks) svg += std::visit([](const auto& what) { return drawn(what); }, mark.what);
    return svg + "</svg>";
}

}  // namespace shaftcut

// Small things that every part of the workbook uses.
#include "workbook_lines.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace shaftcut::workbook {

std::string for_tube(std::string text, Tube tube)
{
    const std::pair<std::string, const char*> words[] = {{"THIS", to_word(tube)}, {"OTHER", to_word(other(tube))}};
    for (const auto& [token, word] : words)
        for (auto at = text.find(token); at != std::string::npos; at = text.find(token)) text.replace(at, token.size(), word);
    return text;
}

std::string clearly_below_expression(const std::string& a, const std::string& b)
{
    return "ROUND(" + b + "-" + a + ",3)>=0.01";
}

std::variant<double, std::string> now_in_mm(std::optional<Length> length)
{
    if (!length) return std::string();
    return length->mm();
}

double in_units(Length length, Units units)
{
    if (units == Units::mm) return length.mm();
    double scale = 1;
    for (int decimals = 0; decimals < 6; ++decimals, scale *= 10) {
        const double inches = std::round(static_cast<double>(length.um()) * scale / 25400.0) / scale;
        if (Length::from_mm(inches * 25.4) == length) return inches;
    }
    return static_cast<double>(length.um()) / 25400.0;
}

std::string shown(const std::string& millimetres, Units units)
{
    return units == Units::mm ? millimetres : "(" + millimetres + ")/25.4";
}

std::string literal(Length length) { return figure(length, Units::mm, Toward::nearest, 3); }

std::string result_words(CheckResult result)
{
    std::string words = to_word(result);
    std::transform(words.begin(), words.end(), words.begin(), [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return words;
}

bool has_deciding_inputs(const WorkOrder& order) { return order.fits.size() > 1 || order.fits.front().geometry; }

Tube tube_on(const WorkOrder& order, End end)
{
    return order.reading.shaft.halves[Tube::inner].end == end ? Tube::inner : Tube::outer;
}

std::string half_label(const WorkOrder& order, Tube tube)
{
    return std::string(order.reading.shaft.halves[tube].end == End::tractor ? "Tractor" : "Implement") + " half (" + to_word(tube) + " tube)";
}

const Check& check_of(const WorkOrder& order, CheckId id) { return order.checks[static_cast<std::size_t>(id)]; }

}  // namespace shaftcut::workbook

// Small things that every part of the workbook uses.
#include "work_order_book/workbook_lines.hpp"

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

std::optional<Length> value_of(const std::optional<Toleranced>& length) { return length ? std::optional(length->value) : std::nullopt; }

std::variant<double, std::string> now_in_mm(std::optional<Length> length)
{
    if (!length) return std::string();
    return length->mm();
}

double in_units(Length length, Units units)
{
    if (units == Units::mm) return length.mm();
    for (int scale = 1; scale <= 100'000; scale *= 10) {
        const double inches = std::round(static_cast<double>(length.um()) * scale / 25400.0) / scale;
        if (Length::from_mm(inches * 25.4) == length) return inches;
    }
    return static_cast<double>(length.um()) / 25400.0;
}

std::string shown(const std::string& millimetres, Units units)
{
    return units == Units::mm ? millimetres : "(" + millimetres + ")/25.4";
}

std::string in_mm(const std::string& name, Units units)
{
    return units == Units::mm ? "ROUND(" + name + ",3)" : "ROUND(" + name + "*25.4,3)";
}

std::string cross_words(const WorkOrder& order, Reference reference)
{
    if (!order.reading.has_wide_angle) return "cross to cross";
    return reference == Reference::outer_cross ? "cross to cross, at a wide-angle joint its OUTER cross (at the connection yoke)"
                                               : "cross to cross, at a wide-angle joint its INNER cross (at the tube yoke)";
}

std::string if_number(const std::string& name, const std::string& formula, const std::string& otherwise)
{
    return "IF(ISNUMBER(" + name + ")," + formula + "," + otherwise + ")";
}

std::string less_spacing(const std::string& formula, Length beyond)
{
    return beyond == Length() ? formula : "ROUND(" + formula + "-" + literal(beyond) + ",3)";
}

std::string literal(Length length) { return figure(length, Units::mm, Toward::nearest, 3); }

std::string result_words(CheckResult result)
{
    std::string words = to_word(result);
    std::transform(words.begin(), words.end(), words.begin(), [](unsigned char c) { return static_cast<char>(std::toupper(c)); });
    return words;
}

std::string yes_if(const std::string& condition) { return "IF(" + condition + ",\"yes\",\"no\")"; }
std::string yes_if(const std::string& guard, const std::string& condition) { return "IF(" + guard + "," + yes_if(condition) + ",\"no\")"; }
std::string yes_or_no(bool found) { return found ? "yes" : "no"; }

bool lacks_guard(const WorkOrder& order)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return !order.reading.shaft.halves[tube].guard_used; });
}

bool has_deciding_inputs(const WorkOrder& order) { return order.fits.size() > 1; }

std::string half_label(const WorkOrder& order, Tube tube)
{
    return std::string(order.reading.shaft.halves[tube].end == End::tractor ? "Tractor" : "Implement") + " half (" + to_word(tube) + " tube)";
}

}  // namespace shaftcut::workbook

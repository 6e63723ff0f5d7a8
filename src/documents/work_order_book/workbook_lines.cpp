// Small things that every part of the workbook uses.
#include "work_order_book/sheet_words.hpp"
#include "work_order_book/workbook_lines.hpp"

#include <algorithm>
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

std::string if_number(const std::string& name, const std::string& formula, const std::string& otherwise)
{
    return "IF(ISNUMBER(" + name + ")," + formula + "," + otherwise + ")";
}

std::string less_spacing(const std::string& formula, Length beyond)
{
    return beyond == Length() ? formula : "ROUND(" + formula + "-" + literal(beyond) + ",3)";
}

std::string literal(Length length) { return figure(length, Units::mm, Toward::nearest, 3); }

std::string in_formula(CellWord word, const Wording& w) { return text_in_formula(cell_word(word, w)); }
std::string holds(const std::string& cell, CellWord word, const Wording& w) { return cell + "=" + in_formula(word, w); }

std::string word_if(const std::string& condition, CellWord then, CellWord otherwise, const Wording& w)
{
    return "IF(" + condition + "," + in_formula(then, w) + "," + in_formula(otherwise, w) + ")";
}
std::string only_where(const std::string& guard, const std::string& word, const Wording& w) { return "IF(" + guard + "," + word + "," + in_formula(CellWord::no, w) + ")"; }
std::string yes_if(const std::string& condition, const Wording& w) { return word_if(condition, CellWord::yes, CellWord::no, w); }
std::string yes_if(const std::string& guard, const std::string& condition, const Wording& w) { return only_where(guard, yes_if(condition, w), w); }

bool lacks_guard(const WorkOrder& order)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return !order.reading.shaft.halves[tube].guard_used; });
}

bool has_deciding_inputs(const WorkOrder& order) { return order.fits.size() > 1; }

std::string half_label(const WorkOrder& order, Tube tube, const Wording& w)
{
    return half_name(order.reading.shaft.halves[tube].end, tube, w);
}

}  // namespace shaftcut::workbook

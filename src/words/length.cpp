#include "shaftcut/words/length.hpp"

#include <cmath>

namespace shaftcut {
namespace {

constexpr std::int64_t eighth_of_an_inch_um = 3175;  // a sixteenth is half of it: no whole micrometres

std::int64_t floor_div(std::int64_t a, std::int64_t b)
{
    return a / b - ((a % b != 0) && ((a < 0) != (b < 0)) ? 1 : 0);
}

std::int64_t ceil_div(std::int64_t a, std::int64_t b)
{
    return -floor_div(-a, b);
}

std::int64_t nearest_div(std::int64_t a, std::int64_t b)
{
    return a < 0 ? -((-2 * a + b) / (2 * b)) : (2 * a + b) / (2 * b);
}

std::int64_t divide(std::int64_t a, std::int64_t b, Toward toward)
{
    switch (toward) {
    case Toward::up: return ceil_div(a, b);
    case Toward::down: return floor_div(a, b);
    case Toward::nearest: break;
    }
    return nearest_div(a, b);
}

std::string decimal(std::int64_t scaled, int decimals)
{
    std::string digits = std::to_string(scaled < 0 ? -scaled : scaled);
    if (decimals > 0) {
        if (digits.size() <= static_cast<std::size_t>(decimals))
            digits.insert(0, static_cast<std::size_t>(decimals) + 1 - digits.size(), '0');
        digits.insert(digits.size() - static_cast<std::size_t>(decimals), 1, '.');
        digits.erase(digits.find_last_not_of('0') + 1);
        if (digits.back() == '.') digits.pop_back();
    }
    return scaled < 0 ? "-" + digits : digits;
}

std::string sixteenths(std::int64_t count)
{
    const std::int64_t size = count < 0 ? -count : count;
    const std::int64_t whole = size / 16;
    std::int64_t top = size % 16;
    std::int64_t bottom = 16;
    while (top != 0 && top % 2 == 0) { top /= 2; bottom /= 2; }
    std::string text = count < 0 ? "-" : "";
    if (top == 0) return text + std::to_string(whole);
    if (whole != 0) text += std::to_string(whole) + "-";
    return text + std::to_string(top) + "/" + std::to_string(bottom);
}

}  // namespace

Length Length::from_mm(double millimetres)
{
    return Length(std::llround(millimetres * 1000.0));
}

Length fraction_of(Fraction part, Length whole)
{
    return Length::micrometres(nearest_div(part.numerator * whole.um(), part.denominator));
}

Length round_up_to_step(Length needed, Fraction step_um)
{
    const std::int64_t counted = needed.um() - negligible.um();
    if (counted < 0) return Length();
    // The least number of steps that leaves an excess under the negligible length.
    const std::int64_t steps = floor_div(counted * step_um.denominator, step_um.numerator) + 1;
    return Length::micrometres(nearest_div(steps * step_um.numerator, step_um.denominator));
}

Length round_down_to_step(Length length, Fraction step_um)
{
    const std::int64_t counted = (length.um() + negligible.um() - 1) * step_um.denominator;
    const std::int64_t steps = counted / step_um.numerator;
    return Length::micrometres(nearest_div(steps * step_um.numerator, step_um.denominator));
}

Fraction step_in_sixteenths(Length step)
{
    const std::int64_t count = ceil_div(2 * step.um(), eighth_of_an_inch_um);
    return {eighth_of_an_inch_um * (count < 1 ? 1 : count), 2};
}

std::string figure(Length length, Units units, Toward toward, int decimals)
{
    if (units == Units::in) {
        // A sixteenth is 1587.5 um: a whole count of them is stored rounded to 1 um, which must not cost one more.
        const std::int64_t nearest = nearest_div(2 * length.um(), eighth_of_an_inch_um);
        const std::int64_t off = 2 * length.um() - nearest * eighth_of_an_inch_um;
        const bool exact = off >= -2 && off <= 2;
        return sixteenths(exact ? nearest : divide(2 * length.um(), eighth_of_an_inch_um, toward));
    }
    std::int64_t unit = 1000;
    for (int i = 0; i < decimals; ++i) unit /= 10;
    return decimal(divide(length.um(), unit, toward), decimals);
}

std::string figure_with_unit(Length length, Units units, Toward toward, int decimals)
{
    return figure(length, units, toward, decimals) + " " + unit_word(units);
}

std::string figure_with_millimetres(Length length, Units units, Toward toward, int decimals)
{
    const std::string text = figure_with_unit(length, units, toward, decimals);
    return units == Units::mm ? text : text + " (" + figure_with_unit(length, Units::mm, toward, decimals) + ")";
}

const char* unit_word(Units units)
{
    return units == Units::mm ? "mm" : "in";
}

}  // namespace shaftcut

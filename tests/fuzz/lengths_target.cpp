#include <optional>

#include "fuzz/targets.hpp"
#include "parse.hpp"

namespace shaftcut::fuzz {
namespace {

constexpr Length longest = Length::millimetres(100'000);
constexpr Length sixteenth = Length::micrometres(1588);      // of an inch, rounded up
constexpr Length half_sixteenth = Length::micrometres(795);  // and a micrometre for each rounding

std::optional<Length> length_of(std::string_view text, Units units, Sign sign)
{
    const auto parsed = parse_length(text, units, sign);
    const Length* length = std::get_if<Length>(&parsed);
    return length ? std::optional(*length) : std::nullopt;
}

std::string wrong_with_length(std::string_view text, Units units, Sign sign)
{
    const auto length = length_of(text, units, sign);
    if (!length) return {};
    if (*length > longest || -*length > longest) return "a length over 100 m was read";
    if (sign == Sign::none && *length < Length()) return "a negative length was read";
    const std::string printed = figure_with_unit(*length, Units::mm, Toward::nearest, 3);
    if (length_of(printed, Units::in, Sign::allowed) != length) return "what is printed reads as another length: " + printed;
    const std::string in_inches = figure_with_unit(*length, Units::in);
    const auto inches = length_of(in_inches, Units::mm, Sign::allowed);
    if (!inches) return *length > longest - sixteenth || -*length > longest - sixteenth ? "" : "what is printed in inches does not read: " + in_inches;
    const Length off = *inches - *length;
    return off > half_sixteenth || -off > half_sixteenth ? "what is printed in inches reads as another length: " + in_inches : "";
}

std::string wrong_with_angle(std::string_view text, Sign sign)
{
    const auto parsed = parse_angle(text, sign);
    const Angle* angle = std::get_if<Angle>(&parsed);
    if (!angle) return {};
    if (angle->mdeg() > 180'000 || angle->mdeg() < (sign == Sign::none ? 0 : -180'000)) return "an angle out of bounds was read";
    const auto again = parse_angle(figure(*angle, 3), Sign::allowed);
    return again.index() == 0 && std::get<Angle>(again) == *angle ? "" : "what is printed reads as another angle: " + figure(*angle, 3);
}

std::string wrong_with_numbers(std::string_view text)
{
    if (const auto parsed = parse_fraction(text); parsed.index() == 0) {
        const Fraction fraction = std::get<Fraction>(parsed);
        if (fraction.numerator < 1 || fraction.denominator < fraction.numerator) return "a fraction out of bounds was read";
    }
    if (const auto parsed = parse_thousandths(text, 500); parsed.index() == 0 && (std::get<0>(parsed) < 0 || std::get<0>(parsed) > 500'000))
        return "thousandths out of bounds were read";
    if (const auto parsed = parse_whole(text, 1950, 2100); parsed.index() == 0 && (std::get<0>(parsed) < 1950 || std::get<0>(parsed) > 2100))
        return "a whole number out of bounds was read";
    return {};
}

}  // namespace

std::string try_lengths(std::string_view bytes)
{
    for (const Sign sign : {Sign::none, Sign::allowed}) {
        for (const Units units : {Units::mm, Units::in})
            if (std::string wrong = wrong_with_length(bytes, units, sign); !wrong.empty()) return wrong;
        if (std::string wrong = wrong_with_angle(bytes, sign); !wrong.empty()) return wrong;
    }
    return wrong_with_numbers(bytes);
}

}  // namespace shaftcut::fuzz

#include <algorithm>

#include "source/bounds_of.hpp"
#include "text.hpp"
#include "xml/element.hpp"
#include "xml/paths.hpp"

namespace shaftcut {
namespace {

// A file without rightly stated units has that fault; a length is then wrong only if it would be so in both.
Parsed<Length> parse_in_file(std::string_view text, std::optional<Units> units, Sign sign)
{
    if (units) return parse_length(text, *units, sign);
    const Parsed<Length> in_mm = parse_length(text, Units::mm, sign);
    return std::holds_alternative<Length>(in_mm) ? in_mm : parse_length(text, Units::in, sign);
}

}  // namespace

std::vector<std::string_view> pieces_of(std::string_view text)
{
    constexpr std::string_view blanks = " \t\r\n";
    std::vector<std::string_view> pieces;
    while (true) {
        text.remove_prefix(std::min(text.find_first_not_of(blanks), text.size()));
        if (text.empty()) return pieces;
        pieces.push_back(text.substr(0, text.find_first_of(blanks)));
        text.remove_prefix(pieces.back().size());
    }
}

Place Attribute::place() const
{
    return reading_->faults.place(spot());
}

void Attribute::fault(FaultFinding what) const
{
    reading_->faults.add({spot(), attribute_path(name_), element_}, std::move(what));
}

template <class T>
std::optional<T> Attribute::taken(Parsed<T> parsed) const
{
    if (const auto* wrong = std::get_if<ParseFault>(&parsed)) {
        if (to_fill()) fault(StillToFill{name_});
        else fault(UnreadableValue{name_, *wrong});
        return std::nullopt;
    }
    return std::get<T>(std::move(parsed));
}

std::optional<Length> Attribute::length(Sign sign) const
{
    return given() ? taken(parse_in_file(given_->value, reading_->units, sign)) : std::nullopt;
}

std::optional<Length> Attribute::positive_length() const
{
    const auto read = length();
    if (!read || *read > Length()) return read;
    fault(WrongValue{Unfit::no_length, stated()});
    return std::nullopt;
}

std::optional<Length> Attribute::length_within(Bounded kind) const
{
    const auto read = length();
    if (!read || bounds_of(kind).hold(*read)) return read;
    fault(OutsideBounds{kind, stated(), *read});
    return std::nullopt;
}

std::optional<Length> Attribute::plus_minus() const { return length_within(Bounded::plus_minus); }

std::optional<Angle> Attribute::angle(Sign sign) const
{
    return given() ? taken(parse_angle(given_->value, sign)) : std::nullopt;
}

std::optional<Fraction> Attribute::fraction() const
{
    return given() ? taken(parse_fraction(given_->value)) : std::nullopt;
}

std::optional<std::int64_t> Attribute::thousandths(std::int64_t most) const
{
    return given() ? taken(parse_thousandths(given_->value, most)) : std::nullopt;
}

std::optional<std::int64_t> Attribute::percent() const { return given() ? taken(parse_percent(given_->value)) : std::nullopt; }

std::optional<Money> Attribute::money(const Currency& currency) const
{
    return given() ? taken(parse_money(given_->value, currency)) : std::nullopt;
}

std::optional<std::int64_t> Attribute::power() const
{
    const auto watts = thousandths(most_power);
    if (!watts || *watts > 0) return watts;
    fault(WrongValue{Unfit::no_power, stated()});
    return std::nullopt;
}

std::optional<std::int64_t> Attribute::millionths(std::int64_t most) const
{
    return given() ? taken(parse_millionths(given_->value, most)) : std::nullopt;
}

std::optional<int> Attribute::whole(int least, int most) const
{
    if (!given()) return std::nullopt;
    const auto read = taken(parse_whole(given_->value, least, most));
    return read ? std::optional(static_cast<int>(*read)) : std::nullopt;
}

std::vector<int> Attribute::wholes(int least, int most) const
{
    std::vector<int> found;
    if (!given()) return found;
    const auto pieces = pieces_of(given_->value);
    if (pieces.empty()) fault(Empty{EmptyOf::whole_numbers, name_});
    for (const std::string_view piece : pieces)
        if (const auto read = taken(parse_whole(piece, least, most))) found.push_back(static_cast<int>(*read));
    return found;
}

std::optional<std::string> Attribute::text(std::size_t most_characters) const
{
    if (!given()) return std::nullopt;
    const std::size_t characters = code_points(given_->value).size();
    if (characters <= most_characters) return given_->value;
    fault(TooLong{TextOf::attribute, stated(), characters, most_characters});
    return std::nullopt;
}

std::optional<std::string> Attribute::stated_text(std::size_t most_characters) const
{
    if (!given() || !pieces_of(given_->value).empty()) return text(most_characters);
    fault(Empty{EmptyOf::name, name_});
    return std::nullopt;
}

std::optional<std::string> Attribute::name() const { return stated_text(most_name_characters); }

std::optional<std::string> Attribute::one_of(const KnownNames& known) const
{
    if (!given()) return std::nullopt;
    if (known.holds(given_->value)) return given_->value;
    if (to_fill()) {
        fault(StillToFill{name_});
        return std::nullopt;
    }
    // Looking for what was meant is the trouble to be spared, never the fault: a list's order is sound where none was counted.
    fault(reading_->faults.full() ? UnknownName() : known.unknown(stated()));
    return std::nullopt;
}

std::optional<std::size_t> Attribute::index_of_word(const std::vector<std::string>& words, std::string_view text) const
{
    const auto found = std::find(words.begin(), words.end(), text);
    if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
    if (to_fill()) fault(StillToFill{name_});
    else fault(UnknownWord{{name_, std::string(text)}, words});
    return std::nullopt;
}

}  // namespace shaftcut

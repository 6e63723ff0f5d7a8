#include <algorithm>

#include "source/outside_bounds.hpp"
#include "text.hpp"
#include "xml/element.hpp"

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
    return reading_->faults.place(spot_);
}

void Attribute::fault(std::string wrong, std::string right) const
{
    reading_->faults.add(spot_, std::move(wrong), std::move(right));
}

template <class T>
std::optional<T> Attribute::taken(Parsed<T> parsed) const
{
    if (const auto* wrong = std::get_if<ParseFault>(&parsed)) {
        fault(name_ + (" " + wrong->wrong), wrong->right);
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
    fault(name_ + (" " + quoted(given_->value)) + " is nothing", "this length is more than 0");
    return std::nullopt;
}

std::optional<Length> Attribute::length_within(const Bounds& bounds, const char* what) const
{
    const auto read = length();
    const auto wrong = read ? outside_bounds(*read, bounds, what) : std::nullopt;
    if (!wrong) return read;
    fault(name_ + (" " + quoted(given_->value)) + " " + wrong->wrong, wrong->right);
    return std::nullopt;
}

std::optional<Length> Attribute::plus_minus() const { return length_within(plus_minus_bounds, "a length may be off by"); }

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

std::optional<std::int64_t> Attribute::power() const
{
    const auto watts = thousandths(most_power);
    if (!watts || *watts > 0) return watts;
    fault(name_ + (" " + quoted(given_->value)) + " is nothing", "write kilowatts above 0, or leave it out");
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
    if (pieces.empty()) fault(name_ + std::string(" is empty"), "write one or more whole numbers, or leave it out");
    for (const std::string_view piece : pieces)
        if (const auto read = taken(parse_whole(piece, least, most))) found.push_back(static_cast<int>(*read));
    return found;
}

std::optional<std::string> Attribute::text(std::size_t most_characters) const
{
    if (!given()) return std::nullopt;
    const std::size_t characters = code_points(given_->value).size();
    if (characters <= most_characters) return given_->value;
    fault(name_ + std::string(" has ") + std::to_string(characters) + " characters", "at most " + std::to_string(most_characters) + " fit");
    return std::nullopt;
}

std::optional<std::string> Attribute::stated_text(std::size_t most_characters) const
{
    if (!given() || !pieces_of(given_->value).empty()) return text(most_characters);
    fault(name_ + std::string(" is empty"), "write a name");
    return std::nullopt;
}

std::optional<std::string> Attribute::name() const { return stated_text(most_name_characters); }

std::optional<std::string> Attribute::one_of(const KnownNames& known) const
{
    if (!given()) return std::nullopt;
    if (known.holds(given_->value)) return given_->value;
    // Looking for what was meant is the trouble to be spared, never the fault: a list's order is sound where none was counted.
    fault(name_ + (" " + quoted(given_->value)) + " is not in " + known.what(), reading_->faults.full() ? "" : known.instead_of(given_->value));
    return std::nullopt;
}

std::optional<std::size_t> Attribute::index_of_word(const std::vector<std::string>& words, std::string_view text) const
{
    const auto found = std::find(words.begin(), words.end(), text);
    if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
    fault(name_ + (" " + quoted(text)) + " is not known", "write " + listed(words));
    return std::nullopt;
}

}  // namespace shaftcut

#include "table/values.hpp"

#include <algorithm>
#include <chrono>
#include <optional>
#include <regex>

#include "table/terms.hpp"

namespace shaftcut {
namespace {

using Plain = std::variant<std::string, FaultFinding>;

// No value that is read is longer: what is longer is none of these forms, and is told so by the strict readers.
constexpr std::size_t most_looked_at = 60;

// "1,2E+05": a long number in a narrow cell.
bool is_shortened(const std::string& text)
{
    static const std::regex form(R"(\d+([.,]\d+)?[eE][+-]\d+( ?(mm|in))?)");
    return std::regex_match(text, form);
}

// "1 250", "1.250,5", "12'500": digits in groups of three, and decimals behind them.
struct Grouped {
    std::string digits, decimals, unit;
    char separator = ' ';
    bool once = false;  // one separator and no decimals: where it is a point or comma, it can be a decimal mark
};

std::optional<Grouped> grouped(const std::string& text)
{
    static const std::regex form(R"(([1-9]\d{0,2})(([ .,'])\d{3}(?:\3\d{3})*)(?:([.,])(\d+))?( ?(?:mm|in))?)");
    std::smatch match;
    if (!std::regex_match(text, match, form) || (match[4].matched && match[4] == match[3])) return std::nullopt;
    const char separator = *match[3].first;
    std::string groups = match[2];
    std::erase(groups, separator);
    return Grouped{match[1].str() + groups, match[5], match[6], separator, groups.size() == 3 && !match[5].matched};
}

// Of "1.250": 1.25, so written that nobody takes it for the other.
std::string as_decimals(const Grouped& found, char mark)
{
    const std::string whole = found.digits.substr(0, found.digits.size() - 3);
    std::string decimals = found.digits.substr(found.digits.size() - 3);
    if (decimals.back() != '0') decimals += '0';
    else decimals.erase(std::max<std::size_t>(decimals.find_last_not_of('0') + 1, 1));
    return whole + mark + decimals + found.unit;
}

Plain plain_figure(const std::string& text, const std::string& name, Holds holds, DecimalMark decimal_mark)
{
    const char mark = decimal_mark == DecimalMark::comma ? ',' : '.';
    if (is_shortened(text)) return FaultFinding{WrongValue{Unfit::shortened, {name, text}}};
    const auto found = grouped(text);
    const bool plain_decimals = found && found->once && found->separator == '.' && mark == '.' && holds != Holds::whole;
    if (found && !plain_decimals) {
        const std::string whole = found->digits + (found->decimals.empty() ? "" : mark + found->decimals) + found->unit;
        const bool in_doubt = found->once && (found->separator == '.' || found->separator == ',');
        const std::string other = !in_doubt ? "" : holds == Holds::whole ? found->digits.substr(0, found->digits.size() - 3) : as_decimals(*found, mark);
        return FaultFinding{NumberInDoubt{{name, text}, whole, other}};
    }
    std::string plain = text;
    const std::size_t comma = text.find(',');
    if (mark == ',' && comma != std::string::npos && text.find_first_of(".,", comma + 1) == std::string::npos) plain[comma] = '.';
    static const std::regex whole_with_zeros(R"((\d+)[.,]0+)");
    std::smatch match;
    return holds == Holds::whole && std::regex_match(plain, match, whole_with_zeros) ? match[1].str() : plain;
}

std::string two_digits(int number) { return (number < 10 ? "0" : "") + std::to_string(number); }

std::optional<std::string> iso_day(int year, int month, int day)
{
    if (year < 1000 || month < 1 || day < 1) return std::nullopt;
    if (!(std::chrono::year(year) / month / day).ok()) return std::nullopt;
    return std::to_string(year) + "-" + two_digits(month) + "-" + two_digits(day);
}

Plain plain_date(const std::string& text, const std::string& name, std::optional<DateOrder> order)
{
    static const std::regex form(R"((\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2}))");
    std::smatch match;
    if (!std::regex_match(text, match, form)) return text;
    const int first = std::stoi(match[1]), second = std::stoi(match[3]), year = std::stoi(match[4]) + (match[4].length() == 2 ? 2000 : 0);
    const auto day_first = iso_day(year, second, first), month_first = iso_day(year, first, second);
    if (match[2] == "." && match[4].length() == 4) return day_first ? Plain(*day_first) : Plain(text);
    if (order) {
        const auto& day = *order == DateOrder::day_first || match[2] == "." ? day_first : month_first;
        return day ? Plain(*day) : Plain(text);
    }
    std::vector<std::string> days;
    if (day_first) days.push_back(*day_first);
    if (match[2] != "." && month_first && month_first != day_first) days.push_back(*month_first);
    if (days.empty()) return text;
    return FaultFinding{DateInDoubt{{name, text}, std::move(days)}};
}

}  // namespace

Plain plain_value(const std::string& text, const std::string& name, Holds holds, DecimalMark mark, std::optional<DateOrder> days)
{
    if (text.size() > most_looked_at || text.find_first_not_of("0123456789") == std::string::npos) return text;
    switch (holds) {
    case Holds::length:
    case Holds::number:
    case Holds::whole: return plain_figure(text, name, holds, mark);
    case Holds::order: return is_shortened(text) ? Plain(FaultFinding{WrongValue{Unfit::shortened, {name, text}}}) : Plain(text);
    case Holds::date: return plain_date(text, name, days);
    case Holds::word: return file_word_of(text);
    case Holds::text: break;
    }
    return text;
}

}  // namespace shaftcut

#include "money_words.hpp"

#include <algorithm>
#include <string_view>

namespace shaftcut {
namespace {

constexpr std::string_view fixed_space = "\u00a0";

enum class Month {};  // 0: January

bool is_day(const std::string& date)
{
    constexpr std::string_view form = "dddd-dd-dd";
    if (date.size() != form.size()) return false;
    for (std::size_t i = 0; i < form.size(); ++i)
        if (form[i] == 'd' ? date[i] < '0' || date[i] > '9' : date[i] != form[i]) return false;
    const int month = std::stoi(date.substr(5, 2));
    return month >= 1 && month <= 12;
}

}  // namespace

std::string bare_amount(Money amount, const Currency& currency)
{
    std::string text = decimal_text(amount, currency);
    const std::size_t first = text.front() == '-' ? 1 : 0;
    for (std::size_t at = std::min(text.find('.'), text.size()); at > first + 3;) text.insert(at -= 3, fixed_space);
    return text;
}

std::string say(Money amount, const Currency& currency, const Wording& w)
{
    return w("{amount}\u00a0{currency}", {{"amount", bare_amount(amount, currency)}, {"currency", currency.code}});
}

std::string say(Percent percent, const Wording& w) { return w("{percent}\u00a0%", {{"percent", decimal_text(percent)}}); }

std::string day_in_words(const std::string& date, const Wording& w)
{
    if (!is_day(date)) return date;
    return w("{day} {month:January|February|March|April|May|June|July|August|September|October|November|December} {year}",
             {{"day", std::stoi(date.substr(8, 2))}, {"month", static_cast<Month>(std::stoi(date.substr(5, 2)) - 1)}, {"year", date.substr(0, 4)}});
}

}  // namespace shaftcut

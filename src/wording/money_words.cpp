#include "money_words.hpp"

#include <algorithm>
#include <string_view>

#include "day.hpp"

namespace shaftcut {
namespace {

constexpr std::string_view fixed_space = "\u00a0";

enum class Month {};  // 0: January

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
    const auto day = parse_day(date);
    if (!day) return date;
    return w("{day} {month:January|February|March|April|May|June|July|August|September|October|November|December} {year}",
             {{"day", day->day}, {"month", static_cast<Month>(day->month - 1)}, {"year", day->year}});
}

}  // namespace shaftcut

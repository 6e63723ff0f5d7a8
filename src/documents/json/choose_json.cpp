// A large catalogue has thousands of choices: each is written as text at once, for as a tree they took more than half of the call (docs/performance.md).
#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

#include "build/build_words.hpp"
#include "choose/choose_words.hpp"
#include "json/json_parts.hpp"

namespace shaftcut {
namespace {

std::string text_of(const std::string& text) { return Json(text).dump(); }

// As the library prints it: "40.0", "-9.531".
std::string figure_of(std::int64_t thousandths)
{
    const std::int64_t size = std::abs(thousandths);
    std::string text = fmt::format("{}{}.{:03}", thousandths < 0 ? "-" : "", size / 1000, size % 1000);
    text.resize(std::max(text.find_last_not_of('0') + 1, text.find('.') + 2));
    return text;
}

std::string figure_of(const std::optional<std::int64_t>& thousandths) { return thousandths ? figure_of(*thousandths) : "null"; }
std::string figure_of(const std::optional<Length>& length) { return length ? figure_of(length->um()) : "null"; }
std::string figure_of(const std::optional<Margin>& margin) { return margin ? figure_of(margin->thousandths()) : "null"; }

std::string cuts_of(const std::optional<CutPlan>& plan)
{
    if (!plan) return "null";
    return fmt::format(R"({{"inner_tube":{},"outer_tube":{},"inner_guard":{},"outer_guard":{}}})", figure_of(plan->cut[Tube::inner].um()), figure_of(plan->cut[Tube::outer].um()),
                       figure_of(plan->guard_cut[Tube::inner]), figure_of(plan->guard_cut[Tube::outer]));
}

// Of a shaft that serves those that were made, of another those that fail.
std::string checks_of(const AllFigures& checks, bool serves)
{
    std::string list;
    for (std::size_t i = 0; i < Words<CheckId>::all.size(); ++i) {
        const auto id = static_cast<CheckId>(i);
        const CheckFigures& check = checks[id];
        if (serves ? check.result == CheckResult::not_checked : check.result != CheckResult::fail) continue;
        list += fmt::format(R"({}{{"id":"{}","result":"{}","value":{},"worst":{},"limit":{}}})", list.empty() ? "" : ",", to_word(id), to_word(check.result), figure_of(check.value),
                            figure_of(check.worst), figure_of(check.limit));
    }
    return "[" + list + "]";
}

// What both kinds of choice begin with.
std::string shaft_of(const auto& choice)
{
    const std::string reference = choice.reference ? text_of(to_word(*choice.reference)) : "null";
    return fmt::format(R"("series":{},"closed_mm":{},"reference":{},"joints":{{"tractor":"{}","implement":"{}"}})", text_of(choice.series), figure_of(choice.closed.um()), reference,
                       to_word(choice.joint[End::tractor]), to_word(choice.joint[End::implement]));
}

std::string price_of(const Choice& choice, const std::optional<Currency>& currency)
{
    return choice.price && currency ? text_of(decimal_text(*choice.price, *currency)) : "null";
}

std::string json_of(const Choice& choice, const Choices& all, const Wording& w)
{
    const bool serves = choice.plan.has_value();
    return fmt::format(R"({{{},"result":"{}","cut_mm":{},"cuts_mm":{},"least_margin":{},"price":{},"reason":{},"checks":{}}})", shaft_of(choice), to_word(choice.result),
                       serves ? figure_of(choice.cut().um()) : "null", cuts_of(choice.plan), figure_of(choice.least_margin), price_of(choice, all.currency), serves ? "null" : text_of(say(choice.why_not.value(), w)),
                       checks_of(choice.checks, serves));
}

std::string json_of(const ChoiceToOrder& choice, const Choices&, const Wording& w)
{
    Json open = Json::array();
    for (const OpenPoint& point : choice.open) open.push_back(say(point, w));
    return fmt::format(R"({{{},"open":{},"least_margin":{},"checks":{}}})", shaft_of(choice), open.dump(), figure_of(choice.least_margin), checks_of(choice.checks, true));
}

template <class Entry>
std::string list_of(const std::vector<Entry>& entries, const Choices& all, const char* between, const Wording& w)
{
    std::string list;
    for (const Entry& entry : entries) {
        list += (list.empty() ? "" : ",");
        list += between + json_of(entry, all, w);
    }
    return "[" + list + (entries.empty() ? "" : between) + "]";
}

}  // namespace

std::string json_of(const Choices& choices, JsonLayout layout)
{
    const Wording w(choices.units), of_new_shaft(choices.units, About::new_shaft);
    const char* between = layout == JsonLayout::indented ? "\n" : "";
    const std::string currency = choices.currency ? text_of(choices.currency->code) : "null", stated = choices.currency ? text_of(to_word(choices.stated)) : "null";
    return fmt::format(R"({{"order":{},"serving":{},"currency":{},"prices_stated":{},"choices":{},"to_order":{},"without_lengths":{}}})", text_of(choices.order), choices.serving, currency, stated,
                       list_of(choices.choices, choices, between, w), list_of(choices.to_order, choices, between, of_new_shaft), Json(choices.without_lengths).dump())
           + "\n";
}

}  // namespace shaftcut

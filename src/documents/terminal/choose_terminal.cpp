#include "terminal/choose_terminal.hpp"

#include <algorithm>

#include "choose/choose_words.hpp"
#include "terminal/terminal_lines.hpp"

namespace shaftcut {
namespace {

using namespace terminal;

// Each is said by itself; of the others how many there are.
constexpr std::size_t most_said = 5, most_to_order_said = 3, most_series_said = 12;
constexpr std::size_t name_columns = 11;

const char* code_of(ChoiceResult result) { return result == ChoiceResult::as_is ? "1;32" : result == ChoiceResult::cut ? "1" : "1;31"; }

std::string lines_of(const Choice& choice, const Choices& all, Colour colour, const Wording& w)
{
    const std::string head = padded(result_words(choice, w), name_columns), text = wrapped(head, priced_words(choice, all, w));
    return painted(text.substr(0, head.size()), code_of(choice.result), colour) + text.substr(head.size()) + wrapped(padded("", name_columns), checks_words(choice.checks, choice.least_margin, w));
}

std::string serving_lines(const Choices& choices, Colour colour, const Wording& w)
{
    std::string lines;
    const std::size_t said = std::min(choices.serving, most_said);
    for (std::size_t i = 0; i < said; ++i) lines += lines_of(choices.choices[i], choices, colour, w);
    if (choices.serving > said) lines += wrapped(padded("", name_columns), more_serve(choices.serving - said, w));
    return lines;
}

std::string nearest_lines(const Choices& choices, const Wording& w)
{
    if (!choices.nearest) return {};
    const Choice& nearest = choices.choices[*choices.nearest];
    return named_line(LineName::nearest, shaft_words(nearest, w), w) + wrapped(padded("", name_columns), say(nearest.why_not.value(), w));
}

std::string to_order_lines(const Choices& choices, const Wording& w)
{
    if (choices.to_order.empty()) return named_line(LineName::to_order, none_to_order(w), w);
    std::string lines;
    const std::size_t said = std::min(choices.to_order.size(), most_to_order_said);
    for (std::size_t i = 0; i < said; ++i) {
        const ChoiceToOrder& choice = choices.to_order[i];
        lines += named_line(LineName::to_order, shaft_words(choice, w), w);
        if (choices.serving == 0) lines += wrapped(padded("", name_columns), checks_words(choice.checks, choice.least_margin, w));
        if (!choice.open.empty()) lines += wrapped(padded("", name_columns), open_first(choice.open.size(), w));
    }
    if (choices.to_order.size() > said) lines += wrapped(padded("", name_columns), more_to_order(choices.to_order.size() - said, w));
    return lines;
}

// Those that do not serve stand behind the others in the catalogue's order, so that a series' are together.
std::vector<std::vector<const Choice*>> refused_by_series(const Choices& choices)
{
    std::vector<std::vector<const Choice*>> all;
    for (std::size_t i = choices.serving; i < choices.choices.size(); ++i) {
        const Choice& choice = choices.choices[i];
        if (all.empty() || all.back().front()->series != choice.series) all.emplace_back();
        all.back().push_back(&choice);
    }
    return all;
}

std::string refused_lines(const Choices& choices, const Wording& w)
{
    std::string lines;
    const auto refused = refused_by_series(choices);
    const std::size_t said = std::min(refused.size(), most_series_said);
    for (std::size_t i = 0; i < said; ++i) lines += named_line(LineName::no, refused_words(refused[i], w), w);
    if (refused.size() > said) lines += named_line(LineName::no, more_refused(refused.size() - said, w), w);
    return lines;
}

}  // namespace

std::string choices_text(const Choices& choices, Colour colour, const Wording& w)
{
    std::string text = order_and_verdict(choices.order, painted(verdict_words(choices, w), choices.serving > 0 ? "1;32" : "1;31", colour), w) + "\n";
    if (!choices.machine.empty()) text += wrapped(" ", chosen_for(choices.machine, w));
    text += serving_lines(choices, colour, w) + nearest_lines(choices, w) + to_order_lines(choices, w) + refused_lines(choices, w);
    if (!choices.without_lengths.empty()) text += named_line(LineName::note, lists_no_lengths(choices.without_lengths, w), w);
    return text;
}

}  // namespace shaftcut

#include "terminal/after_cut_terminal.hpp"

#include "order/after_cut_words.hpp"
#include "shaft_title_words.hpp"
#include "terminal/terminal_lines.hpp"

namespace shaftcut {
namespace {

using namespace terminal;

const char* code_of(AfterCutVerdict result)
{
    switch (result) {
    case AfterCutVerdict::right: return "1;32";
    case AfterCutVerdict::saw_more:
    case AfterCutVerdict::measure: return "1;33";
    case AfterCutVerdict::too_short: break;
    }
    return "1;31";
}

std::string part_line(const PartAfterCut& part, Colour colour, const Wording& w)
{
    const std::string head = padded(after_cut_name(part.result, w), 11), text = wrapped(head, say(part, w));
    return painted(text.substr(0, head.size()), code_of(part.result), colour) + text.substr(head.size());
}

}  // namespace

std::string after_cut_text(const ShaftAfterCut& shaft, Colour colour, const Wording& w)
{
    const WorkOrder& order = shaft.order;
    const AfterCut& found = shaft.found;
    std::string text = order_and_verdict(order.order, painted(verdict_words(found.verdict, w), code_of(found.verdict), colour), w) + "\n";
    text += wrapped(" ", shaft_for(say(order.shaft_title, w), order.machine, w));
    for (const PartAfterCut& part : found.parts) text += part_line(part, colour, w);
    for (const std::string& sentence : sentences_beside_parts(found, w)) text += named_line(LineName::note, sentence, w);
    for (const Check& check : found.checks)
        if (check.result == CheckResult::warn || check.result == CheckResult::fail) text += check_line(check, colour, w);
    return text;
}

}  // namespace shaftcut

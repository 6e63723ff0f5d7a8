// What is to be done, in order, and what is to be known: the running text of the cut sheet.
#include "checks/check_sentences.hpp"
#include "advice/advice_words.hpp"
#include "cut_sheet/cut_sheet_parts.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"

namespace shaftcut::cut_sheet {
namespace {

// A check that fails refuses the job: its words are among the reasons.
std::vector<std::string> warnings(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> texts;
    for (const Check& check : order.checks)
        if (check.result == CheckResult::warn) texts.push_back(warning(check.id, say(check, w), w));
    return texts;
}

}  // namespace

Blocks step_blocks(const WorkOrder& order, const Wording& w)
{
    Blocks blocks;
    if (!say_all(order.steps, w).empty()) blocks.push_back({Lead::heading, say(ListHeading::steps, w)});
    int number = 0;
    for (const std::string& step : say_all(order.steps, w)) blocks.push_back({Lead::tick, std::to_string(++number) + ". " + step});
    return blocks;
}

Blocks warning_blocks(const WorkOrder& order, const Wording& w)
{
    Blocks blocks;
    add_list(blocks, say(ListHeading::look_out, w), warnings(order, w));
    return blocks;
}

Blocks remark_blocks(const WorkOrder& order, const Wording& w)
{
    Blocks blocks;
    const std::string unchecked = not_checked(order.checks, w);
    if (!unchecked.empty()) blocks.push_back({Lead::none, unchecked, true});
    add_list(blocks, say(ListHeading::notes, w), say_all(order.notes, w));
    return blocks;
}

Blocks refusal_blocks(const WorkOrder& order, const Wording& w)
{
    Blocks blocks;
    add_list(blocks, say(ListHeading::why, w), reasons_to_refuse(order.checks, w), true);
    add_list(blocks, say(ListHeading::instead, w), say_all(order.ways_out, w));
    return blocks;
}

}  // namespace shaftcut::cut_sheet

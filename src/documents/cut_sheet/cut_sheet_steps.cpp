// What is to be done, in order, and what is to be known: the running text of the cut sheet.
#include "cut_sheet/cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

// A check that fails refuses the job: its words are among the reasons.
std::vector<std::string> warnings(const WorkOrder& order)
{
    std::vector<std::string> texts;
    for (const Check& check : order.checks)
        if (check.result == CheckResult::warn) texts.push_back("WARNING, " + spoken(check.id) + ": " + check.says);
    return texts;
}

std::string not_checked(const WorkOrder& order)
{
    std::string names;
    for (const Check& check : order.checks)
        if (check.result == CheckResult::not_checked) names += (names.empty() ? "" : ", ") + spoken(check.id);
    return names;
}

}  // namespace

Blocks step_blocks(const WorkOrder& order)
{
    Blocks blocks;
    if (!order.steps.empty()) blocks.push_back({Lead::heading, "Do in this order"});
    int number = 0;
    for (const std::string& step : order.steps) blocks.push_back({Lead::tick, std::to_string(++number) + ". " + step});
    return blocks;
}

Blocks warning_blocks(const WorkOrder& order)
{
    Blocks blocks;
    add_list(blocks, "Look out", warnings(order));
    return blocks;
}

Blocks remark_blocks(const WorkOrder& order)
{
    Blocks blocks;
    const std::string unchecked = not_checked(order);
    if (!unchecked.empty()) blocks.push_back({Lead::none, "NOT CHECKED: " + unchecked + ".", true});
    add_list(blocks, "Notes", order.notes);
    return blocks;
}

Blocks refusal_blocks(const WorkOrder& order)
{
    Blocks blocks;
    add_list(blocks, "Why", order.reasons, true);
    add_list(blocks, "What would serve instead", order.ways_out);
    return blocks;
}

}  // namespace shaftcut::cut_sheet

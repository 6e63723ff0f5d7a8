// What is fetched, done and checked: the running text of the assembly work order.
#include <algorithm>

#include "assembly/assembly_parts.hpp"
#include "checks/check_sentences.hpp"
#include "checks/check_words.hpp"

namespace shaftcut::assembly_sheet {
namespace {

using sheet::add_list;

// How a shaft came in is no question to a new one.
bool is_of_used_shafts(const Check& check)
{
    const auto* reason = check.basis.empty() ? nullptr : std::get_if<NotCheckedReason>(&check.basis.front());
    const auto* plain = reason ? std::get_if<PlainReason>(reason) : nullptr;
    return plain && *plain == PlainReason::made_new;
}

// Those that passed or failed, a line each.
std::vector<std::string> made_texts(const BuildPlan& plan)
{
    std::vector<std::string> texts;
    for (const Check& check : plan.checks)
        if (check.result == CheckResult::fail || check.result == CheckResult::pass) texts.push_back(assembly_words::made(check, wording_of(plan)));
    return texts;
}

// A list under its heading, all of one spacing.
struct List {
    Spacing spacing;
    Blocks blocks;

    List(const std::string& heading, Spacing spacing_of_all) : spacing(spacing_of_all), blocks{{Lead::heading, heading, false, spacing_of_all}} {}
    void add(Lead lead, const std::string& text, bool strong = false) { blocks.push_back({lead, text, strong, spacing}); }
};

// A part of one name with all its places.
struct Fetched {
    PartName name;
    std::string places;
    std::int64_t count = 0;
};

std::vector<Fetched> fetched(const BuildPlan& plan)
{
    const Wording w = wording_of(plan);
    std::vector<Fetched> all;
    for (const ShaftPart& part : plan.built->parts) {
        const auto same = std::find_if(all.begin(), all.end(), [&](const Fetched& one) { return one.name == part.name; });
        Fetched& one = same == all.end() ? all.emplace_back(Fetched{part.name, "", 0}) : *same;
        one.places += (one.places.empty() ? "" : "; ") + place_of(part, w);
        one.count += std::int64_t{part.count} * plan.count;
    }
    return all;
}

// Checks that could not be made, those for one reason together.
std::vector<std::string> not_made_texts(const BuildPlan& plan)
{
    std::vector<std::pair<std::string, std::vector<std::string>>> reasons;  // and the checks' names
    for (const Check& check : plan.checks) {
        if (check.result != CheckResult::not_checked || is_of_used_shafts(check)) continue;
        const std::string why = basis(check, wording_of(plan));
        const auto same = std::find_if(reasons.begin(), reasons.end(), [&](const auto& reason) { return reason.first == why; });
        (same == reasons.end() ? reasons.emplace_back(why, std::vector<std::string>()) : *same).second.push_back(spoken(check.id, wording_of(plan)));
    }
    std::vector<std::string> texts;
    for (const auto& [reason, names] : reasons) texts.push_back(assembly_words::not_made(names, reason, wording_of(plan)));
    return texts;
}

// How far the shaft may be pushed and pulled, and a saw that is exact enough: over the drawing, and with the lengths to saw.
bool stands_over_the_lists(const BuildNote& note)
{
    const auto* saw = std::get_if<SawAgainstClassC>(&note);
    return std::holds_alternative<UsableRange>(note) || (saw && saw->saw <= saw->class_c);
}

Blocks held_blocks(const BuildPlan& plan)
{
    Blocks blocks;
    const Wording w = wording_of(plan);
    std::vector<std::string> open, texts;
    int number = 0;
    for (const OpenPoint& point : plan.open) open.push_back(assembly_words::numbered(++number, assembly_words::open_point(say(point, w), say(whom_to_ask(point), w), w), w));
    for (const TextToSend& text : texts_to_send(plan, w)) texts.push_back(assembly_words::to_send(say(text.to, w), text.text, w));
    add_list(blocks, say(Caption::what_is_open, w), open, true);
    add_list(blocks, say(Caption::ready_to_send, w), texts);
    return blocks;
}

}  // namespace

MeasuredFrom closed_from(const BuildPlan& plan) { return measured_from(plan.has_wide_angle, plan.reference); }

bool is_wide_angle(const BuildPlan& plan, End end) { return plan.ordered.ends[end].joint == JointKind::wide_angle; }

Blocks part_blocks(const BuildPlan& plan, Spacing spacing)
{
    const Wording w = wording_of(plan);
    List list(assembly_words::fetch_for(plan.count, w), spacing);
    for (const Fetched& part : fetched(plan)) list.add(Lead::tick, assembly_words::fetched(part.count, say(part.name, w), part.places, w));
    return list.blocks;
}

Blocks operation_blocks(const BuildPlan& plan, Spacing spacing)
{
    const Wording w = wording_of(plan);
    List list(say(plan.count == 1 ? Caption::do_in_order : Caption::do_with_each, w), spacing);
    int number = 0;
    for (const Operation& operation : plan.built->operations) list.add(Lead::tick, assembly_words::numbered(++number, say(operation, w), w));
    return list.blocks;
}

Blocks warning_blocks(const BuildPlan& plan, Spacing spacing)
{
    List list(say(Caption::warnings, wording_of(plan)), spacing);
    for (const Check& check : plan.checks)
        if (check.result == CheckResult::warn) list.add(Lead::bullet, assembly_words::warning(check, wording_of(plan)), true);
    return list.blocks.size() > 1 ? list.blocks : Blocks();
}

Blocks check_blocks(const BuildPlan& plan, Spacing spacing)
{
    List list(say(plan.built ? Caption::checks_on_finished : Caption::what_was_checked, wording_of(plan)), spacing);
    for (const std::string& text : made_texts(plan)) list.add(Lead::none, text);
    for (const std::string& text : not_made_texts(plan)) list.add(Lead::none, text);
    return list.blocks;
}

Blocks check_blocks_run_on(const BuildPlan& plan)
{
    const Wording w = wording_of(plan);
    List list(say(Caption::checks_on_finished, w), Spacing::close);
    list.add(Lead::none, assembly_words::run_on(made_texts(plan), w));
    list.add(Lead::none, running_text(not_made_texts(plan)));
    return list.blocks;
}

Blocks note_blocks(const BuildPlan& plan, Spacing spacing)
{
    std::vector<BuildNote> notes = plan.notes;
    if (plan.built) std::erase_if(notes, stands_over_the_lists);
    if (notes.empty()) return {};
    List list(say(Caption::notes, wording_of(plan)), spacing);
    for (const std::string& note : say(notes, wording_of(plan))) list.add(Lead::bullet, note);
    return list.blocks;
}

Blocks refusal_blocks(const BuildPlan& plan)
{
    Blocks blocks = held_blocks(plan);
    const Wording w = wording_of(plan);
    add_list(blocks, say(Caption::why, w), say(plan.reasons, w), true);
    add_list(blocks, say(Caption::what_could_be_built, w), say(plan.ways_out, w));
    add_list(blocks, say(Caption::notes, w), say(plan.notes, w));
    return blocks;
}

}  // namespace shaftcut::assembly_sheet

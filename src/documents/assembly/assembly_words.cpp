// What is fetched, done and checked: the running text of the assembly work order.
#include <algorithm>

#include "assembly/assembly_parts.hpp"

namespace shaftcut::assembly_sheet {
namespace {

using sheet::add_list;

// "closing clearance: pass, 44 mm, worst 42 mm, limit 40 mm".
std::string made_text(const BuildPlan& plan, const Check& check)
{
    const auto with = [&](const char* name, const std::optional<std::int64_t>& figure) {
        return figure ? ", " + std::string(name) + check_figure(plan.units, check, figure) : std::string();
    };
    return spoken(check.id) + (check.result == CheckResult::fail ? ": FAILED" : ": pass") + with("", check.value) + with("worst ", check.worst) + with("limit ", check.limit);
}

// Those that passed or failed, a line each.
std::vector<std::string> made_texts(const BuildPlan& plan)
{
    std::vector<std::string> texts;
    for (const Check& check : plan.checks)
        if (check.result == CheckResult::fail || check.result == CheckResult::pass) texts.push_back(made_text(plan, check));
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
    std::string name, places;
    std::int64_t count = 0;
    bool in_catalogue = false;
};

std::vector<Fetched> fetched(const BuildPlan& plan)
{
    std::vector<Fetched> all;
    for (const ShaftPart& part : plan.built->parts) {
        const auto same = std::find_if(all.begin(), all.end(), [&](const Fetched& one) { return one.name == part.name; });
        Fetched& one = same == all.end() ? all.emplace_back(Fetched{part.name, "", 0, part.in_catalogue}) : *same;
        one.places += (one.places.empty() ? "" : "; ") + part.place;
        one.count += std::int64_t{part.count} * plan.count;
    }
    return all;
}

// Checks that could not be made, those for one reason together.
std::vector<std::string> not_made_texts(const BuildPlan& plan)
{
    std::vector<std::pair<std::string, std::string>> reasons;  // and the checks' names
    for (const Check& check : plan.checks) {
        if (check.result != CheckResult::not_checked) continue;
        const auto same = std::find_if(reasons.begin(), reasons.end(), [&](const auto& reason) { return reason.first == check.basis; });
        if (same == reasons.end()) reasons.emplace_back(check.basis, spoken(check.id));
        else same->second += ", " + spoken(check.id);
    }
    std::vector<std::string> texts;
    for (const auto& [reason, names] : reasons) texts.push_back("NOT CHECKED, " + names + ": " + reason + ".");
    return texts;
}

}  // namespace

std::string count_words(const BuildPlan& plan) { return plan.count == 1 ? "1 shaft" : std::to_string(plan.count) + " shafts alike"; }

bool is_wide_angle(const BuildPlan& plan, End end) { return plan.ordered.ends[end].joint == JointKind::wide_angle; }

std::string from_words(const BuildPlan& plan)
{
    if (!plan.has_wide_angle) return "between crosses";
    return plan.reference == Reference::outer_cross ? "from the OUTER cross" : "from the INNER cross";
}

std::string length_text(const BuildPlan& plan, Length length, Toward toward) { return figure_with_millimetres(length, plan.units, toward); }

std::string end_name(End end) { return end == End::tractor ? "TRACTOR END" : "IMPLEMENT END"; }

Blocks part_blocks(const BuildPlan& plan, Spacing spacing)
{
    List list("Fetch, for " + count_words(plan), spacing);
    for (const Fetched& part : fetched(plan)) list.add(Lead::tick, std::to_string(part.count) + " × " + part.name + " — " + part.places, !part.in_catalogue);
    return list.blocks;
}

Blocks operation_blocks(const BuildPlan& plan, Spacing spacing)
{
    List list(plan.count == 1 ? "Do in this order" : "Do with each shaft", spacing);
    int number = 0;
    for (const Operation& operation : plan.built->operations) list.add(Lead::tick, std::to_string(++number) + ". " + operation.does);
    return list.blocks;
}

Blocks warning_blocks(const BuildPlan& plan, Spacing spacing)
{
    List list("Warnings", spacing);
    for (const Check& check : plan.checks)
        if (check.result == CheckResult::warn) list.add(Lead::bullet, "WARNING, " + spoken(check.id) + ": " + check.says, true);
    return list.blocks.size() > 1 ? list.blocks : Blocks();
}

Blocks check_blocks(const BuildPlan& plan, Spacing spacing)
{
    List list(plan.built ? "Checks on the finished shaft" : "What was checked", spacing);
    for (const std::string& text : made_texts(plan)) list.add(Lead::none, text);
    for (const std::string& text : not_made_texts(plan)) list.add(Lead::none, text);
    return list.blocks;
}

Blocks note_blocks(const BuildPlan& plan, Spacing spacing)
{
    if (plan.notes.empty()) return {};
    List list("Notes", spacing);
    for (const std::string& note : plan.notes) list.add(Lead::bullet, note);
    return list.blocks;
}

Blocks refusal_blocks(const BuildPlan& plan)
{
    Blocks blocks;
    add_list(blocks, "Why", plan.reasons, true);
    add_list(blocks, "What could be built", plan.ways_out);
    add_list(blocks, "Notes", plan.notes);
    return blocks;
}

}  // namespace shaftcut::assembly_sheet

// Writes workbooks and what the program itself answers for changed inputs, for recalculate.py:
//
//     workbook_cases FOLDER
//
// puts FOLDER/NAME.xlsx for every base job and FOLDER/cases.json: for each job its units and a list of cases, each with the
// inputs that are set (in the workbook's units, null: emptied) and the program's answer.
#include <fstream>
#include <iostream>
#include <nlohmann/json.hpp>

#include "oracle/after_cut_cases.hpp"
#include "oracle/changed_inputs.hpp"
#include "shaftcut/documents/json/json.hpp"
#include "support/workbooks.hpp"

using namespace shaftcut;
using namespace shaftcut::test;
using nlohmann::json;

namespace {

constexpr int random_cases = 14, readings_after_cut = 2;

// An input as it is typed: in inches such a number that it reads back as the same micrometres.
json typed(const std::optional<Length>& length, Units units)
{
    if (!length) return nullptr;
    return units == Units::mm ? length->mm() : static_cast<double>(length->um()) / 25400.0;
}

json kept_as_printed(const WorkOrder& order)
{
    json kept;
    for (const Tube tube : both_tubes) {
        const std::string word = to_word(tube);
        const auto guard = order.cut ? order.cut->plan.guard_half[tube] : std::nullopt;
        kept["keep_" + word + "_half"] = order.cut ? json(figure(order.cut->plan.half[tube], order.units, Toward::down, 3)) : json();
        kept["keep_" + word + "_guard_half"] = guard ? json(figure(*guard, order.units, Toward::down, 3)) : json();
    }
    return kept;
}

// The figures of an answer, without its sentences.
json answer_of(const WorkOrder& order)
{
    json answer = json::parse(json_of(order, JsonLayout::one_line));
    for (const char* text : {"reasons", "ways_out", "notes", "joint_angle_deg", "confirm"}) answer.erase(text);
    for (json& check : answer["checks"]) {
        check.erase("basis");
        check.erase("says");
    }
    return answer;
}

// What is asked before sawing, by its name: the expected figure and its ±, null for a look.
json asked_of(const WorkOrder& order)
{
    json asked = json::object();
    const auto number = [](const std::optional<Length>& length) { return length ? json(length->mm()) : json(); };
    for (const Confirmation& one : order.confirm) asked[to_word(one.what)] = {number(one.expected), number(one.plus_minus)};
    return asked;
}

// What no cell may hold while the order is refused: the cut, what it would keep and the closed length it would give, where
// these are not simply lengths that were measured.
json hidden_figures(const WorkOrder& order)
{
    json hidden = json::array();
    if (order.verdict != Verdict::refused) return hidden;
    const auto plan = plan_cut(order.reading.shaft, order.stops, order.fit.shortest, order.limits.length(Limit::closing_clearance), order.saw);
    if (!plan) return hidden;
    const auto add = [&](Length length) {
        if (length != order.overlap_closed_before) hidden.push_back(length.mm());  // by chance: it may be seen
    };
    for (const Tube tube : both_tubes) {
        if (plan->cuts_guard(tube)) add(*plan->guard_cut[tube]);
        if (plan->cuts_guard(tube) && plan->guard_half[tube]) add(*plan->guard_half[tube]);
        if (plan->cut[tube] == Length()) continue;
        for (const Length length : {plan->cut[tube], plan->half[tube], plan->closed}) add(length);
    }
    return hidden;
}

// What is typed into the block of the shaft as cut, and what the program says of each part and of the whole.
json after_cut_of(const AfterCutCase& one, Units units)
{
    json set = json::object(), parts = json::object();
    const auto put = [&](const std::string& name, const std::optional<Measurement>& read) {
        if (read) set[name] = typed(read->length, units);
    };
    for (const Tube tube : both_tubes) {
        put(std::string("after_") + to_word(tube) + "_half", one.measured.halves[tube].length);
        put(std::string("after_") + to_word(tube) + "_guard_half", one.measured.halves[tube].guard);
    }
    for (const PartAfterCut& part : one.found.parts) {
        const Length by = part.saw_more ? part.saw_more->off : part.short_by;
        parts[to_word(part.part)] = {{"result", to_word(part.result)}, {"by", by == Length() ? json() : json(by.mm())}};
    }
    return {{"set", set}, {"verdict", to_word(one.found.verdict)}, {"parts", parts}};
}

json after_cuts(const BaseJob& base, const Job& job, const WorkOrder& order)
{
    static std::mt19937 random(20261128);  // one row of numbers for all cases
    json cases = json::array();
    for (const AfterCutCase& one : after_cut_cases(base, job, order, readings_after_cut, random)) cases.push_back(after_cut_of(one, base.job.units));
    return cases;
}

json case_of(const BaseJob& base, const Changes& changes)
{
    const Job job = changed_job(base, changes);
    const WorkOrder order = worked(base, job);
    json set = json::object();
    for (const auto& [name, length] : changes) set[name] = typed(length, base.job.units);
    return {{"set", set}, {"answer", answer_of(order)}, {"kept", kept_as_printed(order)}, {"confirm", asked_of(order)}, {"hidden", hidden_figures(order)}, {"after_cut", after_cuts(base, job, order)}};
}

json write_base(const BaseJob& base, ChangeSearch& search, const std::string& folder)
{
    const WorkOrder issued = worked(base, base.job);
    std::ofstream file(folder + "/" + base.name + ".xlsx", std::ios::binary);
    file << workbook_bytes(issued);
    if (!file.flush()) throw std::runtime_error("cannot write into " + folder);
    json cases = json::array();
    cases.push_back(case_of(base, {}));
    for (const Changes& changes : search.around_limits(base)) cases.push_back(case_of(base, changes));
    for (const Changes& changes : ChangeSearch::at_random(base, random_cases)) cases.push_back(case_of(base, changes));
    json all_issued = json::object();
    for (const auto& [name, length] : issued_lengths(base)) all_issued[name] = typed(length, base.job.units);
    return {{"name", base.name}, {"units", unit_word(base.job.units)}, {"issued", all_issued}, {"cases", cases}};
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc != 2) {
        std::cerr << "usage: workbook_cases FOLDER\n";
        return 2;
    }
    const std::string folder = argv[1];
    json all = json::array();
    ChangeSearch search;
    for (const BaseJob& base : base_jobs()) all.push_back(write_base(base, search, folder));
    std::ofstream file(folder + "/cases.json");
    file << all;
    return file.flush() ? 0 : 3;
}

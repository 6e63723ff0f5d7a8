// The saw plans whose sheets and workbooks the tests make: ordinary ones, and those that are hardest to fit on paper.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/saw/saw_order.hpp"
#include "support/saw/linear_programme.hpp"

namespace shaftcut::test {

struct SawCase {
    std::string name;
    SawOrder order;
};

inline SawOrder saw_order(const std::string& name, SawTask task, Units units = Units::mm)
{
    SawOutcome outcome = plan_saw(task, {[left = 400]() mutable { return left-- > 0 ? 1.0 : 0.0; }, {}, linear_programme()});
    return lay_out({name, "Demonstration workshop (invented)", units, task.reusable}, task, std::get<SawPlan>(std::move(outcome)), SawEnd::time_was_up, 0.25);
}

inline SawTask saw_task(std::vector<SawPiece> pieces, std::int64_t bar_mm = 6000)
{
    const Length bar = Length::millimetres(bar_mm);
    return {std::move(pieces), {{bar, std::nullopt, bar.um() * cost_of_a_micrometre}}, Length::millimetres(3), Length::millimetres(10), Length::millimetres(5),
            Length::millimetres(500)};
}

// `lengths` pieces of different lengths and labels on 6 m and 3 m bars.
inline SawTask many_lengths(int lengths)
{
    std::vector<SawPiece> pieces;
    for (int i = 0; i < lengths; ++i)
        pieces.push_back({Length::micrometres(310'000 + i * 17'321 % 1'900'000), 1 + i % 4, "shaft " + std::to_string(1 + i / 2) + (i % 2 ? " outer" : " inner")});
    SawTask task = saw_task(std::move(pieces));
    task.stock.push_back({Length::millimetres(3000), 12, 3100 * cost_unit});
    return task;
}

inline std::vector<SawCase> make_saw_cases()
{
    const auto mm = [](std::int64_t count) { return Length::millimetres(count); };
    std::string long_label = "Landwirtschaftlicher Lohnbetrieb ";
    while (long_label.size() < 90) long_label += "Żółć ";
    std::vector<SawPiece> numbered;
    for (int i = 1; i <= 60; ++i) numbered.push_back({Length::micrometres(90'000 + 113 * i), 1, "No. " + std::to_string(i)});
    SawTask wide_labels = saw_task({{mm(700), 11, long_label}, {mm(700), 2, std::string(100, 'W')}, {mm(455), 3, "客戶 مكنة"}});
    std::vector<SawStock> rack;
    for (int i = 0; i < 25; ++i) rack.push_back({Length::micrometres(1'200'000 + 7'001 * i), 1, cost_unit * (100 + i)});
    SawTask from_rack = saw_task({{mm(1180), 25, "rung"}});
    from_rack.stock = rack;
    from_rack.trim_start = from_rack.trim_end = Length();
    SawTask inches = many_lengths(12);
    inches.kerf = Length::micrometres(3'175);
    std::vector<SawCase> cases;
    cases.push_back({"one piece", saw_order("one", saw_task({{mm(1240), 1, "A"}}))});
    cases.push_back({"no labels", saw_order("plain", saw_task({{mm(1240), 12, ""}, {mm(980), 7, ""}, {mm(655), 9, ""}}))});
    cases.push_back({"sixty pieces a bar", saw_order("sixty", saw_task(numbered))});
    cases.push_back({"tiny pieces", saw_order("tiny", saw_task({{mm(2), 1500, "chip"}}))});
    cases.push_back({"long labels", saw_order(std::string(180, 'n') + " & <name>", wide_labels)});
    cases.push_back({"rack", saw_order("rack", from_rack)});
    cases.push_back({"inches", saw_order("inches", inches, Units::in)});
    cases.push_back({"inches, sixty", saw_order("inches-sixty", saw_task(numbered), Units::in)});
    cases.push_back({"hundreds of bars", saw_order("hundreds", many_lengths(400))});
    cases.push_back({"a million alike", saw_order("million", saw_task({{mm(742), 1'000'000, "tube"}}))});
    return cases;
}

inline const std::vector<SawCase>& saw_cases()
{
    static const std::vector<SawCase> cases = make_saw_cases();
    return cases;
}

}  // namespace shaftcut::test

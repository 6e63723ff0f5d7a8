// The Order sheet's heading: whose shaft, for which machine, as it came in, who measured.
#include "work_order_book/workbook_sheets.hpp"

namespace shaftcut::workbook {
namespace {

constexpr int last_column = 5;

std::string listed(const std::vector<std::string>& texts, const char* between)
{
    std::string all;
    for (const std::string& text : texts)
        if (!text.empty()) all += (all.empty() ? "" : between) + text;
    return all;
}

// "guard complete, tubes straight": what was looked at.
std::string condition_words(const std::optional<Condition>& condition)
{
    if (!condition) return "";
    std::vector<std::string> found;
    const auto add = [&](const char* what, const auto& state) {
        if (state) found.push_back(std::string(what) + " " + to_word(*state));
    };
    add("guard", condition->guard);
    add("chains", condition->chains);
    add("crosses", condition->crosses);
    add("tubes", condition->tubes);
    add("locks", condition->locks);
    add("weld", condition->weld);
    add("device", condition->device);
    add("phase", condition->phase);
    add("slides", condition->slides);
    return listed(found, ", ");
}

std::string other_tractors_words(const Circumstances& around)
{
    if (around.no_other_tractors) return "none drives this machine";
    const std::string names = listed(around.other_tractors, "; ");
    return names.empty() ? "" : names + ": not measured, the shaft is not checked for them";
}

std::string power_words(const Circumstances& around)
{
    return around.power ? figure(Length::micrometres(*around.power), Units::mm, Toward::nearest, 3) + " kW taken at the PTO" : "";
}

std::string measured_by_words(const MeasuredBy& by)
{
    return listed({by.name, by.date, by.with.empty() ? "" : "with " + by.with}, ", ");
}

std::string limits_words(const Circumstances& around) { return listed({around.limits_why, around.limits_by.empty() ? "" : "by " + around.limits_by}, ", "); }

void add_line(SheetBuilder& sheet, const char* label, const std::string& text)
{
    sheet.put(0, std::string(label), style::label());
    sheet.put(1, text, style::label(), last_column);
    sheet.end_row(15);
}

}  // namespace

void add_heading(SheetBuilder& sheet, const WorkOrder& order)
{
    sheet.put(0, "Work order " + order.order, style::title(), 4);
    CellStyle right = style::section();
    right.align = CellStyle::Align::right;
    sheet.put(4, order.owner, right, 2);
    sheet.end_row(24);
    sheet.put(0, order.shaft_title + (order.shaft.number.empty() ? "" : ", shaft " + order.shaft.number), style::section(), last_column + 1);
    sheet.end_row(18);
    const Circumstances& around = order.circumstances;
    add_line(sheet, "Customer", listed({order.customer, around.phone.empty() ? "" : "phone " + around.phone}, ", "));
    add_line(sheet, "Machine", listed({order.machine, around.machine_here ? "" : "the machine is not here"}, ", "));
    add_line(sheet, "Tractor", order.tractor);
    add_line(sheet, "Date", order.date);
    const std::pair<const char*, std::string> stated[] = {{"Hitch", around.hitch},
                                                          {"Other tractors", other_tractors_words(around)},
                                                          {"Power", power_words(around)},
                                                          {"As it came in", condition_words(order.shaft.condition)},
                                                          {"Measured by", measured_by_words(around.measured_by)},
                                                          {"Limits loosened", limits_words(around)}};
    for (const auto& [label, text] : stated)
        if (!text.empty()) add_line(sheet, label, text);
}

}  // namespace shaftcut::workbook

// The Order sheet of the work order's workbook: its heading, what it all comes to, what is written below.
#pragma once

#include <string>

#include "shaftcut/trade/order/work_order.hpp"
#include "wording.hpp"

namespace shaftcut::workbook {

enum class OrderCaption {
    customer, machine, tractor, date, hitch, other_tractors, power, as_it_came_in, measured_by, limits_loosened,
    verdict, lengths_changed,
    refused_because, ways_out, notes,
    cut_and_measured_by, checked_by
};
std::string caption(OrderCaption which, const Wording& w);

std::string shaft_words(const WorkOrder& order, const Wording& w);
std::string customer_words(const WorkOrder& order, const Wording& w);
std::string machine_words(const WorkOrder& order, const Wording& w);
// Each empty where nothing is stated.
std::string other_tractors_words(const Circumstances& around, const Wording& w);
std::string power_words(const Circumstances& around, const Wording& w);
std::string measured_by_words(const MeasuredBy& by, const Wording& w);
std::string limits_words(const Circumstances& around, const Wording& w);

// What is done, where nothing is left to be confirmed.
std::string verdict_sentence(Verdict verdict, const Wording& w);
// What is done first; `verdict` and `count` may be formulas.
std::string confirm_first(const std::string& verdict, const std::string& count, const Wording& w);
std::string lengths_changed_words(bool changed, const Wording& w);

}  // namespace shaftcut::workbook

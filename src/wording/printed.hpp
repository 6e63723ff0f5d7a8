// Figures and names as every paper prints them.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "shaftcut/trade/data/rounding.hpp"
#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut {

// "94 mm", "3-11/16 in".
std::string printed(const WorkOrder& order, Length length, Rounded as = Rounded::measured);
// In inches the millimetres that stand beside: "93.7 mm"; empty on paper in millimetres.
std::string beside(const WorkOrder& order, Length length, Rounded as = Rounded::measured);
// Both: "3-11/16 in (93.7 mm)".
std::string printed_with_both(const WorkOrder& order, Length length, Rounded as = Rounded::measured);

// "closing clearance".
std::string spoken(CheckId id);

// A check's value, worst case or limit, rounded as that check's lengths are: "44 mm", "12.5°", "—" where there is none.
std::string check_figure(Units units, const Check& check, const std::optional<std::int64_t>& thousandths);

}  // namespace shaftcut

// The lines of the terminal: what stands in front of each, and what it says with figures.
#pragma once

#include <string>

#include "shaftcut/trade/build/batch.hpp"
#include "shaftcut/trade/build/build_plan.hpp"
#include "shaftcut/trade/order/after_cut.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"
#include "wording.hpp"

namespace shaftcut::terminal {

// In front of a line.
enum class LineName { closed, tubes, guard_tubes, open, why, instead, no_saw_plan, warning, confirm, note, fetch, plan, waste, to_rack, nearest, to_order, no };
std::string say(LineName name, const Wording& w);
std::string result_name(CheckResult result, const Wording& w);
std::string after_cut_name(AfterCutVerdict result, const Wording& w);
std::string half_name(End end, const Wording& w);
std::string part_name(bool guard, const Wording& w);
std::string shortest_name(const Wording& w);
std::string longest_name(Range range, const Wording& w);
std::string joint_name(End end, const Wording& w);

// The first line, its verdict in colour where that is wanted, and the second: which shaft it is.
std::string order_and_verdict(const std::string& order, const std::string& verdict, const Wording& w);
std::string shaft_for(const std::string& shaft, const std::string& machine, const Wording& w);
// `loud` and `plain`: what switches a terminal to strong letters and back.
std::string lengths_title(const std::string& order, const std::string& loud, const std::string& plain, const Wording& w);

// A shaft that exists.
std::string left_as_it_is(const std::optional<Length>& kept, const Wording& w);
std::string cut_and_kept(Length cut, Length plus_minus, const std::optional<Length>& kept, const Wording& w);
std::string guard_not_used(GuardUse use, const Wording& w);
std::string closed_line(const WorkOrder& order, const Wording& w);  // `order` is not refused
std::string length_at(const ExtremeLength& extreme, Rounded as, const std::string& position, const Wording& w);
std::string angle_at(const ExtremeAngle& extreme, Range range, const std::string& position, const Wording& w);
std::string check_text(const Check& check, const std::string& says, const Wording& w);

// Shafts made to order. `plan` can be built.
std::string build_verdict(const BuildPlan& plan, const Wording& w);  // "BUILD 3", "HELD: 2 open", "DO NOT BUILD"
std::string closed_of(const BuildPlan& plan, const Wording& w);
std::string inner_and_outer(Length inner, Length outer, const Wording& w);
// The first line of a list: what is built of it, held and refused, as far as there is any; each count in the colour that starts with its ink.
struct ListCounts {
    std::int64_t shafts = 0, built = 0, held = 0, refused = 0;  // all but the shafts are orders
};
struct ListInks {
    std::string build, held, refused, end;
};
std::string list_line(const std::string& list, const ListCounts& counts, const ListInks& inks, const Wording& w);
std::string not_planned(const std::string& profile, const std::string& refusal, const Wording& w);
std::string no_bars_for(const std::string& profile, const Wording& w);

// A saw plan.
std::string bars_for_pieces(std::int64_t bars, std::int64_t pieces, const Wording& w);
std::string bars_to_fetch(const std::vector<BarsToFetch>& bars, const Wording& w);
std::string wasted(std::int64_t thousandths_of_per_cent, const Wording& w);

}  // namespace shaftcut::terminal

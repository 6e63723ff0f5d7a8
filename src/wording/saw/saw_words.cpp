#include "saw/saw_words.hpp"

#include "both_halves.hpp"

namespace shaftcut {
namespace {

std::string length_of(Length length, const Wording& w) { return saw_figure_with_unit(length, w.units()); }

std::string wrong(SawFault fault, const Wording& w)
{
    switch (fault) {
    case SawFault::nothing_to_cut: return w("there is no piece to cut");
    case SawFault::list_too_large: return w("the list is too large for one plan");
    case SawFault::rack_too_small: return w("the stock is too small for all pieces: proven by prices, though its total length might do");
    case SawFault::no_plan_in_time: break;
    }
    return w("no plan was found in the time allowed; the stock is limited and nearly used up");
}

std::string wrong(const BladeFigureOutOfRange& found, const Wording& w) { return w("kerf, trims and reusable length: {length}", {{"length", length_of(found.length, w)}}); }
std::string wrong(const PieceOutOfRange& found, const Wording& w)
{
    return w("piece of {length}, {count} times", {{"length", length_of(found.length, w)}, {"count", found.count}});
}
std::string wrong(const BarOutOfRange& found, const Wording& w) { return w("bar of {length}", {{"length", length_of(found.length, w)}}); }
std::string wrong(const PieceFitsNoBar& found, const Wording& w) { return w("{piece} is longer than every bar", {{"piece", length_of(found.piece, w)}}); }
std::string wrong(const RackTooShort& found, const Wording& w)
{
    return w("the stock is too short by {lacking}, cuts and trims counted", {{"lacking", length_of(found.lacking, w)}});
}

std::string right(SawFault fault, const Wording& w)
{
    switch (fault) {
    case SawFault::nothing_to_cut: return w("list at least one piece");
    case SawFault::list_too_large:
        return w("at most {pieces} pieces of {lengths} lengths and {stock} lines of stock; split the list",
                 {{"pieces", most_saw_pieces}, {"lengths", most_saw_lengths}, {"stock", most_saw_stock}});
    case SawFault::rack_too_small: return w("add a bar, or leave out pieces");
    case SawFault::no_plan_in_time: break;
    }
    return w("allow more seconds, or add a bar");
}

std::string right(const BladeFigureOutOfRange&, const Wording& w) { return w("write 0 to 100 m"); }
std::string right(const PieceOutOfRange&, const Wording& w) { return w("a piece is longer than 0 and at most 100 m, its count 0 or more"); }
std::string right(const BarOutOfRange&, const Wording& w) { return w("a bar is longer than 0 and at most 100 m, its count 0 or more, its cost 0 to 1000000"); }
std::string right(const PieceFitsNoBar& found, const Wording& w)
{
    if (!found.longest) return w("there is no bar in stock longer than its trims");
    return w("the longest bar holds {longest} between its trims", {{"longest", length_of(*found.longest, w)}});
}
std::string right(const RackTooShort&, const Wording& w) { return w("add bars, or leave out pieces"); }

std::string mixed_cost(const CostParts& parts, const Wording& w)
{
    return w("Costs stated: {stated}; bars without one: {length}. They have no sum, so nothing is said of whether another plan costs less: state the cost of every bar.",
             {{"stated", cost_figure(parts.stated)}, {"length", saw_figure_with_unit(parts.without, w.units())}});
}

}  // namespace

std::string wrong_of(const SawFinding& finding, const Wording& w)
{
    return std::visit([&](const auto& found) { return wrong(found, w); }, finding);
}

std::string right_for(const SawFinding& finding, const Wording& w)
{
    return std::visit([&](const auto& found) { return right(found, w); }, finding);
}

std::string say(const SawFinding& finding, const Wording& w) { return in_one({wrong_of(finding, w), right_for(finding, w)}, w); }

std::string say(SawCaution caution, const SawOrder& order, const Wording& w)
{
    switch (caution) {
    case SawCaution::measure_bars: return w("Measure each bar before its first cut: the plan is for the length stated. A bar that is shorter may not hold its last piece.");
    case SawCaution::cut_trim_first:
        return w("First cut off the starting end so that {trim} are gone, kerf included; the stops count from the end as it was before.", {{"trim", length_of(order.task.trim_start, w)}});
    case SawCaution::kerf_counted:
        return w("The plan counts {kerf} for each cut. Measure what your blade takes: with another kerf, plan again.", {{"kerf", length_of(order.task.kerf, w)}});
    case SawCaution::clamp_and_protect: return w("Clamp the bar and support both its ends, so that nothing pinches the blade or falls. Eye and hearing protection.");
    case SawCaution::deburr_and_label: return w("Deburr every end. Write the label on the piece as it comes off the saw.");
    case SawCaution::thin_end: break;
    }
    return w("THIN END: the last cut takes off less than the blade's kerf or the saw's least cut, so the blade may run out of the bar. Clamp a piece of waste behind the end, or grind to the mark.");
}

std::string say(SawEnd end, const Wording& w)
{
    switch (end) {
    case SawEnd::time_was_up: return w("The time allowed was up: this is the best plan found in it.");
    case SawEnd::interrupted: return w("Stopped by Ctrl-C: this is the best plan found so far.");
    case SawEnd::finished: break;
    }
    return {};
}

std::string cost_and_bound(const SawOrder& order, const Wording& w)
{
    if (const CostParts parts = cost_parts(order); parts.mixed()) return mixed_cost(parts, w);
    const NamedValue cost{"cost", cost_figure(order.plan.cost)}, basis{"basis", cost_basis(order)};
    if (order.plan.proven_optimal)
        return w("Cost {cost}{basis:, which is the bars' length in mm, for no cost is stated| by the costs stated of the bars|, which is the length in mm of the bars but those that cost "
                 "nothing}; proven: no plan costs less.",
                 {cost, basis});
    const std::string gap = figure(Length::micrometres(gap_of(order.plan)), Units::mm, Toward::nearest, 3);
    return w("Cost {cost}{basis:, which is the bars' length in mm, for no cost is stated| by the costs stated of the bars|, which is the length in mm of the bars but those that cost nothing}; "
             "no plan costs less than {bound}, which is {gap} % below this plan.",
             {cost, basis, {"bound", cost_figure(order.plan.lower_bound)}, {"gap", gap}});
}

}  // namespace shaftcut

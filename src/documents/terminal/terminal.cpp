#include "shaftcut/documents/terminal/terminal.hpp"

#include <fmt/format.h>

#include "order/instructions.hpp"
#include "terminal/terminal_lines.hpp"
#include "text.hpp"
#include "verdict_words.hpp"

namespace shaftcut {
namespace {

std::string verdict_text(const WorkOrder& order, Colour colour)
{
    const char* code = order.verdict == Verdict::refused ? "1;31" : order.verdict == Verdict::cut || !order.confirm.empty() ? "1" : "1;32";
    return painted(verdict_words(order), code, colour);
}

std::string measured(const WorkOrder& order, Length length, Rounded as) { return figure_of_with_millimetres(as, length, order.units); }

// "  tractor half   guard".
std::string tube_head(const WorkOrder& order, Tube tube, const char* part)
{
    return fmt::format("  {:<14} {:<5}", std::string(to_word(order.reading.shaft.halves[tube].end)) + " half", part);
}

std::string tube_line(const WorkOrder& order, Tube tube, const char* part, Length cut, std::optional<Length> kept)
{
    const std::string head = tube_head(order, tube, part);
    const std::string keep = kept ? "keep " + measured(order, *kept, Rounded::kept) : "not measured: confirm";
    if (cut == Length()) return wrapped(head, "leave as it is, " + keep);
    return wrapped(head, "cut " + measured(order, cut, Rounded::cut) + " ±" + figure_with_unit(order.saw.plus_minus, Units::mm) + ", " + keep);
}

std::string guard_line(const WorkOrder& order, Tube tube)
{
    const CutPlan& plan = order.cut->plan;
    const auto cut = plan.guard_cut[tube];
    if (cut) return tube_line(order, tube, "guard", *cut, plan.guard_half[tube]);
    return wrapped(tube_head(order, tube, "guard"), order.shaft.halves[tube].guard_use == GuardUse::none ? "none: fit a new one" : "damaged, not used again: fit a new one");
}

std::string cut_lines(const WorkOrder& order)
{
    std::string lines;
    const CutPlan& plan = order.cut->plan;
    for (const End end : both_ends) {
        const Tube tube = tube_on(order.shaft, end);
        lines += tube_line(order, tube, "tube", plan.cut[tube], plan.half[tube]) + guard_line(order, tube);
    }
    const bool cut = order.verdict == Verdict::cut;
    const std::string reference = !order.reading.has_wide_angle ? "between crosses"
                                  : order.reading.reference == Reference::outer_cross ? "from the outer cross" : "from the inner cross";
    return lines + "  closed length " + (cut ? "after the cut " : "") +
           measured(order, order.cut->closed_at[order.reading.reference], cut ? Rounded::closed_after : Rounded::measured) + " " + reference + "\n";
}

}  // namespace

std::string terminal_text(const WorkOrder& order, Colour colour)
{
    const std::string machine = order.machine.empty() ? "" : ", for " + order.machine;
    std::string text = order.order + ": " + verdict_text(order, colour) + "\n" + wrapped(" ", order.shaft_title + machine);
    for (const std::string& warning : guard_warnings_for(order)) text += wrapped("  WARNING    ", warning);
    for (const Confirmation& one : order.confirm) text += wrapped("  confirm    ", one.says);
    if (order.cut) text += cut_lines(order);
    for (const Check& check : order.checks)
        if (check.result != CheckResult::pass) text += check_line(check, colour);
    for (const std::string& way : order.ways_out) text += wrapped("  instead    ", way);
    for (const std::string& note : order.notes) text += wrapped("  note       ", note);
    return text;
}

std::string terminal_text(const SawOrder& order, Colour colour)
{
    const auto with_unit = [&](Length length) { return saw_figure_with_unit(length, order.units); };
    const SawTotals& totals = order.totals;
    const char* code = order.plan.proven_optimal ? "1;32" : "1";
    std::string text = order.name + ": " + painted(fmt::format("{} BAR{} FOR {} PIECE{}", totals.bars, totals.bars == 1 ? "" : "S", totals.pieces, totals.pieces == 1 ? "" : "S"), code, colour) + "\n";
    std::vector<std::string> fetch;
    for (const BarsToFetch& bars : order.fetch) fetch.push_back(fmt::format("{} × {}", bars.count, with_unit(bars.length)));
    text += wrapped("  fetch      ", listed(fetch, "and"));
    text += wrapped("  plan       ", cost_words(order) + "; " + bound_sentence(order.plan));
    text += wrapped("  waste      ", figure(Length::micrometres(totals.waste), Units::mm) + " % with kerfs and trims");
    if (totals.rack_length > Length()) text += wrapped("  to the rack", with_unit(totals.rack_length));
    if (const std::string ended = end_sentence(order.end); !ended.empty()) text += wrapped("  note       ", ended);
    return text;
}

}  // namespace shaftcut

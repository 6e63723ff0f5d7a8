#include "shaftcut/documents/terminal.hpp"

#include <fmt/format.h>

#include "terminal_lines.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

std::string verdict_text(const WorkOrder& order, Colour colour)
{
    switch (order.verdict) {
    case Verdict::cut: return painted("CUT", "1", colour);
    case Verdict::fits: return painted("FITS AS IT IS", "1;32", colour);
    case Verdict::refused: break;
    }
    return painted("DO NOT CUT", "1;31", colour);
}

std::string measured(const WorkOrder& order, Length length, Toward toward) { return figure_with_millimetres(length, order.units, toward); }

std::string tube_line(const WorkOrder& order, Tube tube, const char* part, Length cut, std::optional<Length> kept)
{
    const std::string half = to_word(order.reading.shaft.halves[tube].end);
    const std::string head = fmt::format("  {:<14} {:<5}", half + " half", part);
    const std::string keep = kept ? "keep " + measured(order, *kept, Toward::down) : "not measured: confirm";
    if (cut == Length()) return wrapped(head, "leave as it is, " + keep);
    return wrapped(head, "cut " + measured(order, cut, Toward::up) + " ±" + figure_with_unit(order.saw.plus_minus, Units::mm) + ", " + keep);
}

std::string cut_lines(const WorkOrder& order)
{
    std::string lines;
    const CutPlan& plan = order.cut->plan;
    for (const End end : both_ends) {
        const Tube tube = tube_on(order.shaft, end);
        lines += tube_line(order, tube, "tube", plan.cut[tube], plan.half[tube]);
        lines += tube_line(order, tube, "guard", plan.guard_cut[tube].value_or(Length()), plan.guard_half[tube]);
    }
    const std::string reference = !order.reading.has_wide_angle ? "between crosses"
                                  : order.reading.reference == Reference::outer_cross ? "from the outer cross" : "from the inner cross";
    const char* when = order.verdict == Verdict::cut ? "after the cut " : "";
    return lines + "  closed length " + when + measured(order, order.cut->closed_at[order.reading.reference], Toward::nearest) + " " + reference + "\n";
}

}  // namespace

std::string terminal_text(const WorkOrder& order, Colour colour)
{
    const std::string machine = order.machine.empty() ? "" : ", for " + order.machine;
    std::string text = order.order + ": " + verdict_text(order, colour) + "\n" + wrapped(" ", order.shaft_title + machine);
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

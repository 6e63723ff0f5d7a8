#include "terminal/terminal_text.hpp"
#include "checks/check_sentences.hpp"
#include "shaft_title_words.hpp"
#include "order/instruction_words.hpp"
#include "advice/advice_words.hpp"
#include "say_all.hpp"

#include "order/instructions.hpp"
#include "order/verdict_words.hpp"
#include "saw/saw_words.hpp"
#include "terminal/terminal_lines.hpp"

namespace shaftcut {
namespace {

using namespace terminal;

std::string verdict_text(const WorkOrder& order, Colour colour, const Wording& w)
{
    const char* code = order.verdict == Verdict::refused ? "1;31" : order.verdict == Verdict::cut || !order.confirm.empty() ? "1" : "1;32";
    return painted(verdict_words(order, w), code, colour);
}

// "  tractor half   guard".
std::string tube_head(const WorkOrder& order, Tube tube, bool guard, const Wording& w)
{
    return padded(half_name(order.reading.shaft.halves[tube].end, w), 14) + " " + filled(part_name(guard, w), 5);
}

std::string tube_line(const WorkOrder& order, Tube tube, bool guard, Length cut, std::optional<Length> kept, const Wording& w)
{
    return wrapped(tube_head(order, tube, guard, w), cut == Length() ? left_as_it_is(kept, w) : cut_and_kept(cut, order.saw.plus_minus, kept, w));
}

std::string guard_line(const WorkOrder& order, Tube tube, const Wording& w)
{
    const CutPlan& plan = order.cut->plan;
    const auto cut = plan.guard_cut[tube];
    if (cut) return tube_line(order, tube, true, *cut, plan.guard_half[tube], w);
    return wrapped(tube_head(order, tube, true, w), guard_not_used(order.shaft.halves[tube].guard_use, w));
}

std::string cut_lines(const WorkOrder& order, const Wording& w)
{
    std::string lines;
    const CutPlan& plan = order.cut->plan;
    for (const End end : both_ends) {
        const Tube tube = tube_on(order.shaft, end);
        lines += tube_line(order, tube, false, plan.cut[tube], plan.half[tube], w) + guard_line(order, tube, w);
    }
    return lines + "  " + closed_line(order, w) + "\n";
}

}  // namespace

std::string terminal_text(const WorkOrder& order, Colour colour, const Wording& w)
{
    std::string text = order_and_verdict(order.order, verdict_text(order, colour, w), w) + "\n" + wrapped(" ", shaft_for(say(order.shaft_title, w), order.machine, w));
    if (const auto warning = guard_warning_for(order)) text += named_line(LineName::warning, say(*warning, w), w);
    for (const Confirmation& one : order.confirm) text += named_line(LineName::confirm, say(one, w), w);
    if (order.cut) text += cut_lines(order, w);
    for (const Check& check : order.checks)
        if (check.result != CheckResult::pass) text += check_line(check, colour, w);
    for (const std::string& way : say_all(order.ways_out, w)) text += named_line(LineName::instead, way, w);
    for (const std::string& note : say_all(order.notes, w)) text += named_line(LineName::note, note, w);
    return text;
}

std::string terminal_text(const SawOrder& order, Colour colour, const Wording& w)
{
    const SawTotals& totals = order.totals;
    const char* code = order.plan.proven_optimal ? "1;32" : "1";
    std::string text = order_and_verdict(order.name, painted(bars_for_pieces(totals.bars, totals.pieces, w), code, colour), w) + "\n";
    text += named_line(LineName::fetch, bars_to_fetch(order.fetch, w), w);
    text += named_line(LineName::plan, cost_and_bound(order, w), w);
    text += named_line(LineName::waste, wasted(totals.waste, w), w);
    if (totals.rack_length > Length()) text += named_line(LineName::to_rack, saw_figure_with_unit(totals.rack_length, w.units()), w);
    if (const std::string ended = say(order.end, w); !ended.empty()) text += named_line(LineName::note, ended, w);
    return text;
}

}  // namespace shaftcut

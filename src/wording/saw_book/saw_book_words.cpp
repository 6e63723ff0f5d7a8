#include "saw_book/saw_book_words.hpp"

#include <array>

#include "build/build_words.hpp"
#include "saw/saw_words.hpp"

namespace shaftcut::saw_book_words {
namespace {

constexpr std::array captions{
    "&L&9Change pale cells only&R&9Page &P of &N", "&L&9Saw plan", "&L&9Saw plan&R&9Bars", "&L&9Batch&R&9Orders", "&L&9Batch&R&9&A", "&L&9Batch&R&9Saw",
    "A length in millimetres, 0 to 100000.", "A length in millimetres above 0.", "A number of shafts.",
    "Inputs, in mm", "Kerf", "Start trim", "End trim", "Back to the rack from", "What the blade takes at each cut: the stops follow it.", "Waste at the starting end, kerf included.",
    "Waste at the other end.", "Empty: every leftover is scrap.",
    "Totals", "Bars", "Length of all bars, mm", "Length of all pieces, mm", "Back to the rack, mm", "Waste with kerfs and trims, %", "With these inputs", "fits", "DOES NOT FIT: plan again",
    "Bars to fetch", "Length", "Cost of one", "Cautions", "DOES NOT FIT",
    "Part", "To pick", "Picked (tick)", "Order", "For one shaft", "Shafts", "In all",
    "Pieces by bar, at the lengths first given: a length that changes on Orders needs a new plan", "Kerf, mm", "Start trim, mm", "End trim, mm", "Back to the rack from, mm (empty: never)",
    "No bars are stated for it: no plan was asked.",
    "Lengths follow the pale cells at the right and the saw's step. Checks are not repeated here: where a length changes, run the list again.", "Saw's step, mm", "DO NOT BUILD", "HELD",
    "see its own sheet", "build", "CHANGED: not checked", "not at all"};
static_assert(captions.size() == static_cast<std::size_t>(Caption::not_at_all) + 1);

constexpr std::array bar_heads{"Bars", "Alike", "Stock, mm", "No.", "Label", "Length, mm", "Stop, mm", "Leftover, mm", "Leftover goes", "Too long by, mm", "Bars, mm in all",
                               "Pieces, mm in all", "Rack, mm in all", "Length, in", "Stop, in"};
static_assert(bar_heads.size() == static_cast<std::size_t>(BarColumn::stop_in) + 1);

constexpr std::array order_heads{
    "Order", "Verdict", "Shafts", "Closed measured at", "Closed, mm", "Inner half, mm", "Outer half, mm", "Inner tube, mm", "Outer tube, mm", "Inner guard tube, mm",
    "Outer guard tube, mm", "Pin hole, inner, mm", "Pin hole, outer, mm", "Pull to, working, mm", "Pull to, turning, mm", "Pull to, standing, mm", "Due", "Drive tubes, kg", "Why not",
    "Customer", "Machine", "Shaft", "Inner guard half, mm", "Outer guard half, mm", "Closed to build to, mm", "Of it outside the inner crosses, mm", "Guard setback, mm",
    "Shoulder, inner, mm", "Shoulder, outer, mm", "Seat, inner, mm", "Seat, outer, mm", "Guard shoulder, inner, mm", "Guard shoulder, outer, mm", "Guard seat, inner, mm",
    "Guard seat, outer, mm"};
static_assert(order_heads.size() == static_cast<std::size_t>(OrderColumn::guard_seat_outer) + 1);

}  // namespace

std::string say(Caption caption, const Wording& w) { return w(captions[static_cast<std::size_t>(caption)]); }
std::string head(BarColumn column, const Wording& w) { return w(bar_heads[static_cast<std::size_t>(column)]); }
std::string head(OrderColumn column, const Wording& w) { return w(order_heads[static_cast<std::size_t>(column)]); }

std::string plan_title(const std::string& name, const Wording& w) { return w("Saw plan {name}", {{"name", name}}); }
std::string batch_title(const std::string& name, const Wording& w) { return w("Batch {name}", {{"name", name}}); }

std::string say(LeftoverUse use, const Wording& w) { return w("{use:none|rack|scrap}", {{"use", use}}); }
std::string say(MeasuredFrom from, const Wording& w) { return w("{from:crosses|OUTER cross|INNER cross}", {{"from", from}}); }

std::string no_plan(const ProfileRefusal& refusal, const Wording& w) { return w("NO PLAN: {why}", {{"why", shaftcut::say(refusal, w)}}); }

std::string fetch_and_cost(const SawOrder& order, const Wording& w)
{
    std::string bars;
    for (const BarsToFetch& fetched : order.fetch)
        bars += (bars.empty() ? "" : ", ") + w("{count} × {length}", {{"count", fetched.count}, {"length", saw_figure_with_unit(fetched.length, w.units())}});
    return running_text({w("Fetch {bars}.", {{"bars", bars}}), cost_and_bound(order, w)});
}

}  // namespace shaftcut::saw_book_words

#include "saw_sheet/summary_words.hpp"

#include <array>

#include "build/build_words.hpp"

namespace shaftcut::summary_words {
namespace {

constexpr std::array captions{"Held: ask first, their sheets have the words", "Refused: see their own sheets", "Saw, bars to fetch", "Fetch, for all shafts to build"};
static_assert(captions.size() == static_cast<std::size_t>(Caption::fetch) + 1);

}  // namespace

std::string say(Caption caption, const Wording& w) { return w(captions[static_cast<std::size_t>(caption)]); }

std::string title(const std::string& list, const Wording& w) { return w("Summary {list}", {{"list", list}}); }
std::string subject(const Wording& w) { return w("what to build, to ask, to saw and to fetch"); }

std::string to_build(std::int64_t shafts, const Wording& w) { return w("{count} TO BUILD", {{"count", shafts}}); }
std::string held(std::int64_t orders, const Wording& w) { return w("{count} HELD", {{"count", orders}}); }
std::string refused(std::int64_t orders, const Wording& w) { return w("{count} REFUSED", {{"count", orders}}); }

std::string held_order(const BatchOrder& order, const Wording& w)
{
    std::vector<std::string> open;
    for (const OpenPoint& point : order.open) open.push_back(shaftcut::say(point, w));
    return w("{order}: {open}", {{"order", order.order}, {"open", running_text(open)}});
}

std::string refused_order(const BatchOrder& order, const Wording& w)
{
    if (order.machine.empty()) return order.order;
    return w("{order}: {machine}", {{"order", order.order}, {"machine", order.machine}});
}

std::string sawn(const std::string& profile, const SawOrder& plan, const Wording& w)
{
    std::vector<std::string> bars;
    for (const BarsToFetch& alike : plan.fetch) bars.push_back(w("{count} × {length}", {{"count", alike.count}, {"length", saw_figure_with_unit(alike.length, w.units())}}));
    return w("{profile}: {bars} for {pieces} {several:piece|pieces}", {{"profile", profile}, {"bars", w.all_of(bars)}, {"pieces", plan.totals.pieces}, {"several", plan.totals.pieces != 1}});
}

std::string not_planned(const std::string& profile, const Wording& w) { return w("{profile}: NO PLAN, its pieces are still to be sawn", {{"profile", profile}}); }
std::string fetched(const PartCount& part, const Wording& w) { return w("{count} × {part}", {{"count", part.count}, {"part", shaftcut::say(part.name, w)}}); }

}  // namespace shaftcut::summary_words

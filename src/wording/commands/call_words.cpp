#include "commands/call_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {

std::string shaft_named(const std::string& shaft, const Wording& w) { return w("shaft {shaft}", {{"shaft", shaft}}); }
std::string order_named(const std::string& order, const Wording& w) { return w("order {order}", {{"order", order}}); }

std::string how_far(std::size_t done, std::size_t of, Counted what, const Wording& w)
{
    return w("{done} of {of} {what:jobs|orders|sheets of labels|series}", {{"done", done}, {"of", of}, {"what", what}});
}

std::string plan_so_far(double seconds_left, std::int64_t cost, std::int64_t lower_bound, const Wording& w)
{
    const NamedValue seconds{"seconds", fmt::format("{:.0f}", std::max(seconds_left, 0.0))};
    if (cost <= 0) return w("{seconds} s left, Ctrl-C takes the best plan so far", {seconds});
    return w("{seconds} s left, Ctrl-C takes the best plan so far: cost {cost}, at least {bound}", {seconds, {"cost", cost_figure(cost)}, {"bound", cost_figure(lower_bound)}});
}

std::string stopped(StoppedBy by, std::size_t done, std::size_t of, const Wording& w)
{
    return w("{by:stopped by Ctrl-C|told to end} after {done} of {of} orders; run it again for the others and for the list's own documents", {{"by", by}, {"done", done}, {"of", of}});
}

std::string wrote(WroteLine line, const std::string& file, const Wording& w)
{
    return line == WroteLine::below ? w("  wrote       {file}", {{"file", file}}) : w("wrote {file}", {{"file", file}});
}

std::string superseded(const std::string& file, const std::string& as, const Wording& w) { return w("  superseded  {file}: now {as}", {{"file", file}, {"as", as}}); }

std::string configuration_line(const std::string& folder, const Wording& w) { return w("configuration {folder}", {{"folder", folder}}); }

}  // namespace shaftcut

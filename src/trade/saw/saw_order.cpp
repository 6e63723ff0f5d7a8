#include "shaftcut/trade/saw/saw_order.hpp"

#include <algorithm>
#include <cstdlib>

namespace shaftcut {
namespace {

constexpr std::int64_t whole_in_thousandths_of_per_cent = 100'000;
constexpr int digits_of_a_micrometre = 3;

// a · factor / b, rounded half up; the sizes of a saw task allow no overflow in 128 bits.
std::int64_t share(std::int64_t a, std::int64_t factor, std::int64_t b)
{
    __extension__ using Wide = __int128;
    if (b == 0) return 0;
    return static_cast<std::int64_t>((static_cast<Wide>(a) * factor * 2 + b) / (static_cast<Wide>(b) * 2));
}

LeftoverUse use_of(Length leftover, std::optional<Length> reusable)
{
    if (leftover == Length()) return LeftoverUse::none;
    return reusable && leftover >= *reusable ? LeftoverUse::rack : LeftoverUse::scrap;
}

std::vector<PlacedPiece> placed(const SawTask& task, const std::vector<std::size_t>& pieces)
{
    std::vector<PlacedPiece> placed;
    Length start = task.trim_start;
    for (const std::size_t piece : pieces) {
        const Length length = task.pieces[piece].length;
        placed.push_back({length, task.pieces[piece].label, start, start + length});
        start += length + task.kerf;
    }
    return placed;
}

void say_how_it_ends(BarLayout& bar, const SawTask& task, Length least_cut)
{
    const Length behind = bar.length - bar.pieces.back().stop;
    bar.ends_with_piece = behind == Length();
    bar.whole = bar.ends_with_piece && bar.pieces.size() == 1 && bar.pieces.front().start == Length();
    if (!bar.ends_with_piece && behind < std::max(task.kerf, least_cut)) bar.thin_end = behind;
}

std::vector<BarLayout> layouts(const SawTask& task, const SawPlan& plan, const SawHeading& heading)
{
    const std::optional<Length>& reusable = heading.reusable;
    std::vector<BarLayout> layouts;
    const auto dealt = deal_pieces(task, plan);
    std::size_t bar = 0;
    for (const SawBar& group : plan.bars) {
        const std::size_t first = layouts.size();
        for (std::int64_t i = 0; i < group.count; ++i, ++bar) {
            const bool same_pieces = i > 0 && dealt[bar] == dealt[bar - 1];
            BarLayout layout{group.stock, task.stock[group.stock].length, 1, {}, group.leftover, use_of(group.leftover, reusable), false, false, {}};
            if (!same_pieces) layout.pieces = placed(task, dealt[bar]);
            const bool alike = same_pieces || (layouts.size() > first && layouts.back().pieces == layout.pieces);
            if (alike) {
                ++layouts.back().count;
                continue;
            }
            say_how_it_ends(layout, task, heading.least_cut);
            layouts.push_back(std::move(layout));
        }
    }
    return layouts;
}

std::vector<BarsToFetch> bars_to_fetch(const SawTask& task, const SawPlan& plan)
{
    std::vector<BarsToFetch> fetch;
    for (std::size_t k = 0; k < task.stock.size(); ++k) {
        BarsToFetch bars{task.stock[k].length, task.stock[k].cost, 0};
        for (const SawBar& group : plan.bars)
            if (group.stock == k) bars.count += group.count;
        if (bars.count > 0) fetch.push_back(bars);
    }
    return fetch;
}

SawTotals totals_of(const std::vector<BarLayout>& bars)
{
    SawTotals totals;
    for (const BarLayout& bar : bars) {
        totals.bars += bar.count;
        totals.pieces += bar.count * static_cast<std::int64_t>(bar.pieces.size());
        totals.bars_length += bar.count * bar.length;
        for (const PlacedPiece& piece : bar.pieces) totals.pieces_length += bar.count * piece.length;
        if (bar.use == LeftoverUse::rack) totals.rack_length += bar.count * bar.leftover;
    }
    const Length waste = totals.bars_length - totals.pieces_length - totals.rack_length;
    totals.waste = share(waste.um(), whole_in_thousandths_of_per_cent, totals.bars_length.um());
    return totals;
}

std::vector<SawCaution> cautions_for(const SawTask& task, const std::vector<BarLayout>& bars)
{
    std::vector<SawCaution> cautions{SawCaution::measure_bars};
    if (task.trim_start > Length()) cautions.push_back(SawCaution::cut_trim_first);
    cautions.insert(cautions.end(), {SawCaution::kerf_counted, SawCaution::clamp_and_protect, SawCaution::deburr_and_label});
    if (std::any_of(bars.begin(), bars.end(), [](const BarLayout& bar) { return bar.thin_end.has_value(); })) cautions.push_back(SawCaution::thin_end);
    return cautions;
}

bool counts_its_length(const BarsToFetch& bars) { return bars.cost == bars.length.um() * cost_of_a_micrometre; }

}  // namespace

SawOrder lay_out(const SawHeading& heading, SawTask task, SawPlan plan, SawEnd end, double seconds)
{
    SawOrder order;
    order.name = heading.name;
    order.owner = heading.owner;
    order.units = heading.units;
    order.reusable = heading.reusable;
    order.least_cut = heading.least_cut;
    order.plus_minus = heading.plus_minus;
    order.end = plan.proven_optimal ? SawEnd::finished : end;
    order.seconds = seconds;
    order.bars = layouts(task, plan, heading);
    order.fetch = bars_to_fetch(task, plan);
    order.totals = totals_of(order.bars);
    order.cautions = cautions_for(task, order.bars);
    order.task = std::move(task);
    order.plan = std::move(plan);
    return order;
}

std::string saw_figure(Length length, Units units)
{
    constexpr std::int64_t sixteenth_um_times_two = 3175;  // 1/16 in is 1587.5 µm
    if (units == Units::mm) return figure(length, Units::mm, Toward::nearest, digits_of_a_micrometre);
    const std::int64_t sixteenths = (4 * length.um() + sixteenth_um_times_two) / (2 * sixteenth_um_times_two);
    const std::int64_t off_times_two = 2 * length.um() - sixteenths * sixteenth_um_times_two;
    if (std::abs(off_times_two) <= 2 * negligible.um()) return figure(length, Units::in);
    const std::int64_t thousandths = (10 * length.um() + 127) / 254;
    std::string decimals = std::to_string(1000 + thousandths % 1000).substr(1);
    return std::to_string(thousandths / 1000) + "." + decimals;
}

std::string saw_figure_with_unit(Length length, Units units)
{
    const std::string text = saw_figure(length, units) + " " + unit_word(units);
    return units == Units::mm ? text : text + " (" + saw_figure(length, Units::mm) + " mm)";
}

std::string cost_figure(std::int64_t cost)
{
    std::string decimals = std::to_string(cost_unit + cost % cost_unit).substr(1);
    decimals.erase(decimals.find_last_not_of('0') + 1);
    return std::to_string(cost / cost_unit) + (decimals.empty() ? "" : "." + decimals);
}

CostParts cost_parts(const SawOrder& order)
{
    CostParts parts;
    for (const BarsToFetch& bars : order.fetch) {
        if (counts_its_length(bars)) parts.without += Length::micrometres(bars.length.um() * bars.count);
        else parts.stated += bars.cost * bars.count;
    }
    return parts;
}

CostBasis cost_basis(const SawOrder& order)
{
    if (std::all_of(order.fetch.begin(), order.fetch.end(), counts_its_length)) return CostBasis::lengths;
    return std::none_of(order.fetch.begin(), order.fetch.end(), counts_its_length) ? CostBasis::stated : CostBasis::stated_and_lengths;
}

std::int64_t gap_of(const SawPlan& plan) { return share(plan.cost - plan.lower_bound, whole_in_thousandths_of_per_cent, plan.cost); }

}  // namespace shaftcut

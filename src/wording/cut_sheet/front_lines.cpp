#include "cut_sheet/front_lines.hpp"

#include <algorithm>
#include <array>

#include "cut_sheet/captions.hpp"
#include "cut_sheet/front_words.hpp"
#include "cut_sheet/refusal_words.hpp"
#include "cut_sheet/warning_words.hpp"
#include "order/instruction_words.hpp"
#include "order/instructions.hpp"
#include "order/verdict_words.hpp"

namespace shaftcut::cut_sheet {
namespace {

// What catches people before what breaks the shaft, and that before what wears it.
constexpr std::array by_harm{CheckId::condition,        CheckId::locking,           CheckId::joint_angle_tractor, CheckId::joint_angle_implement, CheckId::connection,
                             CheckId::rating,           CheckId::closing_clearance, CheckId::overlap_turning,     CheckId::overlap_standing,      CheckId::overlap_working,
                             CheckId::guard_cover,      CheckId::guard_clearance,   CheckId::guard_setback,       CheckId::consistency,           CheckId::shortening_allowed,
                             CheckId::irregularity,     CheckId::tube_left,         CheckId::overload_device};

// Said where it is confirmed, and not twice.
bool is_confirmed(const WorkOrder& order, CheckId id)
{
    return std::any_of(order.confirm.begin(), order.confirm.end(), [&](const Confirmation& one) {
        const bool looks_or_stop = one.why == ConfirmedFor::year_not_stated || one.why == ConfirmedFor::guard_not_measured || one.why == ConfirmedFor::stop_by_measures;
        return (id == CheckId::locking && one.why == ConfirmedFor::year_not_stated) || (id == CheckId::consistency && !looks_or_stop);
    });
}

bool needs_a_part(const WayOut& way)
{
    if (const auto* remedy = std::get_if<Remedy>(&way)) return *remedy == Remedy::fit_unexposed_locks || *remedy == Remedy::device_at_implement || *remedy == Remedy::put_new_parts;
    return std::holds_alternative<GuardsReach>(way) || std::holds_alternative<SeriesLengths>(way) || std::holds_alternative<NewShaft>(way) || std::holds_alternative<MatchConnection>(way) ||
           std::holds_alternative<SeriesThatCarries>(way);
}

// No way out itself, but said of others: of all, or that there is none of that kind.
bool is_no_way(const WayOut& way)
{
    if (const auto* remedy = std::get_if<Remedy>(&way)) return *remedy == Remedy::mend_every_failure || *remedy == Remedy::raise_shortest_in_vain;
    if (const auto* longest = std::get_if<LongestServed>(&way)) return !longest->longest;
    if (const auto* lengths = std::get_if<SeriesLengths>(&way)) return lengths->as_is.empty() && lengths->after_cut.empty();
    return std::holds_alternative<NoNewShaft>(way);
}

bool overlap_fails(const WorkOrder& order)
{
    return std::any_of(all_ranges.begin(), all_ranges.end(), [&](Range range) { return check_of(order.checks, overlap_check_id(range)).result == CheckResult::fail; });
}

// The longest of every range is one way: none of them serves alone.
WayLine longest_served(const WorkOrder& order, const Wording& w)
{
    WayLine line;
    std::vector<std::string> sentences;
    for (std::size_t i = 0; i < order.ways_out.size(); ++i) {
        const WayOut& way = order.ways_out[i];
        if (!std::holds_alternative<LongestServed>(way) || is_no_way(way)) continue;
        sentences.push_back(way_in_short(way, w));
        line.of.push_back(i);
    }
    line.says = running_text(sentences);
    return line;
}

// The position of a decided length as the job names it; empty where it does not.
std::string at_of(const WorkOrder& order, const std::optional<Range>& range)
{
    const auto& decided = range ? order.fit.longest[*range] : order.fit.shortest;
    for (const FitReading& fit : order.fits) {
        const auto& length = range ? fit.fit.longest[*range] : fit.fit.shortest;
        if (length && length->value == decided->value && length->plus_minus == decided->plus_minus) return range ? fit.longest_at[*range] : fit.shortest_at;
    }
    return {};
}

}  // namespace

std::vector<std::string> warning_lines(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> lines;
    const auto guard = guard_warning_for(order);
    if (guard) lines.push_back(warned(say(*guard, w), w));
    if (const auto another = measures_like_another(order)) lines.push_back(warned(say(Note(*another), w), w));
    for (const CheckId id : by_harm) {
        const Check& check = check_of(order.checks, id);
        if (check.result != CheckResult::warn || is_confirmed(order, id)) continue;
        const std::vector<std::string> short_ones = in_one_line(check, guard.has_value(), w);
        lines.insert(lines.end(), short_ones.begin(), short_ones.end());
    }
    return lines;
}

std::vector<WayLine> ways_out(const WorkOrder& order, const Wording& w)
{
    std::vector<std::pair<int, WayLine>> ranked;
    std::vector<WayLine> lines, besides;
    for (std::size_t i = 0; i < order.ways_out.size(); ++i) {
        const WayOut& way = order.ways_out[i];
        if (std::holds_alternative<LongestServed>(way) && !is_no_way(way)) continue;
        WayLine line{0, way_in_short(way, w), {i}};
        if (is_no_way(way)) lines.push_back(std::move(line));
        else if (std::holds_alternative<GuardsReach>(way) && overlap_fails(order)) besides.push_back(std::move(line));
        else ranked.emplace_back(needs_a_part(way), std::move(line));
    }
    if (WayLine longest = longest_served(order, w); !longest.of.empty()) ranked.emplace_back(0, std::move(longest));
    std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first != b.first ? a.first < b.first : a.second.says.size() < b.second.says.size(); });
    std::size_t number = 0;
    for (auto& [unused, line] : ranked) {
        line.number = ++number;
        line.says = numbered_way(number, line.says, w);
        lines.push_back(std::move(line));
    }
    lines.insert(lines.end(), std::make_move_iterator(besides.begin()), std::make_move_iterator(besides.end()));
    return lines;
}

std::string positions_of(const WorkOrder& order, bool with_place, const Wording& w)
{
    const auto said = [&](Length length, const std::optional<Range>& range) { return PositionAt{length, with_place ? at_of(order, range) : ""}; };
    PositionsSaid all;
    if (order.fit.shortest) all.shortest = said(order.fit.shortest->value, std::nullopt);
    for (const Range range : all_ranges)
        if (const auto& length = order.fit.longest[range]) all.longest[range] = said(length->value, range);
    return positions(all, order.reading.has_wide_angle, w);
}

std::string cut_said(const TubeView& view, const Wording& w)
{
    const std::string cut = w.length(Rounded::cut, *view.cut);
    return view.kept ? cut : doubted(cut, w);
}

std::string kept_said(const TubeView& view, const Wording& w) { return view.kept ? kept_in_brackets(*view.kept, w) : say(HalfCaption::confirm_in_brackets, w); }

std::string stays_said(const TubeView& view, const Wording& w) { return view.kept ? stays_in_brackets(*view.kept, w) : say(HalfCaption::not_measured_in_brackets, w); }

RingLines ring_lines(const ReadRings& position, const Wording& w)
{
    const OnRings& rings = position.rings;
    const auto line = [&](RingCaption caption, Rounded as, Length length) { return on_rings(caption, sum_on_rings(pulled_out(as, length, w), w), w); };
    return {line(RingCaption::from, Rounded::at_least, rings.good_from), line(RingCaption::to, Rounded::at_most, rings.good_to), line(RingCaption::expected, Rounded::measured, rings.value),
            rings.never_under ? line(RingCaption::never_under, Rounded::at_least, *rings.never_under) : line(RingCaption::never_over, Rounded::at_most, rings.never_over.value_or(rings.good_to)),
            running_text({when_outside(position, w), shaftcut::never(position, w)})};
}

int last_of_front(const WorkOrder& order) { return order.verdict == Verdict::cut ? last_saw_step : order.steps.back().number; }

}  // namespace shaftcut::cut_sheet

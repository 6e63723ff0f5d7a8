// Whether there is a bar long enough for every tube of a shaft made to order, and what would be if there is none.
#include <algorithm>

#include "build/build_trial.hpp"

namespace shaftcut {
namespace {

// Where no bar at all is stated. The project's own choice, of the order of a bar that is stocked: a drive tube that is longer
// is a figure misread.
constexpr Length longest_without_bars = Length::millimetres(6'000);

struct NeededTube {
    ShaftTube tube;
    std::string profile;
    Length blank, longest_bar;
    Length excess() const { return blank - longest_bar; }
};

std::optional<Length> longest_of_profile(const Workshop& workshop, const std::string& profile)
{
    std::optional<Length> longest;
    for (const ProfileStock& bars : workshop.profile_stock)
        if (bars.profile == profile) longest = std::max(longest, std::optional(bars.stock.length));
    return longest;
}

std::optional<Length> longest_of_any_tube(const Workshop& workshop)
{
    std::optional<Length> longest;
    for (const SawStock& bars : workshop.stock)
        if (!bars.count) longest = std::max(longest, std::optional(bars.length));
    return longest;
}

Length longest_stated(const Workshop& workshop)
{
    std::optional<Length> longest;
    for (const SawStock& bars : workshop.stock) longest = std::max(longest, std::optional(bars.length));
    for (const ProfileStock& bars : workshop.profile_stock) longest = std::max(longest, std::optional(bars.stock.length));
    return longest.value_or(longest_without_bars);
}

// As the saw plans choose bars; where they would find none, the longest bar of the whole configuration. A tube that must not be
// shortened is sawn from no bar.
Length longest_bar(const BuildSetting& setting, ShaftTube of, const std::string& profile)
{
    const bool made_to_length = of.kind == TubeKind::drive && setting.ordered.shaft.halves[of.tube].shortening_forbidden;
    if (!made_to_length) {
        if (const auto own = longest_of_profile(setting.workshop, profile)) return *own;
        if (of.kind == TubeKind::drive)
            if (const auto any = longest_of_any_tube(setting.workshop)) return *any;
    }
    return longest_stated(setting.workshop);
}

std::vector<NeededTube> too_long(const BuildSetting& setting, const BuiltLengths& lengths)
{
    std::vector<NeededTube> found;
    const auto look_at = [&](ShaftTube tube, Length blank) {
        const std::string profile = profile_of(setting.series, tube);
        const NeededTube needed{tube, profile, blank, longest_bar(setting, tube, profile)};
        if (clearly_above(needed.blank, needed.longest_bar)) found.push_back(needed);
    };
    for (const Tube tube : both_tubes) {
        look_at({tube, TubeKind::drive}, lengths.blank[tube]);
        if (const auto& guard = lengths.guard_blank[tube]) look_at({tube, TubeKind::guard}, *guard);
    }
    return found;
}

Length beyond_inner_crosses(const BuildSetting& setting)
{
    return setting.ordered.closed_at[setting.ordered.reference] - setting.ordered.closed_at[Reference::inner_cross];
}

// How long it is to be, as the list states it: its closed length or its shortest.
Length stated_length(const BuildSetting& setting)
{
    if (setting.order.closed) return setting.order.closed->length;
    const auto& stated = setting.order.fits.front().shortest;
    return stated ? stated->length : setting.fit.shortest->value;
}

// The order with the figures of its list taken as millimetres: whether its tubes would be some that can be made.
bool could_be_millimetres(const BuildSetting& setting)
{
    const auto as_millimetres = [](Length length) { return Length::from_mm(length.mm() / 25.4); };
    const Length stated = as_millimetres(stated_length(setting));
    const Length room = stated - beyond_inner_crosses(setting) - (setting.order.closed ? Length() : setting.limits.length(Limit::closing_clearance));
    const BuiltLengths lengths = build_lengths(setting.series, setting.order, room, setting.limits.length(Limit::guard_setback_new), setting.saw.step_um);
    return too_long(setting, lengths).empty() && std::all_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return lengths.blank[tube] > Length(); });
}

}  // namespace

bool has_long_enough_bars(const BuildSetting& setting, const BuiltLengths& lengths) { return too_long(setting, lengths).empty(); }

std::vector<BuildReason> too_long_reasons(const BuildSetting& setting, const BuiltLengths& lengths)
{
    std::vector<BuildReason> reasons;
    for (const NeededTube& needed : too_long(setting, lengths)) reasons.emplace_back(LongerThanBars{needed.tube, needed.profile, needed.longest_bar});
    if (!reasons.empty() && setting.order.units == Units::in && could_be_millimetres(setting))
        reasons.emplace_back(MillimetresReadAsInches{setting.order.closed.has_value(), stated_length(setting)});
    return reasons;
}

Length excess_over_bars(const BuildSetting& setting, const BuiltLengths& lengths)
{
    Length excess;
    for (const NeededTube& needed : too_long(setting, lengths)) excess = std::max(excess, needed.excess());
    return round_up_to_step(excess, setting.saw.step_um);
}

BuildWay long_enough_way(const BuildSetting& setting, const BuiltLengths& lengths)
{
    const Length excess = excess_over_bars(setting, lengths);
    const ShaftReading& ordered = setting.ordered;
    if (!setting.order.closed) return ShortestThatBarsAllow{setting.fit.shortest->value - excess, ordered.has_wide_angle};
    return ClosedThatBarsAllow{ordered.closed_at[ordered.reference] - excess, measured_from(ordered.has_wide_angle, ordered.reference)};
}

}  // namespace shaftcut

// Whether there is a bar long enough for every tube of a shaft made to order, and what would be if there is none.
#include <algorithm>

#include "build/build_trial.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {
namespace {

// Where no bar at all is stated. The project's own choice, of the order of a bar that is stocked: a drive tube that is longer
// is a figure misread.
constexpr Length longest_without_bars = Length::millimetres(6'000);

struct NeededTube {
    std::string name;    // "inner guard tube"
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
Length longest_bar(const BuildSetting& setting, PartKind kind, Tube tube, const std::string& profile)
{
    const bool made_to_length = kind == PartKind::tube && setting.ordered.shaft.halves[tube].shortening_forbidden;
    if (!made_to_length) {
        if (const auto own = longest_of_profile(setting.workshop, profile)) return *own;
        if (kind == PartKind::tube)
            if (const auto any = longest_of_any_tube(setting.workshop)) return *any;
    }
    return longest_stated(setting.workshop);
}

std::vector<NeededTube> too_long(const BuildSetting& setting, const BuiltLengths& lengths)
{
    std::vector<NeededTube> found;
    const auto look_at = [&](PartKind kind, Tube tube, Length blank) {
        const std::string profile = profile_of(setting.series, kind, tube);
        const NeededTube needed{std::string(to_word(tube)) + (kind == PartKind::tube ? " tube" : " guard tube"), profile, blank, longest_bar(setting, kind, tube, profile)};
        if (clearly_above(needed.blank, needed.longest_bar)) found.push_back(needed);
    };
    for (const Tube tube : both_tubes) {
        look_at(PartKind::tube, tube, lengths.blank[tube]);
        if (const auto& guard = lengths.guard_blank[tube]) look_at(PartKind::guard_tube, tube, *guard);
    }
    return found;
}

Length beyond_inner_crosses(const BuildSetting& setting)
{
    return setting.ordered.closed_at[setting.ordered.reference] - setting.ordered.closed_at[Reference::inner_cross];
}

// What the order says of how long it is to be, as its list states it: the name in words, and the figure.
std::pair<std::string, Length> stated_length(const BuildSetting& setting)
{
    if (setting.order.closed) return {"closed length", setting.order.closed->length};
    const auto& stated = setting.order.fits.front().shortest;
    return {"shortest length", stated ? stated->length : setting.fit.shortest->value};
}

// The order with the figures of its list taken as millimetres: whether its tubes would be some that can be made.
bool could_be_millimetres(const BuildSetting& setting)
{
    const auto as_millimetres = [](Length length) { return Length::from_mm(length.mm() / 25.4); };
    const Length stated = as_millimetres(stated_length(setting).second);
    const Length room = stated - beyond_inner_crosses(setting) - (setting.order.closed ? Length() : setting.limits.length(Limit::closing_clearance));
    const BuiltLengths lengths = build_lengths(setting.series, setting.order, room, setting.limits.length(Limit::guard_setback_new), setting.saw.step_um);
    return too_long(setting, lengths).empty() && std::all_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return lengths.blank[tube] > Length(); });
}

std::string question_of_units(const BuildSetting& setting)
{
    const auto [name, stated] = stated_length(setting);
    const std::string inches = saw_figure(stated, Units::in);
    return "Were millimetres read as inches? The " + name + " was read as " + inches + " in; " + inches +
           " mm would be made of these bars. A length without a unit is in the units of the list: --units of a CSV list, its root's units in XML.";
}

}  // namespace

bool has_long_enough_bars(const BuildSetting& setting, const BuiltLengths& lengths) { return too_long(setting, lengths).empty(); }

std::vector<std::string> too_long_reasons(const BuildSetting& setting, const BuiltLengths& lengths)
{
    std::vector<std::string> reasons;
    for (const NeededTube& needed : too_long(setting, lengths))
        reasons.push_back("The " + needed.name + " would be longer than the longest bar that is known for " + needed.profile + ", " +
                          figure_with_millimetres(needed.longest_bar, setting.units) + ".");
    if (!reasons.empty() && setting.order.units == Units::in && could_be_millimetres(setting)) reasons.push_back(question_of_units(setting));
    return reasons;
}

Length excess_over_bars(const BuildSetting& setting, const BuiltLengths& lengths)
{
    Length excess;
    for (const NeededTube& needed : too_long(setting, lengths)) excess = std::max(excess, needed.excess());
    return round_up_to_step(excess, setting.saw.step_um);
}

std::string long_enough_way(const BuildSetting& setting, const BuiltLengths& lengths)
{
    const Length excess = excess_over_bars(setting, lengths);
    const auto at_most = [&](Length length) { return figure_with_millimetres(length, setting.units, Toward::down); };
    const std::string start = "The longest bars known allow a ";
    if (!setting.order.closed)
        return start + "shortest position of " + at_most(setting.fit.shortest->value - excess) + (setting.ordered.has_wide_angle ? " between the inner crosses" : " between crosses") + " at most.";
    const std::string from = !setting.ordered.has_wide_angle ? " between crosses" : setting.ordered.reference == Reference::outer_cross ? " from the outer cross" : " from the inner cross";
    return start + "closed length of " + at_most(setting.ordered.closed_at[setting.ordered.reference] - excess) + from + " at most; or state a longer bar.";
}

}  // namespace shaftcut

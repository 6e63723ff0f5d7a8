// What could be built instead.
#include "advice/advice_words.hpp"
#include "build/build_words.hpp"

namespace shaftcut {
namespace {

// A limit that is asked for is rounded so that the rounded figure still keeps it.
std::string or_more(Length length, const Wording& w) { return figure_with_millimetres(length, w.units(), Toward::up); }
std::string or_less(Length length, const Wording& w) { return figure_with_millimetres(length, w.units(), Toward::down); }


std::string advised(BuildAdvice advice, const Wording& w)
{
    switch (advice) {
    case BuildAdvice::state_again: return w("State again what contradicts: one figure of each pair is wrong, or they are swapped or in another unit.");
    case BuildAdvice::no_other_series: return w("No other series of the catalogue could be built to these lengths.");
    case BuildAdvice::locks_that_do_not_stand_out: return w("Order yokes whose locks have no part that stands out: covered-collar, shrouded-push-pin or clamp-bolt.");
    case BuildAdvice::device_at_implement: break;
    }
    return w("Order the device at the implement end, and none at the tractor end.");
}

std::string advised(const FiguresToState& way, const Wording& w)
{
    return w("State {figures} in the catalogue, measured on a shaft of the series.", {{"figures", say(way.figures, w)}});
}

std::string advised(const ShortestThatServes& way, const Wording& w)
{
    if (!way.least) return w("No shaft of series {series} serves these longest lengths, however far the shortest position is raised.", {{"series", way.series}});
    return w("With the longest lengths as they are, a shaft of series {series} could be built if the shortest position{every:| of every tractor} were {least} between "
             "{crosses:crosses|the inner crosses} or more (now {now}).",
             {{"series", way.series}, {"every", way.of_every_tractor}, {"least", or_more(*way.least, w)}, {"crosses", way.has_wide_angle}, {"now", w.both(Rounded::measured, way.now)}});
}

std::string advised(const LongestThatServes& way, const Wording& w)
{
    const NamedValue series{"series", way.series}, range{"range", way.range};
    if (!way.greatest)
        return w("With the shortest position as it is, a shaft of series {series} could be built for no {range:usual working position|position with the PTO turning|position with the PTO "
                 "stopped} at all.",
                 {series, range});
    return w("With the shortest position as it is, a shaft of series {series} could be built for a {range:usual working position|position with the PTO turning|position with the PTO "
             "stopped} of {greatest} between {crosses:crosses|the inner crosses} at most.",
             {series, range, {"greatest", or_less(*way.greatest, w)}, {"crosses", way.has_wide_angle}});
}

std::string advised(const ClosedThatServes& way, const Wording& w)
{
    if (!way.least) return w("No closed length of series {series} could be built as ordered.", {{"series", way.series}});
    return w("The shortest closed length of series {series} that could be built as ordered is {least} {from:between crosses|from the outer cross|from the inner cross}.",
             {{"series", way.series}, {"least", or_more(*way.least, w)}, {"from", way.from}});
}

std::string advised(const SeriesThatServe& way, const Wording& w)
{
    return w("To these lengths {series} could be built; whether it carries the load is not for this program to say.", {{"series", w.either(way.names)}});
}

std::string advised(const GuardReach& way, const Wording& w)
{
    return w("Its guard tubes would still cover it at {greatest} between {crosses:crosses|the inner crosses} at most.",
             {{"greatest", or_less(way.greatest, w)}, {"crosses", way.has_wide_angle}});
}

std::string advised(const ShortestThatBarsAllow& way, const Wording& w)
{
    return w("The longest bars known allow a shortest position of {greatest} between {crosses:crosses|the inner crosses} at most.",
             {{"greatest", or_less(way.greatest, w)}, {"crosses", way.has_wide_angle}});
}

std::string advised(const ClosedThatBarsAllow& way, const Wording& w)
{
    return w("The longest bars known allow a closed length of {greatest} {from:between crosses|from the outer cross|from the inner cross} at most; or state a longer bar.",
             {{"greatest", or_less(way.greatest, w)}, {"from", way.from}});
}

std::string advised(const ClearanceToAsk& way, const Wording& w)
{
    return w("Measure the shortest length more exactly, or ask for a closing clearance of more than {doubt}: that much the shortest and the sawn lengths may be wrong by.",
             {{"doubt", w.both(Rounded::doubt, way.doubt)}});
}

std::string advised(const WayOut& way, const Wording& w) { return say(way, w); }

}  // namespace

std::string say(const BuildWay& way, const Wording& w)
{
    return std::visit([&](const auto& found) { return advised(found, w); }, way);
}

}  // namespace shaftcut

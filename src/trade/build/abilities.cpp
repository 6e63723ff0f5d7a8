#include "shaftcut/trade/build/abilities.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

// A whole shaft with its guard, both joints of one kind.
BuildOrder order_of(const Series& series, JointKind joint)
{
    BuildOrder order;
    order.guard = true;
    order.shaft.series = series.name;
    for (const End end : both_ends) {
        order.shaft.ends[end].joint = joint;
        order.shaft.ends[end].connection = series.yokes.empty() ? "" : series.yokes.front().connection;
    }
    return order;
}

std::vector<JointKind> joints_of(const Series& series)
{
    if (!series.wide_angle) return {JointKind::standard};
    return {JointKind::standard, JointKind::wide_angle};
}

template <class T>
void add_new(std::vector<T>& list, const std::vector<T>& more)
{
    for (const T& one : more)
        if (std::find(list.begin(), list.end(), one) == list.end()) list.push_back(one);
}

// Yokes are looked at by themselves, for they depend on an order's connection and lock.
std::vector<ShaftPart> parts_but_yokes(const Series& series, const BuildOrder& order)
{
    BuiltLengths lengths;
    for (const Tube tube : both_tubes) lengths.guard_blank[tube] = Length();
    std::vector<ShaftPart> parts = parts_of(series, order, lengths);
    std::erase_if(parts, [](const ShaftPart& part) { return part.kind == PartKind::connection_yoke; });
    return parts;
}

bool has_yoke(const Series& series, const std::string& connection, JointKind joint)
{
    return std::any_of(series.parts.begin(), series.parts.end(), [&](const CataloguePart& part) {
        return part.kind == PartKind::connection_yoke && part.connection.value_or(connection) == connection && part.joint.value_or(joint) == joint;
    });
}

void add_yokes(std::vector<OpenPoint>& open, const Series& series)
{
    for (const Yoke& yoke : series.yokes)
        for (const JointKind joint : joints_of(series)) {
            if (yoke.joint.value_or(joint) != joint || has_yoke(series, yoke.connection, joint)) continue;
            PartName name;
            name.series = series.name;
            name.kind = PartKind::connection_yoke;
            name.of_wide_angle = joint == JointKind::wide_angle;
            name.connection = yoke.connection;
            open.emplace_back(PartWithoutName{name, 1});
        }
}

bool is_asked(const std::vector<OpenPoint>& open, const OpenPoint& point)
{
    return std::any_of(open.begin(), open.end(), [&](const OpenPoint& asked) {
        const auto* one = std::get_if<PartWithoutName>(&asked);
        const auto* other = std::get_if<PartWithoutName>(&point);
        if (one && other) return one->part == other->part;
        if (std::holds_alternative<BookMissing>(asked) && std::holds_alternative<BookMissing>(point)) return true;
        const auto* hold = std::get_if<HoldNotKnown>(&asked);
        const auto* other_hold = std::get_if<HoldNotKnown>(&point);
        return hold && other_hold && hold->tube == other_hold->tube;
    });
}

std::vector<OpenPoint> open_of(const Series& series)
{
    std::vector<OpenPoint> open;
    for (const JointKind joint : joints_of(series)) {
        const BuildOrder order = order_of(series, joint);
        for (const OpenPoint& point : open_points(series, order, parts_but_yokes(series, order)))
            if (!is_asked(open, point)) open.push_back(point);
    }
    add_yokes(open, series);
    for (const CataloguePart& part : series.parts)
        if (part.kind == PartKind::device && !part.replaces) open.emplace_back(YokeOfDevice{End::implement, part.device.value_or(Device::none)});
    return open;
}

void add_tubes(std::vector<Impossible>& impossible, const Series& series)
{
    const SeriesHalf& inner = series.halves[Tube::inner];
    const SeriesHalf& outer = series.halves[Tube::outer];
    if (!inner.width || !outer.width || !outer.wall) return;
    const Length bore = *outer.width - *outer.wall - *outer.wall;
    if (clearly_above(*inner.width, bore)) impossible.emplace_back(TubeDoesNotGoIn{*inner.width, bore});
}

// With standard joints: a wide-angle one leaves less, and is no shaft that is stocked at this length for certain.
void add_closed(std::vector<Impossible>& impossible, const Series& series)
{
    for (const Length closed : series.closed_lengths)
        for (const Tube tube : both_tubes) {
            const SeriesHalf& half = series.halves[tube];
            const auto& face = series.halves[other(tube)].shoulder;
            if (!face || !half.seat || !half.least_tube) continue;
            const Length left = closed - *face - *half.seat;
            if (clearly_above(*half.least_tube, left)) impossible.emplace_back(ClosedTooShort{closed, tube, left, *half.least_tube});
        }
}

}  // namespace

SeriesAbilities abilities_of(const Series& series)
{
    SeriesAbilities found;
    found.shortened = !series.shortening_forbidden;
    for (const Tube tube : both_tubes)
        if (!series.halves[tube].shoulder) found.lacks_to_cut.push_back({tube, HalfFigureKind::shoulder});
    for (const JointKind joint : joints_of(series)) add_new(found.lacks_to_build, unstated_for_building(series, order_of(series, joint)));
    found.open = open_of(series);
    add_tubes(found.impossible, series);
    add_closed(found.impossible, series);
    return found;
}

}  // namespace shaftcut

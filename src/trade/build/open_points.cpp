#include "shaftcut/trade/build/open_points.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

bool depends_on_lock(const Series& series)
{
    return std::any_of(series.parts.begin(), series.parts.end(), [](const CataloguePart& part) { return part.kind == PartKind::connection_yoke && part.lock; });
}

// Asked of whoever ordered, so that no name is asked for a yoke that nobody knows.
void add_unstated(std::vector<OpenPoint>& points, const Series& series, const BuildOrder& order, const std::vector<ShaftPart>& parts)
{
    for (const End end : both_ends) {
        const JobEnd& of = order.shaft.ends[end];
        const auto yoke = std::find_if(parts.begin(), parts.end(), [&](const ShaftPart& part) { return part.kind == PartKind::connection_yoke && part.end == end; });
        if (!of.connection) points.emplace_back(ConnectionNotStated{end});
        else if (!of.lock && yoke != parts.end() && !yoke->in_catalogue() && depends_on_lock(series)) points.emplace_back(YokeLockNotStated{end});
    }
}

bool is_asked_already(const std::vector<OpenPoint>& points, const ShaftPart& part)
{
    if (part.kind != PartKind::connection_yoke) return false;
    return std::any_of(points.begin(), points.end(), [&](const OpenPoint& point) {
        if (const auto* connection = std::get_if<ConnectionNotStated>(&point)) return connection->end == *part.end;
        const auto* lock = std::get_if<YokeLockNotStated>(&point);
        return lock && lock->end == *part.end;
    });
}

void add_name(std::vector<OpenPoint>& points, const ShaftPart& part, std::int64_t count)
{
    for (OpenPoint& point : points)
        if (auto* named = std::get_if<PartWithoutName>(&point); named && named->part == part.name) {
            named->count += count;
            return;
        }
    points.emplace_back(PartWithoutName{part.name, count});
}

bool has_hole(const Series& series, const ShaftPart& pin) { return series.halves[*pin.tube].pin_hole.has_value(); }

}  // namespace

Asked whom_to_ask(const OpenPoint& point)
{
    return std::holds_alternative<ConnectionNotStated>(point) || std::holds_alternative<YokeLockNotStated>(point) ? Asked::customer : Asked::supplier;
}

std::vector<OpenPoint> open_points(const Series& series, const BuildOrder& order, const std::vector<ShaftPart>& parts)
{
    std::vector<OpenPoint> points;
    add_unstated(points, series, order, parts);
    for (const ShaftPart& part : parts) {
        if (part.kind == PartKind::device && !part.replaces) points.emplace_back(YokeOfDevice{*part.end, *order.shaft.ends[*part.end].device});
        if (part.in_catalogue() || is_asked_already(points, part)) continue;
        if (part.kind == PartKind::pin && !has_hole(series, part)) points.emplace_back(HoldNotKnown{*part.tube});
        else if (part.kind == PartKind::book) points.emplace_back(BookMissing{series.name, std::int64_t{part.count} * order.count});
        else add_name(points, part, std::int64_t{part.count} * order.count);
    }
    return points;
}

}  // namespace shaftcut

#include "shaftcut/trade/build/parts.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

// A place in a shaft that asks for a part. What a kind does not depend on is left out.
struct Slot {
    PartKind kind;
    std::optional<Tube> tube{};
    std::optional<End> end{};
    std::optional<JointKind> joint{};
    std::optional<std::string> connection{};
    std::optional<Lock> lock{};
    std::optional<Device> device{};
};

template <class T>
bool fits(const std::optional<T>& asked, const std::optional<T>& there) { return !asked || asked == there; }

const CataloguePart* find_part(const Series& series, const Slot& slot)
{
    const auto found = std::find_if(series.parts.begin(), series.parts.end(), [&](const CataloguePart& part) {
        return part.kind == slot.kind && fits(part.tube, slot.tube) && fits(part.joint, slot.joint) && fits(part.connection, slot.connection) &&
               fits(part.lock, slot.lock) && fits(part.device, slot.device);
    });
    return found == series.parts.end() ? nullptr : &*found;
}

// By what tells it from the other parts of the series that have no name.
PartName unnamed(const Series& series, const Slot& slot)
{
    PartName name;
    name.series = series.name;
    name.kind = slot.kind;
    switch (slot.kind) {
    case PartKind::connection_yoke:
        name.of_wide_angle = slot.joint == JointKind::wide_angle;
        name.connection = slot.connection;
        name.lock = slot.lock;
        break;
    case PartKind::device:
        name.connection = slot.connection;
        name.device = slot.device;
        break;
    case PartKind::tube:
    case PartKind::guard_tube:
    case PartKind::tube_yoke:
    case PartKind::pin:
    case PartKind::guard_bearing: name.tube = slot.tube; break;
    case PartKind::double_yoke:
    case PartKind::chain:
    case PartKind::label:
    case PartKind::book: break;
    }
    return name;
}

PartName known_as(const std::string& name)
{
    PartName known;
    known.known = name;
    return known;
}

ShaftPart part_for(const Series& series, const Slot& slot)
{
    ShaftPart part;
    part.kind = slot.kind;
    part.tube = slot.tube;
    part.end = slot.end;
    const CataloguePart* known = find_part(series, slot);
    part.name = known ? known_as(known->name) : unnamed(series, slot);
    if (known) {
        part.count = known->count;
        part.replaces = known->replaces;
    }
    return part;
}

ShaftPart cross_part(const Series& series, const Cross* cross, End end, std::optional<Reference> which)
{
    ShaftPart part;
    part.end = end;
    part.cross = which;
    if (cross && !cross->part.empty()) {
        part.name = known_as(cross->part);
        return part;
    }
    part.name.series = series.name;
    if (cross) {
        part.name.cap = cross->cap;
        part.name.span = cross->span;
    }
    return part;
}

// Inner cross first. One that is stated stands for both.
void add_wide_angle_crosses(std::vector<ShaftPart>& parts, const Series& series, End end)
{
    static const std::vector<Cross> unknown;
    const std::vector<Cross>& crosses = series.wide_angle ? series.wide_angle->crosses : unknown;
    const Cross* inner = crosses.empty() ? nullptr : &crosses.front();
    const Cross* outer = crosses.empty() ? nullptr : &crosses.back();
    parts.push_back(cross_part(series, inner, end, Reference::inner_cross));
    parts.push_back(part_for(series, {PartKind::double_yoke, std::nullopt, end}));
    parts.push_back(cross_part(series, outer, end, Reference::outer_cross));
}

void add_end(std::vector<ShaftPart>& parts, const Series& series, const JobShaft& shaft, Tube tube)
{
    const End end = end_of(shaft, tube);
    const JobEnd& of = shaft.ends[end];
    parts.push_back(part_for(series, {PartKind::tube_yoke, tube, end, of.joint}));
    parts.push_back(part_for(series, {PartKind::pin, tube, end}));
    if (of.joint == JointKind::wide_angle) add_wide_angle_crosses(parts, series, end);
    else parts.push_back(cross_part(series, series.crosses.empty() ? nullptr : &series.crosses.front(), end, std::nullopt));
    std::optional<ShaftPart> device;
    if (of.device && *of.device != Device::none) device = part_for(series, {PartKind::device, std::nullopt, end, of.joint, of.connection, std::nullopt, of.device});
    if (!device || device->replaces != Replaces::connection_yoke) parts.push_back(part_for(series, {PartKind::connection_yoke, std::nullopt, end, of.joint, of.connection, of.lock}));
    if (device) parts.push_back(*device);
}

Slot slot_of(ShaftTube tube) { return {tube.kind == TubeKind::drive ? PartKind::tube : PartKind::guard_tube, tube.tube}; }

ShaftPart tube_part(const Series& series, const JobShaft& shaft, ShaftTube tube, Length length)
{
    ShaftPart part = part_for(series, slot_of(tube));
    part.end = end_of(shaft, tube.tube);
    part.length = length;
    constexpr std::int64_t um_of_a_metre = 1'000'000;
    const auto& mass = series.halves[tube.tube].mass_per_metre;
    if (tube.kind == TubeKind::drive && mass && length > Length()) part.mass = (*mass * length.um() + um_of_a_metre / 2) / um_of_a_metre;
    return part;
}

void add_guard(std::vector<ShaftPart>& parts, const Series& series, const JobShaft& shaft, const BuiltLengths& lengths, Tube tube)
{
    if (!lengths.guard_blank[tube]) return;
    const End end = end_of(shaft, tube);
    parts.push_back(tube_part(series, shaft, {tube, TubeKind::guard}, *lengths.guard_blank[tube]));
    parts.push_back(part_for(series, {PartKind::guard_bearing, tube, end, shaft.ends[end].joint}));
    parts.push_back(part_for(series, {PartKind::chain, tube, end}));
}

}  // namespace

std::vector<ShaftPart> parts_of(const Series& series, const BuildOrder& order, const BuiltLengths& lengths)
{
    std::vector<ShaftPart> parts;
    for (const Tube tube : both_tubes) parts.push_back(tube_part(series, order.shaft, {tube, TubeKind::drive}, lengths.blank[tube]));
    for (const Tube tube : both_tubes) add_end(parts, series, order.shaft, tube);
    for (const Tube tube : both_tubes) add_guard(parts, series, order.shaft, lengths, tube);
    parts.push_back(part_for(series, {PartKind::label}));
    parts.push_back(part_for(series, {PartKind::book}));
    return parts;
}

std::vector<PartCount> counted(const std::vector<ShaftPart>& parts, std::int64_t shafts)
{
    std::vector<PartCount> counts;
    for (const ShaftPart& part : parts) {
        const auto same = std::find_if(counts.begin(), counts.end(), [&](const PartCount& count) { return count.name == part.name; });
        if (same == counts.end()) counts.push_back({part.name, part.count * shafts});
        else same->count += part.count * shafts;
    }
    return counts;
}

std::string profile_of(const Series& series, ShaftTube tube)
{
    const CataloguePart* part = find_part(series, slot_of(tube));
    return part ? part->name : series.name + " " + to_word(tube.tube) + (tube.kind == TubeKind::drive ? " tube" : " guard tube");
}

}  // namespace shaftcut

#include "shaftcut/trade/build/parts.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

// A place in a shaft that asks for a part. What a kind does not depend on is left out.
struct Slot {
    PartKind kind;
    std::string words;  // what it is, where the catalogue has no name for it
    std::string place;
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

std::string unnamed(const Series& series, const std::string& words) { return series.name + " " + words + " (not in the catalogue)"; }

ShaftPart part_for(const Series& series, const Slot& slot)
{
    ShaftPart part;
    part.kind = slot.kind;
    part.place = slot.place;
    part.tube = slot.tube;
    part.end = slot.end;
    const CataloguePart* known = find_part(series, slot);
    part.in_catalogue = known != nullptr;
    part.name = known ? known->name : unnamed(series, slot.words);
    if (known) part.count = known->count;
    return part;
}

std::string end_words(End end) { return std::string(to_word(end)) + " end"; }

// "cross 22 × 54", with what is missing said.
ShaftPart cross_part(const Series& series, const Cross* cross, const std::string& place, End end)
{
    ShaftPart part;
    part.place = place;
    part.end = end;
    part.in_catalogue = cross && !cross->part.empty();
    if (part.in_catalogue) part.name = cross->part;
    else if (cross) part.name = unnamed(series, "cross " + figure(cross->cap, Units::mm) + " × " + figure(cross->span, Units::mm));
    else part.name = unnamed(series, "cross of the wide-angle joint");
    return part;
}

// Inner cross first. One that is stated stands for both.
void add_wide_angle_crosses(std::vector<ShaftPart>& parts, const Series& series, End end)
{
    static const std::vector<Cross> unknown;
    const std::vector<Cross>& crosses = series.wide_angle ? series.wide_angle->crosses : unknown;
    const Cross* inner = crosses.empty() ? nullptr : &crosses.front();
    const Cross* outer = crosses.empty() ? nullptr : &crosses.back();
    parts.push_back(cross_part(series, inner, end_words(end) + ", inner cross", end));
    parts.push_back(part_for(series, {PartKind::double_yoke, "double yoke", end_words(end) + ", between the crosses", std::nullopt, end}));
    parts.push_back(cross_part(series, outer, end_words(end) + ", outer cross", end));
}

std::string connection_yoke_words(const JobEnd& end)
{
    std::string words = "connection yoke " + end.connection.value_or("of a connection that is not stated");
    if (end.joint == JointKind::wide_angle) words += " of a wide-angle joint";
    return words + ", lock " + (end.lock ? to_word(*end.lock) : "not stated");
}

void add_end(std::vector<ShaftPart>& parts, const Series& series, const JobShaft& shaft, Tube tube)
{
    const End end = end_of(shaft, tube);
    const JobEnd& of = shaft.ends[end];
    const std::string half = std::string(to_word(tube)) + " tube";
    parts.push_back(part_for(series, {PartKind::tube_yoke, "tube yoke, " + half, half + ", at the " + end_words(end), tube, end, of.joint}));
    parts.push_back(part_for(series, {PartKind::pin, "pin, " + half, half + ", in its yoke", tube, end}));
    if (of.joint == JointKind::wide_angle) add_wide_angle_crosses(parts, series, end);
    else parts.push_back(cross_part(series, series.crosses.empty() ? nullptr : &series.crosses.front(), end_words(end), end));
    parts.push_back(part_for(series, {PartKind::connection_yoke, connection_yoke_words(of), end_words(end), std::nullopt, end, of.joint, of.connection, of.lock}));
    if (of.device && *of.device != Device::none)
        parts.push_back(part_for(series, {PartKind::device, std::string(to_word(*of.device)) + " " + of.connection.value_or(""), end_words(end), std::nullopt, end,
                                          of.joint, of.connection, std::nullopt, of.device}));
}

std::string half_words(PartKind kind, Tube tube) { return std::string(to_word(tube)) + (kind == PartKind::tube ? " tube" : " guard tube"); }

Slot tube_slot(PartKind kind, Tube tube) { return {kind, half_words(kind, tube), std::string(to_word(tube)) + " half", tube}; }

ShaftPart tube_part(const Series& series, const JobShaft& shaft, PartKind kind, Tube tube, Length length)
{
    ShaftPart part = part_for(series, tube_slot(kind, tube));
    part.end = end_of(shaft, tube);
    part.length = length;
    constexpr std::int64_t um_of_a_metre = 1'000'000;
    const auto& mass = series.halves[tube].mass_per_metre;
    if (kind == PartKind::tube && mass && length > Length()) part.mass = (*mass * length.um() + um_of_a_metre / 2) / um_of_a_metre;
    return part;
}

void add_guard(std::vector<ShaftPart>& parts, const Series& series, const JobShaft& shaft, const BuiltLengths& lengths, Tube tube)
{
    if (!lengths.guard_blank[tube]) return;
    const End end = end_of(shaft, tube);
    const std::string half = std::string(to_word(tube)) + " half";
    parts.push_back(tube_part(series, shaft, PartKind::guard_tube, tube, *lengths.guard_blank[tube]));
    parts.push_back(part_for(series, {PartKind::guard_bearing, "guard bearing, " + half, half + ", at the " + end_words(end), tube, end, shaft.ends[end].joint}));
    parts.push_back(part_for(series, {PartKind::chain, "guard chain", half + ", at the " + end_words(end), tube, end}));
}

}  // namespace

std::vector<ShaftPart> parts_of(const Series& series, const BuildOrder& order, const BuiltLengths& lengths)
{
    std::vector<ShaftPart> parts;
    for (const Tube tube : both_tubes) parts.push_back(tube_part(series, order.shaft, PartKind::tube, tube, lengths.blank[tube]));
    for (const Tube tube : both_tubes) add_end(parts, series, order.shaft, tube);
    for (const Tube tube : both_tubes) add_guard(parts, series, order.shaft, lengths, tube);
    parts.push_back(part_for(series, {PartKind::label, "safety label", "on the guard, or the shaft where it has none"}));
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

std::string profile_of(const Series& series, PartKind kind, Tube tube)
{
    const CataloguePart* part = find_part(series, tube_slot(kind, tube));
    return part ? part->name : series.name + " " + half_words(kind, tube);
}

}  // namespace shaftcut

// What a shaft made to order is put together from: every part by the catalogue's own name, and what the catalogue lacks by what
// it is. A device that takes the place of the connection yoke stands for it. One cross a standard joint and two a wide-angle one, with the double yoke between them; the rest once in its place,
// but for what the catalogue counts (common practice: one pin a yoke, one bearing and one chain a guard half).
#pragma once

#include "shaftcut/trade/build/build.hpp"

namespace shaftcut {

// A part by the catalogue's own name; where it has none, by what the part is, of which only what tells it from others is given.
struct PartName {
    std::string known;                      // the catalogue's; empty: it has none
    std::string series;
    std::optional<PartKind> kind;           // nothing: a cross
    std::optional<Tube> tube;
    bool of_wide_angle = false;             // a connection yoke's joint
    std::optional<std::string> connection;
    std::optional<Lock> lock;
    std::optional<Device> device;
    std::optional<Length> cap, span;        // a cross's; nothing where the catalogue does not state them
    auto operator<=>(const PartName&) const = default;
};

struct ShaftPart {
    std::optional<PartKind> kind;  // nothing: a cross
    PartName name;
    int count = 1;                 // for one shaft
    std::optional<Tube> tube;      // whose it is; nothing for what belongs to an end or to the shaft
    std::optional<End> end;        // nothing for what belongs to the whole shaft
    std::optional<Reference> cross;  // which cross of a wide-angle joint
    std::optional<Length> length;  // of a tube, to be sawn
    std::optional<Replaces> replaces{};  // of a device
    std::optional<std::int64_t> mass;  // of a tube whose catalogue gives mass per length, in grams

    bool in_catalogue() const { return !name.known.empty(); }
};

// In the order in which the shaft is put together, for one shaft.
std::vector<ShaftPart> parts_of(const Series& series, const BuildOrder& order, const BuiltLengths& lengths);

// A name and how many of it.
struct PartCount {
    PartName name;
    std::int64_t count = 0;
};

// The parts of `shafts` such shafts, those of one name together, in the order in which each first stands.
std::vector<PartCount> counted(const std::vector<ShaftPart>& parts, std::int64_t shafts);

// The profile that a tube or guard tube is sawn from, as files name it: its part's name, else "Alder 2 inner tube". Tubes of one name are one
// profile, whatever their series.
std::string profile_of(const Series& series, ShaftTube tube);

}  // namespace shaftcut

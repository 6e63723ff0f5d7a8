// What a shaft made to order is put together from: every part by the catalogue's own name, and what the catalogue lacks by what
// it is. One cross a standard joint and two a wide-angle one, with the double yoke between them; the rest once in its place,
// but for what the catalogue counts (common practice: one pin a yoke, one bearing and one chain a guard half).
#pragma once

#include "shaftcut/trade/build/build.hpp"

namespace shaftcut {

struct ShaftPart {
    std::optional<PartKind> kind;  // nothing: a cross
    std::string name;              // the catalogue's, else "pin, inner tube (not in the catalogue)"
    bool in_catalogue = false;
    int count = 1;                 // for one shaft
    std::string place;             // where it goes: "tractor end", "inner tube, at the implement end"
    std::optional<Tube> tube;      // whose it is; nothing for what belongs to an end or to the shaft
    std::optional<End> end;        // nothing for what belongs to the whole shaft
    std::optional<Length> length;  // of a tube, to be sawn
    std::optional<std::int64_t> mass;  // of a tube whose catalogue gives mass per length, in grams
};

// In the order in which the shaft is put together, for one shaft.
std::vector<ShaftPart> parts_of(const Series& series, const BuildOrder& order, const BuiltLengths& lengths);

// A name and how many of it.
struct PartCount {
    std::string name;
    std::int64_t count = 0;
};

// The parts of `shafts` such shafts, those of one name together, in the order in which each first stands.
std::vector<PartCount> counted(const std::vector<ShaftPart>& parts, std::int64_t shafts);

// The profile that a tube or guard tube is sawn from: its part's name, else "Alder 2 inner tube". Tubes of one name are one
// profile, whatever their series.
std::string profile_of(const Series& series, PartKind kind, Tube tube);

}  // namespace shaftcut

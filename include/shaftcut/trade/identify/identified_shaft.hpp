// The answer to what was measured of a shaft: all that a document sees of it.
#pragma once

#include <optional>
#include <string>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/measures.hpp"
#include "shaftcut/trade/identify/identify.hpp"

namespace shaftcut {

struct IdentifiedShaft {
    Measures measures;
    Identification found;
    Series likeliest;  // that of found.fits, as the catalogue states it
    std::size_t series_known = 0;  // how many the catalogue holds
    std::string owner;             // of the documents; may be empty
    Units units = Units::mm;       // of the documents
};

// The catalogue has at least one series; else std::invalid_argument.
IdentifiedShaft identified(const Measures& measures, const Catalogue& catalogue, const std::string& owner, Units units);

}  // namespace shaftcut

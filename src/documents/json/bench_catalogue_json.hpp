// What a form on a screen offers to choose from, as JSON. Private to the layers above.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "shaftcut/documents/json/json.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "wording.hpp"

namespace shaftcut {

struct BenchOffers {
    const Catalogue& catalogue;
    bool prices = false;
    std::vector<std::pair<std::string, std::string>> words;  // key and text
};

// The shape is that of Engine::bench_catalogue().
std::string bench_catalogue_json_of(const BenchOffers& offers, JsonLayout layout, const Wording& w);

}  // namespace shaftcut

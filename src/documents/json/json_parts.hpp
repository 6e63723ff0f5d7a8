// What the documents for scripts are made of. Private to their room.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/documents/json/json.hpp"
#include "shaftcut/trade/checks/checks.hpp"
#include "wording.hpp"

namespace shaftcut {

using Json = nlohmann::ordered_json;

// Millimetres; null where there is none.
Json number(std::optional<Length> length);
Json thousandths(std::optional<std::int64_t> value);
Json json_of(const std::vector<Check>& checks, const Wording& w);

// With a newline behind it.
std::string dumped(const Json& json, JsonLayout layout);

}  // namespace shaftcut

// The program asked which shaft it is.
#pragma once

#include <nlohmann/json.hpp>
#include <regex>

#include "commands/program.hpp"
#include "support/catch.hpp"

namespace shaftcut::test::identifying_shafts {

using Json = nlohmann::ordered_json;

inline const std::string one = sample("identify/one-series"), mixed = sample("identify/mixed"), undecided = sample("identify/undecided");

inline Run identify(const std::vector<std::string>& arguments)
{
    std::vector<std::string> all{"identify", "--config", config_folder};
    all.insert(all.end(), arguments.begin(), arguments.end());
    return run(all);
}

inline bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

inline std::string with_replaced(std::string text, const std::string& what, const std::string& by)
{
    REQUIRE(has(text, what));
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size())) text.replace(at, what.size(), by);
    return text;
}

}  // namespace shaftcut::test::identifying_shafts

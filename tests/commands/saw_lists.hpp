// Lists for shaftcut saw, written into a test's own folder.
#pragma once

#include <fmt/format.h>

#include "commands/program.hpp"

namespace shaftcut::test {

// shaftcut saw of a list in `folder`, its documents there too.
inline std::vector<std::string> saw_in(const Folder& folder, const std::string& pieces, const std::vector<std::string>& more = {})
{
    std::vector<std::string> arguments{"saw", "--config", config_folder, "--output", folder.path(), folder.file(pieces)};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return arguments;
}

// 300 lengths and 40 priced bars on the rack: too much to finish in a few seconds. Returns the options that name the stock.
inline std::vector<std::string> write_long_lists(const Folder& folder)
{
    std::string pieces = "length,count,label\n", stock = "length,count,cost\n6000,,48\n3000,,26.5\n";
    unsigned state = 7;
    const auto next = [&](unsigned below) {
        state = state * 1'664'525u + 1'013'904'223u;
        return (state >> 8) % below;
    };
    for (int i = 0; i < 300; ++i) pieces += fmt::format("{}.{},{},x{}\n", 300 + next(2100), next(10), 1 + next(12), i);
    for (int i = 0; i < 40; ++i) stock += fmt::format("{}.{},1,{}.{}\n", 700 + next(2200), next(10), next(9), next(100));
    write_all(folder.file("long.csv"), pieces);
    write_all(folder.file("rack.csv"), stock);
    return {"--stock", folder.file("rack.csv")};
}

}  // namespace shaftcut::test

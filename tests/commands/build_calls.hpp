// What the tests of build call it with.
#pragma once

#include <nlohmann/json.hpp>

#include "commands/program.hpp"
#include "support/catch.hpp"

namespace shaftcut::test {

inline const std::string header = "order,count,series,role,speed,inner_tube,tractor_joint,tractor_connection,tractor_lock,implement_joint,implement_connection,implement_lock,closed,shortest,longest_turning\n";
inline const std::string sound = ",2,Alder 2,primary,540,implement,standard,1-3/8-6,shrouded-push-pin,standard,1-3/8-6,clamp-bolt,830,,\n";

inline bool has(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

inline std::vector<std::string> call_for(const std::string& list, std::vector<std::string> more = {})
{
    more.insert(more.begin(), {"build", "--config", config_folder, list});
    return more;
}

// The batch as JSON of a list with these lines under the header.
inline nlohmann::json batch_of(const std::string& lines, int exit = 0, std::vector<std::string> more = {})
{
    const Folder folder;
    write_all(folder.file("list.csv"), header + lines);
    more.insert(more.end(), {"--formats", "json", "--output", "-"});
    const Run one = run(call_for(folder.file("list.csv"), more));
    INFO(one.err);
    REQUIRE(one.exit == exit);
    CHECK(one.out.find('\n') == one.out.size() - 1);
    return nlohmann::json::parse(one.out);
}

inline const std::string sample_list = source_folder + "/samples/orders.csv";

}  // namespace shaftcut::test

// Ctrl-C on the real program.
#include <chrono>
#include <nlohmann/json.hpp>

#include "commands/process.hpp"
#include "commands/saw_lists.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("saw: Ctrl-C gives the best plan so far, says so, and ends with 0")
{
    const Folder folder;
    std::vector<std::string> options = write_long_lists(folder);
    options.insert(options.end(), {"--seconds", "60"});
    Process process(Start{saw_in(folder, "long.csv", options)});
    REQUIRE_FALSE(process.has_ended_within(1500));
    process.interrupt();
    const bool soon = process.has_ended_within(10'000);
    CHECK(soon);
    const Ended end = process.wait();
    INFO(end.err);
    CHECK(end.exit == 0);
    CHECK(end.out.find("Stopped by Ctrl-C: this is the best plan found so far.") != std::string::npos);
    const auto plan = nlohmann::json::parse(read_all(folder.file("long-saw-plan.json")));
    CHECK(plan["seconds"].get<double>() < 20);
    CHECK(plan["proven_optimal"] == false);
    for (const char* name : {"long-saw-plan.pdf", "long-saw-plan.xlsx"}) CHECK(std::filesystem::exists(folder.file(name)));
}

TEST_CASE("saw: Ctrl-C with JSON to standard output keeps that to JSON and speaks on standard error")
{
    const Folder folder;
    std::vector<std::string> options = write_long_lists(folder);
    Process process(Start{{"saw", "--config", config_folder, "--output", "-", "--formats", "json", "--seconds", "60", options[0], options[1], folder.file("long.csv")}});
    REQUIRE_FALSE(process.has_ended_within(1500));
    process.interrupt();
    REQUIRE(process.has_ended_within(10'000));
    const Ended end = process.wait();
    CHECK(end.exit == 0);
    CHECK(nlohmann::json::parse(end.out)["bars_used"].get<int>() > 0);
    CHECK(end.err.find("Stopped by Ctrl-C") != std::string::npos);
}

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

TEST_CASE("saw: a process in the background of a script, which ignores Ctrl-C, is not cut short by it")
{
    const Folder folder;
    std::vector<std::string> options = write_long_lists(folder);
    options.insert(options.end(), {"--seconds", "3"});
    Process process(Start{saw_in(folder, "long.csv", options), "count 0", "", [] { ::signal(SIGINT, SIG_IGN); }});
    REQUIRE_FALSE(process.has_ended_within(1000));
    process.interrupt();
    REQUIRE(process.has_ended_within(20'000));
    const Ended end = process.wait();
    CHECK(end.exit == 0);
    CHECK(end.out.find("Stopped by Ctrl-C") == std::string::npos);
}

TEST_CASE("build: Ctrl-C among the orders ends the call with 3 after the order in hand, and leaves nothing half made")
{
    const Folder lists, folder;
    std::string list = "order,series,role,inner_tube,tractor_joint,implement_joint,closed\n";
    for (int i = 0; i < 20'000; ++i) list += "A-" + std::to_string(i) + ",Alder 2,primary,implement,standard,standard,830\n";
    write_all(lists.file("list.csv"), list);
    Process process(Start{{"build", "--config", config_folder, "--output", folder.path(), lists.file("list.csv")}});
    for (int waited = 0; waited < 2000 && !std::filesystem::exists(folder.file("A-1-assembly.pdf")); ++waited) REQUIRE_FALSE(process.has_ended_within(5));
    process.interrupt();
    REQUIRE(process.has_ended_within(10'000));
    const Ended end = process.wait();
    CHECK(end.exit == 3);
    CHECK(end.err.starts_with(lists.file("list.csv") + ": stopped by Ctrl-C after "));
    CHECK(end.err.find(" of 20000 orders; ") != std::string::npos);
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) CHECK(entry.path().string().ends_with("-assembly.pdf"));
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

// Measures `shaftcut quote` as a process: a list of 1,000 orders with JSON, one job with a wholesaler's list of 20,000 prices and without, and one job
// with its papers beside `shaftcut cut` of the same job with its own. Every round runs all in turn; the median of the rounds counts. Prints a table.
// Usage: quote_benchmark [FOLDER]      FOLDER: where lists and documents are written (default: the system's temporary folder)
#include <fmt/format.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <vector>

#include "benchmark/process_cost.hpp"

namespace {

using namespace shaftcut::benchmark;
namespace fs = std::filesystem;

constexpr int orders = 1000, prices = 20'000, rounds = 15;
const std::string root = SHAFTCUT_SOURCE_DIR, job = root + "/samples/plain-cut.xml";

// Those of the demonstration's orders of which every part has its price, again and again, each under a number of its own.
void write_orders(const fs::path& file)
{
    std::ifstream sample(root + "/samples/orders.csv");
    std::string heading, line;
    std::getline(sample, heading);
    std::vector<std::string> lines;
    while (std::getline(sample, line))
        if (line.find("Brookside") != std::string::npos) lines.push_back(line.substr(line.find(',')));
    std::ofstream list(file);
    list << heading << '\n';
    for (std::size_t i = 0; i < orders; ++i) list << "X-" << i << lines[i % lines.size()] << '\n';
}

void write_configuration(const fs::path& folder)
{
    fs::copy(root + "/config", folder);
    std::ofstream list(folder / "prices.csv");
    list << "part,each,per_metre,lead_days\n";
    for (int i = 0; i < prices; ++i) list << fmt::format("part number {} of a wholesaler,{}.{:02},,{}\n", i, i % 90, i % 100, i % 9);
}

struct Case {
    const char* what;
    std::vector<std::string> call;
};

}  // namespace

int main(int argc, char** argv)
{
    const fs::path folder = (argc > 1 ? fs::path(argv[1]) : fs::temp_directory_path()) / "shaftcut-quote-benchmark";
    fs::remove_all(folder);
    fs::create_directories(folder);
    write_orders(folder / "many.csv");
    write_configuration(folder / "config");
    const std::string config = root + "/config", out = (folder / "out").string();
    const std::vector<std::string> json{"--formats", "json", "--output", "-"}, papers{"--replace", "--output", out};
    const auto call = [](const char* command, const std::string& of_config, const std::vector<std::string>& wishes, const std::string& file) {
        std::vector<std::string> words{SHAFTCUT_PROGRAM, command, "--config", of_config};
        words.insert(words.end(), wishes.begin(), wishes.end());
        words.push_back(file);
        return words;
    };
    const std::vector<Case> cases{{"quote, 1,000 orders, JSON", call("quote", config, json, (folder / "many.csv").string())},
                                  {"quote, a job, JSON", call("quote", config, json, job)},
                                  {"quote, a job, JSON, 20,000 prices", call("quote", (folder / "config").string(), json, job)},
                                  {"cut, a job, papers", call("cut", config, papers, job)},
                                  {"quote, a job, papers", call("quote", config, papers, job)}};
    std::vector<std::vector<Cost>> costs(cases.size());
    for (int round = 0; round < rounds; ++round)
        for (std::size_t i = 0; i < cases.size(); ++i) costs[i].push_back(run(cases[i].call));
    fmt::print("| call | wall, ms | processor, ms | peak, MB |\n| --- | ---: | ---: | ---: |\n");
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const Cost cost = median(costs[i]);
        fmt::print("| {} | {:.1f} | {:.1f} | {:.1f} |\n", cases[i].what, cost.wall_ms, cost.processor_ms, static_cast<double>(cost.peak_kilobytes) / 1024);
    }
    fs::remove_all(folder);
    return EXIT_SUCCESS;
}

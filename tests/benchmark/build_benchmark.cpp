// Measures `shaftcut build` as a process: lists of 50 to 5,000 orders, made from the sample's twenty with closed lengths of their
// own, without bars, so that what counts is the orders and not the saw plans. Every round runs all sizes in turn; the median of
// the rounds counts (with all papers one round). Prints a table.
// Usage: build_benchmark [FOLDER]      FOLDER: where documents are written (default: the system's temporary folder)
#include <fmt/format.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <sstream>
#include <string>
#include <vector>

#include "benchmark/process_cost.hpp"

namespace {

using namespace shaftcut::benchmark;
namespace fs = std::filesystem;

constexpr int refused = 1;  // as the sample's
const std::vector<int> sizes{50, 500, 5'000};

std::string bytes_of(const fs::path& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::vector<std::string> fields_of(const std::string& line)
{
    std::vector<std::string> fields;
    std::istringstream stream(line);
    for (std::string field; std::getline(stream, field, ',');) fields.push_back(field);
    return fields;
}

// The sample's lines over and over, each under a number of its own and, where a closed length is ordered, with one of its own.
void write_list(const fs::path& to, int orders)
{
    constexpr std::size_t closed = 15;
    std::istringstream sample(bytes_of(SHAFTCUT_SOURCE_DIR "/samples/orders.csv"));
    std::ofstream list(to, std::ios::binary);
    std::string header;
    std::getline(sample, header);
    list << header << "\n";
    std::vector<std::string> lines;
    for (std::string line; std::getline(sample, line);) lines.push_back(line);
    for (int i = 0; i < orders; ++i) {
        std::vector<std::string> fields = fields_of(lines[static_cast<std::size_t>(i) % lines.size()]);
        fields[0] = fmt::format("G-{}", i + 1);
        if (!fields[closed].empty()) fields[closed] = std::to_string(std::stoi(fields[closed]) + i * 37 % 60);
        list << fmt::format("{}\n", fmt::join(fields, ","));
    }
}

// The demo's configuration without its bars.
void write_configuration(const fs::path& folder)
{
    fs::create_directories(folder);
    fs::copy_file(SHAFTCUT_SOURCE_DIR "/config/series.xml", folder / "series.xml");
    std::istringstream workshop(bytes_of(SHAFTCUT_SOURCE_DIR "/config/workshop.xml"));
    std::ofstream without(folder / "workshop.xml", std::ios::binary);
    for (std::string line; std::getline(workshop, line);)
        if (line.find("<stock") == std::string::npos) without << line << "\n";
}

void measure(const fs::path& folder, const std::string& formats, int rounds)
{
    std::map<int, std::vector<Cost>> costs;
    for (int round = 0; round < rounds; ++round)
        for (const int size : sizes)
            costs[size].push_back(run({SHAFTCUT_PROGRAM, "build", "--config", (folder / "config").string(), "--formats", formats, "--replace", "--output",
                                       (folder / "documents").string(), (folder / fmt::format("list{}.csv", size)).string()},
                                      refused));
    for (const int size : sizes) {
        const Cost cost = median(costs[size]);
        fmt::print("| {} | {} | {:.3f} | {:.3f} | {:.1f} |\n", formats, size, cost.wall_ms / size, cost.processor_ms / size, static_cast<double>(cost.peak_kilobytes) / 1024);
    }
}

}  // namespace

int main(int argc, char** argv)
{
    const fs::path folder = (argc > 1 ? fs::path(argv[1]) : fs::temp_directory_path()) / "shaftcut-build-benchmark";
    fs::remove_all(folder);
    write_configuration(folder / "config");
    for (const int size : sizes) write_list(folder / fmt::format("list{}.csv", size), size);
    fmt::print("| formats | orders | wall, ms an order | processor, ms an order | peak, MB |\n| --- | ---: | ---: | ---: | ---: |\n");
    measure(folder, "json", 7);
    measure(folder, "pdf,xlsx,json", 1);
    fs::remove_all(folder);
    return EXIT_SUCCESS;
}

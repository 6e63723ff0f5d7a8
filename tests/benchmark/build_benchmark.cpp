// Measures `shaftcut build` as a process: lists of 50 to 5,000 orders, made from the sample's twenty with closed lengths of their
// own, and lists of one order of 100 to 10,000 shafts with five labels each; without bars, so that what counts is the orders and
// their papers and not the saw plans. Every round runs all sizes in turn; the median of the rounds counts (with all papers of
// orders one round). Prints two tables.
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
const std::vector<int> shafts{100, 1'000, 10'000};
constexpr int labels_a_shaft = 5;  // its tubes, its guards, itself

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

// The sample's first order, of so many shafts.
void write_one_order(const fs::path& to, int count)
{
    std::istringstream sample(bytes_of(SHAFTCUT_SOURCE_DIR "/samples/orders.csv"));
    std::string header, line;
    std::getline(sample, header);
    std::getline(sample, line);
    std::vector<std::string> fields = fields_of(line);
    fields[1] = std::to_string(count);
    std::ofstream(to, std::ios::binary) << header << "\n" << fmt::format("{}\n", fmt::join(fields, ","));
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

Cost build(const fs::path& folder, const std::string& formats, const std::string& list, int expected)
{
    return run({SHAFTCUT_PROGRAM, "build", "--config", (folder / "config").string(), "--formats", formats, "--replace", "--output",
                (folder / "documents").string(), (folder / list).string()},
               expected);
}

void print(const std::string& formats, int size, int parts, const Cost& cost)
{
    fmt::print("| {} | {} | {:.3f} | {:.3f} | {:.1f} |\n", formats, size, cost.wall_ms / parts, cost.processor_ms / parts, static_cast<double>(cost.peak_kilobytes) / 1024);
}

void measure(const fs::path& folder, const std::string& formats, int rounds)
{
    std::map<int, std::vector<Cost>> costs;
    for (int round = 0; round < rounds; ++round)
        for (const int size : sizes) costs[size].push_back(build(folder, formats, fmt::format("list{}.csv", size), refused));
    for (const int size : sizes) print(formats, size, size, median(costs[size]));
}

void measure_labels(const fs::path& folder)
{
    std::map<int, std::vector<Cost>> costs;
    for (int round = 0; round < 3; ++round)
        for (const int count : shafts) costs[count].push_back(build(folder, "pdf", fmt::format("order{}.csv", count), EXIT_SUCCESS));
    for (const int count : shafts) print("pdf", count * labels_a_shaft, count * labels_a_shaft, median(costs[count]));
}

}  // namespace

int main(int argc, char** argv)
{
    const fs::path folder = (argc > 1 ? fs::path(argv[1]) : fs::temp_directory_path()) / "shaftcut-build-benchmark";
    fs::remove_all(folder);
    write_configuration(folder / "config");
    for (const int size : sizes) write_list(folder / fmt::format("list{}.csv", size), size);
    for (const int count : shafts) write_one_order(folder / fmt::format("order{}.csv", count), count);
    fmt::print("| formats | orders | wall, ms an order | processor, ms an order | peak, MB |\n| --- | ---: | ---: | ---: | ---: |\n");
    measure(folder, "json", 7);
    measure(folder, "pdf,xlsx,json", 1);
    fmt::print("\n| formats | labels | wall, ms a label | processor, ms a label | peak, MB |\n| --- | ---: | ---: | ---: | ---: |\n");
    measure_labels(folder);
    fs::remove_all(folder);
    return EXIT_SUCCESS;
}

// Measures `shaftcut choose` as a process on a catalogue of 500 series with 12 closed lengths each, made from the demo's: for lengths measured
// between grooves, and for a machine's geometry with 1 to 400 different sets of yokes and spacings. JSON to standard output, which is thrown away. Every round runs
// all in turn; the median of the rounds counts. Prints a table.
// Usage: choose_benchmark [FOLDER]      FOLDER: where configurations are written (default: the system's temporary folder)
#include <fmt/format.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "benchmark/process_cost.hpp"

namespace {

using namespace shaftcut::benchmark;
namespace fs = std::filesystem;

constexpr int series = 500, lengths = 12, rounds = 7;
const std::vector<int> yokes{1, 10, 100};

// A series whose shoulders, and therefore overlaps, are its own; of so many different yokes in all.
std::string series_text(int number, int of_yokes)
{
    std::string closed;
    for (int i = 0; i < lengths; ++i) closed += fmt::format("{} ", 500 + number % 10 * 7 + i * 60);
    return fmt::format("<series name=\"Demo {0}\" shape=\"lemon\" wide-angle-reference=\"outer-cross\"><cross cap=\"22\" span=\"54\"/>"
                       "<wide-angle spacing=\"64\"><cross cap=\"22\" span=\"54\"/></wide-angle>"
                       "<half tube=\"inner\" shoulder=\"{1}\" seat=\"62\" least-tube=\"180\" width=\"43\" wall=\"3.4\" guard-shoulder=\"{2}\" guard-seat=\"46\" guard-seat-wide-angle=\"74\"/>"
                       "<half tube=\"outer\" shoulder=\"{3}\" seat=\"58\" least-tube=\"180\" width=\"51\" wall=\"3.2\" guard-shoulder=\"{4}\" guard-seat=\"44\" guard-seat-wide-angle=\"72\"/>"
                       "<yoke connection=\"1-3/8-6\" cross-to-groove=\"{5}\"/><rating speed=\"540\" power=\"{6}\"/>"
                       "<closed-lengths>{7}</closed-lengths></series>\n",
                       number, 118 + number % 17, 112 + number % 17, 100 + number % 13, 94 + number % 13, 55 + 0.1 * (number % of_yokes), 12 + number % 40, closed);
}

void write_configuration(const fs::path& folder, int of_yokes)
{
    fs::create_directories(folder);
    fs::copy_file(SHAFTCUT_SOURCE_DIR "/config/workshop.xml", folder / "workshop.xml");
    std::ofstream catalogue(folder / "series.xml", std::ios::binary);
    catalogue << "<catalogue units=\"mm\"><connection name=\"1-3/8-6\" speeds=\"540\" source=\"invented\"/>\n";
    for (int i = 0; i < series; ++i) catalogue << series_text(i, of_yokes);
    catalogue << "</catalogue>\n";
}

// Of the sample: where either kind of joint will do at an end, each kind is another spacing.
struct Case {
    const char* fit;
    const char* sample;
    int yokes, spacings;
};

Cost choose(const fs::path& folder, const Case& measured)
{
    return run({SHAFTCUT_PROGRAM, "choose", "--config", (folder / std::to_string(measured.yokes)).string(), "--formats", "json", "--output", "-", std::string(SHAFTCUT_SOURCE_DIR "/samples/choose/") + measured.sample});
}

}  // namespace

int main(int argc, char** argv)
{
    const fs::path folder = (argc > 1 ? fs::path(argv[1]) : fs::temp_directory_path()) / "shaftcut-choose-benchmark";
    fs::remove_all(folder);
    for (const int count : yokes) write_configuration(folder / std::to_string(count), count);
    std::vector<Case> cases{{"lengths", "measured-grooves.xml", 1, 2}};
    for (const int count : yokes) cases.push_back({"mounted machine", "mounted-machine.xml", count, 4});
    for (const int count : yokes) cases.push_back({"trailed machine", "trailed-machine.xml", count, 1});
    std::vector<std::vector<Cost>> costs(cases.size());
    for (int round = 0; round < rounds; ++round)
        for (std::size_t i = 0; i < cases.size(); ++i) costs[i].push_back(choose(folder, cases[i]));
    fmt::print("| fit | series | closed lengths | yokes and spacings | wall, ms | processor, ms | peak, MB |\n| --- | ---: | ---: | ---: | ---: | ---: | ---: |\n");
    for (std::size_t i = 0; i < cases.size(); ++i) {
        const Cost cost = median(costs[i]);
        fmt::print("| {} | {} | {} | {} | {:.0f} | {:.0f} | {:.1f} |\n", cases[i].fit, series, series * lengths, cases[i].yokes * cases[i].spacings, cost.wall_ms, cost.processor_ms,
                   static_cast<double>(cost.peak_kilobytes) / 1024);
    }
    fs::remove_all(folder);
    return EXIT_SUCCESS;
}

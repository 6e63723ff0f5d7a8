// Measures `shaftcut cut` as a process: one cold job against a bare program, and a thousand jobs in one call. Every ratio
// is of runs made in turn, so that a busy machine slows both sides; the median of the runs counts (a thousand
// jobs run once). Prints tables.
// Usage: cut_benchmark [FOLDER]      FOLDER: where papers are written (default: the system's temporary folder)
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

class Bench {
public:
    explicit Bench(const std::filesystem::path& in) : folder_(in / "shaftcut-benchmark")
    {
        std::filesystem::remove_all(folder_);
        std::filesystem::create_directories(folder_ / "jobs");
        std::filesystem::create_directories(folder_ / "papers");
        std::ifstream file(SHAFTCUT_SOURCE_DIR "/samples/wide-angle-outer-cross.xml", std::ios::binary);
        const std::string job{std::istreambuf_iterator<char>(file), {}};
        const std::size_t order = job.find("order=\"") + 7;
        for (int i = 0; i < 1000; ++i) {
            jobs_.push_back((folder_ / "jobs" / fmt::format("{:04}.xml", i)).string());
            std::string own = job;
            std::ofstream(jobs_.back(), std::ios::binary) << own.replace(order, job.find('"', order) - order, fmt::format("B-{:04}", i));
        }
    }
    Bench(const Bench&) = delete;
    Bench& operator=(const Bench&) = delete;
    ~Bench() { std::filesystem::remove_all(folder_); }

    Words bare() const { return {SHAFTCUT_BARE, papers()}; }
    Words cut(std::size_t count, const std::string& formats) const
    {
        Words words{SHAFTCUT_PROGRAM, "cut", "--config", SHAFTCUT_SOURCE_DIR "/config", "--replace", "--formats", formats, "--output", papers()};
        words.insert(words.end(), jobs_.begin(), jobs_.begin() + static_cast<std::ptrdiff_t>(count));
        return words;
    }
    Words cut_to_output(std::size_t count) const
    {
        Words words = cut(count, "json");
        words[8] = "-";
        return words;
    }

private:
    std::string papers() const { return (folder_ / "papers").string(); }
    std::filesystem::path folder_;
    Words jobs_;
};

void print_cold(const Bench& bench)
{
    std::vector<Cost> bare, cold;
    for (int i = 0; i < 41; ++i) {
        bare.push_back(run(bench.bare()));
        cold.push_back(run(bench.cut(1, "pdf,xlsx,json")));
    }
    const Cost b = median(bare), c = median(cold);
    fmt::print("| one process | wall, ms | processor, ms | peak, MB |\n| --- | ---: | ---: | ---: |\n");
    fmt::print("| a line of text in a PDF and in a workbook | {:.1f} | {:.1f} | {:.1f} |\n", b.wall_ms, b.processor_ms, static_cast<double>(b.peak_kilobytes) / 1e3);
    fmt::print("| a job with its three documents | {:.1f} | {:.1f} | {:.1f} |\n", c.wall_ms, c.processor_ms, static_cast<double>(c.peak_kilobytes) / 1e3);
    fmt::print("| ratio | {:.2f} | {:.2f} | {:.2f} |\n\n", c.wall_ms / b.wall_ms, c.processor_ms / b.processor_ms,
               static_cast<double>(c.peak_kilobytes) / static_cast<double>(b.peak_kilobytes));
}

void print_many(const Bench& bench)
{
    fmt::print("| one call | jobs | wall, ms a job | processor, ms a job | peak, MB |\n| --- | ---: | ---: | ---: | ---: |\n");
    const auto print = [](const std::string& what, std::size_t count, const Words& words) {
        const Cost cost = count > 100 ? run(words) : median({run(words), run(words), run(words)});
        const auto jobs = static_cast<double>(count);
        fmt::print("| {} | {} | {:.3f} | {:.3f} | {:.1f} |\n", what, count, cost.wall_ms / jobs, cost.processor_ms / jobs, static_cast<double>(cost.peak_kilobytes) / 1e3);
    };
    for (const std::size_t count : {100UL, 1000UL}) print("all three documents", count, bench.cut(count, "pdf,xlsx,json"));
    print("PDF", 100, bench.cut(100, "pdf"));
    print("XLSX", 100, bench.cut(100, "xlsx"));
    for (const std::size_t count : {100UL, 1000UL}) print("JSON files", count, bench.cut(count, "json"));
    for (const std::size_t count : {100UL, 1000UL}) print("JSON to standard output", count, bench.cut_to_output(count));
}

}  // namespace

int main(int argc, char** argv)
{
    const Bench bench(argc > 1 ? std::filesystem::path(argv[1]) : std::filesystem::temp_directory_path());
    print_cold(bench);
    print_many(bench);
}

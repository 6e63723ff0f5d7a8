// Saw plans measured: saw_benchmark SECONDS FILE... prints one line for each instance on standard error and one row of a table
// for each file: beside first-fit decreasing, and where glpsol is installed beside that general solver on the full model in the same time. A file holds blocks of "instance NAME", "stock LENGTH AVAILABLE COST" (-1: unlimited), "item LENGTH COUNT",
// "known LOWER UPPER" (-1 -1: not known), "end". Not a test: it asserts nothing but that every plan is valid.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "saw/saw_greedy.hpp"
#include "support/saw/general_solver.hpp"
#include "support/saw/linear_programme.hpp"
#include "support/saw/saw_checker.hpp"

namespace {

using namespace shaftcut;

struct Instance {
    std::string name;
    SawTask task;
    std::int64_t known_upper = -1;
};

std::vector<Instance> read_instances(const std::string& file)
{
    std::vector<Instance> instances;
    std::ifstream in(file);
    for (std::string line; std::getline(in, line);) {
        std::istringstream words(line);
        std::string word;
        words >> word;
        if (word == "instance") {
            instances.emplace_back();
            words >> instances.back().name;
        }
        std::int64_t a = 0, b = 0, c = 0;
        if (word == "stock" && words >> a >> b >> c)
            instances.back().task.stock.push_back({Length::micrometres(a), b < 0 ? std::nullopt : std::optional(b), c * cost_unit});
        if (word == "item" && words >> a >> b) instances.back().task.pieces.push_back({Length::micrometres(a), b, ""});
        if (word == "known" && words >> a >> b) instances.back().known_upper = b;
    }
    return instances;
}

struct Measured {
    double seconds = 0;
    double cost = 0;
    double bound = 0;
    double first_fit = 0;
    bool proven = false;
    std::size_t cases = 0;  // of the proof
    bool refused = false;
};

// Processor seconds of this one thread: other work on the machine does not count.
double seconds_since(std::clock_t start)
{
    return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

Measured measure(const Instance& instance, double limit)
{
    const std::clock_t start = std::clock();
    const SawOutcome outcome = plan_saw(instance.task, {[&] { return limit - seconds_since(start); }, {}, test::linear_programme()});
    Measured measured;
    measured.seconds = seconds_since(start);
    if (std::holds_alternative<SawRefusal>(outcome)) {
        measured.refused = true;
        return measured;
    }
    const SawPlan& plan = std::get<SawPlan>(outcome);
    std::string fault = test::fault_of(instance.task, plan);
    if (fault.empty() && !certifies(instance.task, plan.certificate, plan.lower_bound)) fault = "the certificate does not prove the bound";
    if (!fault.empty()) {
        std::fprintf(stderr, "%s: %s\n", instance.name.c_str(), fault.c_str());
        std::exit(1);
    }
    measured.cost = static_cast<double>(plan.cost) / static_cast<double>(cost_unit);
    measured.bound = static_cast<double>(plan.lower_bound) / static_cast<double>(cost_unit);
    measured.proven = plan.proven_optimal;
    measured.cases = plan.certificate.cases.size();
    const saw::Model model = saw::make_model(instance.task);
    if (const auto greedy = saw::greedy_packing(model, saw::wanted(model), saw::available(model), {[] { return 1.0; }, {}}))
        measured.first_fit = static_cast<double>(saw::cost_of(model, *greedy) * model.cost_scale) / static_cast<double>(cost_unit);
    return measured;
}

// A model of more whole numbers than this is not given to the general solver: it would not read it in the time.
constexpr std::int64_t most_unknowns = 300'000;

// Nothing when the model is too large. It needs no more bars of a kind than first-fit's cost pays for.
std::optional<test::GeneralAnswer> measure_in_general(const SawTask& task, double first_fit, int seconds, const std::filesystem::path& folder)
{
    std::int64_t pieces = 0;
    for (const SawPiece& piece : task.pieces) pieces += piece.count;
    std::vector<std::int64_t> most_bars;
    std::int64_t bars = 0;
    for (const SawStock& stock : task.stock) {
        const std::int64_t there = std::min(stock.count.value_or(pieces), pieces);
        most_bars.push_back(stock.cost == 0 ? there : std::min(there, static_cast<std::int64_t>(first_fit) / (stock.cost / cost_unit)));
        bars += most_bars.back();
    }
    if (bars * static_cast<std::int64_t>(task.pieces.size() + 1) > most_unknowns) return std::nullopt;
    return test::solve_in_general(test::full_model(task, most_bars), seconds, folder);
}

struct Row {
    int refused = 0;
    int optimal = 0;
    int proven = 0;
    double cost = 0;
    double bound = 0;
    double first_fit = 0;
    int general_found = 0;
    int general_proven = 0;
    double general_excess = 0;      // over ours, where it found a plan
    double general_bound_short = 0;  // of ours, where it was tried
    std::vector<double> seconds, general_seconds;
};

void add(Row& row, const Instance& instance, const Measured& measured)
{
    const double known = instance.known_upper < 0 ? measured.cost : static_cast<double>(instance.known_upper);
    row.refused += measured.refused;
    row.optimal += !measured.refused && (measured.proven || measured.cost <= known);
    row.proven += measured.proven;
    row.cost += measured.cost;
    row.bound += measured.bound;
    row.first_fit += measured.first_fit;
    row.seconds.push_back(measured.seconds);
    std::fprintf(stderr, "%-28s cost %.0f bound %.0f known %.0f first-fit %.0f%s%s %zu cases %.3f s", instance.name.c_str(), measured.cost, measured.bound,
                 known, measured.first_fit, measured.proven ? " proven" : "", measured.refused ? " REFUSED" : "", measured.cases, measured.seconds);
}

void add(Row& row, const Measured& measured, const test::GeneralAnswer& general)
{
    row.general_found += general.cost.has_value();
    row.general_proven += general.proven;
    if (general.cost) row.general_excess += static_cast<double>(*general.cost) - measured.cost;
    row.general_bound_short += measured.bound - general.bound;
    row.general_seconds.push_back(general.seconds);
    std::fprintf(stderr, "; general solver: cost %.0f bound %.1f%s %.3f s", general.cost ? static_cast<double>(*general.cost) : -1.0, general.bound,
                 general.proven ? " proven" : "", general.seconds);
}

double median(std::vector<double> seconds)
{
    std::sort(seconds.begin(), seconds.end());
    return seconds.empty() ? 0 : seconds[seconds.size() / 2];
}

void print(const std::string& name, const Row& row)
{
    std::printf("| %s | %zu | %.0f | %.0f | %d | %d | %.3f | %.3f | %.0f | ", name.c_str(), row.seconds.size(), row.cost, row.bound, row.optimal, row.proven,
                median(row.seconds), *std::max_element(row.seconds.begin(), row.seconds.end()), row.first_fit);
    if (row.general_seconds.empty()) std::puts("- | - | - | - | - |");
    else std::printf("%d of %zu | +%.0f | −%.1f | %d | %.2f |\n", row.general_found, row.general_seconds.size(), row.general_excess, row.general_bound_short,
                     row.general_proven, median(row.general_seconds));
    std::fflush(stdout);
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc < 3) {
        std::fputs("usage: saw_benchmark SECONDS FILE...\n", stderr);
        return 2;
    }
    const int seconds = std::atoi(argv[1]);
    const bool with_general = test::general_solver_is_there();
    std::string name = (std::filesystem::temp_directory_path() / "saw-benchmark-XXXXXX").string();
    if (mkdtemp(name.data()) == nullptr) return 1;
    const std::filesystem::path folder = name;
    std::puts("| class | n | cost | bound | optimal | proven | median s | max s | first-fit cost | general: found | its cost | its bound | its proofs | its median s |");
    std::puts("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for (int i = 2; i < argc; ++i) {
        Row row;
        for (const Instance& instance : read_instances(argv[i])) {
            const Measured measured = measure(instance, seconds);
            add(row, instance, measured);
            if (with_general && !measured.refused)
                if (const auto general = measure_in_general(instance.task, measured.first_fit, seconds, folder)) add(row, measured, *general);
            std::fputs("\n", stderr);
        }
        if (!row.seconds.empty()) print(std::filesystem::path(argv[i]).stem().string(), row);
    }
    std::filesystem::remove_all(folder);
}

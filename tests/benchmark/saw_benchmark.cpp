// Saw plans measured: saw_benchmark SECONDS FILE... prints one line for each instance on standard error and one row of a table
// for each file. A file holds blocks of "instance NAME", "stock LENGTH AVAILABLE COST" (-1: unlimited), "item LENGTH COUNT",
// "known LOWER UPPER" (-1 -1: not known), "end". Not a test: it asserts nothing but that every plan is valid.
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "shaftcut/trade/saw_greedy.hpp"
#include "support/saw_checker.hpp"

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
    const SawOutcome outcome = plan_saw(instance.task, {[&] { return limit - seconds_since(start); }, {}});
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
    const saw::Model model = saw::make_model(instance.task);
    if (const auto greedy = saw::greedy_packing(model, saw::wanted(model), saw::available(model)))
        measured.first_fit = static_cast<double>(saw::cost_of(model, *greedy) * model.cost_scale) / static_cast<double>(cost_unit);
    return measured;
}

struct Row {
    int optimal = 0;
    int proven = 0;
    double excess = 0;
    double first_fit_excess = 0;
    double worst_gap = 0;
    std::vector<double> seconds;
};

void add(Row& row, const Instance& instance, const Measured& measured)
{
    const double known = instance.known_upper < 0 ? measured.cost : static_cast<double>(instance.known_upper);
    const bool optimal = measured.proven || measured.cost <= known;
    row.optimal += optimal && !measured.refused;
    row.proven += measured.proven;
    row.excess += std::max(0.0, measured.cost - known);
    row.first_fit_excess += std::max(0.0, measured.first_fit - known);
    if (measured.cost > 0) row.worst_gap = std::max(row.worst_gap, 100 * (measured.cost - measured.bound) / measured.cost);
    row.seconds.push_back(measured.seconds);
    std::fprintf(stderr, "%-28s cost %.0f bound %.0f known %.0f first-fit %.0f%s%s %.3f s\n", instance.name.c_str(), measured.cost, measured.bound,
                 known, measured.first_fit, measured.proven ? " proven" : "", measured.refused ? " REFUSED" : "", measured.seconds);
}

}  // namespace

int main(int argc, char** argv)
{
    if (argc < 3) {
        std::fputs("usage: saw_benchmark SECONDS FILE...\n", stderr);
        return 2;
    }
    std::puts("| class | n | optimal | proven | excess cost | first-fit excess | worst gap % | median s | max s |");
    std::puts("| --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    for (int i = 2; i < argc; ++i) {
        Row row;
        for (const Instance& instance : read_instances(argv[i])) add(row, instance, measure(instance, std::atof(argv[1])));
        if (row.seconds.empty()) continue;
        std::sort(row.seconds.begin(), row.seconds.end());
        std::printf("| %s | %zu | %d | %d | %.0f | %.0f | %.3f | %.3f | %.3f |\n", std::filesystem::path(argv[i]).stem().c_str(), row.seconds.size(),
                    row.optimal, row.proven, row.excess, row.first_fit_excess, row.worst_gap, row.seconds[row.seconds.size() / 2],
                    row.seconds.back());
        std::fflush(stdout);
    }
}

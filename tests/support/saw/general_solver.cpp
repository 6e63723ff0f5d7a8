#include "support/saw/general_solver.hpp"

#include <sys/resource.h>

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <fstream>

namespace shaftcut::test {
namespace {

constexpr int seconds_to_read = 30;

double seconds_of_children()
{
    rusage usage{};
    getrusage(RUSAGE_CHILDREN, &usage);
    return static_cast<double>(usage.ru_utime.tv_sec + usage.ru_stime.tv_sec) + static_cast<double>(usage.ru_utime.tv_usec + usage.ru_stime.tv_usec) / 1e6;
}

// The bound in the log's last line of progress: "+  1234: mip =  66.0 >=  65.0  1.5% (17; 3)".
double bound_in(const std::filesystem::path& log)
{
    std::ifstream lines(log);
    double bound = 0;
    for (std::string line; std::getline(lines, line);)
        if (const std::size_t at = line.find(">="); at != std::string::npos && line.find("mip =") != std::string::npos)
            bound = std::max(bound, std::atof(line.c_str() + at + 2));
    return bound;
}

}  // namespace

bool general_solver_is_there()
{
    return std::system("glpsol --version > /dev/null 2>&1") == 0;
}

std::string full_model(const SawTask& task, const std::vector<std::int64_t>& most_bars)
{
    std::string objective, rows, bounds, integers;
    std::vector<std::string> cover(task.pieces.size());
    for (std::size_t k = 0; k < task.stock.size(); ++k)
        for (std::int64_t b = 0; b < most_bars[k]; ++b) {
            const std::string bar = std::to_string(k) + "_" + std::to_string(b);
            objective += " + " + std::to_string(task.stock[k].cost / cost_unit) + " y" + bar;
            bounds += " y" + bar + " <= 1\n";
            integers += " y" + bar + "\n";
            std::string row;
            for (std::size_t i = 0; i < task.pieces.size(); ++i) {
                const std::string cut = "x" + std::to_string(i) + "_" + bar;
                row += " + " + std::to_string((task.pieces[i].length + task.kerf).um()) + " " + cut;
                cover[i] += " + " + cut;
                integers += " " + cut + "\n";
            }
            const std::int64_t held = (task.stock[k].length - task.trim_start - task.trim_end + task.kerf).um();
            rows += row + " - " + std::to_string(held) + " y" + bar + " <= 0\n";
        }
    for (std::size_t i = 0; i < cover.size(); ++i) rows += cover[i] + " = " + std::to_string(task.pieces[i].count) + "\n";
    return "Minimize\n" + objective + "\nSubject To\n" + rows + "Bounds\n" + bounds + "General\n" + integers + "End\n";
}

GeneralAnswer solve_in_general(const std::string& model, int seconds, const std::filesystem::path& folder)
{
    const std::filesystem::path answer = folder / "answer";
    const std::filesystem::path log = folder / "log";
    std::filesystem::remove(answer);
    std::ofstream(folder / "model.lp") << model;
    const std::string call = "timeout " + std::to_string(seconds + seconds_to_read) + " glpsol --lp " + (folder / "model.lp").string() + " --tmlim "
        + std::to_string(seconds) + " --write " + answer.string() + " > " + log.string() + " 2>&1";
    const double before = seconds_of_children();
    const int status = std::system(call.c_str());
    GeneralAnswer result;
    result.seconds = seconds_of_children() - before;
    result.bound = bound_in(log);
    if (status != 0) return result;
    std::ifstream lines(answer);
    for (std::string line; std::getline(lines, line);) {
        char kind = ' ';
        double objective = 0;
        if (std::sscanf(line.c_str(), "s mip %*d %*d %c %lf", &kind, &objective) != 2 || (kind != 'o' && kind != 'f')) continue;
        result.cost = std::llround(objective);
        result.proven = kind == 'o';
        if (result.proven) result.bound = objective;
    }
    return result;
}

}  // namespace shaftcut::test

// Measures the bench page's server: clients that type, each change asking for the answer and its view, and one that asks for a cut sheet now and
// then. Prints how long plain answers and sheets took, how many were refused, and the server's memory over the time.
// Usage: bench_benchmark [SECONDS] [CLIENTS]      (default: 60 seconds, 10 clients)
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <thread>
#include <vector>

#include "benchmark/bench_client.hpp"

namespace {

using namespace shaftcut::benchmark;
using Clock = std::chrono::steady_clock;
using std::chrono::milliseconds;

struct Taken {
    std::vector<double> answers, views, sheets;  // ms
    int refused = 0;
};

std::string job_text()
{
    std::ifstream file(SHAFTCUT_SOURCE_DIR "/samples/wide-angle-outer-cross.xml", std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

// The closed length as it stands after so many keys: "8", "86", "860", and again.
std::string typed(const std::string& job, std::size_t keys)
{
    static const std::string figures = "860";
    const std::size_t at = job.find("closed length=\"") + 15;
    std::string changed = job;
    return changed.replace(at, 3, figures.substr(0, 1 + keys % 3));
}

double post(Tablet& tablet, const std::string& path, const std::string& body, Taken& taken)
{
    const auto start = Clock::now();
    const int status = tablet.post(path, body);
    if (status != 200 && status != 422) ++taken.refused;
    return std::chrono::duration<double, std::milli>(Clock::now() - start).count();
}

// 150 to 350 ms from key to key: 240 answers a minute and as many views.
Taken type(int port, int number, Clock::time_point end)
{
    Taken taken;
    Tablet tablet(port, number);
    const std::string job = job_text();
    std::mt19937 random(static_cast<unsigned>(number));
    std::uniform_int_distribution<int> pause(150, 350);
    for (std::size_t keys = 0; Clock::now() < end; ++keys) {
        const std::string body = typed(job, keys);
        taken.answers.push_back(post(tablet, "/answer", body, taken));
        taken.views.push_back(post(tablet, "/view", body, taken));
        std::this_thread::sleep_for(milliseconds(pause(random)));
    }
    return taken;
}

Taken print_sheets(int port, int number, Clock::time_point end)
{
    Taken taken;
    Tablet tablet(port, number);
    const std::string job = job_text();
    while (Clock::now() < end) {
        taken.sheets.push_back(post(tablet, "/cut-sheet", job, taken));
        std::this_thread::sleep_for(milliseconds(2000));
    }
    return taken;
}

void print_row(const char* what, std::vector<double> times)
{
    std::sort(times.begin(), times.end());
    const auto at = [&](double part) { return times[std::min(times.size() - 1, static_cast<std::size_t>(part * static_cast<double>(times.size())))]; };
    fmt::print("| {} | {} | {:.2f} | {:.2f} | {:.2f} |\n", what, times.size(), at(0.5), at(0.99), times.back());
}

void add(std::vector<double>& to, const std::vector<double>& from) { to.insert(to.end(), from.begin(), from.end()); }

}  // namespace

int main(int argc, char** argv)
{
    const int seconds = argc > 1 ? std::atoi(argv[1]) : 60, clients = argc > 2 ? std::atoi(argv[2]) : 10;
    const Server server(SHAFTCUT_PROGRAM, SHAFTCUT_SOURCE_DIR "/config");
    const auto end = Clock::now() + std::chrono::seconds(seconds);
    std::vector<Taken> taken(static_cast<std::size_t>(clients) + 1);
    std::vector<std::thread> tablets;
    for (int i = 0; i < clients; ++i) tablets.emplace_back([&, i] { taken[static_cast<std::size_t>(i)] = type(server.port(), i + 1, end); });
    tablets.emplace_back([&] { taken.back() = print_sheets(server.port(), clients + 1, end); });
    fmt::print("| second | resident memory, kB |\n| ---: | ---: |\n");
    for (int i = 1; i <= 6; ++i) {
        std::this_thread::sleep_for(milliseconds(seconds * 1000 / 6));
        fmt::print("| {} | {} |\n", seconds * i / 6, server.kilobytes());
    }
    for (std::thread& tablet : tablets) tablet.join();
    Taken all;
    for (const Taken& one : taken) {
        add(all.answers, one.answers);
        add(all.views, one.views);
        add(all.sheets, one.sheets);
        all.refused += one.refused;
    }
    fmt::print("\n| {} clients | count | p50, ms | p99, ms | longest, ms |\n| --- | ---: | ---: | ---: | ---: |\n", clients);
    print_row("answer", all.answers);
    print_row("view", all.views);
    print_row("cut sheet", all.sheets);
    fmt::print("\nneither answered nor said what is wrong: {}\n", all.refused);
}

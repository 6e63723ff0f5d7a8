// What a process costs, measured from outside.
#pragma once

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <stdexcept>
#include <string>
#include <vector>

namespace shaftcut::benchmark {

using Words = std::vector<std::string>;

struct Cost {
    double wall_ms = 0, processor_ms = 0;
    long peak_kilobytes = 0;
};

inline std::string call_of(const Words& words)
{
    std::string call;
    for (const std::string& word : words) call += word + " ";
    return call;
}

// What the process says, on either stream, is thrown away: whoever shows or keeps words takes time that is not the process's. Throws
// where it does not end with `expected`, and says the call.
inline Cost run(const Words& words, int expected = 0)
{
    std::vector<char*> pointers;
    for (const std::string& word : words) pointers.push_back(const_cast<char*>(word.c_str()));
    pointers.push_back(nullptr);
    std::fflush(stdout);  // or the child would say it again
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        if (!std::freopen("/dev/null", "w", stdout) || !std::freopen("/dev/null", "w", stderr)) ::_exit(126);
        ::execv(pointers[0], pointers.data());
        ::_exit(127);
    }
    int status = 0;
    rusage use{};
    if (child < 0 || ::wait4(child, &status, 0, &use) != child) throw std::runtime_error("no process could be made");
    const std::chrono::duration<double, std::milli> wall = std::chrono::steady_clock::now() - start;
    if (!WIFEXITED(status) || WEXITSTATUS(status) != expected) throw std::runtime_error(call_of(words) + "did not end with " + std::to_string(expected));
    const auto ms = [](const timeval& time) { return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_usec) / 1e3; };
    return {wall.count(), ms(use.ru_utime) + ms(use.ru_stime), use.ru_maxrss};
}

inline Cost median(std::vector<Cost> costs)
{
    const auto middle = [&costs](auto member) {
        std::nth_element(costs.begin(), costs.begin() + static_cast<std::ptrdiff_t>(costs.size() / 2), costs.end(),
                         [member](const Cost& a, const Cost& b) { return a.*member < b.*member; });
        return costs[costs.size() / 2].*member;
    };
    return {middle(&Cost::wall_ms), middle(&Cost::processor_ms), middle(&Cost::peak_kilobytes)};
}

}  // namespace shaftcut::benchmark

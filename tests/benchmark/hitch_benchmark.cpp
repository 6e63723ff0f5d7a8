// How long a machine takes: milliseconds, mean and greatest, over random machines. Not run by the tests.
#include <algorithm>
#include <chrono>
#include <cstdio>

#include "shaftcut/trade/hitch.hpp"
#include "support/machines.hpp"

namespace {

struct Times {
    double mean = 0;
    double greatest = 0;
    int without_answer = 0;
};

template <class MakeMachine>
Times times_over(int count, const MakeMachine& make_machine)
{
    support::Dice dice(20);
    Times times;
    for (int i = 0; i < count; ++i) {
        const auto [machine, shaft] = make_machine(dice);
        const auto start = std::chrono::steady_clock::now();
        const auto result = shaftcut::operating_lengths(machine, shaft, shaftcut::Length::millimetres(2));
        const std::chrono::duration<double, std::milli> taken = std::chrono::steady_clock::now() - start;
        times.mean += taken.count() / count;
        times.greatest = std::max(times.greatest, taken.count());
        times.without_answer += std::holds_alternative<shaftcut::Problems>(result) ? 1 : 0;
    }
    return times;
}

void print(const char* kind, int count, const Times& times)
{
    std::printf("%s: %d machines, mean %.2f ms, greatest %.2f ms, %d without an answer\n", kind, count, times.mean, times.greatest,
                times.without_answer);
}

}  // namespace

int main()
{
    constexpr int count = 1000;
    print("trailed", count, times_over(count, support::random_trailed));
    print("mounted", count, times_over(count, support::random_mounted));
}

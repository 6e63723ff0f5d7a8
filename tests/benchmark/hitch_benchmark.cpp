// How long a machine's three ranges take: milliseconds, mean and greatest over random machines. Not run by the tests.
#include <algorithm>
#include <cstdio>
#include <ctime>

#include "shaftcut/trade/hitch/hitch.hpp"
#include "support/machines.hpp"

namespace {

struct Times {
    double mean = 0;
    double greatest = 0;
};

// Processor time, the best of three: what else the computer does is not counted.
double least_time(const support::MachineAndShaft& one)
{
    double least = 1e9;
    for (int i = 0; i < 3; ++i) {
        const std::clock_t start = std::clock();
        const auto result = shaftcut::operating_lengths(one.machine, one.shaft, shaftcut::Length::millimetres(2));
        const double taken = 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
        if (std::holds_alternative<shaftcut::OperatingLengths>(result)) least = std::min(least, taken);
    }
    return least;
}

template <class MakeMachine>
Times times_over(int count, const MakeMachine& make_machine)
{
    support::Dice dice(20);
    Times times;
    for (int i = 0; i < count; ++i) {
        const double taken = least_time(make_machine(dice));
        times.mean += taken / count;
        times.greatest = std::max(times.greatest, taken);
    }
    return times;
}

void print(const char* kind, int count, const Times& times)
{
    std::printf("%s: %d machines, mean %.2f ms, greatest %.2f ms\n", kind, count, times.mean, times.greatest);
}

}  // namespace

int main()
{
    constexpr int count = 1000;
    print("trailed", count, times_over(count, support::random_trailed));
    print("mounted", count, times_over(count, support::random_mounted));
}

#include "saw_progress.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

#include "shaftcut/trade/saw_order.hpp"

namespace shaftcut {
namespace {

constexpr double seconds_between_words = 0.5;

}  // namespace

double SawClock::seconds_taken() const
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - started_).count();
}

double SawClock::seconds_left()
{
    const double taken = seconds_taken();
    if (console_.progress && taken >= next_words_) {
        next_words_ = taken + seconds_between_words;
        say(allowed_ - taken);
    }
    return allowed_ - taken;
}

void SawClock::news(std::int64_t cost, std::int64_t lower_bound)
{
    cost_ = cost;
    lower_bound_ = lower_bound;
}

void SawClock::say(double left)
{
    std::string words = fmt::format("{:.0f} s left, Ctrl-C takes the best plan so far", std::max(left, 0.0));
    if (cost_ > 0) words += fmt::format(": cost {}, at least {}", cost_figure(cost_), cost_figure(lower_bound_));
    const std::size_t columns = words.size();
    words.resize(std::max(columns, said_), ' ');
    said_ = columns;
    console_.err << "\r" << words << std::flush;
}

void SawClock::clear()
{
    if (said_ > 0) console_.err << "\r" << std::string(said_, ' ') << "\r" << std::flush;
    said_ = 0;
}

}  // namespace shaftcut

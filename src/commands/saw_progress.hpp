// The time that a saw plan takes, and on a terminal how far it has come.
#pragma once

#include <chrono>
#include <cstdint>

#include "shaftcut/commands/command.hpp"

namespace shaftcut {

class SawClock {
public:
    // Starts now.
    SawClock(double seconds_allowed, Console& console) : allowed_(seconds_allowed), console_(console) {}

    // Says how far the plan is, where more than a second has passed.
    double seconds_left();
    void news(std::int64_t cost, std::int64_t lower_bound);
    // Takes what it said off the terminal's line.
    void clear();
    double seconds_taken() const;

private:
    void say(double left);

    double allowed_;
    Console& console_;
    std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
    double next_words_ = 1;  // when to say something, seconds after the start
    std::size_t said_ = 0;   // columns
    std::int64_t cost_ = 0, lower_bound_ = 0;
};

}  // namespace shaftcut

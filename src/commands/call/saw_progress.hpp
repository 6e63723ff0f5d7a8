// What a saw plan needs of the world: a clock, the library, Ctrl-C as a question; and on a terminal how far it has come.
#pragma once

#include <chrono>

#include "call/command.hpp"
#include "files/interrupt.hpp"
#include "files/load.hpp"

namespace shaftcut {

class SawProgress {
public:
    explicit SawProgress(Console& console) : console_(console) {}
    SawProgress(const SawProgress&) = delete;
    SawProgress& operator=(const SawProgress&) = delete;

    // To be handed in while this and `interrupt` live.
    SawMeans means(const InterruptWatch& interrupt);

private:
    // Says how far the plan is, now and then from its first second on.
    void note(const SawNews& news);
    void say(const SawNews& news);
    // Takes what was said off the terminal's line.
    void clear();

    Console& console_;
    LinearProgrammeLibrary library_;
    std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
    double next_words_ = 1;  // when to say something, seconds after the plan's start
    std::size_t said_ = 0;   // columns
};

}  // namespace shaftcut

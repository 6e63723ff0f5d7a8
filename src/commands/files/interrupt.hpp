// Signals that end the process, made to wait or to be a question while something runs that must not be cut off.
//
// They are blocked and looked for among the pending ones: no handler, nothing shared. A signal that the process was started to ignore, as
// scripts start those in the background with SIGINT, goes on being ignored. What is said here holds where the thread that has these
// objects is the only one, or the others have the signals blocked too. Checked by tests/commands/saw_process_test.cpp and abandoned_test.cpp
// with real processes and real signals.
#pragma once

#include <csignal>

namespace shaftcut {

// SIGINT, SIGTERM and SIGHUP wait as long as it lives, and end the process then.
class EndingHold {
public:
    EndingHold();
    ~EndingHold();
    EndingHold(const EndingHold&) = delete;
    EndingHold& operator=(const EndingHold&) = delete;

    // Whether one waits; SIGINT only where it did not wait already before, for somebody else to ask for.
    bool came() const;

private:
    sigset_t before_;
};

// Whether SIGTERM or SIGHUP waits: whatever runs is to be given up.
bool told_to_end();

// Ctrl-C as a question instead of the end of the process, while something runs that can be cut short.
class InterruptWatch {
public:
    InterruptWatch() = default;
    // A SIGINT that came is taken; from here on Ctrl-C ends the process again.
    ~InterruptWatch();
    InterruptWatch(const InterruptWatch&) = delete;
    InterruptWatch& operator=(const InterruptWatch&) = delete;

    // Also where told_to_end().
    bool came() const;

private:
    EndingHold hold_;
};

}  // namespace shaftcut

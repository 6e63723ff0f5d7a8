// Ctrl-C as a question instead of the end of the process, while something runs that can be cut short.
//
// SIGINT is blocked and looked for among the pending signals: no handler, nothing shared. A process that was started to ignore it, as
// scripts start those in the background, goes on ignoring it. Checked by tests/commands/saw_process_test.cpp with a real process and a
// real signal.
#pragma once

#include <csignal>

namespace shaftcut {

class InterruptWatch {
public:
    InterruptWatch();
    // A signal that came is taken; from here on Ctrl-C ends the process again.
    ~InterruptWatch();
    InterruptWatch(const InterruptWatch&) = delete;
    InterruptWatch& operator=(const InterruptWatch&) = delete;

    bool came() const;

private:
    sigset_t before_;
    bool ignored_;
};

}  // namespace shaftcut

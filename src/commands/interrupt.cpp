#include "shaftcut/commands/interrupt.hpp"

#include <ctime>

namespace shaftcut {
namespace {

sigset_t interrupt_only()
{
    sigset_t signals;
    sigemptyset(&signals);
    sigaddset(&signals, SIGINT);
    return signals;
}

}  // namespace

InterruptWatch::InterruptWatch() : before_()
{
    const sigset_t interrupt = interrupt_only();
    ::pthread_sigmask(SIG_BLOCK, &interrupt, &before_);
}

InterruptWatch::~InterruptWatch()
{
    const sigset_t interrupt = interrupt_only();
    const timespec no_wait{};
    if (came()) ::sigtimedwait(&interrupt, nullptr, &no_wait);
    ::pthread_sigmask(SIG_SETMASK, &before_, nullptr);
}

bool InterruptWatch::came() const
{
    sigset_t pending;
    return ::sigpending(&pending) == 0 && sigismember(&pending, SIGINT) == 1;
}

}  // namespace shaftcut

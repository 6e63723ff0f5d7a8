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

// Linux keeps a blocked signal pending even where it is ignored.
bool is_ignored()
{
    struct sigaction now {};
    return ::sigaction(SIGINT, nullptr, &now) == 0 && now.sa_handler == SIG_IGN;
}

}  // namespace

InterruptWatch::InterruptWatch() : before_(), ignored_(is_ignored())
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
    return !ignored_ && ::sigpending(&pending) == 0 && sigismember(&pending, SIGINT) == 1;
}

}  // namespace shaftcut

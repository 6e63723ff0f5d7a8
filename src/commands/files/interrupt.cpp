#include "files/interrupt.hpp"

#include <ctime>
#include <initializer_list>

namespace shaftcut {
namespace {

sigset_t set_of(std::initializer_list<int> members)
{
    sigset_t signals;
    sigemptyset(&signals);
    for (const int member : members) sigaddset(&signals, member);
    return signals;
}

// Linux keeps a blocked signal pending even where it is ignored.
bool is_ignored(int signal)
{
    struct sigaction now {};
    return ::sigaction(signal, nullptr, &now) == 0 && now.sa_handler == SIG_IGN;
}

bool waits(int signal)
{
    sigset_t pending;
    return !is_ignored(signal) && ::sigpending(&pending) == 0 && sigismember(&pending, signal) == 1;
}

}  // namespace

EndingHold::EndingHold() : before_()
{
    const sigset_t ending = set_of({SIGINT, SIGTERM, SIGHUP});
    ::pthread_sigmask(SIG_BLOCK, &ending, &before_);
}

EndingHold::~EndingHold() { ::pthread_sigmask(SIG_SETMASK, &before_, nullptr); }

bool EndingHold::came() const { return told_to_end() || (sigismember(&before_, SIGINT) == 0 && waits(SIGINT)); }

bool told_to_end() { return waits(SIGTERM) || waits(SIGHUP); }

InterruptWatch::~InterruptWatch()
{
    const sigset_t interrupt = set_of({SIGINT});
    const timespec no_wait{};
    if (waits(SIGINT)) ::sigtimedwait(&interrupt, nullptr, &no_wait);
}

bool InterruptWatch::came() const { return waits(SIGINT) || told_to_end(); }

}  // namespace shaftcut

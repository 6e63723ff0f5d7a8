#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <csignal>
#include <exception>
#include <iostream>

#include "call/command.hpp"
#include "call/hand_out.hpp"

namespace {

// A document must never be opened under the number of a closed standard stream, or words would be written into it.
// Opened for the wrong direction, the stream still fails as a closed one does.
void occupy_standard_streams()
{
    for (int number = STDIN_FILENO; number <= STDERR_FILENO; ++number)
        if (::fcntl(number, F_GETFD) < 0 && errno == EBADF) ::open("/dev/null", number == STDIN_FILENO ? O_WRONLY : O_RDONLY);
}

// A reader that goes away, or the user's limit on the size of files, becomes an error where the writing is done, which
// says so, instead of the end of the process with jobs undone.
void turn_signals_into_errors()
{
    static_cast<void>(std::signal(SIGPIPE, SIG_IGN));
    static_cast<void>(std::signal(SIGXFSZ, SIG_IGN));
}

}  // namespace

int main(int argc, char** argv)
{
    using namespace shaftcut;
    occupy_standard_streams();
    turn_signals_into_errors();
    Console console{std::cout, std::cerr, isatty(STDOUT_FILENO) == 1, isatty(STDERR_FILENO) == 1, Wording(Units::mm), &std::cin};
    Outcome outcome = Outcome::unwritable;
    try {
        outcome = run_program({argv + 1, argv + argc}, console);
    } catch (const std::exception& fault) {
        std::cerr << "shaftcut: " << sentence_of(fault, console.wording) << "\n";
    }
    // What could not be said was not answered.
    if (!std::cout.flush()) {
        std::cerr << "shaftcut: " << output_lost(console.wording) << "\n";
        outcome = Outcome::unwritable;
    }
    return static_cast<int>(outcome);
}

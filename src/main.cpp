#include <unistd.h>

#include <exception>
#include <iostream>

#include "shaftcut/commands/command.hpp"

int main(int argc, char** argv)
{
    using namespace shaftcut;
    Console console{std::cout, std::cerr, isatty(STDOUT_FILENO) == 1, isatty(STDERR_FILENO) == 1};
    Outcome outcome = Outcome::unwritable;
    try {
        outcome = run_program({argv + 1, argv + argc}, console);
    } catch (const std::exception& fault) {
        std::cerr << "shaftcut: " << fault.what() << "\n";
    }
    // What could not be said was not answered.
    if (!std::cout.flush()) {
        std::cerr << "shaftcut: standard output could not be written\n";
        outcome = Outcome::unwritable;
    }
    return static_cast<int>(outcome);
}

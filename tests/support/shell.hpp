// Runs a line of shell, as somebody would who types it.
#pragma once

#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <string>

namespace shaftcut::test {

struct ShellRun {
    int exit = -1;
    std::string out;  // standard output and standard error together
};

inline ShellRun run_shell(const std::string& folder, const std::string& line)
{
    ShellRun run;
    const std::string whole = "cd '" + folder + "' && { " + line + "\n} 2>&1";
    std::FILE* pipe = ::popen(whole.c_str(), "r");
    if (!pipe) return run;
    std::array<char, 4096> piece{};
    for (std::size_t count; (count = std::fread(piece.data(), 1, piece.size(), pipe)) > 0;) run.out.append(piece.data(), count);
    const int status = ::pclose(pipe);
    run.exit = WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    return run;
}

}  // namespace shaftcut::test

// Runs the real program as a process of its own, with faults where a test wants them (tests/faults/faults.cpp).
#pragma once

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <functional>
#include <map>

#include "commands/program.hpp"
#include "support/catch.hpp"

namespace shaftcut::test {

#ifdef __SANITIZE_ADDRESS__
inline constexpr bool sanitized = true;
#else
inline constexpr bool sanitized = false;
#endif

struct Ended {
    int exit = -1;   // where it ended by itself
    int signal = 0;  // where it was killed
    std::string out, err;
    double seconds = 0;  // of the processor, whatever else the machine does
    int calls = 0;       // through the faults' library; of a process that ended by itself
    int first_file = 0;  // which of them made the first document's file; likewise
    long kilobytes = 0;  // greatest resident memory; likewise
};

struct Start {
    std::vector<std::string> arguments;
    std::string fault = "count 0";
    std::string out{};                   // a file for standard output; empty: caught
    std::function<void()> in_child{};  // before the program is loaded
    std::string program = SHAFTCUT_PROGRAM;
};

class Process {
public:
    explicit Process(const Start& start) : id_(::fork())
    {
        REQUIRE(id_ >= 0);
        if (id_ == 0) become(start);
    }
    Process(const Process&) = delete;
    Process& operator=(const Process&) = delete;
    ~Process()
    {
        if (!waited_) ::kill(id_, SIGKILL);
        if (!waited_) ::waitpid(id_, nullptr, 0);
    }

    Ended wait()
    {
        rusage use{};
        REQUIRE(::wait4(id_, &status_, 0, &use) == id_);
        return ended(use);
    }

    void wait_until_stopped()
    {
        REQUIRE(::waitpid(id_, &status_, WUNTRACED) == id_);
        waited_ = !WIFSTOPPED(status_);
        REQUIRE(WIFSTOPPED(status_));
    }
    // Waits for its end for a while at most.
    bool has_ended_within(int milliseconds)
    {
        for (int waited = 0; waited < milliseconds; waited += 5) {
            siginfo_t info{};
            if (::waitid(P_PID, static_cast<id_t>(id_), &info, WEXITED | WNOHANG | WNOWAIT) == 0 && info.si_pid == id_) return true;
            ::usleep(5000);
        }
        return false;
    }
    void go_on() const { ::kill(id_, SIGCONT); }
    void send(int signal) const { ::kill(id_, signal); }
    void interrupt() const { send(SIGINT); }

private:
    [[noreturn]] void become(const Start& start) const
    {
        const auto redirect = [](const std::string& path, int number) {
            const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0666);
            if (file < 0 || ::dup2(file, number) < 0) ::_exit(126);
            ::close(file);
        };
        redirect(start.out.empty() ? folder_.file("out") : start.out, STDOUT_FILENO);
        redirect(folder_.file("err"), STDERR_FILENO);
        ::setenv("LD_PRELOAD", SHAFTCUT_FAULTS, 1);
        ::setenv("ASAN_OPTIONS", "verify_asan_link_order=0", 1);
        ::setenv("SHAFTCUT_FAULT", start.fault.c_str(), 1);
        ::setenv("SHAFTCUT_FAULT_REPORT", folder_.file("report").c_str(), 1);
        std::vector<std::string> words = start.arguments;
        words.insert(words.begin(), start.program);
        std::vector<char*> pointers;
        for (std::string& word : words) pointers.push_back(word.data());
        pointers.push_back(nullptr);
        for (const int signal : {SIGINT, SIGHUP}) ::signal(signal, SIG_DFL);  // a test run in the background would hand on that it is ignored
        if (start.in_child) start.in_child();
        ::execv(start.program.c_str(), pointers.data());
        ::_exit(127);
    }

    Ended ended(const rusage& use)
    {
        waited_ = true;
        Ended result;
        if (WIFEXITED(status_)) result.exit = WEXITSTATUS(status_);
        if (WIFSIGNALED(status_)) result.signal = WTERMSIG(status_);
        result.out = read_all(folder_.file("out"));
        result.err = read_all(folder_.file("err"));
        const auto seconds = [](const timeval& time) { return static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1e6; };
        result.seconds = seconds(use.ru_utime) + seconds(use.ru_stime);
        std::istringstream(read_all(folder_.file("report"))) >> result.calls >> result.first_file >> result.kilobytes;
        return result;
    }

    Folder folder_;
    pid_t id_;
    int status_ = 0;
    bool waited_ = false;
};

inline Ended run_process(const Start& start)
{
    Process process(start);
    return process.wait();
}

enum class From { first_call, first_file };

// "fault N" for each call that the program makes when nothing fails, or each from its first document's file on.
inline std::vector<std::string> each_call(const std::string& fault, const Start& start, From from = From::first_file)
{
    const Ended counted = run_process(start);
    REQUIRE(counted.exit == 0);
    REQUIRE(counted.first_file > 0);
    REQUIRE(counted.calls >= counted.first_file + 10);
    std::vector<std::string> faults;
    for (int n = from == From::first_call ? 1 : counted.first_file; n <= counted.calls; ++n) faults.push_back(fault + " " + std::to_string(n));
    return faults;
}

// Every file of a folder with its bytes.
inline std::map<std::string, std::string> contents(const Folder& folder)
{
    std::map<std::string, std::string> files;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) files[entry.path().filename().string()] = read_all(entry.path().string());
    return files;
}

// shaftcut cut into `folder`.
inline std::vector<std::string> cut_into(const Folder& folder, const std::string& job, const std::vector<std::string>& more = {})
{
    std::vector<std::string> arguments{"cut", "--config", config_folder, "--output", folder.path(), job};
    arguments.insert(arguments.end(), more.begin(), more.end());
    return arguments;
}

}  // namespace shaftcut::test

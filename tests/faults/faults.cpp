// Faults for the program under test, at the n-th of the system calls by which it writes files: preloaded (LD_PRELOAD), this
// library stands between the program and the C library for open, mkostemp, write, fchmod, fsync, close, flock, rename,
// renameat2, link and unlink. The C library's own inner calls, such as those behind standard output, do not pass here.
//
// The environment says what is to happen, SHAFTCUT_FAULT="WHAT N":
//   kill N    the process is killed (SIGKILL) at the n-th call; a write has written the first half of its bytes by then
//   stop N    the process is stopped (SIGSTOP) before the n-th call, until somebody continues it
//   ERRNO N   the n-th call fails with that number and does nothing
//   short N   every write takes at most n bytes, and every other one is interrupted first
//   plain 0   a file system without locks and without renames that do not overwrite, as NFS
//   noproc 0  there is no /proc: no link in it can be read
//   locked 0  every lock is another process's, and sleeping takes no time
//   count 0   nothing
// SHAFTCUT_FAULT_REPORT names a file that at the end gets "CALLS FIRST KILOBYTES": how many calls there were, which of them
// made the first document's file (0: none), and the greatest resident memory since the program was loaded (the rusage of a parent counts its own memory before that).
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/types.h>
#include <time.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <cstdio>
#include <cstdlib>
#include <cstring>

namespace {

int calls = 0, first_file = 0;

struct Fault {
    char what[16] = "";
    int number = 0;
    Fault()
    {
        const char* text = std::getenv("SHAFTCUT_FAULT");
        if (text && std::sscanf(text, "%15s %d", what, &number) != 2) std::abort();
    }
    bool is(const char* word) const { return std::strcmp(what, word) == 0; }
};

const Fault& fault()
{
    static const Fault read;
    return read;
}

template <class F>
F next(const char* name)
{
    return reinterpret_cast<F>(::dlsym(RTLD_NEXT, name));
}

// Counts a call; true where it is to fail, errno set.
bool fails()
{
    if (++calls != fault().number) return false;
    if (fault().is("kill")) ::kill(::getpid(), SIGKILL);
    if (fault().is("stop")) ::raise(SIGSTOP);
    errno = std::atoi(fault().what);
    return errno != 0;
}

bool lacks(const char* what, int error)
{
    if (fault().is(what)) errno = error;
    return fault().is(what);
}

long peak_kilobytes()
{
    std::FILE* const status = std::fopen("/proc/self/status", "r");
    long peak = -1;
    char line[256];
    while (status && std::fgets(line, sizeof line, status))
        if (std::sscanf(line, "VmHWM: %ld", &peak) == 1) break;
    if (status) std::fclose(status);
    return peak;
}

struct Report {
    ~Report()
    {
        const int counted = calls;
        const char* path = std::getenv("SHAFTCUT_FAULT_REPORT");
        std::FILE* const file = path ? std::fopen(path, "w") : nullptr;
        if (file) std::fprintf(file, "%d %d %ld\n", counted, first_file, peak_kilobytes());
        if (file) std::fclose(file);
    }
} report;

}  // namespace

extern "C" {

int open(const char* path, int flags, ...)
{
    va_list arguments;
    va_start(arguments, flags);
    const mode_t mode = flags & O_CREAT ? static_cast<mode_t>(va_arg(arguments, int)) : 0;
    va_end(arguments);
    return fails() ? -1 : next<int (*)(const char*, int, ...)>("open")(path, flags, mode);
}

ssize_t write(int descriptor, const void* bytes, size_t count)
{
    const auto go = next<ssize_t (*)(int, const void*, size_t)>("write");
    static bool interrupted = false;
    if (fault().is("short")) {
        interrupted = !interrupted;
        errno = EINTR;
        return interrupted ? -1 : go(descriptor, bytes, std::min(count, static_cast<size_t>(fault().number)));
    }
    if (fault().is("kill") && calls + 1 == fault().number && go(descriptor, bytes, count / 2) < 0) std::abort();
    return fails() ? -1 : go(descriptor, bytes, count);
}

int mkostemp(char* pattern, int flags)
{
    if (first_file == 0) first_file = calls + 1;
    return fails() ? -1 : next<int (*)(char*, int)>("mkostemp")(pattern, flags);
}
int fchmod(int descriptor, mode_t mode) { return fails() ? -1 : next<int (*)(int, mode_t)>("fchmod")(descriptor, mode); }
int fsync(int descriptor) { return fails() ? -1 : next<int (*)(int)>("fsync")(descriptor); }
int flock(int descriptor, int how) { return lacks("plain", EBADF) || lacks("locked", EWOULDBLOCK) || fails() ? -1 : next<int (*)(int, int)>("flock")(descriptor, how); }
int nanosleep(const timespec* time, timespec* left)
{
    return fault().is("locked") ? 0 : next<int (*)(const timespec*, timespec*)>("nanosleep")(time, left);
}
int rename(const char* from, const char* to) noexcept { return fails() ? -1 : next<int (*)(const char*, const char*)>("rename")(from, to); }
int link(const char* from, const char* to) noexcept { return fails() ? -1 : next<int (*)(const char*, const char*)>("link")(from, to); }
int unlink(const char* path) noexcept { return fails() ? -1 : next<int (*)(const char*)>("unlink")(path); }

ssize_t readlink(const char* path, char* to, size_t room) noexcept
{
    if (std::strncmp(path, "/proc/", 6) == 0 && lacks("noproc", ENOENT)) return -1;
    return next<ssize_t (*)(const char*, char*, size_t)>("readlink")(path, to, room);
}

// A close that fails has closed all the same.
int close(int descriptor)
{
    const bool failing = fails();
    const int error = errno;
    const int closed = next<int (*)(int)>("close")(descriptor);
    if (failing) errno = error;
    return failing ? -1 : closed;
}

int renameat2(int from_folder, const char* from, int to_folder, const char* to, unsigned flags) noexcept
{
    if (lacks("plain", EINVAL) || fails()) return -1;
    return next<int (*)(int, const char*, int, const char*, unsigned)>("renameat2")(from_folder, from, to_folder, to, flags);
}

}  // extern "C"

#include "files/temporary.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/utsname.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <string_view>

#include "files/output.hpp"

namespace shaftcut {
namespace {

constexpr std::string_view any = "XXXXXX";  // what mkostemp makes letters and digits of

bool is_letter_or_digit(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9'); }

// How the names of this machine's temporary files begin.
std::string own_beginning()
{
    utsname system{};
    std::string machine = ::uname(&system) == 0 ? system.nodename : "";
    std::replace_if(machine.begin(), machine.end(), [](char c) { return !is_letter_or_digit(c) && c != '.' && c != '-'; }, '_');
    return ".shaftcut-" + machine + "-";
}

bool is_own_name(std::string_view name, std::string_view beginning)
{
    return name.size() == beginning.size() + any.size() && name.starts_with(beginning) && std::all_of(name.end() - any.size(), name.end(), is_letter_or_digit);
}

bool is_own_file(const struct stat& status) { return S_ISREG(status.st_mode) && status.st_uid == ::geteuid(); }

// A lock that can be had is nobody's: who held it is gone. The file goes while it is held.
void remove_if_abandoned(const std::string& path)
{
    struct stat status{};
    if (::lstat(path.c_str(), &status) != 0 || !is_own_file(status)) return;  // what is no plain file is not even opened
    const int descriptor = ::open(path.c_str(), O_RDWR | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
    if (descriptor < 0) return;
    if (::fstat(descriptor, &status) == 0 && is_own_file(status) && ::flock(descriptor, LOCK_EX | LOCK_NB) == 0) ::unlink(path.c_str());
    ::close(descriptor);
}

}  // namespace

Temporary make_temporary(const std::string& folder)
{
    for (;;) {
        Temporary made{folder + "/" + own_beginning() + std::string(any)};
        made.descriptor = ::mkostemp(made.path.data(), O_CLOEXEC);
        if (made.descriptor < 0) return made;
        // Waits where another call is just looking whether the file is abandoned. Before it was locked it was: then it is gone.
        while (::flock(made.descriptor, LOCK_EX) != 0 && errno == EINTR) continue;
        struct stat status{};
        if (::lstat(made.path.c_str(), &status) == 0) return made;
        ::close(made.descriptor);
    }
}

void remove_abandoned(const std::string& folder)
{
    const std::string beginning = own_beginning();
    std::error_code error;
    for (std::filesystem::directory_iterator entry(folder, error), end; !error && entry != end; entry.increment(error))
        if (is_own_name(entry->path().filename().native(), beginning)) remove_if_abandoned(entry->path());
}

}  // namespace shaftcut

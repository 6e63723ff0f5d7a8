#include "files/supersede.hpp"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <filesystem>
#include <system_error>

namespace shaftcut {
namespace {

constexpr int most_numbered = 9999;

// Fails with EEXIST where the new name is taken.
bool rename_to_free(const std::string& from, const std::string& to)
{
    if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) return true;
    if (errno != EINVAL && errno != ENOSYS) return false;
    // A file system without that flag, such as NFS: a link never overwrites either.
    return ::link(from.c_str(), to.c_str()) == 0 && ::unlink(from.c_str()) == 0;
}

}  // namespace

Superseded supersede(const std::string& folder, const std::string& name)
{
    const std::string path = folder + "/" + name;
    std::error_code error;
    if (!std::filesystem::is_regular_file(std::filesystem::symlink_status(path, error))) return {};
    const std::filesystem::path parts(name);
    const std::string stem = parts.stem().string() + ".superseded", end = parts.extension().string();
    for (int number = 1; number <= most_numbered; ++number) {
        const std::string as = stem + (number == 1 ? "" : "-" + std::to_string(number)) + end;
        if (rename_to_free(path, folder + "/" + as)) return {as};
        if (errno == ENOENT) return {};  // somebody else has taken it away
        if (errno != EEXIST) break;
    }
    return {{}, Unwritable{path, Unwritable::Why::system_renamed, {errno, std::generic_category()}}};
}

}  // namespace shaftcut

#include "files/tablets_file.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace shaftcut {
namespace {

namespace fs = std::filesystem;

class Descriptor {
public:
    Descriptor(const std::string& path, int flags) : number_(::open(path.c_str(), flags | O_CLOEXEC | O_NOFOLLOW, 0600)) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor()
    {
        if (number_ >= 0) ::close(number_);
    }
    int number() const { return number_; }

private:
    int number_;
};

bool write_all(int descriptor, std::string_view bytes)
{
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written <= 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

// Under a name of its own first. The lock that the caller holds keeps others from it.
bool replace(const std::string& path, const std::string& bytes)
{
    const std::string fresh = path + ".new";
    {
        const Descriptor file(fresh, O_WRONLY | O_CREAT | O_TRUNC);
        if (file.number() < 0 || ::fchmod(file.number(), 0600) != 0 || !write_all(file.number(), bytes) || ::fsync(file.number()) != 0) return false;
    }
    if (::rename(fresh.c_str(), path.c_str()) != 0) return false;
    const Descriptor folder(fs::path(path).parent_path().string(), O_RDONLY | O_DIRECTORY);
    return folder.number() >= 0 && (::fsync(folder.number()) == 0 || errno == EINVAL);
}

// Held while the file is read and written anew.
class Lock {
public:
    explicit Lock(const std::string& path) : file_(path + ".lock", O_RDWR | O_CREAT)
    {
        if (file_.number() < 0) return;
        do held_ = ::flock(file_.number(), LOCK_EX) == 0;
        while (!held_ && errno == EINTR);
    }
    bool held() const { return held_; }

private:
    Descriptor file_;
    bool held_ = false;
};

bool make_folder_of(const std::string& path)
{
    std::error_code error;
    const fs::path folder = fs::path(path).parent_path();
    fs::create_directories(folder.parent_path(), error);
    return ::mkdir(folder.c_str(), 0700) == 0 || errno == EEXIST;
}

}  // namespace

std::optional<TabletsFile> TabletsFile::found()
{
    const char* const state = std::getenv("XDG_STATE_HOME");
    const char* const home = std::getenv("HOME");
    // A path that is not whole is to be passed over (XDG Base Directory Specification).
    if (state && *state == '/') return TabletsFile(std::string(state) + "/shaftcut/bench-tablets");
    if (home && *home == '/') return TabletsFile(std::string(home) + "/.local/state/shaftcut/bench-tablets");
    return std::nullopt;
}

std::vector<Tablet> TabletsFile::all() const
{
    std::ifstream file(path_, std::ios::binary);
    return read_tablets(std::string(std::istreambuf_iterator<char>(file), {}));
}

bool TabletsFile::add(const std::string& token_hash, std::int64_t now, const std::string& client) const
{
    if (!make_folder_of(path_)) return false;
    const Lock lock(path_);
    return lock.held() && replace(path_, tablets_text(with_tablet(all(), token_hash, now, client)));
}

TabletsFile::Removed TabletsFile::remove(int number) const
{
    if (!make_folder_of(path_)) return Removed::unwritable;
    const Lock lock(path_);
    std::vector<Tablet> tablets = all();
    if (std::erase_if(tablets, [&](const Tablet& tablet) { return tablet.number == number; }) == 0) return Removed::unknown;
    return lock.held() && replace(path_, tablets_text(tablets)) ? Removed::yes : Removed::unwritable;
}

}  // namespace shaftcut

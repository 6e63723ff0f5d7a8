#include "files/load.hpp"

#include <algorithm>
#include <cerrno>
#include <optional>
#include <system_error>

#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace shaftcut {
namespace {

class Descriptor {
public:
    // Without O_NONBLOCK, opening a pipe that nobody writes to would wait for ever.
    explicit Descriptor(const std::string& path) : number_(::open(path.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC)) {}
    ~Descriptor() { if (number_ >= 0) ::close(number_); }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    int number() const { return number_; }

private:
    int number_;
};

Unreadable unreadable(const std::string& path, int error)
{
    using Why = Unreadable::Why;
    switch (error) {
    case ENOENT: return {path, Why::missing};
    case EACCES: return {path, Why::not_allowed};
    case ENOTDIR: return {path, Why::path_not_folder};
    default: return {path, Why::system, {error, std::generic_category()}};
    }
}

std::optional<Unreadable::Why> why_not_a_file(const struct stat& status)
{
    if (S_ISREG(status.st_mode)) return std::nullopt;
    return S_ISDIR(status.st_mode) ? Unreadable::Why::folder : Unreadable::Why::not_file;
}

}  // namespace

std::variant<Source, Unreadable> load(const std::string& path)
{
    const Descriptor file(path);
    struct stat status {};
    if (file.number() < 0 || ::fstat(file.number(), &status) != 0) return unreadable(path, errno);
    if (const auto why = why_not_a_file(status)) return Unreadable{path, *why};
    // A byte more than the file has, to see its end; a file that grows meanwhile is read as far as it goes.
    const std::size_t expected = std::min(static_cast<std::size_t>(status.st_size), most_source_bytes);
    Source source{path, std::string(expected + 1, '\0')};
    std::size_t filled = 0;
    while (filled <= most_source_bytes) {
        if (filled == source.bytes.size()) source.bytes.resize(std::min(2 * filled, most_source_bytes + 1));
        const ssize_t count = ::read(file.number(), source.bytes.data() + filled, source.bytes.size() - filled);
        if (count < 0 && errno == EINTR) continue;
        if (count < 0) return unreadable(path, errno);
        if (count == 0) break;
        filled += static_cast<std::size_t>(count);
    }
    if (filled > most_source_bytes) return Unreadable{path, Unreadable::Why::too_large};
    source.bytes.resize(filled);
    source.bytes.shrink_to_fit();
    return source;
}

FontFiles load_fonts()
{
    const auto file = [](const char* name) {
        const std::string path = std::string(SHAFTCUT_FONT_DIR) + "/" + name;
        auto loaded = load(path);
        Source* const source = std::get_if<Source>(&loaded);
        return FontFile{path, source ? std::make_shared<const std::string>(std::move(source->bytes)) : nullptr};
    };
    return {file("DejaVuSans.ttf"), file("DejaVuSans-Bold.ttf")};
}

void* LinearProgrammeLibrary::function(const char* name)
{
    if (!handle_) handle_ = ::dlopen("libClp.so.1", RTLD_NOW | RTLD_LOCAL);
    void* const found = handle_ ? ::dlsym(handle_, name) : nullptr;
    if (!found) throw LibraryMissing(::dlerror());
    return found;
}

}  // namespace shaftcut

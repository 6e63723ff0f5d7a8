#include "shaftcut/commands/output.hpp"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>

namespace shaftcut {
namespace {

// A file being written under a temporary name; what is not named in the end is removed.
class Draft {
public:
    Draft(const std::string& folder, const Document& document)
        : target_(folder + "/" + document.name), path_(folder + "/." + document.name + ".XXXXXX")
    {
        descriptor_ = ::mkostemp(path_.data(), O_CLOEXEC);
        if (descriptor_ < 0) {
            note_fault();
            return;
        }
        // mkostemp makes files private; documents get what the user's umask allows, as any other file.
        const mode_t mask = ::umask(0);
        ::umask(mask);
        if (!write_all(document.bytes) || ::fchmod(descriptor_, 0666 & ~mask) != 0 || ::fsync(descriptor_) != 0) note_fault();
        if (::close(descriptor_) != 0 && fault_.empty()) note_fault();
    }
    Draft(Draft&& from) noexcept : target_(std::move(from.target_)), path_(std::move(from.path_)), fault_(std::move(from.fault_)), descriptor_(from.descriptor_)
    {
        from.descriptor_ = -1;
    }
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;
    Draft& operator=(Draft&&) = delete;
    ~Draft()
    {
        if (descriptor_ >= 0) ::unlink(path_.c_str());
    }

    const std::string& fault() const { return fault_; }

    // Gives the file its final name; to keep what exists it fails where the name is taken, even by a file made just now.
    bool give_name(Existing existing)
    {
        int done = ::renameat2(AT_FDCWD, path_.c_str(), AT_FDCWD, target_.c_str(), existing == Existing::replace ? 0 : RENAME_NOREPLACE);
        // A file system without that flag: the target was seen to be free a moment ago.
        if (done != 0 && errno == EINVAL) done = ::rename(path_.c_str(), target_.c_str());
        if (done != 0) note_fault();
        else descriptor_ = -1;
        return done == 0;
    }

private:
    void note_fault()
    {
        if (!fault_.empty()) return;
        fault_ = errno == EEXIST ? target_ + " exists already: --replace overwrites it" : target_ + " could not be written: " + std::strerror(errno);
    }

    bool write_all(const std::string& bytes)
    {
        for (std::size_t at = 0; at < bytes.size();) {
            const ssize_t written = ::write(descriptor_, bytes.data() + at, bytes.size() - at);
            if (written < 0 && errno == EINTR) continue;
            if (written < 0) return false;
            at += static_cast<std::size_t>(written);
        }
        return true;
    }

    std::string target_, path_, fault_;
    int descriptor_ = -1;
};

// A target may be missing, or a plain file where it is to be replaced.
std::string target_fault(const std::string& target, Existing existing)
{
    struct stat status{};
    if (::lstat(target.c_str(), &status) != 0)
        return errno == ENOENT ? "" : target + " could not be written: " + std::strerror(errno);
    if (!S_ISREG(status.st_mode)) return target + " could not be written: it is not a plain file";
    return existing == Existing::replace ? "" : target + " exists already: --replace overwrites it";
}

std::string sync_folder(const std::string& folder)
{
    const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (descriptor < 0) return folder + " could not be written: " + std::strerror(errno);
    const bool synced = ::fsync(descriptor) == 0;
    const int error = errno;
    ::close(descriptor);
    return synced || error == EINVAL ? "" : folder + " could not be written: " + std::strerror(error);
}

}  // namespace

std::string write_documents(const std::string& folder, const std::vector<Document>& documents, Existing existing)
{
    std::vector<Draft> drafts;
    drafts.reserve(documents.size());
    for (const Document& document : documents)
        if (const std::string fault = target_fault(folder + "/" + document.name, existing); !fault.empty()) return fault;
    for (const Document& document : documents) {
        drafts.emplace_back(folder, document);
        if (!drafts.back().fault().empty()) return drafts.back().fault();
    }
    for (Draft& draft : drafts)
        if (!draft.give_name(existing)) return draft.fault();
    return sync_folder(folder);
}

}  // namespace shaftcut

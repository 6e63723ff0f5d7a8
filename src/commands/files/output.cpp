#include "files/output.hpp"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <chrono>
#include <cstdio>
#include <functional>
#include <system_error>
#include <thread>
#include <utility>

#include "files/interrupt.hpp"
#include "files/temporary.hpp"

namespace shaftcut {
namespace {

using Why = Unwritable::Why;
using Fault = std::optional<Unwritable>;  // nothing: none

Unwritable fault_of(const std::string& path, int error) { return {path, Why::system_written, {error, std::generic_category()}}; }

// A file being written under a temporary name; what is not named in the end is removed.
class Draft {
public:
    Draft(const std::string& folder, const std::string& name) : target_(folder + "/" + name)
    {
        Temporary made = make_temporary(folder);
        path_ = std::move(made.path);
        descriptor_ = made.descriptor;
        exists_ = descriptor_ >= 0;
        if (!exists_) note_fault();
    }
    Draft(Draft&& from) noexcept
        : target_(std::move(from.target_)), path_(std::move(from.path_)), fault_(std::move(from.fault_)), descriptor_(std::exchange(from.descriptor_, -1)),
          exists_(std::exchange(from.exists_, false))
    {
    }
    Draft(const Draft&) = delete;
    Draft& operator=(const Draft&) = delete;
    Draft& operator=(Draft&&) = delete;
    ~Draft()
    {
        if (exists_) ::unlink(path_.c_str());
        if (descriptor_ >= 0) ::close(descriptor_);
    }

    const Fault& fault() const { return fault_; }

    void add(const std::string& bytes)
    {
        if (!fault_ && !write_all(descriptor_, bytes)) note_fault();
    }

    // Nothing can be added afterwards. It stays open, for its lock ends with that.
    void finish()
    {
        if (descriptor_ < 0) return;
        // mkostemp makes files private; documents get what the user's umask allows, as any other file.
        const mode_t mask = ::umask(0);
        ::umask(mask);
        if (!fault_ && (::fchmod(descriptor_, 0666 & ~mask) != 0 || ::fsync(descriptor_) != 0)) note_fault();
    }

    bool give_name(Existing existing)
    {
        if (existing == Existing::replace ? ::rename(path_.c_str(), target_.c_str()) != 0 : !give_free_name()) {
            note_fault();
            return false;
        }
        exists_ = false;
        ::close(std::exchange(descriptor_, -1));
        return true;
    }

    // Only of a name that give_name() found free.
    void take_name_back() { ::unlink(target_.c_str()); }

private:
    // Fails where the name is taken, even by a file made just now.
    bool give_free_name()
    {
        if (::renameat2(AT_FDCWD, path_.c_str(), AT_FDCWD, target_.c_str(), RENAME_NOREPLACE) == 0) return true;
        if (errno != EINVAL && errno != ENOSYS) return false;
        // A file system without that flag, such as NFS: a link never overwrites either.
        return ::link(path_.c_str(), target_.c_str()) == 0 && ::unlink(path_.c_str()) == 0;
    }

    void note_fault()
    {
        if (!fault_) fault_ = errno == EEXIST ? Unwritable{target_, Why::exists} : fault_of(target_, errno);
    }

    static bool write_all(int descriptor, const std::string& bytes)
    {
        for (std::size_t at = 0; at < bytes.size();) {
            const ssize_t written = ::write(descriptor, bytes.data() + at, bytes.size() - at);
            if (written < 0 && errno == EINTR) continue;
            if (written < 0) return false;
            at += static_cast<std::size_t>(written);
        }
        return true;
    }

    std::string target_, path_;
    Fault fault_;
    int descriptor_ = -1;  // until it has its name
    bool exists_ = false;  // under its temporary name
};

// The folder, held so that no other process names documents in it meanwhile: those of one order stay together.
class FolderHold {
public:
    explicit FolderHold(const std::string& folder) : folder_(folder), descriptor_(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)) {}
    ~FolderHold()
    {
        if (descriptor_ >= 0) ::close(descriptor_);
    }
    FolderHold(const FolderHold&) = delete;
    FolderHold& operator=(const FolderHold&) = delete;

    Fault open_fault() const { return descriptor_ < 0 ? Fault(fault_of(folder_, errno)) : std::nullopt; }

    // Waits for other processes for ten seconds, much longer than naming takes. Nothing, or the fault. Where the file
    // system has no such locks, the names alone must decide.
    Fault lock(const EndingHold& ending) const
    {
        for (int attempt = 0;; ++attempt) {
            if (ending.came()) return Unwritable{folder_, Why::told_to_end};
            if (::flock(descriptor_, LOCK_EX | LOCK_NB) == 0 || errno != EWOULDBLOCK) return {};
            if (attempt == 500) return Unwritable{folder_, Why::busy};
            std::this_thread::sleep_for(std::chrono::milliseconds(20));
        }
    }

    Fault sync() const
    {
        const bool synced = ::fsync(descriptor_) == 0 || errno == EINVAL;  // EINVAL: a file system that does not sync folders
        return synced ? Fault() : fault_of(folder_, errno);
    }

private:
    std::string folder_;
    int descriptor_;
};

std::vector<std::string> names_of(const std::vector<Document>& documents)
{
    std::vector<std::string> names;
    for (const Document& document : documents) names.push_back(document.name);
    return names;
}

// Names all drafts; where a free name cannot be given, those given before are taken back.
Fault give_names(std::vector<Draft>& drafts, Existing existing)
{
    for (auto draft = drafts.begin(); draft != drafts.end(); ++draft) {
        if (draft->give_name(existing)) continue;
        if (existing == Existing::keep) std::for_each(drafts.begin(), draft, [](Draft& named) { named.take_name_back(); });
        return draft->fault();
    }
    return {};
}

}  // namespace

// Each target may be missing, or a plain file where it is to be replaced.
std::optional<Unwritable> names_fault(const std::string& folder, const std::vector<std::string>& names, Existing existing)
{
    for (const std::string& name : names) {
        const std::string target = folder + "/" + name;
        struct stat status{};
        if (::lstat(target.c_str(), &status) != 0) {
            if (errno != ENOENT) return fault_of(target, errno);
        } else if (!S_ISREG(status.st_mode)) {
            return Unwritable{target, Why::not_plain};
        } else if (existing == Existing::keep) {
            return Unwritable{target, Why::exists};
        }
    }
    return {};
}

namespace {

// With the folder locked, so that no other process names documents in it meanwhile.
Fault name_in(const FolderHold& hold, const EndingHold& ending, std::vector<Draft>& drafts, const std::function<Fault()>& targets_fault, Existing existing)
{
    if (Fault fault = hold.lock(ending)) return fault;
    if (Fault fault = targets_fault()) return fault;
    if (Fault fault = give_names(drafts, existing)) return fault;
    return hold.sync();
}

}  // namespace

std::optional<Unwritable> write_documents(const std::string& folder, const std::vector<Document>& documents, Existing existing)
{
    const EndingHold ending;  // before the drafts, so that they are gone when it ends
    const FolderHold hold(folder);
    if (Fault fault = hold.open_fault()) return fault;
    if (Fault fault = names_fault(folder, names_of(documents), existing)) return fault;
    std::vector<Draft> drafts;
    drafts.reserve(documents.size());
    for (const Document& document : documents) {
        if (ending.came()) return Unwritable{folder, Why::told_to_end};
        drafts.emplace_back(folder, document.name);
        drafts.back().add(document.bytes);
        drafts.back().finish();
        if (drafts.back().fault()) return drafts.back().fault();
    }
    return name_in(hold, ending, drafts, [&] { return names_fault(folder, names_of(documents), existing); }, existing);
}

struct DocumentWriter::State {
    std::string folder, name;
    EndingHold ending{};
    std::vector<Draft> drafts{};  // one
};

DocumentWriter::DocumentWriter(const std::string& folder, const std::string& name) : state_(new State{folder, name})
{
    state_->drafts.emplace_back(folder, name);
}

DocumentWriter::~DocumentWriter() = default;

void DocumentWriter::add(const std::string& bytes) { state_->drafts.front().add(bytes); }

std::optional<Unwritable> DocumentWriter::finish(Existing existing)
{
    Draft& draft = state_->drafts.front();
    draft.finish();
    if (draft.fault()) return draft.fault();
    const FolderHold hold(state_->folder);
    if (Fault fault = hold.open_fault()) return fault;
    return name_in(hold, state_->ending, state_->drafts, [&] { return names_fault(state_->folder, {state_->name}, existing); }, existing);
}

}  // namespace shaftcut

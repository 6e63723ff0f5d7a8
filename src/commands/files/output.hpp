// Writing documents so that under a final name there is always the old file or the whole new one.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "commands/file_faults.hpp"
#include "shaftcut/engine/answer.hpp"

namespace shaftcut {

enum class Existing { keep, replace };

// The fault that write_documents() would find at once in targets of these names in `folder`: one that exists and is to be kept, one that is
// no plain file. Nothing: none now. Spares long work that could not be written; what is written is checked again.
std::optional<Unwritable> names_fault(const std::string& folder, const std::vector<std::string>& names, Existing existing);

// Writes every document of one order into `folder`: each to a hidden temporary file beside its target, synced; then, with the
// folder locked, each gets its name; the folder is synced last. Returns nothing, or which file
// could not be written and why: a target exists and is to be kept, is no plain file, no space, no permission, another
// process held the folder for ten seconds.
//
// What holds, whatever fails and whoever kills the process at any moment:
// - A final name holds the whole old file, the whole new one, or, where there was none, nothing. A target that is a
//   folder, a link, a pipe or a device is never touched.
// - Nothing gets a name before all are written: a full disk changes nothing.
// - Existing::keep: all documents get their names, or, where a fault is returned before the last sync, none does. Of
//   several processes writing the same order at once exactly one succeeds.
// - Existing::replace: of several processes writing the same order at once the last one's documents stand, all of them
//   its own (on a file system with locks: all local ones).
// - What does not hold: no file system gives several names in one step. A process killed between two names leaves those
//   before new and those after old or missing, each whole, and under --replace so does a failure to name one.
// - A temporary file begins with a dot, as no order does. SIGINT, SIGTERM and SIGHUP end the process only when its temporary files are
//   gone, at once but for the write in hand; what a process leaves that is killed or crashes, remove_abandoned() finds.
// Checked in tests/commands/faults_test.cpp, kills_test.cpp, races_test.cpp and abandoned_test.cpp.
std::optional<Unwritable> write_documents(const std::string& folder, const std::vector<Document>& documents, Existing existing);

// Removes the temporary files in `folder` whose process is gone: those that bear the name of this machine's, are plain files of this
// user, and that nobody holds locked. Others' are never touched, nor what a process still writes, in this call or another, nor anything on
// a file system without locks. What cannot be removed stays.
void remove_abandoned(const std::string& folder);

// One document too long to be held: what is added goes to the hidden temporary file at once. The same holds of it as of documents
// that are written whole; signals that end the process wait as long as the writer lives, and whoever has one asks told_to_end().
class DocumentWriter {
public:
    DocumentWriter(const std::string& folder, const std::string& name);
    ~DocumentWriter();  // a document that was not finished leaves nothing
    DocumentWriter(const DocumentWriter&) = delete;
    DocumentWriter& operator=(const DocumentWriter&) = delete;
    void add(const std::string& bytes);
    // Gives it its name. Nothing, or what write_documents() returns of what failed, here or before.
    std::optional<Unwritable> finish(Existing existing);

private:
    struct State;
    std::unique_ptr<State> state_;
};

}  // namespace shaftcut

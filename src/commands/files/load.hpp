// Opening what the engine only takes as bytes.
#pragma once

#include <string>
#include <variant>

#include "commands/file_faults.hpp"
#include "shaftcut/engine/engine.hpp"

namespace shaftcut {

// Reads a regular file of at most most_source_bytes. Unreadable where there is none at `path`, where it may not be
// opened, where it is a folder, a device, a pipe or a socket (a pipe is never waited for), and where it is larger.
// Checked in tests/commands/load_test.cpp.
std::variant<Source, Unreadable> load(const std::string& path);

// The files of the font that documents are drawn with; one that cannot be read is without bytes.
FontFiles load_fonts();

// The linear programme's library, which is loaded when the first plan needs it, not with the program: with it come LAPACK and the
// Fortran runtime, whose hooks in printf slow every document and whose loading is a third of the program's start
// (docs/performance.md). Once loaded it stays.
class LinearProgrammeLibrary {
public:
    void* function(const char* name);  // throws LibraryMissing where there is none

private:
    void* handle_ = nullptr;
};

}  // namespace shaftcut

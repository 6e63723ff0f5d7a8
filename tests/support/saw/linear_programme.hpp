// The linear programme's library for tests that plan saws themselves.
#pragma once

#include "files/load.hpp"

namespace shaftcut::test {

inline FindFunction linear_programme()
{
    static LinearProgrammeLibrary library;
    return [](const char* name) { return library.function(name); };
}

}  // namespace shaftcut::test

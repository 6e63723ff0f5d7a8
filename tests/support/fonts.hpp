// The files of the documents' font, read once for all tests.
#pragma once

#include "files/load.hpp"

namespace shaftcut::test {

inline const FontFiles& font_files()
{
    static const FontFiles files = load_fonts();
    return files;
}

}  // namespace shaftcut::test

// The two files of the documents' font, as bytes: whoever asks for documents has read them, and hands them in.
#pragma once

#include <memory>
#include <string>

#include "shaftcut/documents/page/page.hpp"

namespace shaftcut {

// `name` is what a message calls the file. No bytes: it could not be read, which is said once something is to be drawn with it.
struct FontFile {
    std::string name;
    std::shared_ptr<const std::string> bytes;
};

// DejaVuSans.ttf and DejaVuSans-Bold.ttf: the sheets' layout is made for this font.
struct FontFiles {
    FontFile regular, bold;
    const FontFile& of(Weight weight) const { return weight == Weight::bold ? bold : regular; }
};

}  // namespace shaftcut

// Measuring text in the one font family of all documents, DejaVu Sans, whose files are handed in.
//
// Sizes are capital heights in millimetres, as ISO 3098 counts them. The font is wide, so all text is set at
// `text_stretch` of its own width. Checked by the widths of known strings and by pdftotext (tests/documents/page/font_test.cpp).
#pragma once

#include <memory>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

#include "shaftcut/documents/page/font_files.hpp"

namespace shaftcut {

// Height of a capital as a part of the em: 1493 of 2048 units in both font files.
inline constexpr double cap_height_of_em = 1493.0 / 2048.0;
inline constexpr double text_stretch = 0.9;

// what(): the name of a font file without bytes, or with bytes that are no font; empty where FreeType itself could not be started.
struct FontFault : std::runtime_error {
    using std::runtime_error::runtime_error;
};

class Fonts {
public:
    explicit Fonts(const FontFiles& files);  // throws FontFault
    ~Fonts();
    Fonts(const Fonts&) = delete;
    Fonts& operator=(const Fonts&) = delete;

    // Width in mm of printable text at a capital height in mm.
    double width(std::string_view text, double cap_height, Weight weight, double stretch = text_stretch) const;

    // Whether the font draws this code point as it should look: it has a glyph, and its script is written from left to
    // right without joined letters.
    bool can_draw(char32_t point) const;

    // The text as it will be drawn: white space as single spaces; U+FFFD for every code point that cannot be drawn, and
    // for bytes that are not UTF-8.
    std::string printable(std::string_view text) const;

    // Printable text in lines of at most `width` mm, broken at spaces (but not between a figure and its mm); a word
    // that is wider than a line is broken where the line ends. One empty line for an empty text.
    std::vector<std::string> wrap(std::string_view text, double cap_height, Weight weight, double width, double stretch = text_stretch) const;

private:
    struct Faces;
    std::unique_ptr<Faces> faces_;
};

// The version of FreeType that the program was built with: "2.12.1".
std::string freetype_built_with();

}  // namespace shaftcut

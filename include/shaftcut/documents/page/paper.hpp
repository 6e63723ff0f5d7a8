// The sheet that a document is printed on.
#pragma once

namespace shaftcut {

enum class Paper { a4, letter };

// Upright, mm.
struct PaperSize {
    double width, height;
};

// A4, or letter: 8.5 by 11 inches.
constexpr PaperSize size_of(Paper paper) { return paper == Paper::a4 ? PaperSize{210, 297} : PaperSize{215.9, 279.4}; }

}  // namespace shaftcut

// Pages as PDF, PNG and SVG. The only file that knows cairo. Everything is made in memory: a full disk cannot leave half
// a document, and identical pages give identical bytes. Checked by reading back what it wrote (tests/documents).
#pragma once

#include <functional>
#include <stdexcept>
#include <string>
#include <vector>

#include "shaftcut/documents/page/font_files.hpp"

namespace shaftcut {

// what(): the fault that the drawing library reported, in its words, such as that there is no memory.
struct DrawingFault : std::runtime_error {
    using std::runtime_error::runtime_error;
};

// A tagged PDF 1.4 with its fonts embedded; its creation date is noon of `info.created`. `pages`:
// at least one, all of the size of the first. Throws DrawingFault, and FontFault as all of these do.
std::string pdf_of(const std::vector<Page>& pages, const DocumentInfo& info, const FontFiles& fonts);

// The same of `count` pages, at least one, that are made one by one as they are written.
std::string pdf_of(std::size_t count, const std::function<Page(std::size_t)>& page, const DocumentInfo& info, const FontFiles& fonts);

// One page in grey levels on white. Throws DrawingFault.
std::string png_of(const Page& page, double dots_per_inch, const FontFiles& fonts);

// One page, its text as outlines. Throws DrawingFault.
std::string svg_of(const Page& page, const FontFiles& fonts);

// The version of cairo that the program was built with: "1.16.0".
std::string cairo_built_with();

}  // namespace shaftcut

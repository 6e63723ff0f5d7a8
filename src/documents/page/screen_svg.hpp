// A page as a small SVG for a screen: its text stays text in the screen's own font, its ink is the page's (currentColor). Everything is in
// attributes of its own elements, for a screen that takes no style from outside. Checked in tests/documents/page/screen_svg_test.cpp.
#pragma once

#include <string>

#include "shaftcut/documents/page/page.hpp"

namespace shaftcut {

// In millimetres of the page, to a hundredth. A code and a hatched fill have no form here: std::logic_error.
std::string screen_svg_of(const Page& page);

}  // namespace shaftcut

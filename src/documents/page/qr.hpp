// An order number as a QR code (ISO/IEC 18004), error correction level Q: a quarter of its
// data may be lost.
// Checked by reading it back from the printed page (tests/documents/page/paper_test.cpp).
#pragma once

#include <string>

#include "shaftcut/documents/page/page.hpp"

namespace shaftcut {

// Side of one module, mm: read back from 100 dots an inch, black and white and smeared. At 0.8 mm a clean print of 150
// dots reads, but not such a copy.
inline constexpr double qr_module = 1.0;
// White modules that must be left around the code.
inline constexpr int qr_quiet_modules = 4;

// The code of an ASCII text of 1 to 40 characters at the origin. Throws std::invalid_argument for a text that no code holds.
Code qr_code(const std::string& text);

// The version of libqrencode that is loaded, for its header does not tell: "4.1.1".
std::string qrencode_in_use();

}  // namespace shaftcut

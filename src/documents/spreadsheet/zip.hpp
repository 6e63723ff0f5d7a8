// Reading back the parts of a zip file, as a workbook is one.
#pragma once

#include <map>
#include <exception>
#include <string>

namespace shaftcut {

struct ZipFault : std::exception {};

// Each part's bytes by its name, their length and CRC-32 checked. Throws ZipFault where `zip` is not a whole zip file of
// at most 2^31 bytes (APPNOTE 6.3, PKWARE: one disk, stored or deflated, without a comment at its end).
// Checked in tests/documents/spreadsheet/zip_test.cpp.
std::map<std::string, std::string> parts_of(const std::string& zip);

}  // namespace shaftcut

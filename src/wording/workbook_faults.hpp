// Why no workbook could be written: a fault of the machine, not of what it holds.
#pragma once

#include <stdexcept>
#include <string>

#include "wording.hpp"

namespace shaftcut {

struct WorkbookFault : std::runtime_error {
    enum class At {
        start, name, sheet, chart, series,  // `what_of`: the name, the sheet, the series
        writing,                            // `what_of`: what the library said
        part,                               // `what_of`: the part of the file for which there was no room
        file,                               // the whole file, which cannot be read back
        folder                              // the temporary folder
    };
    explicit WorkbookFault(At where, std::string what = {}) : std::runtime_error(what), at(where), what_of(std::move(what)) {}
    At at;
    std::string what_of;
};

std::string say(const WorkbookFault& fault, const Wording& w);

}  // namespace shaftcut

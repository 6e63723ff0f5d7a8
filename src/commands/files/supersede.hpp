// Documents of an earlier call that no longer hold: renamed, not removed, because somebody may have written into them.
#pragma once

#include <optional>
#include <string>

#include "commands/file_faults.hpp"

namespace shaftcut {

struct Superseded {
    std::string as;                         // its new name in the same folder; empty: there was no such document
    std::optional<Unwritable> fault = {};   // why it still has its old one
};

// Renames the plain file `name` in `folder` to NAME.superseded.EXT, or where something is called so to NAME.superseded-2.EXT and so on: never
// over anything, whoever makes files in the folder meanwhile. What is not there, or is no plain file, is left alone.
// Checked in tests/commands/supersede_test.cpp.
Superseded supersede(const std::string& folder, const std::string& name);

}  // namespace shaftcut

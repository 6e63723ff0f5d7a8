// Why a paper could not be drawn.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut {

// `file`: the font file's name; empty where the font library itself could not be started.
std::string font_fault(const std::string& file, const Wording& w);

// `reason`: in the drawing library's words.
std::string drawing_fault(const std::string& reason, const Wording& w);

}  // namespace shaftcut

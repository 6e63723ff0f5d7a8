// A machine that moves, as JSON with its pictures. Private to the layers above.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/documents/json/json.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/trade/order/machine_frames.hpp"
#include "wording.hpp"

namespace shaftcut {

// The shape is that of machine_frames_json() in bench_answer.hpp. Throws FontFault.
std::string machine_frames_json_of(const std::vector<MachineFrames>& machines, const FontFiles& files, JsonLayout layout, const Wording& w);

}  // namespace shaftcut

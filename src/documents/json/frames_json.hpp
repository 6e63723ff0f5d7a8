// A machine that moves, as JSON with its pictures. Private to the layers above.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "shaftcut/documents/json/json.hpp"
#include "shaftcut/documents/page/font_files.hpp"
#include "shaftcut/trade/order/machine_frames.hpp"
#include "wording.hpp"

namespace shaftcut {

// Of how many machines of a job there are frames: of one, drawn, up to 300 KB and a fifteenth of a second of a processor. The project's own choice.
inline constexpr std::size_t most_machines_drawn = 4;

// Of the machines beyond these it is said that they are not drawn. The shape is that of machine_frames_json() in bench_answer.hpp. Throws FontFault.
std::string machine_frames_json_of(const std::vector<MachineFrames>& machines, const FontFiles& files, JsonLayout layout, const Wording& w);

}  // namespace shaftcut

// What a screen shows of an answer, as JSON. Private to the layers above.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/documents/json/json.hpp"
#include "change.hpp"
#include "wording.hpp"

namespace shaftcut {

// A way out as a change of the job; `says` is empty where it is the only one of its line.
struct WayChoice {
    std::string says;
    Changes changes;
};

// `choices`: of each line of cut_sheet::ways_out(). The shape is that of view_json() in bench_answer.hpp.
std::string view_json_of(const WorkOrder& order, const std::vector<std::vector<WayChoice>>& choices, JsonLayout layout, const Wording& w);

}  // namespace shaftcut

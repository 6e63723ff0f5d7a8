// What the bench page's answers are made with. It never changes: several threads may use it at once.
#pragma once

#include <functional>
#include <optional>

#include "shaftcut/engine/engine.hpp"
#include "wording.hpp"

namespace shaftcut {

// `print`: false where the printer did not take the document; nothing: there is no printer. `network`: whether the workshop's network is
// served too. `units` and `paper`: of what asks for none; no units: a job's own.
struct Desk {
    Engine engine;
    FontFiles fonts;
    std::function<bool(const Document&)> print = {};
    bool network = false;
    std::optional<Units> units = {};
    Paper paper = Paper::a4;
    Wording w = Wording(Units::mm);
};

}  // namespace shaftcut

// Files for the engine, each fault said: the configuration that every command needs, and what a call names.
#pragma once

#include <optional>

#include "call/command.hpp"
#include "shaftcut/engine/engine.hpp"

namespace shaftcut {

// The engine with the configuration of this folder, or the outcome to end with, every fault of its files said on `console`.
struct EngineLoaded {
    std::optional<Engine> engine;
    Outcome outcome = Outcome::answered;
};
// An empty `folder`: none was found, and every place that was tried is said.
// `prices`: a wholesaler's list is read too, which may be long.
EngineLoaded load_engine(const std::string& folder, Console& console, bool prices = false);

// Says each problem on a line of its own. Bad input, where there is any.
Outcome report(const Problems& problems, Console& console);

// The file's bytes; where it cannot be read, says why and gives nothing.
std::optional<Source> load_or_report(const std::string& path, Console& console);

// The same of a file that may be missing: then it has no bytes.
std::optional<Source> load_if_there(const std::string& path, Console& console);

// Writes this file of the configuration anew, whole or not at all. Unwritable, with the reason said.
Outcome write_configuration(const std::string& folder, const std::string& name, const std::string& bytes, Console& console);

}  // namespace shaftcut

// Reads the configuration that every command needs, reporting every fault of both files.
#pragma once

#include <optional>

#include "shaftcut/commands/command.hpp"
#include "shaftcut/reading/source.hpp"
#include "shaftcut/trade/catalogue.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

struct Configuration {
    Catalogue catalogue;
    Workshop workshop;
};

// The configuration, or the outcome to end with, its reasons said on `console`.
struct ConfigurationRead {
    std::optional<Configuration> configuration;
    Outcome outcome = Outcome::answered;
};
// An empty `folder`: none was found, and every place that was tried is said.
ConfigurationRead read_configuration(const std::string& folder, Console& console);

// Says each problem on a line of its own.
void report(const Problems& problems, Console& console);

// The file's bytes; where it cannot be read, says why and gives nothing.
std::optional<Source> load_or_report(const std::string& path, Console& console);

}  // namespace shaftcut

#include "configuration.hpp"

#include <algorithm>
#include <ostream>

#include "configuration_place.hpp"
#include "load.hpp"

namespace shaftcut {

Outcome report(const Problems& problems, Console& console)
{
    for (const Problem& problem : problems) console.err << to_string(problem) << "\n";
    return problems.empty() ? Outcome::answered : Outcome::bad_input;
}

std::optional<Source> load_or_report(const std::string& path, Console& console)
{
    auto loaded = load(path);
    if (const auto* unreadable = std::get_if<Unreadable>(&loaded)) {
        console.err << say(*unreadable, console.wording) << "\n";
        return std::nullopt;
    }
    return std::get<Source>(std::move(loaded));
}

EngineLoaded load_engine(const std::string& folder, Console& console)
{
    if (folder.empty()) {
        console.err << "shaftcut: " << no_configuration(configuration_places(), console.wording) << "\n";
        return {std::nullopt, Outcome::unwritable};
    }
    Configuration configuration;
    for (const char* name : {"series.xml", "workshop.xml"})
        if (auto file = load_or_report(folder + "/" + name, console)) configuration.files.push_back(std::move(*file));
    Loaded loaded = Engine::load(configuration);
    const Outcome outcome = report(loaded.problems, console);
    return {std::move(loaded.engine), loaded.missing.empty() ? outcome : Outcome::unwritable};
}

}  // namespace shaftcut

#include "call/configuration.hpp"

#include <algorithm>
#include <ostream>

#include "call/hand_out.hpp"
#include "files/configuration_place.hpp"
#include "files/load.hpp"
#include "files/output.hpp"

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

std::optional<Source> load_if_there(const std::string& path, Console& console)
{
    auto loaded = load(path);
    if (const auto* unreadable = std::get_if<Unreadable>(&loaded); unreadable && unreadable->why == Unreadable::Why::missing) return Source{path, {}};
    if (auto* source = std::get_if<Source>(&loaded)) return std::move(*source);
    console.err << say(std::get<Unreadable>(loaded), console.wording) << "\n";
    return std::nullopt;
}

Outcome write_configuration(const std::string& folder, const std::string& name, const std::string& bytes, Console& console)
{
    const auto fault = write_documents(folder, {{name, bytes}}, Existing::replace);
    return fault ? report(*fault, console) : Outcome::answered;
}

EngineLoaded load_engine(const std::string& folder, Console& console, bool prices)
{
    if (folder.empty()) {
        console.err << "shaftcut: " << no_configuration(configuration_places(), console.wording) << "\n";
        return {std::nullopt, Outcome::unwritable};
    }
    Configuration configuration;
    for (const char* name : {"series.xml", "workshop.xml"})
        if (auto file = load_or_report(folder + "/" + name, console)) configuration.files.push_back(std::move(*file));
    std::vector<std::string> may_be_missing{"lists.xml"};
    if (prices) may_be_missing.emplace_back("prices.csv");
    for (const std::string& name : may_be_missing) {
        auto file = load_if_there(folder + "/" + name, console);
        if (!file) return {std::nullopt, Outcome::unwritable};
        if (!file->bytes.empty()) configuration.files.push_back(std::move(*file));
    }
    Loaded loaded = Engine::load(configuration);
    const Outcome outcome = report(loaded.problems, console);
    return {std::move(loaded.engine), loaded.missing.empty() ? outcome : Outcome::unwritable};
}

}  // namespace shaftcut

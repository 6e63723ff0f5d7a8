#include "shaftcut/commands/configuration.hpp"

#include <ostream>

#include "configuration_place.hpp"
#include "shaftcut/reading/catalogue_reader.hpp"
#include "shaftcut/reading/workshop_reader.hpp"

namespace shaftcut {
namespace {

// Loads and reads one file; worsens `outcome` where it cannot.
template <class T>
std::optional<T> read_file(const std::string& path, Read<T> (*read)(const Source&), Outcome& outcome, Console& console)
{
    const auto source = load_or_report(path, console);
    if (!source) {
        outcome = std::max(outcome, Outcome::unwritable);
        return std::nullopt;
    }
    Read<T> result = read(*source);
    report(result.problems, console);
    if (!result.value) outcome = std::max(outcome, Outcome::bad_input);
    return std::move(result.value);
}

}  // namespace

void report(const Problems& problems, Console& console)
{
    for (const Problem& problem : problems) console.err << to_string(problem) << "\n";
}

std::optional<Source> load_or_report(const std::string& path, Console& console)
{
    auto loaded = load(path);
    if (const auto* unreadable = std::get_if<Unreadable>(&loaded)) {
        console.err << unreadable->why << "\n";
        return std::nullopt;
    }
    return std::get<Source>(std::move(loaded));
}

ConfigurationRead read_configuration(const std::string& folder, Console& console)
{
    ConfigurationRead result;
    if (folder.empty()) {
        console.err << "shaftcut: " << no_configuration() << "\n";
        result.outcome = Outcome::unwritable;
        return result;
    }
    auto catalogue = read_file(folder + "/series.xml", read_catalogue, result.outcome, console);
    auto workshop = read_file(folder + "/workshop.xml", read_workshop, result.outcome, console);
    if (catalogue && workshop) result.configuration = Configuration{std::move(*catalogue), std::move(*workshop)};
    return result;
}

}  // namespace shaftcut

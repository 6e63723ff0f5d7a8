#include "files/configuration_place.hpp"

#include <sys/auxv.h>

#include <algorithm>
#include <filesystem>

namespace shaftcut {
namespace {

namespace fs = std::filesystem;

// Empty where nothing tells.
fs::path running_file()
{
    std::error_code error;
    fs::path file = fs::read_symlink("/proc/self/exe", error);
    if (!error) return file;
    // The kernel hands on the path that it was called by: as a number, for it is an address.
    const unsigned long address = ::getauxval(AT_EXECFN);
    const char* const called = reinterpret_cast<const char*>(address);
    file = called ? fs::canonical(called, error) : fs::path();
    return error ? fs::path() : file;
}

bool holds_configuration(const std::string& folder)
{
    std::error_code error;
    return fs::exists(fs::path(folder) / "series.xml", error) || fs::exists(fs::path(folder) / "workshop.xml", error);
}

}  // namespace

std::vector<std::string> configuration_places()
{
    std::vector<std::string> places;
    const auto add = [&](const std::string& place) {
        if (std::find(places.begin(), places.end(), place) == places.end()) places.push_back(place);
    };
    if (const fs::path folder = running_file().parent_path(); !folder.empty())
        for (const char* beside : {SHAFTCUT_CONFIG_FROM_PROGRAM, "../config"}) add((folder / beside).lexically_normal().string());
    add(SHAFTCUT_CONFIG_DIR);
    return places;
}

std::string found_configuration()
{
    const std::vector<std::string> places = configuration_places();
    const auto found = std::find_if(places.begin(), places.end(), holds_configuration);
    return found == places.end() ? "" : *found;
}

}  // namespace shaftcut

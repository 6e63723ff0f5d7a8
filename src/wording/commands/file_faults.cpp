#include "commands/file_faults.hpp"

#include "shaftcut/reading/source/source.hpp"

namespace shaftcut {

std::string say(const Unreadable& found, const Wording& w)
{
    using Why = Unreadable::Why;
    constexpr std::size_t megabyte = std::size_t{1024} * 1024;
    const NamedValue path{"path", found.path};
    switch (found.why) {
    case Why::missing: return w("{path} cannot be read: there is no such file", {path});
    case Why::not_allowed: return w("{path} cannot be read: its permissions do not allow it", {path});
    case Why::path_not_folder: return w("{path} cannot be read: a part of its path is not a folder", {path});
    case Why::folder: return w("{path} cannot be read: it is a folder, not a file", {path});
    case Why::not_file: return w("{path} cannot be read: it is a device, a pipe or a socket, not a file", {path});
    case Why::too_large: return w("{path} cannot be read: it is larger than {most} MB", {path, {"most", most_source_bytes / megabyte}});
    case Why::system: break;
    }
    return w("{path} cannot be read: {error}", {path, {"error", found.error.message()}});
}

std::string say(const Unwritable& found, const Wording& w)
{
    using Why = Unwritable::Why;
    const NamedValue path{"path", found.path}, error{"error", found.error.message()};
    switch (found.why) {
    case Why::system_written: return w("{path} could not be written: {error}", {path, error});
    case Why::system_made: return w("{path} could not be made: {error}", {path, error});
    case Why::system_renamed: return w("{path} could not be renamed, and no longer holds: {error}", {path, error});
    case Why::exists: return w("{path} exists already: --replace overwrites it", {path});
    case Why::not_plain: return w("{path} could not be written: it is not a plain file", {path});
    case Why::busy: return w("{path} could not be written: another process is writing into it; run again when that has ended", {path});
    case Why::told_to_end: break;
    }
    return w("{path} was not written: the program was told to end", {path});
}

std::string say(const LibraryMissing& found, const Wording& w) { return w("saw plans need the library CLP: {error}", {{"error", found.what()}}); }

std::string no_memory(const Wording& w) { return w("there is not enough memory; free some, or divide the file"); }

std::string output_lost(const Wording& w) { return w("standard output could not be written"); }

std::string no_configuration(const std::vector<std::string>& places, const Wording& w)
{
    return w("no configuration was found: there is neither series.xml nor workshop.xml in {places}; name their folder by --config DIR", {{"places", w.either(places)}});
}

std::string no_stock(const std::string& configuration, const Wording& w)
{
    return w("{configuration}/workshop.xml holds no stock; give --stock FILE, or add stock to it", {{"configuration", configuration}});
}

std::string no_sheet(const std::string& why, const Wording& w) { return w("{why}; ask for --formats json, or split the list", {{"why", why}}); }

}  // namespace shaftcut

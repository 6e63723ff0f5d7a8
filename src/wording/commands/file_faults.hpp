// What may go wrong with the files and folders of a call, as it is found, and in words.
#pragma once

#include <stdexcept>
#include <string>
#include <system_error>
#include <vector>

#include "wording.hpp"

namespace shaftcut {

// A file that cannot be read. `error`: of Why::system, what the system says.
struct Unreadable {
    enum class Why { missing, not_allowed, path_not_folder, folder, not_file, too_large, system };
    std::string path;
    Why why = Why::system;
    std::error_code error = {};
};
std::string say(const Unreadable& found, const Wording& w);

// A file or folder that could not be made, written or renamed. `error`: of the `system_` ones, what the system says.
struct Unwritable {
    enum class Why {
        system_written,  // nothing could be written, under this name or into this folder
        system_made,     // the folder could not be made
        system_renamed,  // a document that no longer holds has its old name yet
        exists, not_plain, busy, told_to_end
    };
    std::string path;
    Why why = Why::system_written;
    std::error_code error = {};
};
std::string say(const Unwritable& found, const Wording& w);

// The linear programme's library, or a function of it, is not there; what() is what the system says.
struct LibraryMissing : std::runtime_error {
    using std::runtime_error::runtime_error;
};
std::string say(const LibraryMissing& found, const Wording& w);

std::string no_memory(const Wording& w);
// Standard output.
std::string output_lost(const Wording& w);
// `places`: every folder that was tried.
std::string no_configuration(const std::vector<std::string>& places, const Wording& w);
// Of a workshop without bars; `configuration`: its folder.
std::string no_stock(const std::string& configuration, const Wording& w);
// `why`: no sheet can be made of a plan.
std::string no_sheet(const std::string& why, const Wording& w);

}  // namespace shaftcut

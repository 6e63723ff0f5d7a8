// Hidden files that documents are written into before they get their names, and what tells those of a process that is gone.
//
// Their name is ".shaftcut-MACHINE-" and six letters or digits. Whoever writes one holds a lock on it (flock), which ends with the
// process, however that ends, and cannot be another's by a number used again. MACHINE is this machine's name: in a folder that
// machines share, a lock of another one may not be seen, so its files are left to it.
#pragma once

#include <string>

namespace shaftcut {

// Made and locked; `descriptor` is -1 and errno says why where it could not be made. Where the file system has no such locks it is not
// locked, and never taken for abandoned.
struct Temporary {
    std::string path;
    int descriptor = -1;
};
Temporary make_temporary(const std::string& folder);

}  // namespace shaftcut

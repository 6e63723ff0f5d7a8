// Where the configuration lies when no option says.
#pragma once

#include <string>
#include <vector>

namespace shaftcut {

// The folders that are tried, in this order, each once: that of an installed program (share/shaftcut beside its bin) and that of a build
// tree in the source (config beside it), both seen from the running file, links followed; then the place that the program was built to be
// installed in. Without /proc the running file is the one that was called.
std::vector<std::string> configuration_places();

// The first of them that holds series.xml or workshop.xml, so that half a configuration is named and not passed over; or "".
std::string found_configuration();

}  // namespace shaftcut

// What the elements and attributes of an XML file are called by one who cannot see its lines. Checked in tests/reading/paths_test.cpp.
#pragma once

#include <map>
#include <set>
#include <string>

#include "xml/xml.hpp"

namespace shaftcut {

// "@length": as it stands behind its element's path.
std::string attribute_path(const std::string& attribute);

// Of those that begin at one of `spots`, from below the root, which is called "": "shaft/half[2]", "shaft/half[2]@length". An element is
// numbered from 1 where its parent holds more than one of its name.
std::map<Spot, std::string> paths_of(const XmlElement& root, const std::set<Spot>& spots);

}  // namespace shaftcut

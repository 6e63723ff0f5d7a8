// Adding to an XML file that somebody has written, so that all else in it stays as it is, byte for byte.
// Checked in tests/reading/xml/insertion_test.cpp.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace shaftcut {

// `xml`, a sound file, with `lines` before the end of its element or of that element's child `of`, counted from 0; each line is ended. They stand on
// lines of their own, which end as the file's do. An element without an end tag gets one.
std::string with_inserted(std::string_view xml, std::optional<std::size_t> of, std::string_view lines);

// `xml` with `attributes`, each with a blank before it and none that the tag has, in the first tag of that child.
std::string with_attributes(std::string_view xml, std::size_t of, std::string_view attributes);

// The children of the element of a sound file, each from its first to its last character, in their order.
std::vector<std::string_view> children_in(std::string_view xml);

// A text as it stands between tags or in a value; name="value", a blank before it.
std::string xml_text(std::string_view text);
std::string xml_attribute(std::string_view name, std::string_view value);

}  // namespace shaftcut

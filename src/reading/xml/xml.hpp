// XML text as a plain tree with the place of everything in it: the one door through which XML comes in.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "shaftcut/reading/source/source.hpp"
#include "source/faults.hpp"

namespace shaftcut {

// `spot` is where its name begins. `value` has its character references replaced, its line breaks and all kinds of blank made spaces,
// and soft hyphens left out (with_plain_blanks).
struct XmlAttribute {
    std::string name;
    std::string value;
    Spot spot;
};

// `spot` is where its "<" stands. `text` is its own character data without that of its children, empty where it is
// all blanks; `text_spot` is where its first character that is no blank stands. Comments and instructions are left out.
struct XmlElement {
    std::string name;
    Spot spot;
    std::vector<XmlAttribute> attributes;
    std::vector<XmlElement> children;
    std::string text;
    Spot text_spot;
};

// `root` is missing where the text cannot be understood as a whole; a second attribute of one name on an element, a wrong
// character reference and a character that nobody sees (is_hidden) in a value or a text leave it there, with their faults.
struct XmlDocument {
    std::optional<XmlElement> root;
    Faults faults;
};

// Parses UTF-8 text, with or without a byte order mark. Refused whole, with one fault that says why: more than
// most_source_bytes, other encodings (by their bytes or by the declaration), NUL and the other characters that XML
// forbids, a document type, what is not well-formed, no root or anything but comments beside it, elements nested deeper
// than 32, and more than 400,000 elements and attributes. Nothing is ever fetched, and no entity but XML's own five is
// known. Time and memory grow in proportion to the text.
// Checked in tests/reading/xml/xml_test.cpp and tests/reading/hostile_test.cpp.
XmlDocument parse_xml(const Source& source);

// The version of pugixml that the program was built with: "1.13".
std::string pugixml_built_with();

}  // namespace shaftcut

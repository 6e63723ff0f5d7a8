#include "xml/element.hpp"

#include <algorithm>
#include <array>

#include "source/outside_bounds.hpp"
#include "text.hpp"

namespace shaftcut {

template <> struct Words<Units> { static constexpr std::array all{"mm", "in"}; };

namespace {

bool holds(const std::vector<std::string>& names, const std::string& name)
{
    return std::find(names.begin(), names.end(), name) != names.end();
}

std::string joined(const std::vector<std::string>& names)
{
    return names.empty() ? "nothing" : listed(names, "and");
}

bool finds_schema(const std::string& attribute)
{
    return attribute == "xmlns:xsi" || attribute == "xsi:noNamespaceSchemaLocation";
}

std::string one_line(std::string_view text)
{
    std::string line;
    for (const std::string_view piece : pieces_of(text)) line += (line.empty() ? "" : " ") + std::string(piece);
    return line;
}

// The root without what only an editor reads.
XmlElement without_schema(XmlElement root)
{
    std::erase_if(root.attributes, [](const XmlAttribute& attribute) { return finds_schema(attribute.name); });
    return root;
}

}  // namespace

void Element::fault(std::string wrong, std::string right) const
{
    reading_.faults.add(xml_.spot, std::move(wrong), std::move(right));
}

void Element::fault(const Problem& problem) const
{
    reading_.faults.add({problem.place.line, problem.place.column}, problem.wrong, problem.right);
}

Attribute Element::optional(const char* name)
{
    attributes_asked_.emplace_back(name);
    for (const XmlAttribute& attribute : xml_.attributes)
        if (attribute.name == name) return {name, &attribute, attribute.spot, &reading_};
    return {name, nullptr, xml_.spot, &reading_};
}

Attribute Element::required(const char* name)
{
    const Attribute attribute = optional(name);
    if (!attribute.given()) fault(xml_.name + " has no " + name, "add " + std::string(name) + "=\"...\"");
    return attribute;
}

void Element::read(const XmlElement& xml, Reading& reading, const Reader& reader)
{
    Element element(xml, reading);
    reader(element);
    element.report_unknown();
}

void Element::each(const char* name, const Reader& reader)
{
    children_asked_.emplace_back(name);
    for (const XmlElement& child : xml_.children)
        if (child.name == name) read(child, reading_, reader);
}

void Element::at_least_one(const char* name, const Reader& reader)
{
    each(name, reader);
    const auto is_it = [name](const XmlElement& child) { return child.name == name; };
    if (std::none_of(xml_.children.begin(), xml_.children.end(), is_it)) fault(xml_.name + " holds no " + name, "add one");
}

void Element::at_most_one(const char* name, const Reader& reader)
{
    each(name, reader);
    const XmlElement* first = nullptr;
    for (const XmlElement& child : xml_.children) {
        if (child.name != name) continue;
        if (first)
            reading_.faults.add(child.spot, "a second " + child.name,
                                xml_.name + " holds one; the first stands in line " + std::to_string(first->spot.line) + ", column " +
                                    std::to_string(first->spot.column));
        else
            first = &child;
    }
}

void Element::one(const char* name, const Reader& reader)
{
    bool found = false;
    at_most_one(name, [&](Element& child) {
        found = true;
        reader(child);
    });
    if (!found) fault(xml_.name + " holds no " + name, "add one");
}

std::vector<Length> Element::lengths(const Bounds& bounds, const char* what)
{
    text_asked_ = true;
    std::vector<Length> found;
    const auto wrong = [&](std::string found_wrong, std::string right) { reading_.faults.add(xml_.text_spot, std::move(found_wrong), std::move(right)); };
    for (const std::string_view piece : pieces_of(xml_.text)) {
        const Parsed<Length> parsed = parse_length(piece, units());
        if (const auto* bad = std::get_if<ParseFault>(&parsed)) {
            wrong(bad->wrong, bad->right);
            continue;
        }
        const Length length = std::get<Length>(parsed);
        if (length <= Length() || (!found.empty() && length <= found.back()))
            wrong(quoted(piece) + " is not more than what stands before it", "write lengths above 0, ascending");
        else if (const auto outside = outside_bounds(length, bounds, what))
            wrong(quoted(piece) + " " + outside->wrong, outside->right);
        found.push_back(length);
    }
    if (pieces_of(xml_.text).empty()) fault(xml_.name + " is empty", "write lengths between its tags, or leave it out");
    return found;
}

void Element::report_unknown() const
{
    report_unknown_attributes();
    report_unknown_children();
    if (!text_asked_ && !xml_.text.empty())
        reading_.faults.add(xml_.text_spot, "text " + quoted(one_line(xml_.text)) + " in " + xml_.name, "all values are written in attributes");
}

void Element::report_unknown_attributes() const
{
    for (const XmlAttribute& attribute : xml_.attributes)
        if (!holds(attributes_asked_, attribute.name))
            reading_.faults.add(attribute.spot, "unknown attribute " + quoted(attribute.name), xml_.name + " takes " + joined(attributes_asked_));
}

void Element::report_unknown_children() const
{
    for (const XmlElement& child : xml_.children)
        if (!holds(children_asked_, child.name))
            reading_.faults.add(child.spot, "unknown element " + quoted(child.name), xml_.name + " holds " + joined(children_asked_));
}

Problems read_document(const Source& source, const char* root, const Element::Reader& reader)
{
    XmlDocument document = parse_xml(source);
    Reading reading{std::move(document.faults), std::nullopt};
    if (!document.root) return reading.faults.listed();
    if (document.root->name != root) {
        reading.faults.add(document.root->spot, "the file holds " + quoted(document.root->name), "this file holds " + std::string(root));
        return reading.faults.listed();
    }
    Element::read(without_schema(std::move(*document.root)), reading, [&](Element& element) {
        reading.units = element.required("units").word<Units>();
        reader(element);
    });
    return reading.faults.listed();
}

}  // namespace shaftcut

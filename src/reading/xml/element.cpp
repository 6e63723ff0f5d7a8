#include "xml/element.hpp"

#include <algorithm>
#include <array>

#include "source/bounds_of.hpp"
#include "xml/paths.hpp"

namespace shaftcut {

namespace {

bool holds(const std::vector<std::string>& names, const std::string& name)
{
    return std::find(names.begin(), names.end(), name) != names.end();
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

void Element::fault(FaultFinding what) const { reading_.faults.add({xml_.spot, "", xml_.spot}, std::move(what)); }

void Element::fault_of_child(const char* child, FaultFinding what) const
{
    reading_.faults.add({xml_.spot, std::string("/") + child, xml_.spot}, std::move(what));
}

void Element::fault_of_text(FaultFinding what) const { reading_.faults.add({xml_.text_spot, "", xml_.spot}, std::move(what)); }

void Element::fault_at(const Place& place, FaultFinding what) const
{
    const Spot spot{place.line, place.column};
    reading_.faults.add({spot, "", spot}, std::move(what));
}

Attribute Element::optional(const char* name)
{
    attributes_asked_.emplace_back(name);
    for (const XmlAttribute& attribute : xml_.attributes)
        if (attribute.name == name) return {name, &attribute, xml_.spot, &reading_};
    return {name, nullptr, xml_.spot, &reading_};
}

Attribute Element::required(const char* name)
{
    const Attribute attribute = optional(name);
    if (!attribute.given()) attribute.fault(MissingAttribute{xml_.name, name});
    return attribute;
}

void Element::read(const XmlElement& xml, Reading& reading, const Reader& reader)
{
    Element element(xml, reading);
    reader(element);
    element.report_unknown();
}

void Element::refuse(const char* name, const FaultFinding& why)
{
    refused_.emplace_back(name);
    for (const XmlAttribute& attribute : xml_.attributes)
        if (attribute.name == name) reading_.faults.add({attribute.spot, attribute_path(attribute.name), xml_.spot}, why);
    for (const XmlElement& child : xml_.children)
        if (child.name == name) reading_.faults.add({child.spot, "", child.spot}, why);
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
    if (std::none_of(xml_.children.begin(), xml_.children.end(), is_it)) fault_of_child(name, MissingElement{xml_.name, name});
}

void Element::at_most_one(const char* name, const Reader& reader)
{
    each(name, reader);
    const XmlElement* first = nullptr;
    for (const XmlElement& child : xml_.children) {
        if (child.name != name) continue;
        if (first) reading_.faults.add({child.spot, "", child.spot}, SecondElement{xml_.name, child.name, first->spot});
        else first = &child;
    }
}

void Element::one(const char* name, const Reader& reader)
{
    bool found = false;
    at_most_one(name, [&](Element& child) {
        found = true;
        reader(child);
    });
    if (!found) fault_of_child(name, MissingElement{xml_.name, name});
}

std::vector<Length> Element::lengths(Bounded kind)
{
    text_asked_ = true;
    std::vector<Length> found;
    for (const std::string_view piece : pieces_of(xml_.text)) {
        const Parsed<Length> parsed = parse_length(piece, units());
        if (const auto* bad = std::get_if<ParseFault>(&parsed)) {
            fault_of_text(UnreadableValue{"", *bad});
            continue;
        }
        const Length length = std::get<Length>(parsed);
        const Stated stated{"", std::string(piece)};
        if (length <= Length() || (!found.empty() && length <= found.back())) fault_of_text(WrongValue{Unfit::not_ascending, stated});
        else if (!bounds_of(kind).hold(length)) fault_of_text(OutsideBounds{kind, stated, length});
        found.push_back(length);
    }
    if (pieces_of(xml_.text).empty()) fault(Empty{EmptyOf::lengths, xml_.name});
    return found;
}

void Element::report_unknown() const
{
    report_unknown_attributes();
    report_unknown_children();
    if (!text_asked_ && !xml_.text.empty()) fault_of_text(Misplaced{Misplacement::text, one_line(xml_.text), xml_.name});
}

void Element::report_unknown_attributes() const
{
    for (const XmlAttribute& attribute : xml_.attributes)
        if (!holds(attributes_asked_, attribute.name) && !holds(refused_, attribute.name))
            reading_.faults.add({attribute.spot, attribute_path(attribute.name), xml_.spot}, Unknown{UnknownKind::attribute, attribute.name, xml_.name, attributes_asked_});
}

void Element::report_unknown_children() const
{
    for (const XmlElement& child : xml_.children)
        if (!holds(children_asked_, child.name) && !holds(refused_, child.name))
            reading_.faults.add({child.spot, "", child.spot}, Unknown{UnknownKind::element, child.name, xml_.name, children_asked_});
}

FaultList read_document(const Source& source, const char* root, const Element::Reader& reader)
{
    XmlDocument document = parse_xml(source);
    Reading reading{std::move(document.faults), std::nullopt};
    if (!document.root) return reading.faults.listed();
    const XmlElement top = without_schema(std::move(*document.root));
    if (top.name != root) {
        reading.faults.add(top.spot, Misplaced{Misplacement::other_root, top.name, root});
        return reading.faults.listed();
    }
    Element::read(top, reading, [&](Element& element) {
        reading.units = element.required("units").word<Units>();
        reader(element);
    });
    return reading.faults.listed([&](const std::set<Spot>& spots) { return paths_of(top, spots); });
}

}  // namespace shaftcut

#include "xml/xml.hpp"

#include <algorithm>
#include <cctype>
#include <cstring>
#include <new>
#include <unordered_map>

#include <pugixml.hpp>

#include "source/hidden_text.hpp"
#include "text.hpp"
#include "xml/xml_text.hpp"

namespace shaftcut {
namespace {

constexpr int most_depth = 32;
constexpr std::ptrdiff_t most_marks = 400'000;
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::string_view blanks = " \t\r\n";
constexpr const char* in_text = "the text";

// References are not replaced by pugixml, which leaves wrong ones as they are: decoded() refuses them.
constexpr unsigned parse_options = pugi::parse_cdata | pugi::parse_wconv_attribute | pugi::parse_eol | pugi::parse_declaration |
                                   pugi::parse_doctype | pugi::parse_fragment;

// A fault after which nothing sensible can be said of the rest.
struct Hopeless {
    Spot spot;
    ParseFault fault;
};

std::optional<ParseFault> fault_of_size(std::string_view text)
{
    if (text.find_first_not_of(blanks) == std::string_view::npos) return ParseFault{"the file is empty", "it holds one XML element"};
    if (text.size() > most_source_bytes) return ParseFault{"the file is larger than 16 MB", "divide it"};
    // Every element has a "<" and every attribute a "=", so the parser's memory is known before it runs.
    if (std::count(text.begin(), text.end(), '<') + std::count(text.begin(), text.end(), '=') > most_marks)
        return ParseFault{"the file holds more than " + std::to_string(most_marks) + " elements and attributes", "divide it"};
    return std::nullopt;
}

ParseFault malformed(pugi::xml_parse_status status)
{
    const std::string wrong = "this is not well-formed XML: ";
    switch (status) {
    case pugi::status_end_element_mismatch: return {wrong + "an element is not closed where it must be", "close every element, the inner ones first"};
    case pugi::status_bad_attribute: return {wrong + "an attribute is broken here", "write name=\"value\" with a blank before it"};
    case pugi::status_bad_pi: return {wrong + "an instruction is broken or stands where it must not", "leave it out"};
    case pugi::status_bad_comment: return {wrong + "a comment does not end", "end it with -->"};
    case pugi::status_bad_doctype: return {"a document type stands here", "leave it out"};
    default: return {wrong + "the element or text here cannot be read", "compare it with the example in the manual"};
    }
}

bool same_but_for_case(std::string_view a, std::string_view b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
        return std::tolower(static_cast<unsigned char>(x)) == std::tolower(static_cast<unsigned char>(y));
    });
}

std::optional<ParseFault> fault_of_declaration(const pugi::xml_node& declaration, bool first)
{
    if (!first || std::strcmp(declaration.name(), "xml") != 0)
        return ParseFault{"an XML declaration stands here", "it is the very first thing in a file, or left out"};
    const pugi::xml_attribute encoding = declaration.attribute("encoding");
    if (encoding && !same_but_for_case(encoding.value(), "UTF-8"))
        return ParseFault{"the declared encoding is " + quoted(encoding.value()), "save the file as UTF-8 and declare that, or nothing"};
    if (std::strcmp(declaration.attribute("version").value(), "1.0") != 0)
        return ParseFault{"the declared version is " + quoted(declaration.attribute("version").value()), "declare version=\"1.0\""};
    return std::nullopt;
}

// pugixml's nodes turned into the plain tree. The names and values of nodes parsed in place point into the buffer, and
// so tell where in the file they stand.
class Converter {
public:
    Converter(std::string_view text, const std::string& buffer, Faults faults)
        : spots_(text), text_(text), buffer_(buffer.data()), faults_(std::move(faults)) {}

    XmlDocument convert(const pugi::xml_document& document);

private:
    std::size_t offset_of(const char* inside) const { return static_cast<std::size_t>(inside - buffer_); }
    // Of an element, a declaration or a document type: where its "<" stands.
    std::size_t start_of(const pugi::xml_node& node) const;
    Spot spot_of_text(const pugi::xml_node& node);
    [[noreturn]] void give_up(std::size_t offset, ParseFault fault) { throw Hopeless{spots_.at(offset), std::move(fault)}; }
    pugi::xml_node only_root(const pugi::xml_document& document);
    XmlElement element(const pugi::xml_node& node, int depth);
    void add_attributes(XmlElement& to, const pugi::xml_node& node);
    void add_content(XmlElement& to, const pugi::xml_node& node, int depth);
    void add_text(XmlElement& to, const pugi::xml_node& node);
    // `what` holds it: an attribute's name, or "the text".
    std::string value_of(const char* raw, const std::string& what, Spot spot);
    std::string shown(const std::string& value, const std::string& what, Spot spot);

    SpotFinder spots_;
    std::string_view text_;
    const char* buffer_;
    Faults faults_;
};

std::size_t Converter::start_of(const pugi::xml_node& node) const
{
    const char* inside = node.type() == pugi::node_doctype ? node.value() : node.name();
    return text_.rfind('<', offset_of(inside));
}

Spot Converter::spot_of_text(const pugi::xml_node& node)
{
    const std::size_t start = offset_of(node.value());
    return spots_.at(std::min(text_.find_first_not_of(blanks, start), text_.size()));
}

pugi::xml_node Converter::only_root(const pugi::xml_document& document)
{
    pugi::xml_node root;
    for (const pugi::xml_node& node : document.children()) {
        if (node.type() == pugi::node_doctype) give_up(start_of(node), malformed(pugi::status_bad_doctype));
        if (node.type() == pugi::node_declaration) {
            if (auto fault = fault_of_declaration(node, start_of(node) == 0)) give_up(start_of(node), std::move(*fault));
        } else if (node.type() != pugi::node_element) {
            throw Hopeless{spot_of_text(node), {"text stands outside the file's element", "take it out"}};
        } else if (root) {
            give_up(start_of(node), {"a second element " + quoted(node.name()) + " stands beside " + quoted(root.name()),
                                     "a file holds one element and all else inside it"});
        } else {
            root = node;
        }
    }
    if (!root) give_up(0, {"the file holds no element", "it holds one XML element"});
    return root;
}

std::string Converter::value_of(const char* raw, const std::string& what, Spot spot)
{
    Parsed<std::string> value = decoded(raw);
    if (const auto* fault = std::get_if<ParseFault>(&value)) {
        faults_.add(spot, fault->wrong, fault->right);
        return raw;
    }
    return shown(std::get<std::string>(value), what, spot);
}

// The one place where a file's text becomes what everybody reads. Between tags lines may break.
std::string Converter::shown(const std::string& value, const std::string& what, Spot spot)
{
    std::string plain = with_plain_blanks(value);
    for (const ParseFault& fault : hidden_faults(plain, what == in_text ? U"\t\r\n" : U"")) faults_.add(spot, what + " " + fault.wrong, fault.right);
    return plain;
}

void Converter::add_attributes(XmlElement& to, const pugi::xml_node& node)
{
    std::unordered_map<std::string_view, Spot> seen;
    for (const pugi::xml_attribute& attribute : node.attributes()) {
        const Spot spot = spots_.at(offset_of(attribute.name()));
        const auto [first, is_new] = seen.try_emplace(attribute.name(), spot);
        if (is_new)
            to.attributes.push_back({attribute.name(), value_of(attribute.value(), printable(attribute.name()), spot), spot});
        else
            faults_.add(spot, "a second " + printable(attribute.name()) + "=" + quoted(attribute.value()),
                        "the first stands in line " + std::to_string(first->second.line) + ", column " +
                            std::to_string(first->second.column) + ": leave one of them out");
    }
}

void Converter::add_text(XmlElement& to, const pugi::xml_node& node)
{
    if (to.text.empty()) to.text_spot = spot_of_text(node);
    const Spot spot = spot_of_text(node);
    to.text += node.type() == pugi::node_cdata ? shown(node.value(), in_text, spot) : value_of(node.value(), in_text, spot);
}

void Converter::add_content(XmlElement& to, const pugi::xml_node& node, int depth)
{
    for (const pugi::xml_node& child : node.children()) {
        if (child.type() == pugi::node_element) to.children.push_back(element(child, depth + 1));
        else add_text(to, child);
    }
}

XmlElement Converter::element(const pugi::xml_node& node, int depth)
{
    const std::size_t start = start_of(node);
    if (depth > most_depth)
        give_up(start, {quoted(node.name()) + " is nested more than " + std::to_string(most_depth) + " deep", "close the elements around it first"});
    XmlElement made;
    made.name = node.name();
    made.spot = spots_.at(start);
    add_attributes(made, node);
    add_content(made, node, depth);
    return made;
}

XmlDocument Converter::convert(const pugi::xml_document& document)
{
    const pugi::xml_node root = only_root(document);
    XmlElement made = element(root, 1);
    return {std::move(made), std::move(faults_)};
}

XmlDocument parse_checked(std::string_view text, const std::string& name)
{
    // pugixml overwrites the last character while it parses, and loses it where it is text.
    std::string buffer = std::string(text) + '\n';
    pugi::xml_document document;
    const pugi::xml_parse_result result = document.load_buffer_inplace(buffer.data(), buffer.size(), parse_options, pugi::encoding_utf8);
    if (result.status == pugi::status_out_of_memory) throw std::bad_alloc();  // the file is not to blame
    if (!result) throw Hopeless{SpotFinder(text).at(static_cast<std::size_t>(result.offset)), malformed(result.status)};
    return Converter(text, buffer, Faults(name)).convert(document);
}

XmlDocument parse_or_give_up(const Source& source)
{
    std::string_view text = source.bytes;
    if (auto fault = fault_of_size(text)) throw Hopeless{{}, std::move(*fault)};
    if (text.starts_with(byte_order_mark)) text.remove_prefix(byte_order_mark.size());
    if (auto bad = bad_bytes(text)) throw Hopeless{SpotFinder(text).at(bad->offset), std::move(bad->fault)};
    return parse_checked(text, source.name);
}

}  // namespace

XmlDocument parse_xml(const Source& source)
{
    try {
        return parse_or_give_up(source);
    } catch (Hopeless& hopeless) {
        Faults faults(source.name);
        faults.add(hopeless.spot, std::move(hopeless.fault.wrong), std::move(hopeless.fault.right));
        return {std::nullopt, std::move(faults)};
    }
}

std::string pugixml_built_with()
{
    // PUGIXML_VERSION is 1000 a major and 10 a minor version.
    return std::to_string(PUGIXML_VERSION / 1000) + "." + std::to_string(PUGIXML_VERSION % 1000 / 10);
}

}  // namespace shaftcut

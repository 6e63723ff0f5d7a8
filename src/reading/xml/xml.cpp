#include "xml/xml.hpp"

#include <algorithm>
#include <cctype>
#include <cstring>
#include <new>
#include <unordered_map>

#include <pugixml.hpp>

#include "source/hidden_text.hpp"
#include "text.hpp"
#include "xml/paths.hpp"
#include "xml/xml_text.hpp"

namespace shaftcut {
namespace {

constexpr int most_depth = 32;
constexpr std::ptrdiff_t most_marks = 400'000;
constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";
constexpr std::string_view blanks = " \t\r\n";

// References are not replaced by pugixml, which leaves wrong ones as they are: decoded() refuses them.
constexpr unsigned parse_options = pugi::parse_cdata | pugi::parse_wconv_attribute | pugi::parse_eol | pugi::parse_declaration |
                                   pugi::parse_doctype | pugi::parse_fragment;

// A fault after which nothing sensible can be said of the rest.
struct Hopeless {
    Spot spot;
    FaultFinding fault;
};

std::optional<FaultFinding> fault_of_size(std::string_view text)
{
    if (text.find_first_not_of(blanks) == std::string_view::npos) return FormFault::xml_empty;
    if (text.size() > most_source_bytes) return FormFault::xml_too_large;
    // Every element has a "<" and every attribute a "=", so the parser's memory is known before it runs.
    if (std::count(text.begin(), text.end(), '<') + std::count(text.begin(), text.end(), '=') > most_marks)
        return TooMany{ManyOf::marks, most_marks};
    return std::nullopt;
}

FormFault malformed(pugi::xml_parse_status status)
{
    switch (status) {
    case pugi::status_end_element_mismatch: return FormFault::not_closed;
    case pugi::status_bad_attribute: return FormFault::broken_attribute;
    case pugi::status_bad_pi: return FormFault::broken_instruction;
    case pugi::status_bad_comment: return FormFault::endless_comment;
    case pugi::status_bad_doctype: return FormFault::document_type;
    default: return FormFault::broken;
    }
}

bool same_but_for_case(std::string_view a, std::string_view b)
{
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
        return std::tolower(static_cast<unsigned char>(x)) == std::tolower(static_cast<unsigned char>(y));
    });
}

std::optional<FaultFinding> fault_of_declaration(const pugi::xml_node& declaration, bool first)
{
    if (!first || std::strcmp(declaration.name(), "xml") != 0)
        return FormFault::declaration;
    const pugi::xml_attribute encoding = declaration.attribute("encoding");
    if (encoding && !same_but_for_case(encoding.value(), "UTF-8"))
        return WrongValue{Unfit::encoding, {"", encoding.value()}};
    if (std::strcmp(declaration.attribute("version").value(), "1.0") != 0)
        return WrongValue{Unfit::version, {"", declaration.attribute("version").value()}};
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
    [[noreturn]] void give_up(std::size_t offset, FaultFinding fault) { throw Hopeless{spots_.at(offset), std::move(fault)}; }
    pugi::xml_node only_root(const pugi::xml_document& document);
    XmlElement element(const pugi::xml_node& node, int depth);
    void add_attributes(XmlElement& to, const pugi::xml_node& node);
    void add_content(XmlElement& to, const pugi::xml_node& node, int depth);
    void add_text(XmlElement& to, const pugi::xml_node& node);
    std::string value_of(const char* raw, const Whereabouts& where, const char* attribute);
    std::string shown(const std::string& value, const Whereabouts& where, const char* attribute);

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
            throw Hopeless{spot_of_text(node), FormFault::text_outside};
        } else if (root) {
            give_up(start_of(node), Misplaced{Misplacement::second_root, node.name(), root.name()});
        } else {
            root = node;
        }
    }
    if (!root) give_up(0, FormFault::no_element);
    return root;
}

// `attribute` holds it, or none: the text.
std::string Converter::value_of(const char* raw, const Whereabouts& where, const char* attribute)
{
    std::variant<std::string, WrongValue> value = decoded(raw);
    if (const auto* fault = std::get_if<WrongValue>(&value)) {
        faults_.add(where, *fault);
        return raw;
    }
    return shown(std::get<std::string>(value), where, attribute);
}

// The one place where a file's text becomes what everybody reads. Between tags lines may break.
std::string Converter::shown(const std::string& value, const Whereabouts& where, const char* attribute)
{
    std::string plain = with_plain_blanks(value);
    for (const char32_t point : hidden_in(plain, attribute ? U"" : U"\t\r\n"))
        faults_.add(where, Hidden{attribute ? HiddenIn::attribute : HiddenIn::text, attribute ? attribute : "", point});
    return plain;
}

void Converter::add_attributes(XmlElement& to, const pugi::xml_node& node)
{
    std::unordered_map<std::string_view, Spot> seen;
    for (const pugi::xml_attribute& attribute : node.attributes()) {
        const Spot spot = spots_.at(offset_of(attribute.name()));
        const auto [first, is_new] = seen.try_emplace(attribute.name(), spot);
        const Whereabouts where{spot, attribute_path(attribute.name()), to.spot};
        if (is_new) to.attributes.push_back({attribute.name(), value_of(attribute.value(), where, attribute.name()), spot});
        else faults_.add(where, SecondAttribute{{attribute.name(), attribute.value()}, first->second});
    }
}

void Converter::add_text(XmlElement& to, const pugi::xml_node& node)
{
    if (to.text.empty()) to.text_spot = spot_of_text(node);
    const Whereabouts where{spot_of_text(node), "", to.spot};
    to.text += node.type() == pugi::node_cdata ? shown(node.value(), where, nullptr) : value_of(node.value(), where, nullptr);
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
        give_up(start, TooMany{ManyOf::nested, most_depth, node.name()});
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
    if (auto bad = bad_bytes(text)) throw Hopeless{SpotFinder(text).at(bad->offset), std::move(bad->what)};
    return parse_checked(text, source.name);
}

}  // namespace

XmlDocument parse_xml(const Source& source)
{
    try {
        return parse_or_give_up(source);
    } catch (Hopeless& hopeless) {
        Faults faults(source.name);
        faults.add(hopeless.spot, std::move(hopeless.fault));
        return {std::nullopt, std::move(faults)};
    }
}

std::string pugixml_built_with()
{
    // PUGIXML_VERSION is 1000 a major and 10 a minor version.
    return std::to_string(PUGIXML_VERSION / 1000) + "." + std::to_string(PUGIXML_VERSION % 1000 / 10);
}

}  // namespace shaftcut

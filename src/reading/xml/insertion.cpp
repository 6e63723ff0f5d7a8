#include "xml/insertion.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

// From "<" to behind ">".
struct Tag {
    std::size_t begin = 0, end = 0;
    bool opens = false, closes = false;  // both: an element in one tag
};

std::size_t behind(std::string_view text, std::string_view what, std::size_t from)
{
    const std::size_t found = text.find(what, from);
    return found == std::string_view::npos ? text.size() : found + what.size();
}

// A ">" in a value ends no tag.
std::size_t end_of_tag(std::string_view text, std::size_t at)
{
    char quote = 0;
    for (; at < text.size(); ++at) {
        const char c = text[at];
        if (quote != 0) quote = c == quote ? '\0' : quote;
        else if (c == '"' || c == '\'') quote = c;
        else if (c == '>') return at + 1;
    }
    return text.size();
}

std::optional<Tag> next_tag(std::string_view text, std::size_t from)
{
    while ((from = text.find('<', from)) != std::string_view::npos) {
        const std::string_view rest = text.substr(from);
        if (rest.starts_with("<!--")) from = behind(text, "-->", from + 4);
        else if (rest.starts_with("<![CDATA[")) from = behind(text, "]]>", from);
        else if (rest.starts_with("<?")) from = behind(text, "?>", from);
        else {
            const std::size_t end = end_of_tag(text, from);
            const bool is_end = rest.starts_with("</");
            return Tag{from, end, !is_end, is_end || text.substr(0, end).ends_with("/>")};
        }
    }
    return std::nullopt;
}

// Its tags; of an element in one tag twice the same.
struct Span {
    Tag first, last;
};

struct Elements {
    Span root;
    std::vector<Span> children;
};

Elements elements_in(std::string_view xml)
{
    Elements found;
    std::size_t depth = 0;
    for (auto tag = next_tag(xml, 0); tag; tag = next_tag(xml, tag->end)) {
        if (tag->opens && ++depth == 1) found.root.first = *tag;
        else if (tag->opens && depth == 2) found.children.push_back({*tag, *tag});
        if (!tag->closes) continue;
        if (depth == 1) found.root.last = *tag;
        else if (depth == 2) found.children.back().last = *tag;
        if (depth > 0) --depth;
    }
    return found;
}

std::string_view name_in(std::string_view xml, const Tag& tag)
{
    const std::size_t from = tag.begin + 1;
    return xml.substr(from, xml.find_first_of(" \t\r\n/>", from) - from);
}

std::string with_line_ends_of(std::string_view xml, std::string_view lines)
{
    const std::string_view end = xml.find("\r\n") == std::string_view::npos ? "\n" : "\r\n";
    std::string text;
    for (const char c : lines)
        if (c == '\n') text += end;
        else text += c;
    return text;
}

// In front of the tag's line, where nothing else stands before it there; else in front of the tag.
std::string before(std::string_view xml, const Tag& tag, const std::string& lines)
{
    const std::size_t last = xml.substr(0, tag.begin).find_last_not_of(" \t");
    const bool alone = last != std::string_view::npos && xml[last] == '\n';
    const std::size_t at = alone ? last + 1 : tag.begin;
    return std::string(xml.substr(0, at)) + (alone ? "" : with_line_ends_of(xml, "\n")) + lines + std::string(xml.substr(at));
}

std::string opened(std::string_view xml, const Tag& tag, const std::string& lines)
{
    const std::size_t slash = tag.end - 2, content = std::min(xml.find_last_not_of(" \t\r\n", slash - 1) + 1, slash);
    return std::string(xml.substr(0, content)) + ">" + with_line_ends_of(xml, "\n") + lines + "</" + std::string(name_in(xml, tag)) + ">" + std::string(xml.substr(tag.end));
}

}  // namespace

std::string with_inserted(std::string_view xml, std::optional<std::size_t> of, std::string_view lines)
{
    const Elements found = elements_in(xml);
    const Span element = of ? found.children.at(*of) : found.root;
    const std::string text = with_line_ends_of(xml, lines);
    return element.last.opens ? opened(xml, element.first, text) : before(xml, element.last, text);
}

std::string with_attributes(std::string_view xml, std::size_t of, std::string_view attributes)
{
    const Tag tag = elements_in(xml).children.at(of).first;
    const std::size_t behind_name = tag.begin + 1 + name_in(xml, tag).size();
    return std::string(xml.substr(0, behind_name)) + std::string(attributes) + std::string(xml.substr(behind_name));
}

std::vector<std::string_view> children_in(std::string_view xml)
{
    std::vector<std::string_view> children;
    for (const Span& child : elements_in(xml).children) children.push_back(xml.substr(child.first.begin, child.last.end - child.first.begin));
    return children;
}

std::string xml_text(std::string_view plain)
{
    std::string text;
    for (const char c : plain) {
        if (c == '&') text += "&amp;";
        else if (c == '<') text += "&lt;";
        else if (c == '>') text += "&gt;";
        else if (c == '"') text += "&quot;";
        else text += c;
    }
    return text;
}

std::string xml_attribute(std::string_view name, std::string_view value) { return " " + std::string(name) + "=\"" + xml_text(value) + "\""; }

}  // namespace shaftcut

// The manual's tables of elements and attributes against the schemas, which other tests hold to the readers.
#include <algorithm>
#include <map>
#include <set>

#include "commands/program.hpp"
#include "files/load.hpp"
#include "support/catch.hpp"
#include "support/markdown.hpp"
#include "xml/xml.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

using Names = std::set<std::string>;

// An element as a schema states it: its attributes with their words, which of them are required, its children.
struct SchemaElement {
    std::map<std::string, Names> attributes;
    Names required, children;
};

// A schema's elements by name. `limits` is left out: its table is compared with the program's limits.
class Schema {
public:
    // `own`: the files whose elements it states, of which the last one has the root.
    explicit Schema(const std::vector<std::string>& own)
    {
        add_types("common.xsd");
        add_types("fit.xsd");
        if (own.front() != "fit.xsd")
            for (const XmlElement& type : roots_.at("fit.xsd").children) elsewhere_.insert(value(type, "name"));
        for (const std::string& file : own) add_types(file);
        for (const std::string& file : own)
            for (const XmlElement& child : roots_.at(file).children) find_elements(child);
    }

    const std::map<std::string, SchemaElement>& elements() const { return elements_; }

private:
    void add_types(const std::string& file)
    {
        roots_[file] = *parse_xml(std::get<Source>(load(config_folder + "/" + file))).root;
        for (const XmlElement& type : roots_[file].children) types_[value(type, "name")] = type;
    }

    static std::string value(const XmlElement& element, const std::string& name)
    {
        for (const XmlAttribute& attribute : element.attributes)
            if (attribute.name == name) return attribute.value;
        return {};
    }

    // The three ranges of a machine are alike and described once for each kind of machine: "trailed range".
    static std::string described_as(const std::string& name, std::string type)
    {
        const std::size_t dash = type.find("-range");
        return dash == std::string::npos ? name : type.replace(dash, 1, " ");
    }

    void find_elements(const XmlElement& in)
    {
        if (in.name == "xs:element" && value(in, "name") != "limits") {
            const std::string type = value(in, "type");
            if (!type.empty() && elsewhere_.count(type)) return;
            SchemaElement stated;
            state(type.empty() ? in : types_[type], stated);
            if (!stated.attributes.empty()) elements_[described_as(value(in, "name"), type)] = stated;
        }
        for (const XmlElement& child : in.children) find_elements(child);
    }

    void state(const XmlElement& in, SchemaElement& stated)
    {
        for (const XmlElement& child : in.children) {
            if (child.name == "xs:attribute") {
                const std::string name = value(child, "name");
                find_words(child, stated.attributes[name]);
                find_words(types_[value(child, "type")], stated.attributes[name]);
                if (value(child, "use") == "required") stated.required.insert(name);
            } else if (child.name == "xs:element") {
                stated.children.insert("<" + value(child, "name") + ">");
            } else {
                if (child.name == "xs:extension") state(types_[value(child, "base")], stated);
                state(child, stated);
            }
        }
    }

    void find_words(const XmlElement& in, Names& words)
    {
        if (in.name == "xs:enumeration") words.insert(value(in, "value"));
        for (const XmlElement& child : in.children) find_words(child, words);
    }

    Names elsewhere_;  // types that another page describes
    std::map<std::string, XmlElement> roots_;
    std::map<std::string, XmlElement> types_;
    std::map<std::string, SchemaElement> elements_;
};

void compare_element(const Markdown& markdown, const std::string& element, const SchemaElement& stated)
{
    Names found;
    for (const TableRow& row : markdown.rows_under("`" + element + "`")) {
        REQUIRE(row.cells.size() == 3);
        const std::string name = code_spans(row.cells[0]).at(0);
        INFO(element << " " << name);
        CHECK(found.insert(name).second);
        if (name.front() == '<') continue;
        CHECK((row.cells[1] == "yes") == (stated.required.count(name) == 1));
        const auto known = stated.attributes.find(name);
        if (known == stated.attributes.end()) continue;
        const std::vector<std::string> spans = code_spans(row.cells[2]);
        for (const std::string& word : known->second) CHECK(std::count(spans.begin(), spans.end(), word) > 0);
    }
    Names wanted = stated.children;
    for (const auto& [name, words] : stated.attributes) wanted.insert(name);
    INFO(element);
    CHECK(found == wanted);
}

}  // namespace

TEST_CASE("every element, attribute and word of a file is described, with what is required")
{
    using Files = std::vector<std::string>;
    for (const auto& [files, page] : {std::pair(Files{"fit.xsd", "job.xsd"}, "docs/job-format.md"), std::pair(Files{"measured.xsd"}, "docs/after-cut.md"), std::pair(Files{"choose.xsd"}, "docs/choose.md"), std::pair(Files{"identify.xsd", "measures.xsd"}, "docs/identify.md"),
                                      std::pair(Files{"series.xsd"}, "docs/configuration.md"), std::pair(Files{"workshop.xsd"}, "docs/configuration.md"), std::pair(Files{"lists.xsd"}, "docs/configuration.md")}) {
        const Schema schema(files);
        const Markdown markdown = read_markdown(page);
        REQUIRE(schema.elements().size() >= 3);
        for (const auto& [element, stated] : schema.elements()) compare_element(markdown, element, stated);
    }
}

TEST_CASE("every described element exists")
{
    const Schema job({"fit.xsd", "job.xsd"}), measured({"measured.xsd"}), choose({"choose.xsd"}), measures({"identify.xsd", "measures.xsd"}), series({"series.xsd"}), workshop({"workshop.xsd"}), lists({"lists.xsd"});
    for (const char* page : {"docs/job-format.md", "docs/after-cut.md", "docs/choose.md", "docs/identify.md", "docs/configuration.md"})
        for (const TableRow& row : read_markdown(page).rows) {
            if (row.heading.front() != '`') continue;
            const std::string element = code_spans(row.heading)[0];
            INFO(page << " " << element);
            CHECK(job.elements().count(element) + measured.elements().count(element) + choose.elements().count(element) + measures.elements().count(element) + series.elements().count(element) + workshop.elements().count(element) + lists.elements().count(element) > 0);
        }
}

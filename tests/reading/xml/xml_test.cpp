#include "xml/xml.hpp"

#include "reading/said.hpp"
#include "support/catch.hpp"
#include "xml/xml_text.hpp"

using namespace shaftcut;

namespace {

XmlElement parsed(const std::string& text)
{
    auto document = parse_xml({"f.xml", text});
    REQUIRE(document.faults.none());
    REQUIRE(document.root);
    return std::move(*document.root);
}

std::string only_fault(const std::string& text)
{
    const auto document = parse_xml({"f.xml", text});
    const FaultList faults = document.faults.listed();
    REQUIRE(faults.size() == 1);
    CHECK_FALSE(document.root);
    return to_string(problem_of(faults.front()));
}

}  // namespace

TEST_CASE("everything has its line and its column in characters")
{
    const XmlElement root = parsed("<a>\n  <b x=\"\u00e4\u00f6\u00fc\" y='2'\n     z=\"\"/>\u00bd<c/>\n</a>");
    CHECK(root.spot == Spot{1, 1});
    REQUIRE(root.children.size() == 2);
    const XmlElement& b = root.children[0];
    CHECK(b.spot == Spot{2, 3});
    REQUIRE(b.attributes.size() == 3);
    CHECK(b.attributes[0].spot == Spot{2, 6});
    CHECK(b.attributes[0].value == "\u00e4\u00f6\u00fc");
    CHECK(b.attributes[1].spot == Spot{2, 14});
    CHECK(b.attributes[2].spot == Spot{3, 6});
    CHECK(root.text_spot == Spot{3, 12});
    CHECK(root.children[1].spot == Spot{3, 13});
}

TEST_CASE("a byte order mark has no column, and all three line ends count once")
{
    CHECK(parsed("\xEF\xBB\xBF<a/>").spot == Spot{1, 1});
    for (const char* end : {"\n", "\r\n", "\r"}) {
        const XmlElement root = parsed("<a>" + std::string(end) + " <b" + end + "x=''/></a>");
        CHECK(root.children[0].spot == Spot{2, 2});
        CHECK(root.children[0].attributes[0].spot == Spot{3, 1});
    }
}

TEST_CASE("places can be asked for in any order")
{
    SpotFinder finder("ab\ncd\nef");
    CHECK(finder.at(7) == Spot{3, 2});
    CHECK(finder.at(1) == Spot{1, 2});
    CHECK(finder.at(99) == Spot{3, 3});
}

TEST_CASE("references, CDATA and comments mean what XML says")
{
    const XmlElement root = parsed("<!-- x --><?pi y?><a x=\"&lt;&amp;&gt;&quot;&apos;&#228;&#x1F600;\">&amp;<![CDATA[&amp;<]]><!-- z --></a><!-- end -->");
    CHECK(root.attributes[0].value == "<&>\"'\u00e4\U0001F600");
    CHECK(root.text == "&&amp;<");
    CHECK(parsed("<a x='1\n2\t3'/>").attributes[0].value == "1 2 3");
}

TEST_CASE("a declaration may say UTF-8 and nothing else")
{
    CHECK(parsed("<?xml version=\"1.0\" encoding=\"utf-8\" standalone='yes'?>\n<a/>").name == "a");
    CHECK(parsed("\xEF\xBB\xBF<?xml version='1.0'?><a/>").name == "a");
    CHECK(only_fault("<?xml version='1.0' encoding='ISO-8859-1'?><a/>") ==
          "f.xml:1:1: the declared encoding is \"ISO-8859-1\"; save the file as UTF-8 and declare that, or nothing");
    CHECK(only_fault("<?xml version='1.1'?><a/>") == "f.xml:1:1: the declared version is \"1.1\"; declare version=\"1.0\"");
    CHECK(only_fault(" <?xml version='1.0'?><a/>") == "f.xml:1:2: an XML declaration stands here; it is the very first thing in a file, or left out");
    CHECK(only_fault("<a>\n<?xml version='1.0'?></a>") == "f.xml:2:6: this is not well-formed XML: an instruction is broken or stands where it must not; leave it out");
}

TEST_CASE("what is no XML is refused with its place")
{
    for (const char* text : {"<a", "<a>", "<a></b>", "<a><b></a></b>", "</a>", "<a b/>", "<a b=/>", "<a b=1/>", "<a b='1/>", "<a b='1'c='2'/>", "< a/>",
                             "<a/", "<1/>", "<a><!-- </a>", "<a><![CDATA[ </a>", "<!a/>", "<a/><", "<a/>x", "x<a/>", "<a/><b/>", "<a>&x;", "<?a"}) {
        INFO(text);
        CHECK_FALSE(parse_xml({"f.xml", text}).root);
    }
    CHECK(only_fault("<a>\n  <b>\n</a>") == "f.xml:3:3: this is not well-formed XML: an element is not closed where it must be; "
                                            "close every element, the inner ones first");
    CHECK(only_fault("") == "f.xml:1:1: the file is empty; it holds one XML element");
    CHECK(only_fault(" \r\n\t") == "f.xml:1:1: the file is empty; it holds one XML element");
    CHECK(only_fault("<!-- only -->") == "f.xml:1:1: the file holds no element; it holds one XML element");
}

#include "xml/insertion.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("a line is put in before the end of the element, and nothing else is touched")
{
    CHECK(with_inserted("<a>\n  <b/>\n</a>\n", std::nullopt, "  <c/>\n") == "<a>\n  <b/>\n  <c/>\n</a>\n");
    CHECK(with_inserted("<a><b/></a>", std::nullopt, "<c/>\n") == "<a><b/>\n<c/>\n</a>");
    CHECK(with_inserted("<a>\r\n</a>\r\n", std::nullopt, "<c/>\n") == "<a>\r\n<c/>\r\n</a>\r\n");
    CHECK(with_inserted("<a x='>' />\n<!-- </a> -->", std::nullopt, "<c/>\n") == "<a x='>'>\n<c/>\n</a>\n<!-- </a> -->");
}

TEST_CASE("an element's end is not what stands in comments, values, instructions and literal text")
{
    const std::string before = "<?p </a>?><!-- <a></a> --><a v=\"</a>\"><![CDATA[</a>]]>\n  <!-- </a> -->\n";
    CHECK(with_inserted(before + "</a>", std::nullopt, "<c/>\n") == before + "<c/>\n</a>");
}

TEST_CASE("a line is put into a child by its number")
{
    CHECK(with_inserted("<a>\n <b>\n </b>\n <b/>\n</a>", 0, "  <c/>\n") == "<a>\n <b>\n  <c/>\n </b>\n <b/>\n</a>");
    CHECK(with_inserted("<a>\n <b>\n </b>\n <b/>\n</a>", 1, "  <c/>\n") == "<a>\n <b>\n </b>\n <b>\n  <c/>\n</b>\n</a>");
}

TEST_CASE("the children of an element, whole")
{
    CHECK(children_in("<a><!-- <x/> --><b><b/></b>\n<c d='/>'/></a>") == std::vector<std::string_view>{"<b><b/></b>", "<c d='/>'/>"});
}

TEST_CASE("what XML would take for its own is written otherwise")
{
    CHECK(xml_attribute("a", "x < \"y\" & z") == " a=\"x &lt; &quot;y&quot; &amp; z\"");
}

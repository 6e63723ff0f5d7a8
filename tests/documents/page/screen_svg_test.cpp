#include "page/screen_svg.hpp"

#include <pugixml.hpp>
#include <stdexcept>

#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("a page for a screen keeps its lines, its text and its room")
{
    Page page{120, 80.004, {}};
    page.marks.push_back({Part::figure, Path{{{1, 2}, {3.456, -0.001}}, true, 0.35, Fill::none, {4, 0.6}}});
    page.marks.push_back({Part::figure, Disc{{10, 20}, 1.1, 0.5, Fill::white}});
    page.marks.push_back({Part::figure, Text{"a < b & \"c\"", {5, 6}, 2.5, Weight::bold, 0.9, Ink::black, {5, 4, 20.126, 3}}});
    pugi::xml_document svg;
    REQUIRE(svg.load_string(screen_svg_of(page).c_str()));
    const pugi::xml_node root = svg.child("svg");
    CHECK(std::string(root.attribute("viewBox").value()) == "0 0 120 80");
    CHECK(std::string(root.child("path").attribute("d").value()) == "M1 2L3.46 0Z");
    CHECK(std::string(root.child("path").attribute("stroke-dasharray").value()) == "4 0.6");
    CHECK(std::string(root.child("circle").attribute("fill").value()) == "#fff");
    CHECK(std::string(root.child("text").child_value()) == "a < b & \"c\"");
    CHECK(std::string(root.child("text").attribute("textLength").value()) == "20.13");
    for (pugi::xml_node each : root.children())
        for (const char* barred : {"style", "class", "href", "onload"}) CHECK_FALSE(each.attribute(barred));
}

TEST_CASE("what has no form on a screen is refused and not left out")
{
    CHECK_THROWS_AS(screen_svg_of(Page{10, 10, {{Part::figure, Disc{{1, 1}, 1, 1, Fill::hatched}}}}), std::logic_error);
    CHECK_THROWS_AS(screen_svg_of(Page{10, 10, {{Part::figure, Code{{0, 0, 5, 5}, 1, {true}}}}}), std::logic_error);
}

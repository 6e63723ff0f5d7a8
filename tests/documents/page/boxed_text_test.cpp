#include "page/boxed_text.hpp"

#include "documents/page/page_checks.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

TEST_CASE("signs in running text are drawn as boxes, and what stands before a box in one piece is a figure")
{
    Canvas canvas(fonts(), 210, 297);
    const std::string text = "Guard complete ☐ missing ☐. Closed length: 860\u00a0±\u00a04\u00a0mm\u00a0▭.";
    const double bottom = draw_boxed(canvas, {20, 20}, 170, text);
    CHECK(std::abs(bottom - 20 - boxed_height(canvas, 170, text)) < 1e-9);
    const auto boxes = boxes_of(canvas.page());
    REQUIRE(boxes.size() == 3);
    CHECK(boxes[2].width >= 15);
    CHECK(boxes[2].height >= 6);
    const Text* expected = find(canvas.page(), "860 ± 4 mm");
    REQUIRE(expected);
    CHECK(expected->cap_height >= 3.5);
    for (const Text& one : texts_of(canvas.page())) CHECK(one.text.find("☐") == std::string::npos);
    check_texts(canvas.page());
    // Not parted over lines, however narrow the column.
    Canvas narrow(fonts(), 210, 297);
    draw_boxed(narrow, {20, 20}, 45, text);
    CHECK(find(narrow.page(), "860 ± 4 mm"));
}

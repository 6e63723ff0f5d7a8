#include "page/font.hpp"

#include "page/canvas.hpp"
#include "support/catch.hpp"
#include "support/fonts.hpp"

using namespace shaftcut;

TEST_CASE("widths are the font's own")
{
    const Fonts fonts(test::font_files());
    // DejaVu Sans: a digit is 1303 units wide of 2048 an em, in bold 1425.
    const double em = 2.5 / cap_height_of_em;
    CHECK(fonts.width("742", 2.5, Weight::regular, 1) == Approx(3 * 1303.0 / 2048 * em));
    CHECK(fonts.width("742", 2.5, Weight::bold, 1) == Approx(3 * 1425.0 / 2048 * em));
    CHECK(fonts.width("", 2.5, Weight::regular) == 0);
}

TEST_CASE("what cannot be drawn is replaced, never dropped")
{
    const Fonts fonts(test::font_files());
    CHECK(fonts.printable("⌀ 35 ± 1 ≤ ½ ⚠ ✓ ☐ Żółć Ελλάδα Ферма") == "⌀ 35 ± 1 ≤ ½ ⚠ ✓ ☐ Żółć Ελλάδα Ферма");
    CHECK(fonts.printable("漢 a") == "� a");
    CHECK(fonts.printable("a\xFF" "b") == "a�b");
    CHECK(fonts.printable("a\x01" "b") == "a�b");
    CHECK(fonts.printable("  two \t\n words ") == "two words");
    CHECK(fonts.printable("שלום") == "����");  // it has the glyphs, but would come out backwards
}

TEST_CASE("wrapped lines hold all words and fit")
{
    const Fonts fonts(test::font_files());
    for (const double width : {12.0, 30.0, 92.0}) {
        std::string rejoined;
        for (const std::string& line : fonts.wrap("Cut the guard tubes, each from its free end: tractor half 94 mm", 2.5, Weight::regular, width)) {
            CHECK(fonts.width(line, 2.5, Weight::regular) <= width);
            rejoined += (rejoined.empty() ? "" : " ") + line;
        }
        CHECK(rejoined == "Cut the guard tubes, each from its free end: tractor half 94 mm");
    }
    CHECK(fonts.wrap("", 2.5, Weight::regular, 50) == std::vector<std::string>{""});
}

TEST_CASE("a word wider than the line is broken, and a figure keeps its unit")
{
    const Fonts fonts(test::font_files());
    std::string rejoined;
    for (const std::string& line : fonts.wrap(std::string(60, 'W'), 2.5, Weight::bold, 20)) {
        CHECK(fonts.width(line, 2.5, Weight::bold) <= 20);
        rejoined += line;
    }
    CHECK(rejoined == std::string(60, 'W'));
    const double width = fonts.width("about 94", 2.5, Weight::regular) + 1;
    CHECK(fonts.wrap("about 94 mm", 2.5, Weight::regular, width) == std::vector<std::string>{"about", "94 mm"});
}

TEST_CASE("text covers the rectangle that it says it covers")
{
    const Fonts fonts(test::font_files());
    Canvas canvas(fonts, 210, 297);
    const Rect right = canvas.text({100, 50}, "94 mm", lettering::cut, Align::right);
    CHECK(right.right() == Approx(100));
    CHECK(right.width == Approx(fonts.width("94 mm", 5.5, Weight::bold)));
    CHECK(right.y < 50 - 5.5);
    CHECK(right.bottom() > 50);
    const Rect narrow = canvas.fitted({10, 50}, 0.8 * right.width, "94 mm", lettering::cut);
    CHECK(narrow.width == Approx(0.8 * right.width));
}

TEST_CASE("no line is broken between a figure and its unit, nor after a ±")
{
    const Fonts fonts(test::font_files());
    const std::string text = "primary, 540 min⁻¹, built 2023; 29-3/16 in (741.3 mm), ± 6.6 mm, ripple 3 %.";
    for (double width = 26; width < 100; width += 0.5)
        for (const std::string& line : fonts.wrap(text, 2.5, Weight::regular, width)) {
            INFO(line);
            for (const char* unit : {"min⁻¹", "in ", "mm", "%"}) CHECK_FALSE(line.starts_with(unit));
            CHECK_FALSE(line.ends_with("±"));
        }
}

TEST_CASE("arrows of a dimension stand outside where the space is under 9 mm")
{
    const Fonts fonts(test::font_files());
    const auto line_length = [&](double space) {
        Canvas canvas(fonts, 210, 297);
        draw_dimension(canvas, {50, 50 + space, 40, 45, 45, ""});
        double longest = 0;
        for (const Mark& mark : canvas.page().marks)
            if (const auto* path = std::get_if<Path>(&mark.what); path && !path->closed) longest = std::max(longest, path->points[1].x - path->points[0].x);
        return longest;
    };
    CHECK(line_length(9) == Approx(9));
    CHECK(line_length(8.9) > 8.9 + 6);
}

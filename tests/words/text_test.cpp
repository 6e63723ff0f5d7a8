// Text that people see: what no file may hold, and how it is shown where it stands in a message.
#include "text.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("hidden characters by their kind, and their neighbours that are seen")
{
    // First and last of each range. Source: The Unicode Standard, DerivedCoreProperties.txt, Default_Ignorable_Code_Point; chapter 23 of the
    // standard for noncharacters; from memory.
    for (const char32_t point : {0x00, 0x09, 0x0A, 0x1F, 0x7F, 0x80, 0x9F, 0xAD, 0x34F, 0x61C, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x180B, 0x180E, 0x180F, 0x200B, 0x200C,
                                 0x200D, 0x200E, 0x200F, 0x2028, 0x2029, 0x202A, 0x202B, 0x202C, 0x202D, 0x202E, 0x2060, 0x2066, 0x2067, 0x2068, 0x2069, 0x206F, 0x3164,
                                 0xFDD0, 0xFDEF, 0xFE00, 0xFE0F, 0xFEFF, 0xFFA0, 0xFFF9, 0xFFFB, 0xFFFE, 0xFFFF, 0x1BCA0, 0x1D173, 0x1D17A, 0x1FFFE, 0x1FFFF, 0xE0001,
                                 0xE0041, 0xE007F, 0xE01EF, 0x10FFFE, 0x10FFFF}) {
        INFO(std::hex << static_cast<unsigned>(point));
        CHECK(is_hidden(point));
        CHECK(first_hidden("a" + utf8(point) + "b") == std::optional(point));
        CHECK(quoted("a" + utf8(point)) == "\"a?\"");
    }
    for (const char32_t point : {0x20, 0x7E, 0xA0, 0xAC, 0xAE, 0x34E, 0x350, 0x61B, 0x1161, 0x2010, 0x2027, 0x202F, 0x2070, 0xFDCF, 0xFDF0, 0xFE10, 0xFFFC, 0xFFFD, 0x1F69C,
                                 0x1FFFD, 0xF0000}) {
        INFO(std::hex << static_cast<unsigned>(point));
        CHECK_FALSE(is_hidden(point));
        CHECK(quoted(utf8(point)) == "\"" + utf8(point) + "\"");
    }
    CHECK_FALSE(first_hidden("M\u00fcller & S\u00f6hne, \u6F22\u5B57"));
}

TEST_CASE("a hidden character is named by its code")
{
    CHECK(code_of(0x9) == "U+0009");
    CHECK(code_of(0x202E) == "U+202E");
    CHECK(code_of(0xE0041) == "U+E0041");
    CHECK(code_of(0) == "U+0000");
    CHECK(is_control(0x9));
    CHECK(is_control(0));
    CHECK_FALSE(is_control(0x202E));
}

TEST_CASE("what comes along with pasted text is mended")
{
    CHECK(with_plain_blanks("742\u00A0mm") == "742 mm");
    CHECK(with_plain_blanks("1\u202F000\u2009x\u3000y") == "1 000 x y");
    CHECK(with_plain_blanks("Acker\u00ADschlepper") == "Ackerschlepper");
    CHECK(with_plain_blanks("\u00AD") == "");
    CHECK(with_plain_blanks("plain") == "plain");
    CHECK(with_plain_blanks("\u202E") == "\u202E");
}

TEST_CASE("a quoted text is cut by its characters")
{
    CHECK(quoted(std::string(40, 'x')) == "\"" + std::string(40, 'x') + "\"");
    CHECK(quoted(std::string(100, '7')) == "\"" + std::string(40, '7') + "...\"");
    CHECK(quoted("\xFF\u00e4") == "\"?\u00e4\"");
    CHECK(printable("a\xFF\u202E\n") == "a???");
}

// Texts inside formulas.
#include "spreadsheet/formula_text.hpp"

#include "support/catch.hpp"

using namespace shaftcut;

TEST_CASE("a text in a formula stands in quotation marks, its own doubled")
{
    CHECK(text_in_formula("") == "\"\"");
    CHECK(text_in_formula("the half's") == "\"the half's\"");
    CHECK(text_in_formula("press \"OK\"") == "\"press \"\"OK\"\"\"");
}

TEST_CASE("an expression in a text is computed between its parts")
{
    const std::string count = expression_in_text("COUNT(A1,\"x\")");
    CHECK(text_in_formula("CONFIRM " + count + " FIRST") == "\"CONFIRM \"&COUNT(A1,\"x\")&\" FIRST\"");
    CHECK(text_in_formula(count + count) == "COUNT(A1,\"x\")&COUNT(A1,\"x\")");
}

TEST_CASE("a long text stands in a formula in parts of 255 characters")
{
    const auto of = [](std::size_t count) {
        std::string text;
        for (std::size_t i = 0; i < count; ++i) text += "é";
        return text;
    };
    CHECK(text_in_formula(of(255)) == "\"" + of(255) + "\"");
    CHECK(text_in_formula(of(511)) == "\"" + of(255) + "\"&\"" + of(255) + "\"&\"é\"");
}

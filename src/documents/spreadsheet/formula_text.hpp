// Texts inside formulas.
#pragma once

#include <string>

namespace shaftcut {

// The text as a formula holds it: in quotation marks, those inside it doubled, in parts of at most 255 characters, as programs take them.
// What expression_in_text() put into it is computed: "a" & expression & "b".
// Checked in tests/documents/spreadsheet/formula_text_test.cpp.
std::string text_in_formula(const std::string& text);

// In a text that goes into a formula, what this expression gives there.
std::string expression_in_text(const std::string& expression);

}  // namespace shaftcut

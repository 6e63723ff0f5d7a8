// A workbook's own XML, read back for tests.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace shaftcut::test {

struct SheetCell {
    std::string reference;  // "B3"
    bool locked = true;
    bool number = false;    // a number, written or a formula's value
    std::string value;      // of a number, a text or a formula as the file holds it
    std::string formula;    // empty: none
    double points = 0;      // of its lettering
};

struct SheetPart {
    std::string name;
    bool is_protected = false;
    bool has_password = false;
    std::string paper;   // the format's number of the paper's size
    std::string header;
    bool one_page_wide = false;
    bool one_page = false;
    double width = 0;    // of all columns, in characters
    std::map<std::string, SheetCell> cells;
    std::map<int, double> row_heights;  // points, by row number as people count them
    std::set<std::string> validated;  // cells with a rule
};

struct WorkbookParts {
    std::vector<SheetPart> sheets;
    std::map<std::string, std::string> names;  // what each workbook-level name stands for
    std::vector<std::vector<std::string>> charts;  // the texts of each chart's titles
    std::map<std::string, std::string> titles; // rows printed on each page, by sheet number

    // The cell of the Order sheet that a name stands for; nothing where it is an expression or another sheet's.
    std::optional<std::string> order_cell(const std::string& name) const;
    // The cell that a name stands for, on whichever sheet; null where it is an expression.
    const SheetCell* cell_named(const std::string& name) const;
};

// Unpacks with Python's zipfile; a workbook that cannot be read fails the test.
WorkbookParts parts_of(const std::string& bytes);

}  // namespace shaftcut::test

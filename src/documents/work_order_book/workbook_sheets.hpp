// The sheets of the work order's workbook. Private to it.
#pragma once

#include "spreadsheet/sheet_builder.hpp"
#include "work_order_book/workbook_lines.hpp"

namespace shaftcut::workbook {

// The sheets that formulas name.
inline constexpr const char *order_sheet_id = "Order", *checks_sheet_id = "Checks", *basis_sheet_id = "Basis", *machine_sheet_id = "Machine";

// Where the Basis sheet says yes or no to each finding.
struct Finding {
    std::string cell;
    bool refuses = true;
    std::string words_from_here;  // now, of the first that is found, from this one on; empty: none
};

struct BasisSheet {
    Worksheet sheet;
    Names names;
    std::vector<Finding> findings;
};
BasisSheet basis_sheet(const WorkOrder& order, const std::string& footer, const Wording& w);

// What is typed in, cut and measured again, on one printed page; and behind it what the checks make of it.
struct OrderSheets {
    Worksheet order, checks;
    Names names;
};
OrderSheets order_sheets(const WorkOrder& order, const std::vector<Finding>& findings, const std::string& footer, const Wording& w);

// What the sheet is about: whose shaft, for which machine, as it came in, who measured.
void add_heading(SheetBuilder& sheet, const WorkOrder& order, const Wording& w);

// The parts of these sheets, each of which ends its last row.
void add_inputs(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w);
void add_confirmations(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w);
void add_cut(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w);
void add_lengths_after(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w);
// Gives the cells of the checks' results.
std::vector<std::string> add_checks(SheetBuilder& sheet, Names& names, const WorkOrder& order, const std::vector<Finding>& findings, const Wording& w);
// What is measured after the cut with what each part is by it; and what the shaft then gives.
void add_parts_as_cut(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w);
void add_shaft_as_cut(SheetBuilder& sheet, Names& names, const WorkOrder& order, const Wording& w);

Worksheet parts_sheet(const WorkOrder& order, const std::string& footer, const Wording& w);

// One for each machine whose geometry is known.
Worksheet machine_sheet(const WorkOrder& order, const MachineView& view, const std::string& name, const std::string& footer, const Wording& w);

// The words at the head of every printed page of a sheet.
std::string head_of_pages(const WorkOrder& order, const std::string& sheet, const Wording& w);

// A formula, or its value where it has no text.
CellContent content_of(const CellFormula& formula);
// A formula that is empty while the verdict is refused.
CellFormula unless_refused(const WorkOrder& order, const std::string& expression, std::variant<double, std::string> now, const Wording& w);
// A number format: inches and a fraction. (Two question marks before a slash would be a trigraph.)
inline constexpr const char* fraction_format = "# ?\?/??";
// Sixteenths of an inch as the cut sheet prints them: what is kept rounded down, what is cut to the nearest.
std::string sixteenths_expression(const std::string& millimetres, Toward toward);
double sixteenths(Length length, Toward toward);

}  // namespace shaftcut::workbook

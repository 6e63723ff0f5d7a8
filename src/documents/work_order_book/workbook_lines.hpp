// What the sheets of the work order's workbook are made of: its inputs, the lengths computed from them, the named expressions
// that hold the cut, and the checks, each as a formula beside the value it has now. Private to the workbook.
//
// While a job is refused no cell may hold a cut, a kept or a new closed length: these live in named expressions only, and the
// cells that show them are empty while the verdict is "refused".
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "shaftcut/trade/order/work_order.hpp"
#include "spreadsheet/formula_text.hpp"
#include "spreadsheet/spreadsheet.hpp"
#include "wording.hpp"
#include "work_order_book/cell_words.hpp"

namespace shaftcut::workbook {

// A name and the expression it stands for, without "=".
using Names = std::vector<std::pair<std::string, std::string>>;

// A length that can be typed in, as measured.
struct InputLine {
    std::string name;
    std::string label;
    std::string measured;  // from where to where, in words
    std::optional<Length> issued;
    Length plus_minus;                  // as issued
    bool required = false;
    std::string plus_minus_expression;  // in mm, where it follows what is typed; empty: it stays
    bool used = true;                   // false: a guard that is not used again; nothing is typed there
};
std::vector<InputLine> input_lines(const WorkOrder& order, const Wording& w);

// One of the fit's four lengths: what its cell holds, and how what is typed there is read. With several fits the cells hold
// the deciding lengths; with a machine's geometry, what it gives where nothing was measured. A cell that is emptied, or holds
// that length, is the machine's; any other number is a measurement and wins over it.
struct FitInput {
    std::optional<Range> range;                // whose longest; nothing: the shortest
    std::string name;                          // "shortest", "longest_turning"
    std::string word;                          // "shortest", "turning": `_length` and `_plus_minus` are put behind it
    std::optional<Length> issued;
    bool between_inner_crosses = false;        // how a number is read; false: as the job's lengths were measured
    Length plus_minus;                         // of a number that is typed
    std::optional<Toleranced> at_least;        // of a range that some tractors leave out: what the others state
    const ExtremeLength* geometry = nullptr;   // null: nothing but what is typed is known

    std::string is_measured(Units units) const;  // an expression: true or false
};
std::vector<FitInput> fit_inputs(const WorkOrder& order);

// What a longest is at least where its range is not known: of several tractors some leave it out.
std::optional<Toleranced> known_or_at_least(const WorkOrder& order, Range range);
// An expression: true where this range's longest is known, and not only as at least something.
std::string is_sure(const WorkOrder& order, Range range);

// A figure that is computed from the inputs, in millimetres, with its tolerance where it has one.
struct LengthLine {
    std::string name;
    std::string label;
    CellFormula formula;
    std::string tolerance_name;  // empty: none
    CellFormula tolerance;
};
// The fit's lines among the inputs, and what each becomes between the inner crosses.
std::vector<InputLine> fit_lines(const WorkOrder& order, const Wording& w);
std::vector<LengthLine> fit_lengths(const WorkOrder& order, const Wording& w);
// Every length between the crosses that carry the tube yokes, and the halves and guards as the cut uses them.
std::vector<LengthLine> length_lines(const WorkOrder& order, const Wording& w);
// Where the tubes stop: shoulders, each half's path, the closed length they give, and what the measured one makes of them.
std::vector<LengthLine> stop_lines(const WorkOrder& order, const Wording& w);
// The greater of b + s_B and a + s_A, the half lengths exchanged; nothing where one was not measured or a shoulder is not stated.
std::optional<Toleranced> exchanged_closed(const WorkOrder& order);
// Where a half's shoulder comes from, in words.
std::string shoulder_origin(const WorkOrder& order, Tube tube, const Wording& w);
// Expressions, true or false: whether the half was measured; whether its shoulder is its own, as the job states it; whether no second
// figure bears this half's shoulder out.
std::string is_measured(Tube tube);
std::string owns_shoulder(const WorkOrder& order, Tube tube);
std::string stop_is_unconfirmed(Tube tube, const Wording& w);
// Whether the closed length disagrees with the halves.
std::string lengths_disagree(const Wording& w);

// A fixed figure in millimetres and where it comes from; unknown ones hold no number.
struct ConstantLine {
    std::string name;
    std::string label;
    std::optional<double> millimetres;
    std::string origin;
};
std::vector<ConstantLine> shaft_constants(const WorkOrder& order, const Wording& w);
std::vector<ConstantLine> limit_constants(const WorkOrder& order, const Wording& w);

// The most to which each half's path can close, for the worst case of closing.
Names closing_expressions(const Wording& w);
// need, cut, what is left, what it closes to, and what else the checks' figures are made of, in millimetres.
Names cut_expressions(const WorkOrder& order);
Names check_expressions(const WorkOrder& order);
// What is sawn off for a need, both in mm: nothing, or up to the saw's step and at least its least cut.
std::string sawn_expression(const std::string& need);
std::string least_overlap_expression(const WorkOrder& order, Range range, const std::string& closed_overlap);
// Every check's figures in millimetres, which a refused job shows too.
std::vector<LengthLine> figure_lines(const WorkOrder& order, const Wording& w);

// What the lengths measured after the cut make of the shaft; nothing until one is typed in.
std::vector<LengthLine> as_cut_lines(const WorkOrder& order, const Wording& w);

// One thing that cannot be, or that is doubtful; `formula` says yes or no.
struct FindingLine {
    std::string label;
    CellFormula formula;
    bool refuses = true;  // false: a warning
    CellFormula more{};   // a text put behind the label where it is found; without a formula: nothing
};
// Those that refuse first; the very first is whether every input can be read.
std::vector<FindingLine> finding_lines(const WorkOrder& order, const Wording& w);
void add_bound_findings(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w);
void add_stop_findings(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w);
void add_elsewhere_findings(std::vector<FindingLine>& lines, const WorkOrder& order, const Wording& w);

// One of two words as a formula.
std::string word_if(const std::string& condition, CellWord then, CellWord otherwise, const Wording& w);
// `word`, a formula, where `guard` holds, else the word for no.
std::string only_where(const std::string& guard, const std::string& word, const Wording& w);
// The word for yes where the condition holds, else that for no; the same where `guard` holds, else that for no.
std::string yes_if(const std::string& condition, const Wording& w);
std::string yes_if(const std::string& guard, const std::string& condition, const Wording& w);
// A word as a formula yields it; true where the cell or name holds it.
std::string in_formula(CellWord word, const Wording& w);
std::string holds(const std::string& cell, CellWord word, const Wording& w);

// A confirmation that this order may ask for before sawing, whether and with what figures.
struct ConfirmLine {
    Confirmed what = Confirmed::closed;
    std::string label;              // what is measured, from where to where
    std::string asked;              // an expression, true or false
    std::string expected, doubt;    // names or expressions in mm; empty for a look
    CellFormula why;
};
std::vector<ConfirmLine> confirm_lines(const WorkOrder& order, const Wording& w);

// A check's formulas; its figures are names of figures in millimetres, empty where the check has none.
struct LiveCheck {
    std::string known;                           // true where the check can be made
    std::string unknown;                         // its result elsewhere; empty: not checked
    std::string value, worst, limit;
    std::string fails = "FALSE", warns = "FALSE";
    std::string sure = "TRUE";                   // false where it can fail and cannot pass
    bool of_length = true;                       // false: its value is no length, and contradicting lengths leave it as it is
};
// Nothing for a check that no length decides; `consistency` is made of finding_lines instead.
std::optional<LiveCheck> live_check(const WorkOrder& order, CheckId id, const Wording& w);

// What a check asks, whatever the lengths.
std::string what_is_asked(const WorkOrder& order, CheckId id, const Wording& w);

// `text` with THIS and OTHER replaced by the words of the tube and of the other tube.
std::string for_tube(std::string text, Tube tube);
// a < b by at least 0.01 mm, as an expression; `a` is a name or a number, so that it can be taken away as it is.
std::string clearly_below_expression(const std::string& a, const std::string& b);

// `formula` where `name` holds a number.
std::string if_number(const std::string& name, const std::string& formula, const std::string& otherwise = "\"\"");
// A length in millimetres less what it holds beyond the inner crosses.
std::string less_spacing(const std::string& formula, Length beyond);
// An input's name as an expression in millimetres.
std::string in_mm(const std::string& name, Units units);

// Without its tolerance.
std::optional<Length> value_of(const std::optional<Toleranced>& length);
// A length as a formula's value: empty text where it is not known.
std::variant<double, std::string> now_in_mm(std::optional<Length> length);
// A number as a document in these units holds it; inches with the fewest decimals that read back as the same length.
double in_units(Length length, Units units);
// An expression in millimetres as an expression in the document's units.
std::string shown(const std::string& millimetres, Units units);
// "742.5": millimetres for a formula.
std::string literal(Length length);

// Whether the fit's inputs hold the deciding telescoping lengths of several fits.
bool has_deciding_inputs(const WorkOrder& order);

// Whether any half's guard is missing or not used again.
bool lacks_guard(const WorkOrder& order);

// "Tractor half (inner tube)".
std::string half_label(const WorkOrder& order, Tube tube, const Wording& w);

}  // namespace shaftcut::workbook

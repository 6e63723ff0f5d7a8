// What can be wrong with a file: what was found, in figures and enumerators; texts in it are the file's own (names of elements,
// attributes and columns, values as they stand there) or those of a list that it names things from. wording/reading says each.
#pragma once

#include <cstddef>
#include <string>
#include <variant>
#include <vector>

#include "parse.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/job.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/trade/hitch/findings.hpp"
#include "shaftcut/trade/saw/saw.hpp"
#include "source/spot.hpp"

namespace shaftcut {

// A value as it stands in the file, and the attribute or column that states it; no name where the value stands alone.
struct Stated {
    std::string name, value;
    bool operator==(const Stated&) const = default;
};

// Of one value.

// It cannot be read as what it should be.
struct UnreadableValue {
    std::string name;
    ParseFault fault;
    bool operator==(const UnreadableValue&) const = default;
};

// It can be read, and is not such a thing, whatever else stands in the file.
enum class Unfit {
    no_length, no_power, no_piece, cost, view_angle, order_of_device, order_number, listed_order, date, profile, not_ascending, pin_hole_before_seat, encoding, version, reference,
    tag_in_value, shortened, under_no_name, error_value, formula_without_value, cell_number, currency, no_coin, not_above_spacers
};
struct WrongValue {
    Unfit why;
    Stated stated;
    bool operator==(const WrongValue&) const = default;
};

// Of a list: digits that could be in groups or have decimals. `whole`: how the number without its separators is written; `decimals`: how the
// other one is, empty where it can be none.
struct NumberInDoubt {
    Stated stated;
    std::string whole, decimals;
    bool operator==(const NumberInDoubt&) const = default;
};

// Of a list: a day that is not clear, and the one or two that it can be.
struct DateInDoubt {
    Stated stated;
    std::vector<std::string> days;
    bool operator==(const DateInDoubt&) const = default;
};

// A length that none of its kind can have, by the bounds of its kind (bounds_of.hpp). `range`: of a longest length in a list of orders.
enum class Bounded { closed, shortest, longest, shoulder, spacing, kerf, plus_minus };
struct OutsideBounds {
    Bounded kind;
    Stated stated;
    Length length;
    std::optional<Range> range = {};
    bool operator==(const OutsideBounds&) const = default;
};

// It is none of these words; `nearest` is empty where none is near.
struct UnknownWord {
    Stated stated;
    std::vector<std::string> words;
    std::string nearest = {};
    bool operator==(const UnknownWord&) const = default;
};

// It is none of the names of a list: the nearest of them, or its first ones and how many more there are.
enum class NamesOf { the_catalogue, this_catalogue };
struct UnknownName {
    Stated stated;
    NamesOf list;
    std::string nearest = {};
    std::vector<std::string> first = {};
    std::size_t more = 0;
    bool operator==(const UnknownName&) const = default;
};

// Nothing is written where something must be. `words`: those of which one would do.
enum class EmptyOf { whole_numbers, name, lengths, series, shortest, longest_turning, word };
struct Empty {
    EmptyOf what;
    std::string name;
    std::vector<std::string> words = {};
    bool operator==(const Empty&) const = default;
};

enum class TextOf { attribute, column, label };
struct TooLong {
    TextOf what;
    Stated stated;
    std::size_t characters, most;
    bool operator==(const TooLong&) const = default;
};

// A word that an attribute names twice.
struct NamedTwice {
    Stated stated;
};

// A character that nobody sees. `attribute`: in which it stands, or none.
enum class HiddenIn { attribute, text, line, file };
struct Hidden {
    HiddenIn where;
    std::string attribute;
    char32_t point;
};

// Of elements, attributes and columns.

struct MissingAttribute { std::string element, attribute; };
struct MissingElement { std::string element, child; };
struct MissingEnd { End side; };

enum class UnknownKind { attribute, element };
struct Unknown {
    UnknownKind kind;
    std::string name, element;
    std::vector<std::string> known;
};

struct SecondAttribute {
    Stated stated;
    Spot first;
};
struct SecondElement {
    std::string element, child;
    Spot first;
};
// A second child for one word, of which there is one for each: an end for a side, a half for a tube.
struct SecondOfWord { std::string element, attribute, word; };
// A second thing of one name or figure.
enum class SecondOf { connection, series, yoke, rating, part, column, list, heading, value, article, price, operation };
struct SecondNamed {
    SecondOf what;
    std::string name;
};
// Of two orders whose documents would have one name.
struct SecondOrder {
    std::string order, earlier;
    int line;
};

// What stands where it cannot; `beside` is the element that it stands in or beside, or that would be right.
enum class Misplacement { other_root, second_root, text };
struct Misplaced {
    Misplacement what;
    std::string found, beside;
};

// More than is read. `name`: of the element that is nested too deep.
enum class ManyOf { fits, other_tractors, crosses, tubes, readings, orders, bars, piece_lines, lines, fields, marks, nested, faults };
struct TooMany {
    ManyOf what;
    std::size_t most;  // of faults: how many are not listed
    std::string name = {};
};

// Of the header and lines of a list.
struct UnknownColumn {
    std::string name, nearest;
    std::vector<std::string> columns;
};
struct MissingColumns { std::vector<std::string> names, columns; };
// Of a file that is added to another one, whose lengths are in other units.
struct OtherUnits { Units units; };
// Of a list with a map: an article that the map does not hold, and a column in which a line says other than its article.
struct UnknownArticle {
    Stated stated;
    std::string map, nearest;
    bool operator==(const UnknownArticle&) const = default;
};
struct OtherThanArticle {
    Stated stated;
    std::string article, states;
    bool operator==(const OtherThanArticle&) const = default;
};
struct NoHeader { std::vector<std::string> columns; };
struct FieldCount {
    std::size_t fields, of_header;
    bool operator==(const FieldCount&) const = default;
};

// Of the shaft, its series and its machine.

// Stated beside a series that states it: of the shaft, or of an end whose half is of `half_series`.
struct BesideSeries {
    std::string attribute;
    std::string half_series = {};
};
struct OwnSeries {
    Tube tube;
    std::string series;
};
// `column`: in a list, the one that says wide-angle.
struct NoWideAngle {
    std::string series;
    std::string column = {};
    bool operator==(const NoWideAngle&) const = default;
};
struct NoSpacing { End end; };
// In a job to choose a shaft for: what only a shaft that is there can have.
struct OfShaftThatIsThere { std::string name; };
// Nothing says from which cross these lengths run. `series` is empty where there is none.
enum class ReferenceOf { closed_measured, closed_ordered, fit, column };
struct NoReference {
    ReferenceOf what;
    std::string series = {};
    std::string column = {};
    bool operator==(const NoReference&) const = default;
};
struct GuardIncomplete {
    Tube tube;
    GuardUse use;
};
// Of what was measured after the cut: another order's number than the job's; the guard of a half that the job says is not used again.
struct OtherOrder {
    std::string found, order;
};
struct UnusedGuard {
    std::string attribute;
    Tube tube;
    GuardUse use;
};
// Lengths of a catalogue are said in its own unit.
struct ShoulderShort {
    Stated stated;
    Tube tube;
    Length seat;
    Units units;
};
struct PartIndependent {
    PartKind part;
    std::string attribute;
};
struct MissingView { std::string attribute; };
// A "?" in the place of a figure or word: nobody has measured it or looked yet.
struct StillToFill { std::string name; };
struct AngleAndViews { Range range; };
struct WithoutFit {
    std::string column;
    bool operator==(const WithoutFit&) const = default;
};
// A yoke whose length is needed: by a machine's geometry, or by a fit between grooves. `own`: the end must state it itself.
struct UnknownYoke {
    bool of_machine;
    End end;
    bool own;
    std::optional<std::string> series, connection;
};

// What no name or figure belongs to: of two things said, or of one that is not said.
enum class Contradiction {
    other_tractors, two_machines, two_spacings, spacing_of_standard_joint, shoulder_and_stop_depth, stop_depth_alone, cut_to_alone, guard_missing_but_stated, guard_and_stands_out, reference_of_grooves,
    column_reference_of_grooves, no_shortest, no_turning, no_turning_of_machine, neither_series_nor_shape, closed_and_fit, neither_closed_nor_fit, column_closed_and_fit,
    column_neither_closed_nor_fit, no_order_in_list, no_piece_in_list,
    at_of_standard_joint, second_cross_of_standard_joint, caps_read_both_ways, item_for_one_thing, item_price, price_range, tax_note_alone, column_price, list_without_currency, crosses_before_choice, reference_before_choice
};

// Of a file's form.
enum class FormFault {
    xml_empty, xml_too_large, no_element, not_closed, broken_attribute, broken_instruction, endless_comment, document_type, broken, declaration, text_outside, utf16, nul,
    xml_not_utf8, csv_too_large, csv_not_utf8, csv_not_utf16, quote_inside, quote_open, text_after_quote, no_workbook,
    workbook_locked, workbook_too_large
};

// A machine that cannot be, or has no room for the shaft; in the file's unit.
struct OfMachine {
    HitchFault fault;
    Units units;
};

// A piece that cannot be sawn, or a list; in the call's unit.
struct OfSaw {
    SawFinding found;
    Units units;
};

using FaultFinding = std::variant<UnreadableValue, WrongValue, NumberInDoubt, DateInDoubt, OutsideBounds, UnknownWord, UnknownName, Empty, TooLong, NamedTwice, Hidden, MissingAttribute, MissingElement, MissingEnd,
                                  Unknown, SecondAttribute, SecondElement, SecondOfWord, SecondNamed, SecondOrder, Misplaced, TooMany, UnknownColumn, MissingColumns, OtherUnits, UnknownArticle, OtherThanArticle, NoHeader,
                                  FieldCount, BesideSeries, OwnSeries, NoWideAngle, NoSpacing, OfShaftThatIsThere, NoReference, GuardIncomplete, OtherOrder, UnusedGuard, ShoulderShort, PartIndependent, MissingView, StillToFill,
                                  AngleAndViews, WithoutFit, UnknownYoke, Contradiction, FormFault, OfMachine, OfSaw>;

}  // namespace shaftcut

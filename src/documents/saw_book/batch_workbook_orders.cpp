// The sheet Orders: a row for each order, its lengths as formulas over the row's own inputs.
#include <fmt/format.h>

#include <array>

#include "build/build_words.hpp"
#include "saw_book/batch_workbook_sheets.hpp"
#include "saw_book/saw_book_words.hpp"
#include "shaft_title_words.hpp"
#include "spreadsheet/sheet_builder.hpp"

namespace shaftcut::batch_workbook {
namespace {

using saw_book_words::Caption;
using workbook::SheetBuilder;
namespace style = workbook::style;

// What is needed at the bench comes first and is printed, few enough columns for capitals of about 2 mm on a landscape sheet; then what is read
// on the screen, and the inputs.
using enum saw_book_words::OrderColumn;
using Column = saw_book_words::OrderColumn;
constexpr std::array<double, 35> widths{10, 12, 6, 11, 8, 8, 8, 8, 8, 8, 8, 6, 6, 8, 8, 9, 12, 9, 120, 28, 28, 40, 11, 11, 11, 14, 11, 11, 11, 11, 11, 11, 11, 11, 11};
constexpr int number_of(Column column) { return static_cast<int>(column); }
static_assert(widths.size() == static_cast<std::size_t>(guard_seat_outer) + 1);
constexpr int title_rows = 4, first_row = title_rows + 1;
constexpr double longest_input = workbook::longest_input(Units::mm), line_points = 12.5, characters_of_reasons = 120, most_points_of_reasons = 4 * line_points;

// The column of the outer tube stands behind the inner one's.
Column of(Column inner, Tube tube) { return static_cast<Column>(number_of(inner) + static_cast<int>(tube)); }

// Lengths are whole micrometres and steps whole halves of one: 0.00925 and 0.00975 lie between the greatest difference that is
// ignored and the least that is not.
std::string down(const std::string& length) { return fmt::format("IF({0}>0,ROUND(ROUNDDOWN(({0}+0.00925)/step,0)*step,3),{0})", length); }
std::string up(const std::string& length) { return fmt::format("ROUND(ROUNDUP(MAX(0,{}-0.00975)/step,0)*step,3)", length); }

// The cells of one order.
class RowMaker {
public:
    RowMaker(const BatchOrder& batch_order, int row, const Wording& w) : order_(batch_order), row_(row), w_(w) {}

    SheetRow run()
    {
        put_heading();
        if (order_.built) {
            put_inputs(order_.built->inputs);
            put_lengths();
            put_use();
        } else {
            put(verdict, say(order_.verdict == BuildVerdict::held ? Caption::held : Caption::do_not_build, w_), style::result());
            put_reasons();
        }
        return std::move(made_);
    }

private:
    void put(Column column, CellContent content, const CellStyle& style) { made_.cells.push_back({row_, number_of(column), style, std::move(content), 1}); }
    std::string cell(Column column) const { return column_letters(number_of(column)) + std::to_string(row_ + 1); }

    void put_heading()
    {
        put(order, order_.order, style::label());
        put(due, order_.due, style::label());
        put(customer, order_.customer, style::label());
        put(machine, order_.machine, style::label());
        put(shaft, say(order_.shaft_title, Wording(Units::mm)), style::label());
        if (order_.built) put(count, static_cast<double>(order_.count), style::input());
        else put(count, static_cast<double>(order_.count), style::figure());
    }

    void put_reasons()
    {
        std::vector<std::string> why = say(order_.reasons, w_);
        for (const OpenPoint& point : order_.open) why.push_back(shaftcut::say(point, w_));
        const std::string text = running_text(why);
        made_.points = std::min(most_points_of_reasons, line_points * (2 + static_cast<double>(text.size()) / characters_of_reasons));
        put(measured, say(Caption::see_own_sheet, w_), style::label());
        put(reasons, text, style::label());
    }

    void put_input(Column column, const std::optional<Length>& length) { put(column, length ? CellContent(length->mm()) : CellContent(), style::input()); }

    void put_inputs(const BuildInputs& inputs)
    {
        put_input(ordered, inputs.closed);
        put_input(beyond, inputs.beyond);
        put_input(setback, inputs.setback);
        const bool guard = order_.built->lengths.guard_half[Tube::inner].has_value();
        for (const Tube tube : both_tubes) {
            put_input(of(shoulder, tube), inputs.shoulder[tube]);
            put_input(of(seat, tube), inputs.seat[tube]);
            put_input(of(guard_shoulder, tube), guard ? inputs.guard_shoulder[tube] : std::nullopt);
            put_input(of(guard_seat, tube), guard ? inputs.guard_seat[tube] : std::nullopt);
        }
    }

    void put_formula(Column column, const std::string& text, Length now, const CellStyle& style) { put(column, CellFormula{text, now.mm()}, style); }

    // Up to the face that stops it.
    std::string room_to(Column face) const { return fmt::format("ROUND({}-{}-{},3)", cell(ordered), cell(beyond), cell(face)); }

    std::string guard_half_formula(Tube tube) const
    {
        const std::string wanted = fmt::format("ROUND({}-{},3)", cell(of(half, tube)), cell(setback));
        const bool stopped = order_.built->inputs.guard_shoulder[other(tube)].has_value();
        const std::string stepped = stopped ? "MIN(" + up(wanted) + "," + down(room_to(of(guard_shoulder, other(tube)))) + ")" : up(wanted);
        return fmt::format("IF({0}<=0,{0},{1})", wanted, stepped);
    }

    void put_tube(Tube tube)
    {
        const BuiltLengths& lengths = order_.built->lengths;
        put_formula(of(half, tube), down(room_to(of(shoulder, other(tube)))), lengths.half[tube], style::figure());
        put_formula(of(blank, tube), fmt::format("ROUND({}-{},3)", cell(of(half, tube)), cell(of(seat, tube))), lengths.blank[tube], style::great());
        if (const auto& hole = lengths.pin_hole[tube]) put(of(pin_hole, tube), hole->mm(), style::figure());
        if (!lengths.guard_half[tube]) return;
        put_formula(of(guard_half, tube), guard_half_formula(tube), *lengths.guard_half[tube], style::figure());
        put_formula(of(guard_blank, tube), fmt::format("ROUND({}-{},3)", cell(of(guard_half, tube)), cell(of(guard_seat, tube))), *lengths.guard_blank[tube], style::great());
    }

    // Only lengths that were checked may be built to.
    void put_verdict()
    {
        const BatchLengths& built = *order_.built;
        std::string same = fmt::format("{}={}", cell(closed), built.closed.mm());
        for (const Tube tube : both_tubes) {
            same += fmt::format(",{}={}", cell(of(blank, tube)), built.lengths.blank[tube].mm());
            if (const auto& guard = built.lengths.guard_blank[tube]) same += fmt::format(",{}={}", cell(of(guard_blank, tube)), guard->mm());
        }
        const std::string build = say(Caption::build, w_);
        put(verdict, CellFormula{fmt::format("IF(AND({}),\"{}\",\"{}\")", same, build, say(Caption::changed, w_)), build}, style::result());
    }

    void put_lengths()
    {
        for (const Tube tube : both_tubes) put_tube(tube);
        const std::string text = fmt::format("ROUND(MAX({}+{},{}+{})+{},3)", cell(half), cell(shoulder_outer), cell(half_outer), cell(shoulder), cell(beyond));
        put_formula(closed, text, order_.built->closed, style::great());
        put_verdict();
    }

    void put_use()
    {
        const BatchLengths& built = *order_.built;
        put(measured, saw_book_words::say(measured_from(built.has_wide_angle, built.reference), w_), style::label());
        for (const Range range : all_ranges) {
            const auto& longest = built.use.longest[range];
            const auto column = static_cast<Column>(number_of(working) + static_cast<int>(range));
            put(column, longest ? CellContent((*longest)[built.reference].mm()) : CellContent(say(Caption::not_at_all, w_)), style::figure());
        }
        if (!order_.mass) return;
        const std::int64_t of_one = *order_.mass / order_.count;  // in grams; the order's is a multiple
        put(mass, CellFormula{fmt::format("ROUND({}*{},3)", cell(count), static_cast<double>(of_one) / 1000), static_cast<double>(*order_.mass) / 1000}, style::figure());
    }

    const BatchOrder& order_;
    int row_;
    const Wording& w_;
    SheetRow made_;
};

// The saw's step is the same for all; where no order can be built there is none to state.
CellContent step_of(const Batch& batch)
{
    for (const BatchOrder& one : batch.orders) {
        if (!one.built) continue;
        const Fraction step = one.built->inputs.step_um;
        return static_cast<double>(step.numerator) / static_cast<double>(step.denominator) / 1000;
    }
    return {};
}

void add_title(SheetBuilder& sheet, const Batch& batch)
{
    const Wording w = wording_of(batch);
    sheet.put(0, saw_book_words::batch_title(batch.name, w), style::title(), 6);
    sheet.end_row(24);
    sheet.put(0, say(Caption::lengths_follow, w), style::small(), 12);
    sheet.end_row();
    sheet.put(0, say(Caption::saws_step, w), style::label(), 2);
    sheet.put(2, step_of(batch), style::input());
    sheet.allow_numbers(2, 0.001, longest_input, say(Caption::length_above_zero, w));
}

}  // namespace

std::string count_cell(std::size_t index) { return "Orders!" + absolute_cell(first_row + static_cast<int>(index), number_of(count)); }

NamedSheet orders_sheet(const Batch& batch, const std::string& footer)
{
    const Wording w = wording_of(batch);
    SheetBuilder sheet("Orders", {widths.begin(), widths.end()});
    add_title(sheet, batch);
    NamedSheet made{{}, {{"step", sheet.here(2)}}};
    sheet.end_row();
    sheet.empty_row();
    for (int column = 0; column <= number_of(guard_seat_outer); ++column) sheet.put(column, saw_book_words::head(static_cast<Column>(column), w), style::table_head());
    sheet.end_row(52);
    made.sheet = sheet.take(say(Caption::orders_header, w), footer, first_row);
    const int end = first_row + static_cast<int>(batch.orders.size());
    for (int column = number_of(ordered); column <= number_of(guard_seat_outer); ++column)
        made.sheet.rules.push_back({first_row, column, 0, longest_input, {}, say(Caption::length_range, w), end - first_row});
    made.sheet.rules.push_back({first_row, number_of(count), 0, most_shafts_of_an_order, {}, say(Caption::number_of_shafts, w), end - first_row});
    made.sheet.landscape = true;
    made.sheet.printed_columns = number_of(standing) + 1;
    made.sheet.rows_begin = first_row;
    made.sheet.rows_end = end;
    made.sheet.make_row = [&batch, w](int row) { return RowMaker(batch.orders[static_cast<std::size_t>(row - first_row)], row, w).run(); };
    return made;
}

}  // namespace shaftcut::batch_workbook

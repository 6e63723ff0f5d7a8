// Everything that stands behind sheet 1: all checks, how each length was read, and the limits in force.
#include "cut_sheet/cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

std::string result_words(CheckResult result)
{
    switch (result) {
    case CheckResult::pass: return "pass";
    case CheckResult::warn: return "WARNING";
    case CheckResult::fail: return "FAILED";
    case CheckResult::not_checked: break;
    }
    return "not checked";
}

struct CheckColumns {
    double name = 0, result = 47, value = 74, worst = 113, limit = 152;
    double width = 37;
};

void draw_check_titles(Sheets& sheets)
{
    sheets.flow({{Lead::heading, "All checks"}});
    const CheckColumns columns;
    Canvas& canvas = sheets.canvas();
    const double x = sheets.room().x, y = sheets.y() + 3.5;
    canvas.begin(Part::table);
    canvas.text({x + columns.name, y}, "check", lettering::strong);
    canvas.text({x + columns.result, y}, "result", lettering::strong);
    canvas.text({x + columns.value, y}, "value", lettering::strong);
    canvas.text({x + columns.worst, y}, "worst case", lettering::strong);
    canvas.text({x + columns.limit, y}, "limit", lettering::strong);
    sheets.move_to(sheets.y() + 5);
}

Block words_of(const Check& check)
{
    // A check that was not made says in its basis why, and often has nothing else to say.
    const bool said = check.says.find(check.basis) != std::string::npos;
    const std::string basis = said ? "" : " [" + check.basis + "]";
    return {Lead::none, check.says + basis};
}

void draw_check(Sheets& sheets, const WorkOrder& order, const Check& check)
{
    const CheckColumns columns;
    Canvas& canvas = sheets.canvas();
    const Rect room = sheets.room();
    const double y = sheets.y() + 4.4;
    canvas.begin(Part::table);
    canvas.line({room.x, sheets.y()}, {room.right(), sheets.y()}, pen::axis);
    const bool loud = check.result == CheckResult::fail || check.result == CheckResult::warn;
    canvas.text({room.x + columns.name, y}, to_word(check.id), lettering::strong);
    canvas.text({room.x + columns.result, y}, result_words(check.result), loud ? lettering::strong : lettering::note);
    canvas.fitted({room.x + columns.value, y}, columns.width, check_figure(order.units, check, check.value), lettering::note);
    canvas.fitted({room.x + columns.worst, y}, columns.width, check_figure(order.units, check, check.worst), lettering::note);
    canvas.fitted({room.x + columns.limit, y}, columns.width, check_figure(order.units, check, check.limit), lettering::note);
    sheets.move_to(canvas.paragraph({room.x + 4, sheets.y() + 5.2}, room.width - 4, words_of(check).text, lettering::note) + 1);
}

std::string plus_minus(const WorkOrder& order, const Toleranced& length, Rounded as = Rounded::measured)
{
    return printed_with_both(order, length.value, as) + " ± " + figure_of_with_unit(Rounded::doubt, length.plus_minus, order.units);
}

// ", turned left to the stop": where the job says that it was measured.
std::string at_text(const std::string& at) { return at.empty() ? "" : ", " + at; }

std::string angles_text(const PerEach<End, Angle>& angles)
{
    if (angles[End::tractor] == Angle() && angles[End::implement] == Angle()) return "";
    return ", read at joint angles of " + figure(angles[End::tractor]) + "° and " + figure(angles[End::implement]) + "°";
}

std::string run_text(const WorkOrder& order, Between between, Reference reference)
{
    if (between == Between::grooves) return " between the locking grooves";
    return order.reading.has_wide_angle ? " at the " + cross_name(reference) : " between the crosses";
}

void add_fit_rows(const WorkOrder& order, const FitReading& fit, Table& table)
{
    const std::string whose = fit.tractor.empty() || order.fits.size() == 1 ? "" : fit.tractor + ": ";
    const std::string run = run_text(order, fit.between, fit.reference);
    const auto telescoping = [&](const std::optional<Toleranced>& length, Rounded as) { return length ? printed_with_both(order, length->value, as) : "not known"; };
    if (fit.shortest) table.rows.push_back({whose + "shortest", plus_minus(order, *fit.shortest, Rounded::shortest) + run + at_text(fit.shortest_at), telescoping(fit.fit.shortest, Rounded::shortest)});
    for (const Range range : all_ranges)
        if (fit.longest[range])
            table.rows.push_back({whose + "longest, " + to_word(range), plus_minus(order, *fit.longest[range], Rounded::longest) + run + at_text(fit.longest_at[range]) + angles_text(fit.read_at[range]),
                                  telescoping(fit.fit.longest[range], Rounded::longest)});
}

void add_half_rows(const WorkOrder& order, Table& table)
{
    for (const TubeView& view : tube_views(order)) {
        const Half& half = order.reading.shaft.halves[view.tube];
        const std::optional<Toleranced>& length = view.guard ? half.guard : half.length;
        const std::string how = !length ? "not measured" : plus_minus(order, *length) + (view.measured ? "" : ", worked out from the closed length and the shoulder");
        const std::string what = std::string(to_word(view.end)) + " half, " + (view.guard ? "guard" : to_word(view.tube) + std::string(" tube"));
        table.rows.push_back({what, how, "inner cross to free end"});
    }
}

}  // namespace

void draw_checks(Sheets& sheets, const WorkOrder& order)
{
    sheets.ensure(40);
    draw_check_titles(sheets);
    for (const Check& check : order.checks) {
        const std::size_t before = sheets.count();
        sheets.ensure(height_of(sheets.canvas(), sheets.room().width - 4, words_of(check)) + 6);
        if (sheets.count() != before) draw_check_titles(sheets);
        draw_check(sheets, order, check);
    }
}

void draw_readings(Sheets& sheets, const WorkOrder& order)
{
    const double width = sheets.room().width;
    Table table{"How each length was read", {52, width - 52 - 46, 46}, {"length", "as stated", "between inner crosses"}, {}};
    const PerEach<Reference, Length>& closed = order.reading.closed_at;
    const std::string at_outer = order.reading.has_wide_angle && order.reading.reference == Reference::inner_cross
                                     ? " (" + printed_with_both(order, closed[Reference::outer_cross]) + " at the outer cross)" : "";
    table.rows.push_back({"closed", plus_minus(order, order.reading.closed) + run_text(order, Between::crosses, order.reading.reference) + at_outer,
                          printed_with_both(order, closed[Reference::inner_cross])});
    for (const FitReading& fit : order.fits) add_fit_rows(order, fit, table);
    add_half_rows(order, table);
    draw_table(sheets, table);
}

void draw_limits(Sheets& sheets, const WorkOrder& order)
{
    const double width = sheets.room().width;
    Table table{"Limits in force", {45, 20, width - 45 - 20}, {"limit", "value", "where it comes from"}, {}};
    for (const LimitRow& row : limit_rows())
        table.rows.push_back({row.name, limit_text(row.limit, order.limits[row.limit].value, order.units), order.limits.basis(row.limit)});
    draw_table(sheets, table);
}

}  // namespace shaftcut::cut_sheet

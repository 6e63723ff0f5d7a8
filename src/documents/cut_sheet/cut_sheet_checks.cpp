// Everything that stands behind sheet 1: all checks, how each length was read, and the limits in force.
#include "checks/check_sentences.hpp"
#include "checks/limit_words.hpp"
#include "checks/check_words.hpp"
#include "cut_sheet/cut_sheet_parts.hpp"

namespace shaftcut::cut_sheet {
namespace {

struct CheckColumns {
    double name = 0, result = 47, value = 74, worst = 113, limit = 152;
    double width = 37;
};

void draw_check_titles(Sheets& sheets, const Wording& w)
{
    sheets.flow({{Lead::heading, say(TableCaption::all_checks, w)}});
    const CheckColumns columns;
    Canvas& canvas = sheets.canvas();
    const double x = sheets.room().x, y = sheets.y() + 3.5;
    canvas.begin(Part::table);
    canvas.text({x + columns.name, y}, say(TableCaption::check, w), lettering::strong);
    canvas.text({x + columns.result, y}, say(TableCaption::result, w), lettering::strong);
    canvas.text({x + columns.value, y}, say(TableCaption::value, w), lettering::strong);
    canvas.text({x + columns.worst, y}, say(TableCaption::worst_case, w), lettering::strong);
    canvas.text({x + columns.limit, y}, say(TableCaption::limit, w), lettering::strong);
    sheets.move_to(sheets.y() + 5);
}

Block words_of(const Check& check, const Wording& w)
{
    const std::string says = say(check, w), why = basis(check, w);
    // A check that was not made says in its basis why, and often has nothing else to say.
    const bool said = says.find(why) != std::string::npos;
    return {Lead::none, says + (said ? "" : " [" + why + "]")};
}

void draw_check(Sheets& sheets, const Check& check, const Wording& w)
{
    const CheckColumns columns;
    Canvas& canvas = sheets.canvas();
    const Rect room = sheets.room();
    const double y = sheets.y() + 4.4;
    canvas.begin(Part::table);
    canvas.line({room.x, sheets.y()}, {room.right(), sheets.y()}, pen::axis);
    const bool loud = check.result == CheckResult::fail || check.result == CheckResult::warn;
    canvas.text({room.x + columns.name, y}, to_word(check.id), lettering::strong);
    canvas.text({room.x + columns.result, y}, loudly(check.result, w), loud ? lettering::strong : lettering::note);
    canvas.fitted({room.x + columns.value, y}, columns.width, check_figure(check, check.value, w), lettering::note);
    canvas.fitted({room.x + columns.worst, y}, columns.width, check_figure(check, check.worst, w), lettering::note);
    canvas.fitted({room.x + columns.limit, y}, columns.width, check_figure(check, check.limit, w), lettering::note);
    sheets.move_to(canvas.paragraph({room.x + 4, sheets.y() + 5.2}, room.width - 4, words_of(check, w).text, lettering::note) + 1);
}

void add_fit_rows(const WorkOrder& order, const FitReading& fit, Table& table, const Wording& w)
{
    const std::string tractor = order.fits.size() == 1 ? "" : fit.tractor;
    const Run run = run_of(order.reading, fit.between, fit.reference);
    const auto telescoping = [&](const std::optional<Toleranced>& length, Rounded as) { return length ? w.both(as, length->value) : say(TableCaption::not_known, w); };
    if (fit.shortest)
        table.rows.push_back({shortest_name(tractor, w), reading({*fit.shortest, Rounded::shortest, run, fit.shortest_at, {}}, w), telescoping(fit.fit.shortest, Rounded::shortest)});
    for (const Range range : all_ranges)
        if (fit.longest[range])
            table.rows.push_back({longest_name(tractor, range, w), reading({*fit.longest[range], Rounded::longest, run, fit.longest_at[range], fit.read_at[range]}, w),
                                  telescoping(fit.fit.longest[range], Rounded::longest)});
}

void add_half_rows(const WorkOrder& order, Table& table, const Wording& w)
{
    for (const TubeView& view : tube_views(order)) {
        const Half& half = order.reading.shaft.halves[view.tube];
        const std::optional<Toleranced>& length = view.guard ? half.guard : half.length;
        const std::string how = length ? half_reading(*length, view.measured, w) : say(TableCaption::not_measured, w);
        table.rows.push_back({half_part_name(view.end, view.tube, view.guard, w), how, say(TableCaption::inner_cross_to_free_end, w)});
    }
}

}  // namespace

void draw_checks(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    sheets.ensure(40);
    draw_check_titles(sheets, w);
    for (const Check& check : order.checks) {
        const std::size_t before = sheets.count();
        sheets.ensure(height_of(sheets.canvas(), sheets.room().width - 4, words_of(check, w)) + 6);
        if (sheets.count() != before) draw_check_titles(sheets, w);
        draw_check(sheets, check, w);
    }
}

void draw_readings(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    const double width = sheets.room().width;
    Table table{say(TableCaption::readings, w), {52, width - 52 - 46, 46},
                {say(TableCaption::length, w), say(TableCaption::as_stated, w), say(TableCaption::between_inner_crosses, w)}, {}};
    table.rows.push_back({closed_name(w), closed_reading(order.reading, w), w.both(Rounded::measured, order.reading.closed_at[Reference::inner_cross])});
    for (const FitReading& fit : order.fits) add_fit_rows(order, fit, table, w);
    add_half_rows(order, table, w);
    draw_table(sheets, table);
}

void draw_limits(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    const double width = sheets.room().width;
    Table table{say(TableCaption::limits, w), {45, 20, width - 45 - 20}, {say(TableCaption::limit, w), say(TableCaption::value, w), say(TableCaption::source, w)}, {}};
    for (const LimitRow& row : limit_rows())
        table.rows.push_back({row.name, limit_text(row.limit, order.limits[row.limit].value, w), say(order.limits.basis(row.limit), w)});
    draw_table(sheets, table);
}

}  // namespace shaftcut::cut_sheet

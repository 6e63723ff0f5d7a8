// Leaf 2, which stays in the office: all checks, what is no pass, the sources, and how each length was read.
#include <algorithm>

#include "checks/check_sentences.hpp"
#include "checks/check_words.hpp"
#include "cut_sheet/cut_sheet_parts.hpp"
#include "cut_sheet/refusal_words.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"

namespace shaftcut::cut_sheet {
namespace {

// Where limits come from and how values are computed, each once, by number.
class Sources {
public:
    std::string numbers(const std::vector<std::string>& clauses)
    {
        std::string numbers;
        for (const std::string& clause : clauses) {
            const auto at = std::find(all_.begin(), all_.end(), clause);
            const std::ptrdiff_t number = at - all_.begin() + 1;
            if (at == all_.end()) all_.push_back(clause);
            numbers += (numbers.empty() ? "" : ", ") + std::to_string(number);
        }
        return numbers;
    }
    std::vector<std::string> list(const Wording& w) const
    {
        std::vector<std::string> lines;
        for (const std::string& source : all_) lines.push_back(numbered_source(lines.size() + 1, source, w));
        return lines;
    }

private:
    std::vector<std::string> all_;
};

std::vector<std::string> row_of(const Check& check, Sources& sources, const Wording& w)
{
    // What was not checked says why below; that is no source.
    const std::string numbers = check.result == CheckResult::not_checked ? "" : sources.numbers(basis_clauses(check, w));
    return {to_word(check.id), check_figure(check, check.value, w), check_figure(check, check.worst, w), check_figure(check, check.limit, w), loudly(check.result, w), numbers};
}

// What the table of what is stated says already.
bool is_stated(const Note& note) { return std::holds_alternative<UnmeasuredTractors>(note) || std::holds_alternative<LooserLimit>(note); }

std::vector<std::string> notes_of(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> notes;
    for (const Note& note : order.notes)
        if (!is_stated(note)) notes.push_back(say(note, w));
    return notes;
}

// A sentence for what is no pass.
void draw_sentences(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> loud, unchecked;
    for (const Check& check : order.checks) {
        if (check.result == CheckResult::warn) loud.push_back(warning(check.id, says_without_places(check, w), w));
        if (check.result == CheckResult::not_checked) unchecked.push_back(not_checked(check.id, basis(check, w), w));
    }
    std::vector<std::string> confirmed;
    for (const Confirmation& one : order.confirm) confirmed.push_back(say(one, w));
    Blocks blocks;
    const auto add = [&](ListHeading heading, const std::vector<std::string>& texts) {
        if (!texts.empty()) blocks.push_back({Lead::heading, say(heading, w), false, Spacing::close});
        for (const std::string& text : texts) blocks.push_back({Lead::bullet, text, false, Spacing::close});
    };
    add(ListHeading::look_out, loud);
    add(ListHeading::confirmed_and_why, confirmed);
    add(ListHeading::not_checked, unchecked);
    add(ListHeading::notes, notes_of(order, w));
    sheets.flow(blocks);
}

// Read by the office alone, and seldom: near.
void draw_sources(Sheets& sheets, const std::string& all, const Wording& w)
{
    const Lettering letters{2.5, Weight::regular, 0.74, 1.4};
    const std::vector<std::string> lines = sheets.canvas().lines_of(all, sheets.room().width, letters);
    sheets.ensure(4 * letters.pitch());
    sheets.flow({{Lead::heading, say(ListHeading::sources, w), false, Spacing::close}});
    for (const std::string& line : lines) {
        sheets.ensure(letters.pitch());
        sheets.canvas().begin(Part::paragraph);
        sheets.move_to(sheets.canvas().paragraph({sheets.room().x, sheets.y()}, sheets.room().width, line, letters));
    }
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
    const double figure = 36.5, result = 22, source = 19;
    Table table{say(TableCaption::all_checks, w), {sheets.room().width - 3 * figure - result - source, figure, figure, figure, result, source},
                {say(TableCaption::check, w), say(TableCaption::value, w), say(TableCaption::worst_case, w), say(TableCaption::limit, w), say(TableCaption::result, w), say(TableCaption::source, w)}, {}};
    Sources sources;
    for (const Check& check : order.checks) table.rows.push_back(row_of(check, sources, w));
    draw_table(sheets, table);
    draw_sentences(sheets, order, w);
    draw_sources(sheets, running_text(sources.list(w)), w);
}

Table readings_table(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    const double last = 42;
    Table table{say(TableCaption::readings, w), {0, 0, last},
                {say(TableCaption::length, w), say(TableCaption::as_stated, w), say(TableCaption::between_inner_crosses, w)}, {}};
    table.rows.push_back({closed_name(w), closed_reading(order.reading, w), w.both(Rounded::measured, order.reading.closed_at[Reference::inner_cross])});
    for (const FitReading& fit : order.fits) add_fit_rows(order, fit, table, w);
    add_half_rows(order, table, w);
    table.widths[0] = names_width(sheets.canvas(), table, 78);
    table.widths[1] = sheets.room().width - table.widths[0] - last;
    return table;
}

}  // namespace shaftcut::cut_sheet

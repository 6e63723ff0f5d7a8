// The sheet Plan: inputs, totals, what to fetch, cautions.
#include <fmt/format.h>

#include <array>

#include "saw/saw_words.hpp"
#include "saw_book/saw_book_words.hpp"
#include "saw_book/saw_workbook_parts.hpp"
#include "spreadsheet/sheet_builder.hpp"

namespace shaftcut::saw_workbook {
namespace {

using saw_book_words::Caption;
using workbook::SheetBuilder;
namespace style = workbook::style;

constexpr int columns = 4;

class Builder {
public:
    explicit Builder(const SawOrder& order) : order_(order), w_(order.units), sheet_("Plan", {34, 16, 16, 40}) {}

    PlanSheet run(const std::string& footer)
    {
        sheet_.put(0, saw_book_words::plan_title(order_.name, w_), style::title(), columns);
        sheet_.end_row(24);
        add_inputs();
        add_totals();
        add_fetch();
        add_words();
        return {sheet_.take(say(Caption::plan_header, w_), footer, 1), std::move(names_)};
    }

private:
    void section(Caption name)
    {
        sheet_.empty_row(9);
        sheet_.put(0, say(name, w_), style::section(), columns);
        sheet_.end_row(18);
    }

    void add_input(const std::string& name, Caption label, CellContent value, Caption remark)
    {
        sheet_.put(0, say(label, w_), style::label());
        sheet_.put(1, std::move(value), style::input());
        sheet_.allow_numbers(1, 0, workbook::longest_input(Units::mm), say(Caption::length_range, w_));
        sheet_.put(2, say(remark, w_), style::small(), 2);
        names_.emplace_back(name, sheet_.here(1));
        sheet_.end_row(18);
    }

    void add_inputs()
    {
        section(Caption::inputs);
        add_input("kerf", Caption::kerf, order_.task.kerf.mm(), Caption::kerf_remark);
        add_input("trim_start", Caption::start_trim, order_.task.trim_start.mm(), Caption::start_trim_remark);
        add_input("trim_end", Caption::end_trim, order_.task.trim_end.mm(), Caption::end_trim_remark);
        add_input("reusable_leftover", Caption::rack_from, order_.reusable ? CellContent(order_.reusable->mm()) : CellContent(), Caption::rack_from_remark);
    }

    void add_total(const std::string& name, Caption label, CellContent value)
    {
        sheet_.put(0, say(label, w_), style::label());
        sheet_.put(1, std::move(value), style::figure());
        names_.emplace_back(name, sheet_.here(1));
        sheet_.end_row(18);
    }

    void add_sum(const std::string& name, Caption label, Sum sum, double now)
    {
        add_total(name, label, CellFormula{"ROUND(SUM(" + range_of(order_, sum) + "),3)", now});
    }

    void add_totals()
    {
        const SawTotals& totals = order_.totals;
        section(Caption::totals);
        add_sum("bars_used", Caption::bars, Sum::alike, static_cast<double>(totals.bars));
        add_sum("bars_length", Caption::bars_length, Sum::bars_length, totals.bars_length.mm());
        add_sum("pieces_length", Caption::pieces_length, Sum::pieces_length, totals.pieces_length.mm());
        add_sum("rack_length", Caption::rack_length, Sum::rack_length, totals.rack_length.mm());
        add_total("waste_percent", Caption::waste,
                  CellFormula{"ROUND(100*(bars_length-pieces_length-rack_length)/bars_length,3)", static_cast<double>(totals.waste) / 1000.0});
        const std::string fits = say(Caption::fits, w_);
        add_total("verdict", Caption::with_these_inputs,
                  CellFormula{fmt::format("IF(SUM({})>0,\"{}\",\"{}\")", range_of(order_, Sum::over), say(Caption::does_not_fit_plan_again, w_), fits), fits});
        sheet_.put(0, cost_and_bound(order_, w_), style::sentence(), columns);
        sheet_.end_row();
        if (const std::string ended = say(order_.end, w_); !ended.empty()) {
            sheet_.put(0, ended, style::sentence(), columns);
            sheet_.end_row();
        }
    }

    void add_fetch()
    {
        section(Caption::bars_to_fetch);
        for (std::size_t column = 0; column < fetch_heads.size(); ++column) sheet_.put(static_cast<int>(column), say(fetch_heads[column], w_), style::table_head());
        sheet_.end_row();
        for (const BarsToFetch& bars : order_.fetch) {
            sheet_.put(0, saw_figure_with_unit(bars.length, order_.units), style::label());
            sheet_.put(1, static_cast<double>(bars.count), style::great());
            sheet_.put(2, static_cast<double>(bars.cost) / cost_unit, style::figure());
            sheet_.end_row(18);
        }
    }

    void add_words()
    {
        section(Caption::cautions);
        for (const SawCaution caution : order_.cautions) {
            sheet_.put(0, say(caution, order_, w_), style::small(), columns);
            sheet_.end_row();
        }
    }

    static constexpr std::array fetch_heads{Caption::length, Caption::bars, Caption::cost_of_one};
    const SawOrder& order_;
    Wording w_;
    SheetBuilder sheet_;
    std::vector<std::pair<std::string, std::string>> names_;
};

}  // namespace

PlanSheet plan_sheet(const SawOrder& order, const std::string& footer)
{
    return Builder(order).run(footer);
}

}  // namespace shaftcut::saw_workbook

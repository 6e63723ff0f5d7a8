// The sheet Plan: inputs, totals, what to fetch, cautions.
#include <array>

#include "saw_book/saw_workbook_parts.hpp"
#include "spreadsheet/sheet_builder.hpp"

namespace shaftcut::saw_workbook {
namespace {

using workbook::SheetBuilder;
namespace style = workbook::style;

constexpr int columns = 4;

class Builder {
public:
    explicit Builder(const SawOrder& order) : order_(order), sheet_("Plan", {34, 16, 16, 40}) {}

    PlanSheet run(const std::string& footer)
    {
        sheet_.put(0, "Saw plan " + order_.name, style::title(), columns);
        sheet_.end_row(24);
        add_inputs();
        add_totals();
        add_fetch();
        add_words();
        return {sheet_.take("&L&9Saw plan", footer, 1), std::move(names_)};
    }

private:
    void section(const std::string& name)
    {
        sheet_.empty_row(9);
        sheet_.put(0, name, style::section(), columns);
        sheet_.end_row(18);
    }

    void add_input(const std::string& name, const std::string& label, CellContent value, const std::string& remark)
    {
        sheet_.put(0, label, style::label());
        sheet_.put(1, std::move(value), style::input());
        sheet_.allow_numbers(1, 0, workbook::longest_input(Units::mm), "A length in millimetres, 0 to 100000.");
        sheet_.put(2, remark, style::small(), 2);
        names_.emplace_back(name, sheet_.here(1));
        sheet_.end_row(18);
    }

    void add_inputs()
    {
        section("Inputs, in mm");
        add_input("kerf", "Kerf", order_.task.kerf.mm(), "What the blade takes at each cut: the stops follow it.");
        add_input("trim_start", "Start trim", order_.task.trim_start.mm(), "Waste at the starting end, kerf included.");
        add_input("trim_end", "End trim", order_.task.trim_end.mm(), "Waste at the other end.");
        add_input("reusable_leftover", "Back to the rack from", order_.reusable ? CellContent(order_.reusable->mm()) : CellContent(), "Empty: every leftover is scrap.");
    }

    void add_total(const std::string& name, const std::string& label, CellContent value)
    {
        sheet_.put(0, label, style::label());
        sheet_.put(1, std::move(value), style::figure());
        names_.emplace_back(name, sheet_.here(1));
        sheet_.end_row(18);
    }

    void add_sum(const std::string& name, const std::string& label, Sum sum, double now)
    {
        add_total(name, label, CellFormula{"ROUND(SUM(" + range_of(order_, sum) + "),3)", now});
    }

    void add_totals()
    {
        const SawTotals& totals = order_.totals;
        section("Totals");
        add_sum("bars_used", "Bars", Sum::alike, static_cast<double>(totals.bars));
        add_sum("bars_length", "Length of all bars, mm", Sum::bars_length, totals.bars_length.mm());
        add_sum("pieces_length", "Length of all pieces, mm", Sum::pieces_length, totals.pieces_length.mm());
        add_sum("rack_length", "Back to the rack, mm", Sum::rack_length, totals.rack_length.mm());
        add_total("waste_percent", "Waste with kerfs and trims, %",
                  CellFormula{"ROUND(100*(bars_length-pieces_length-rack_length)/bars_length,3)", static_cast<double>(totals.waste) / 1000.0});
        add_total("verdict", "With these inputs",
                  CellFormula{"IF(SUM(" + range_of(order_, Sum::over) + ")>0,\"DOES NOT FIT: plan again\",\"fits\")", std::string("fits")});
        sheet_.put(0, cost_words(order_) + "; " + bound_sentence(order_.plan) + ".", style::sentence(), columns);
        sheet_.end_row();
        if (const std::string ended = end_sentence(order_.end); !ended.empty()) {
            sheet_.put(0, ended, style::sentence(), columns);
            sheet_.end_row();
        }
    }

    void add_fetch()
    {
        section("Bars to fetch");
        sheet_.put_heads(fetch_heads);
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
        section("Cautions");
        for (const std::string& caution : order_.cautions) {
            sheet_.put(0, caution, style::small(), columns);
            sheet_.end_row();
        }
    }

    static constexpr std::array<const char*, 3> fetch_heads{"Length", "Bars", "Cost of one"};
    const SawOrder& order_;
    SheetBuilder sheet_;
    std::vector<std::pair<std::string, std::string>> names_;
};

}  // namespace

PlanSheet plan_sheet(const SawOrder& order, const std::string& footer)
{
    return Builder(order).run(footer);
}

}  // namespace shaftcut::saw_workbook

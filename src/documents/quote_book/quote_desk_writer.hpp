// What the parts of the sheet Desk have in common: the sheet as it grows, its names and rows, and how its formulas are put together.
#pragma once

#include <fmt/format.h>

#include <optional>
#include <string>
#include <utility>
#include <variant>

#include "money_words.hpp"
#include "quote_book/quote_book_words.hpp"
#include "quote_book/quote_workbook_sheets.hpp"
#include "spreadsheet/formula_text.hpp"

namespace shaftcut::quote_book {

class DeskWriter {
public:
    using Caption = quote_book_words::Caption;
    using State = Figures::State;

    DeskWriter(const Quote& quote, const Figures& figures, const Wording& w, std::vector<double> widths)
        : quote_(quote), figures_(figures), w_(w), sheet_("Desk", std::move(widths)), unit_(minor_in_unit(quote.currency))
    {
    }

protected:
    static std::string cell(int row, int column) { return column_letters(column) + std::to_string(row + 1); }
    std::string say(Caption caption, const Wording& w) const { return quote_book_words::say(caption, w); }
    void name(std::string known, int column) { made_.names.emplace_back(std::move(known), sheet_.here(column)); }
    CellStyle money(CellStyle look) const
    {
        look.numbers = money_format(quote_.currency);
        return look;
    }
    CellContent money(const std::optional<Money>& value) const { return value ? CellContent(units_of(*value, quote_.currency)) : CellContent(); }
    static CellStyle decimals(CellStyle look)
    {
        look.numbers = "0.###";
        return look;
    }

    void section(Caption caption)
    {
        sheet_.empty_row(9);
        sheet_.put(0, say(caption, w_), workbook::style::section(), 8);
        sheet_.end_row(18);
    }

    // a · b ÷ by, rounded once: both are whole numbers.
    std::string product(const std::string& a, const std::string& b, std::int64_t by) const
    {
        return fmt::format("IF(ABS({0}*{1})>{2},{3},ROUND({0}*{1}/{4},0))", a, b, greatest_product, text_in_formula(say(Caption::too_great, w_)), by);
    }
    std::string in_minor(const std::string& amount_cell) const { return fmt::format("ROUND({}*{},0)", amount_cell, unit_); }
    // A whole number of minor units, as it is shown; a word as it is.
    std::string shown(const std::string& minor_cell) const { return fmt::format("IF(ISNUMBER({0}),{0}/{1},{0})", minor_cell, unit_); }
    CellFormula shown_now(int row, int from, const CellContent& now) const
    {
        if (const auto* text = std::get_if<std::string>(&now)) return {shown(cell(row, from)), *text};
        return {shown(cell(row, from)), std::get<double>(now) / static_cast<double>(unit_)};
    }
    static std::variant<double, std::string> now_of(const CellContent& now)
    {
        if (const auto* text = std::get_if<std::string>(&now)) return *text;
        return std::get<double>(now);
    }
    static CellContent count_of(Money amount_now) { return static_cast<double>(amount_now.minor()); }
    // Nothing while the lines, or all of it, cannot be counted.
    CellContent when_counted(const std::optional<Money>& amount_now) const
    {
        if (!figures_.counted) return std::string();
        return amount_now ? count_of(*amount_now) : CellContent(say(Caption::too_great, w_));
    }
    CellContent when_ready(Money amount_now) const { return figures_.ready ? count_of(amount_now) : CellContent(std::string()); }

    CellContent now_of(const Figures::Line& line) const
    {
        if (line.state == State::counted) return count_of(line.amount);
        return say(line.state == State::not_priced ? Caption::not_priced : Caption::too_great, w_);
    }

    // An amount in minor units, and beside it as it is shown.
    void put_amount(const std::string& formula, const CellContent& now, const std::string& known, const CellStyle& look)
    {
        sheet_.put(minor, CellFormula{formula, now_of(now)}, workbook::style::figure());
        sheet_.put(amount, shown_now(sheet_.row(), minor, now), money(look));
        name(known, amount);
    }

    std::string range(int column, int last) const { return absolute_cell(made_.rows.first_line, column) + ":" + absolute_cell(last, column); }
    int last_line() const { return made_.rows.first_line + static_cast<int>(figures_.lines.size()) - 1; }
    int last_charge() const { return made_.rows.discounts.empty() ? last_line() : made_.rows.discounts.back(); }


    const Quote& quote_;
    const Figures& figures_;
    const Wording& w_;
    workbook::SheetBuilder sheet_;
    std::int64_t unit_;
    DeskSheet made_;
};

// Each takes the sheet as far as it is written and gives it back with more below: the inputs and the lines with what follows from them; the
// taxes, totals and the deposit.
DeskWriter with_lines(DeskWriter desk);
DeskWriter with_totals(DeskWriter desk);

}  // namespace shaftcut::quote_book

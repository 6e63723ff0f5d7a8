#include "spreadsheet/spreadsheet.hpp"

#include <xlsxwriter.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <limits>
#include <memory>

#include "spreadsheet/spreadsheet_parts.hpp"
#include "spreadsheet/zip.hpp"
#include "workbook_faults.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t longest_text = 32767;
constexpr std::size_t longest_now = 255;  // of a formula's text value, as programs write it

void check(lxw_error error)
{
    if (error != LXW_NO_ERROR) throw WorkbookFault(WorkbookFault::At::writing, lxw_strerror(error));
}

lxw_workbook* new_book(const std::string& path, bool long_sheets)
{
    if (!long_sheets) return workbook_new(path.c_str());
    lxw_workbook_options options{};
    options.constant_memory = LXW_TRUE;
    return workbook_new_opt(path.c_str(), &options);
}

class Writer {
public:
    Writer(const std::string& path, const Spreadsheet& spreadsheet) : spreadsheet_(spreadsheet), book_(new_book(path, spreadsheet.long_sheets))
    {
        if (!book_) throw WorkbookFault(WorkbookFault::At::start);
    }
    ~Writer()
    {
        if (book_) lxw_workbook_free(book_);
    }
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;

    void write()
    {
        set_properties();
        for (const Worksheet& sheet : spreadsheet_.sheets) add(sheet);
        for (const auto& [name, meaning] : spreadsheet_.names) {
            if (!is_plain_name(name)) throw WorkbookFault(WorkbookFault::At::name, name);
            check(workbook_define_name(book_, name.c_str(), ("=" + meaning).c_str()));
        }
        lxw_workbook* const closing = book_;
        book_ = nullptr;  // workbook_close frees it, whatever it returns
        check(workbook_close(closing));
    }

private:
    void set_properties()
    {
        std::string title = fit_for_xml(spreadsheet_.title, longest_now);
        std::string author = fit_for_xml(spreadsheet_.author, longest_now);
        lxw_doc_properties properties{};
        properties.title = title.data();
        properties.author = author.data();
        properties.created = moment_of(spreadsheet_.date);
        check(workbook_set_properties(book_, &properties));
    }

    lxw_format* format_of(const CellStyle& style)
    {
        for (const auto& [known, format] : formats_)
            if (known == style) return format;
        lxw_format* const format = workbook_add_format(book_);
        format_set_font_name(format, "Arial");
        format_set_font_size(format, style.points);
        if (style.bold) format_set_bold(format);
        if (style.heavy) format_set_border(format, LXW_BORDER_MEDIUM);
        else if (style.boxed) format_set_border(format, LXW_BORDER_THIN);
        if (style.shaded) format_set_bg_color(format, 0xE4E4E4);
        if (style.input) {
            format_set_bg_color(format, 0xFFF6D6);
            format_set_unlocked(format);
        }
        if (style.wrapped) format_set_text_wrap(format);
        // Text and figures stand off the lines of their boxes.
        if ((style.boxed || style.heavy) && style.align != CellStyle::Align::centre) format_set_indent(format, 1);
        if (!style.numbers.empty()) format_set_num_format(format, style.numbers.c_str());
        format_set_align(format, LXW_ALIGN_VERTICAL_CENTER);
        const bool left = style.align == CellStyle::Align::left;
        format_set_align(format, left ? LXW_ALIGN_LEFT : style.align == CellStyle::Align::right ? LXW_ALIGN_RIGHT : LXW_ALIGN_CENTER);
        formats_.emplace_back(style, format);
        return format;
    }

    void add(const Worksheet& sheet)
    {
        lxw_worksheet* const out = workbook_add_worksheet(book_, sheet.name.c_str());
        if (!out) throw WorkbookFault(WorkbookFault::At::sheet, sheet.name);
        for (std::size_t i = 0; i < sheet.column_widths.size(); ++i) {
            const auto column = static_cast<lxw_col_t>(i);
            check(worksheet_set_column(out, column, column, sheet.column_widths[i], nullptr));
        }
        put_cells(out, sheet);
        for (int row = sheet.rows_begin; row < sheet.rows_end; ++row) put(out, row, sheet.make_row(row));
        for (const CellRule& rule : sheet.rules) put(out, rule);
        if (sheet.chart) put(out, sheet, *sheet.chart);
        lay_out(out, sheet);
        worksheet_protect(out, nullptr, nullptr);
    }

    // Each row's height before its cells: a sheet that is not held takes rows in their order only.
    void put_cells(lxw_worksheet* out, const Worksheet& sheet)
    {
        auto height = sheet.row_heights.begin();
        const auto set_heights = [&](int up_to) {
            for (; height != sheet.row_heights.end() && height->first <= up_to; ++height)
                check(worksheet_set_row(out, static_cast<lxw_row_t>(height->first), height->second, nullptr));
        };
        for (const Cell& cell : sheet.cells) {
            set_heights(cell.row);
            put(out, cell, cell.row);
        }
        set_heights(std::numeric_limits<int>::max());
    }

    void put(lxw_worksheet* out, int row, const SheetRow& made)
    {
        check(worksheet_set_row(out, static_cast<lxw_row_t>(row), made.points, nullptr));
        for (const Cell& cell : made.cells) put(out, cell, row);
    }

    void put(lxw_worksheet* out, const Cell& cell, int at_row)
    {
        const auto row = static_cast<lxw_row_t>(at_row);
        const auto column = static_cast<lxw_col_t>(cell.column);
        lxw_format* const format = format_of(cell.style);
        if (cell.columns > 1)
            check(worksheet_merge_range(out, row, column, row, static_cast<lxw_col_t>(cell.column + cell.columns - 1), "", format));
        if (const auto* number = std::get_if<double>(&cell.content)) {
            check(worksheet_write_number(out, row, column, *number, format));
        } else if (const auto* text = std::get_if<std::string>(&cell.content)) {
            check(worksheet_write_string(out, row, column, fit_for_xml(*text, longest_text).c_str(), format));
        } else if (const auto* formula = std::get_if<CellFormula>(&cell.content)) {
            put_formula(out, row, column, *formula, format);
        } else {
            check(worksheet_write_blank(out, row, column, format));
        }
    }

    static void put_formula(lxw_worksheet* out, lxw_row_t row, lxw_col_t column, const CellFormula& formula, lxw_format* format)
    {
        const std::string text = "=" + formula.text;
        if (const auto* number = std::get_if<double>(&formula.now))
            return check(worksheet_write_formula_num(out, row, column, text.c_str(), format, *number));
        const std::string now = fit_for_xml(std::get<std::string>(formula.now), longest_now);
        check(worksheet_write_formula_str(out, row, column, text.c_str(), format, now.c_str()));
    }

    void put(lxw_worksheet* out, const CellRule& rule)
    {
        std::vector<std::string> words = rule.words;
        std::vector<char*> list;
        for (std::string& word : words) list.push_back(word.data());
        list.push_back(nullptr);
        std::string title = spreadsheet_.refusal_title;
        std::string refusal = rule.refusal;
        lxw_data_validation validation{};
        validation.validate = LXW_VALIDATION_TYPE_DECIMAL;
        validation.criteria = LXW_VALIDATION_CRITERIA_BETWEEN;
        validation.minimum_number = rule.least;
        validation.maximum_number = rule.most;
        if (!words.empty()) {
            validation.validate = LXW_VALIDATION_TYPE_LIST;
            validation.value_list = list.data();
        }
        validation.error_title = title.data();
        validation.error_message = refusal.data();
        const auto row = static_cast<lxw_row_t>(rule.row);
        const auto column = static_cast<lxw_col_t>(rule.column);
        check(worksheet_data_validation_range(out, row, column, row + static_cast<lxw_row_t>(rule.rows - 1), column, &validation));
    }

    void put(lxw_worksheet* out, const Worksheet& sheet, const SheetChart& chart)
    {
        lxw_chart* const drawn = workbook_add_chart(book_, LXW_CHART_SCATTER_STRAIGHT);
        if (!drawn) throw WorkbookFault(WorkbookFault::At::chart);
        const auto cells = [&](int column) {
            return "='" + sheet.name + "'!" + absolute_cell(chart.first_row, column) + ":" + absolute_cell(chart.last_row, column);
        };
        for (const SheetChart::Series& series : chart.series) {
            lxw_chart_series* const line = chart_add_series(drawn, cells(series.x_column).c_str(), cells(series.y_column).c_str());
            if (!line) throw WorkbookFault(WorkbookFault::At::series, series.name);
            chart_series_set_name(line, series.name.c_str());
            lxw_chart_line look{};
            look.color = LXW_COLOR_BLACK;
            look.width = series.dashed ? 1.0F : 2.0F;
            look.dash_type = series.dashed ? LXW_CHART_LINE_DASH_DASH : LXW_CHART_LINE_DASH_SOLID;
            chart_series_set_line(line, &look);
        }
        chart_axis_set_name(drawn->x_axis, chart.x_title.c_str());
        chart_axis_set_name(drawn->y_axis, chart.y_title.c_str());
        // At the left edge also where 0 lies in the middle of the other axis.
        chart_axis_set_label_position(drawn->y_axis, LXW_CHART_AXIS_LABEL_POSITION_LOW);
        chart_legend_set_position(drawn, LXW_CHART_LEGEND_BOTTOM);
        lxw_chart_options size{};
        size.x_scale = chart_width(sheet, chart) / 480.0;
        size.y_scale = 20.0 * chart.rows / 288.0;
        check(worksheet_insert_chart_opt(out, static_cast<lxw_row_t>(chart.row), 0, drawn, &size));
    }

    // Pixels: a column is about 7 a character and 5 more.
    static double chart_width(const Worksheet& sheet, const SheetChart& chart)
    {
        double width = 0;
        for (int i = 0; i < chart.columns; ++i) width += 7 * sheet.column_widths[static_cast<std::size_t>(i)] + 5;
        return width;
    }

    void lay_out(lxw_worksheet* out, const Worksheet& sheet)
    {
        worksheet_set_paper(out, spreadsheet_.paper == Paper::a4 ? 9 : 1);
        worksheet_set_margins(out, 0.55, 0.55, 0.75, 0.75);
        worksheet_fit_to_pages(out, 1, sheet.one_page ? 1 : 0);
        if (sheet.landscape) worksheet_set_landscape(out);
        if (sheet.printed_columns > 0 && sheet.rows_end > 0)
            check(worksheet_print_area(out, 0, 0, static_cast<lxw_row_t>(sheet.rows_end - 1), static_cast<lxw_col_t>(sheet.printed_columns - 1)));
        worksheet_gridlines(out, LXW_HIDE_ALL_GRIDLINES);
        worksheet_center_horizontally(out);
        check(worksheet_set_header(out, sheet.header.c_str()));
        check(worksheet_set_footer(out, sheet.footer.c_str()));
        if (sheet.repeated_rows > 0)
            check(worksheet_repeat_rows(out, 0, static_cast<lxw_row_t>(sheet.repeated_rows - 1)));
        std::vector<lxw_row_t> breaks;
        for (const int row : sheet.page_breaks) breaks.push_back(static_cast<lxw_row_t>(row));
        breaks.push_back(0);
        check(worksheet_set_h_pagebreaks(out, breaks.data()));
    }

    const Spreadsheet& spreadsheet_;
    lxw_workbook* book_;
    std::vector<std::pair<CellStyle, lxw_format*>> formats_;
};

// From its root element's "<" on to the same element's end.
bool is_whole(const std::string& xml)
{
    const std::size_t declaration = xml.find("?>");
    const std::size_t root = xml.find('<', declaration == std::string::npos ? 0 : declaration);
    const std::size_t name_end = xml.find_first_of(" />", root);
    if (name_end == std::string::npos) return false;
    const bool empty = xml.rfind('<') == root;
    const std::string_view text(xml.data(), xml.find_last_not_of('\n') + 1);
    return text.ends_with(empty ? "/>" : "</" + xml.substr(root + 1, name_end - root - 1) + ">");
}

// libxlsxwriter keeps the parts in temporary files and does not notice when there is no room for them: a part cut short
// would be packed as it is.
void check_whole(const std::string& bytes)
{
    const auto parts = [&] {
        try {
            return parts_of(bytes);
        } catch (const ZipFault&) {
            throw WorkbookFault(WorkbookFault::At::file);
        }
    };
    for (const auto& [name, xml] : parts())
        if (!is_whole(xml)) throw WorkbookFault(WorkbookFault::At::part, name);
}

}  // namespace

std::string column_letters(int column)
{
    const std::string last(1, static_cast<char>('A' + column % 26));
    return column < 26 ? last : column_letters(column / 26 - 1) + last;
}

std::string absolute_cell(int row, int column) { return "$" + column_letters(column) + "$" + std::to_string(row + 1); }

std::string xlsx_of(const Spreadsheet& spreadsheet)
{
    const TemporaryFolder folder;
    const std::string path = folder.file();
    Writer(path, spreadsheet).write();
    std::ifstream file(path, std::ios::binary);
    std::string bytes{std::istreambuf_iterator<char>(file), {}};
    check_whole(bytes);
    return bytes;
}

std::string xlsxwriter_built_with() { return LXW_VERSION; }

}  // namespace shaftcut

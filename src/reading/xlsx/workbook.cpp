#include "xlsx/workbook.hpp"

#include <algorithm>
#include <charconv>
#include <cstring>
#include <optional>

#include <pugixml.hpp>

#include "text.hpp"
#include "xlsx/cell_values.hpp"
#include "xlsx/zip.hpp"

namespace shaftcut {
namespace {

constexpr std::string_view folder = "xl/";
constexpr int most_row = 1'048'576, most_column = 16'384;

// Why a workbook cannot be read; ends the reading of it.
struct Unreadable {
    FormFault why;
};

// Names are compared without the prefix of their namespace, which each program chooses.
std::string_view local_name(const char* name)
{
    const char* colon = std::strchr(name, ':');
    return colon ? colon + 1 : name;
}

template <class Take>
void each(pugi::xml_node parent, std::string_view name, const Take& take)
{
    for (const pugi::xml_node child : parent.children())
        if (local_name(child.name()) == name) take(child);
}

pugi::xml_node first(pugi::xml_node parent, std::string_view name)
{
    for (const pugi::xml_node child : parent.children())
        if (local_name(child.name()) == name) return child;
    return {};
}

std::string_view attribute(pugi::xml_node node, std::string_view name)
{
    for (const pugi::xml_attribute one : node.attributes())
        if (local_name(one.name()) == name) return one.value();
    return {};
}

bool is_true(std::string_view value) { return value == "1" || value == "true"; }

std::optional<int> whole(std::string_view text)
{
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    return error == std::errc() && end == text.data() + text.size() && value >= 0 ? std::optional(value) : std::nullopt;
}

// A text with its runs one behind the other; how it is to be pronounced is not part of it.
std::string text_of(pugi::xml_node string)
{
    std::string text;
    for (const pugi::xml_node child : string.children()) {
        if (local_name(child.name()) == "t") text += child.text().get();
        if (local_name(child.name()) == "r") text += first(child, "t").text().get();
    }
    return text;
}

class Workbook {
public:
    explicit Workbook(std::string_view bytes) : zip_(bytes) {}

    std::vector<SheetRow> rows()
    {
        const pugi::xml_document book = part("xl/workbook.xml");
        since_1904_ = is_true(attribute(first(first(book, "workbook"), "workbookPr"), "date1904"));
        const std::string sheet = path_of_sheet(book);
        if (zip_.holds("xl/sharedStrings.xml")) read_strings();
        if (zip_.holds("xl/styles.xml")) read_formats();
        return rows_in(part(sheet));
    }

private:
    pugi::xml_document part(const std::string& name)
    {
        auto text = zip_.part(name);
        if (!text) throw Unreadable{zip_.fault() == ZipFault::locked ? FormFault::workbook_locked : zip_.fault() == ZipFault::too_large ? FormFault::workbook_too_large : FormFault::no_workbook};
        pugi::xml_document document;
        if (!is_utf8(*text) || !document.load_buffer(text->data(), text->size(), pugi::parse_default | pugi::parse_ws_pcdata, pugi::encoding_utf8)) throw Unreadable{FormFault::no_workbook};
        return document;
    }

    // The first that is shown, by its relation to the book.
    std::string path_of_sheet(const pugi::xml_document& book)
    {
        std::string_view id;
        each(first(first(book, "workbook"), "sheets"), "sheet", [&](pugi::xml_node sheet) {
            const std::string_view state = attribute(sheet, "state");
            if (id.empty() && (state.empty() || state == "visible")) id = sheet.attribute("r:id") ? std::string_view(sheet.attribute("r:id").value()) : attribute(sheet, "id");
        });
        std::string path;
        const pugi::xml_document relations = part("xl/_rels/workbook.xml.rels");
        each(first(relations, "Relationships"), "Relationship", [&](pugi::xml_node relation) {
            if (!id.empty() && attribute(relation, "Id") == id) path = attribute(relation, "Target");
        });
        if (path.empty()) throw Unreadable{FormFault::no_workbook};
        return path.starts_with('/') ? path.substr(1) : std::string(folder) + path;
    }

    void read_strings()
    {
        const pugi::xml_document strings = part("xl/sharedStrings.xml");
        each(first(strings, "sst"), "si", [&](pugi::xml_node string) { strings_.push_back(text_of(string)); });
    }

    void read_formats()
    {
        const pugi::xml_document styles = part("xl/styles.xml");
        std::vector<std::pair<int, std::string>> own;
        each(first(first(styles, "styleSheet"), "numFmts"), "numFmt", [&](pugi::xml_node format) { own.emplace_back(whole(attribute(format, "numFmtId")).value_or(0), attribute(format, "formatCode")); });
        std::sort(own.begin(), own.end());
        each(first(first(styles, "styleSheet"), "cellXfs"), "xf", [&](pugi::xml_node style) {
            const int id = whole(attribute(style, "numFmtId")).value_or(0);
            const auto found = std::lower_bound(own.begin(), own.end(), std::pair(id, std::string()));
            const std::string format = found != own.end() && found->first == id ? found->second : "";
            formats_.push_back({format.empty() ? is_day_format(id) : is_day_format(format), format.find_first_not_of('0') == std::string::npos ? format.size() : 0});
        });
    }

    std::vector<SheetRow> rows_in(const pugi::xml_document& sheet) const
    {
        std::vector<SheetRow> rows;
        int number = 0;
        each(first(first(sheet, "worksheet"), "sheetData"), "row", [&](pugi::xml_node row) {
            const int before = number;
            number = attribute(row, "r").empty() ? number + 1 : whole(attribute(row, "r")).value_or(0);
            if (number <= before || number > most_row) throw Unreadable{FormFault::no_workbook};
            SheetRow cells = cells_in(row, number);
            if (!cells.empty()) rows.push_back(std::move(cells));
        });
        return rows;
    }

    SheetRow cells_in(pugi::xml_node row, int number) const
    {
        SheetRow cells;
        int column = 0;
        each(row, "c", [&](pugi::xml_node node) {
            const int before = column;
            column = attribute(node, "r").empty() ? column + 1 : column_in(attribute(node, "r"));
            if (column <= before || column > most_column) throw Unreadable{FormFault::no_workbook};
            SheetCell cell = cell_of(node);
            cell.row = number;
            cell.column = column;
            if (!cell.text.empty() || cell.wrong) cells.push_back(std::move(cell));
        });
        return cells;
    }

    // Of "AB12" 28.
    static int column_in(std::string_view reference)
    {
        int column = 0;
        for (const char c : reference)
            if (c >= 'A' && c <= 'Z' && column <= most_column) column = column * 26 + (c - 'A' + 1);
        return column;
    }

    SheetCell cell_of(pugi::xml_node node) const
    {
        const std::string_view type = attribute(node, "t");
        const std::string value = first(node, "v").text().get();
        if (type == "inlineStr") return of_text(text_of(first(node, "is")));
        if (value.empty()) return first(node, "f") ? of_wrong(first(node, "f").text().get(), Unfit::formula_without_value) : SheetCell();
        if (type == "s") return of_text(shared(value));
        if (type == "str" || type == "d") return of_text(value);
        if (type == "e") return of_wrong(value, Unfit::error_value);
        if (type == "b") return of_text(value == "1" ? "yes" : "no");
        return of_number(value, attribute(node, "s"));
    }

    static SheetCell of_text(std::string text) { return {1, 1, std::move(text)}; }
    static SheetCell of_wrong(std::string text, Unfit wrong) { return {1, 1, std::move(text), false, wrong}; }

    const std::string& shared(std::string_view index) const
    {
        const auto at = whole(index);
        if (!at || static_cast<std::size_t>(*at) >= strings_.size()) throw Unreadable{FormFault::no_workbook};
        return strings_[static_cast<std::size_t>(*at)];
    }

    SheetCell of_number(const std::string& value, std::string_view style) const
    {
        const std::size_t at = static_cast<std::size_t>(whole(style).value_or(0));
        const Format format = at < formats_.size() ? formats_[at] : Format();
        auto text = format.is_day ? day_of_serial(value, since_1904_) : plain_number(value);
        if (!text) return of_wrong(value, Unfit::cell_number);
        if (text->size() < format.least_digits && text->find('.') == std::string::npos) text->insert(0, format.least_digits - text->size(), '0');
        return {1, 1, std::move(*text), true};
    }

    // `least_digits`: of "00000", which shows 00123.
    struct Format {
        bool is_day = false;
        std::size_t least_digits = 0;
    };

    ZipFile zip_;
    bool since_1904_ = false;
    std::vector<std::string> strings_;
    std::vector<Format> formats_;
};

}  // namespace

std::variant<std::vector<SheetRow>, FormFault> rows_of_first_sheet(std::string_view bytes)
{
    try {
        return Workbook(bytes).rows();
    } catch (const Unreadable& unreadable) {
        return unreadable.why;
    }
}

}  // namespace shaftcut

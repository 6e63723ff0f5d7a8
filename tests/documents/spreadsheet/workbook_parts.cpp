#include "documents/spreadsheet/workbook_parts.hpp"

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <pugixml.hpp>

#include "support/catch.hpp"
#include "support/folder.hpp"

namespace shaftcut::test {
namespace {

// The workbook's parts as files, gone at the end.
class Unpacked {
public:
    explicit Unpacked(const std::string& bytes)
    {
        std::ofstream(folder_.file("book.xlsx"), std::ios::binary) << bytes;
        const std::string command = "cd '" + folder_.path() + "' && /usr/bin/python3 -m zipfile -e book.xlsx parts";
        REQUIRE(std::system(command.c_str()) == 0);
    }

    pugi::xml_document read(const std::string& part) const
    {
        pugi::xml_document document;
        INFO(part);
        REQUIRE(document.load_file(folder_.file("parts/" + part).c_str(), pugi::parse_default | pugi::parse_ws_pcdata_single));
        return document;
    }

    bool holds(const std::string& part) const { return std::filesystem::exists(folder_.file("parts/" + part)); }

private:
    Folder folder_;
};

std::vector<std::string> shared_texts(const pugi::xml_document& document)
{
    std::vector<std::string> texts;
    for (const auto& item : document.child("sst").children("si")) texts.emplace_back(item.child("t").text().get());
    return texts;
}

std::vector<std::vector<std::string>> charts_of(const Unpacked& files)
{
    std::vector<std::vector<std::string>> charts;
    for (std::string part = "xl/charts/chart1.xml"; files.holds(part); part = "xl/charts/chart" + std::to_string(charts.size() + 1) + ".xml") {
        const auto chart = files.read(part);
        std::vector<std::string>& texts = charts.emplace_back();
        for (const auto& text : chart.select_nodes("//c:title//a:t")) texts.emplace_back(text.node().text().get());
    }
    return charts;
}

struct CellFormat {
    bool locked;    // unless it says otherwise
    double points;
};

std::vector<CellFormat> formats_of(const pugi::xml_document& styles)
{
    std::vector<double> points;
    for (const auto& font : styles.child("styleSheet").child("fonts").children("font")) points.push_back(font.child("sz").attribute("val").as_double());
    std::vector<CellFormat> formats;
    for (const auto& format : styles.child("styleSheet").child("cellXfs").children("xf"))
        formats.push_back({format.child("protection").attribute("locked").as_bool(true), points.at(format.attribute("fontId").as_uint())});
    return formats;
}

double width_of_columns(const pugi::xml_node& columns)
{
    double characters = 0;
    for (const auto& column : columns.children("col"))
        characters += column.attribute("width").as_double() * (column.attribute("max").as_int() - column.attribute("min").as_int() + 1);
    return characters;
}

SheetCell cell_of(const pugi::xml_node& node, const std::vector<CellFormat>& formats, const std::vector<std::string>& texts)
{
    SheetCell cell;
    cell.reference = node.attribute("r").as_string();
    cell.locked = formats.at(node.attribute("s").as_uint()).locked;
    cell.points = formats.at(node.attribute("s").as_uint()).points;
    cell.formula = node.child("f").text().get();
    cell.value = node.child("v").text().get();
    const std::string type = node.attribute("t").as_string();
    cell.number = type.empty() && node.child("v");
    if (type == "s") cell.value = texts.at(node.child("v").text().as_uint());
    if (type == "inlineStr") cell.value = node.child("is").child("t").text().get();
    return cell;
}

SheetPart sheet_of(const pugi::xml_document& document, const std::string& name, const std::vector<CellFormat>& formats, const std::vector<std::string>& texts)
{
    SheetPart sheet;
    sheet.name = name;
    const auto root = document.child("worksheet");
    const auto protection = root.child("sheetProtection");
    sheet.is_protected = protection.attribute("sheet").as_bool();
    sheet.has_password = protection.attribute("password") || protection.attribute("hashValue");
    sheet.paper = root.child("pageSetup").attribute("paperSize").as_string("1");
    sheet.header = root.child("headerFooter").child("oddHeader").text().get();
    sheet.width = width_of_columns(root.child("cols"));
    const auto setup = root.child("pageSetup");
    const bool fitted = root.child("sheetPr").child("pageSetUpPr").attribute("fitToPage").as_bool() && setup.attribute("fitToWidth").as_int(1) == 1;
    sheet.one_page_wide = fitted && setup.attribute("fitToHeight").as_int(1) == 0;
    sheet.one_page = fitted && setup.attribute("fitToHeight").as_int(1) == 1;
    for (const auto& row : root.child("sheetData").children("row")) {
        sheet.row_heights[row.attribute("r").as_int()] = row.attribute("ht").as_double(root.child("sheetFormatPr").attribute("defaultRowHeight").as_double());
        for (const auto& cell : row.children("c")) sheet.cells[cell.attribute("r").as_string()] = cell_of(cell, formats, texts);
    }
    for (const auto& rule : root.child("dataValidations").children("dataValidation")) sheet.validated.insert(rule.attribute("sqref").as_string());
    return sheet;
}

}  // namespace

std::optional<std::string> WorkbookParts::order_cell(const std::string& name) const
{
    const auto found = names.find(name);
    if (found == names.end() || found->second.rfind("Order!$", 0) != 0) return std::nullopt;
    std::string cell = found->second.substr(6);
    std::erase(cell, '$');
    return cell;
}

const SheetCell* WorkbookParts::cell_named(const std::string& name) const
{
    const auto found = names.find(name);
    if (found == names.end()) return nullptr;
    const std::size_t mark = found->second.find("!$");
    if (mark == std::string::npos) return nullptr;
    std::string cell = found->second.substr(mark + 1);
    std::erase(cell, '$');
    for (const SheetPart& sheet : sheets)
        if (sheet.name == found->second.substr(0, mark)) return &sheet.cells.at(cell);
    return nullptr;
}

WorkbookParts parts_of(const std::string& bytes)
{
    const Unpacked files(bytes);
    // A workbook whose long sheets are not held shares no texts.
    const auto texts = files.holds("xl/sharedStrings.xml") ? shared_texts(files.read("xl/sharedStrings.xml")) : std::vector<std::string>();
    const auto formats = formats_of(files.read("xl/styles.xml"));
    const auto book = files.read("xl/workbook.xml");
    WorkbookParts parts;
    for (const auto& sheet : book.child("workbook").child("sheets").children("sheet")) {
        const std::string part = "xl/worksheets/sheet" + std::to_string(parts.sheets.size() + 1) + ".xml";
        parts.sheets.push_back(sheet_of(files.read(part), sheet.attribute("name").as_string(), formats, texts));
    }
    for (const auto& name : book.child("workbook").child("definedNames").children("definedName")) {
        const auto local = name.attribute("localSheetId");
        (local ? parts.titles[local.as_string()] : parts.names[name.attribute("name").as_string()]) = name.text().get();
    }
    parts.charts = charts_of(files);
    return parts;
}

}  // namespace shaftcut::test

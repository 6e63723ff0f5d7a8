#include <fstream>
#include <functional>
#include <iterator>
#include <nlohmann/json.hpp>

#include "fuzz/targets.hpp"
#include "shaftcut/documents/documents.hpp"
#include "shaftcut/documents/json.hpp"
#include "shaftcut/documents/terminal.hpp"
#include "shaftcut/reading/catalogue_reader.hpp"
#include "shaftcut/reading/job_reader.hpp"
#include "shaftcut/reading/workshop_reader.hpp"
#include "shaftcut/words/text.hpp"

namespace shaftcut::fuzz {
namespace {

struct Configuration {
    Catalogue catalogue;
    Workshop workshop;
};

Source load_config(const std::string& name)
{
    std::ifstream file(SHAFTCUT_SOURCE_DIR "/config/" + name, std::ios::binary);
    return {name, {std::istreambuf_iterator<char>(file), {}}};
}

const Configuration& demo()
{
    static const Configuration read{read_catalogue(load_config("series.xml")).value.value(), read_workshop(load_config("workshop.xml")).value.value()};
    return read;
}

// A refused job's papers show no cut length; an answered job's show all four.
std::string wrong_with_json(const WorkOrder& order)
{
    const auto json = nlohmann::json::parse(json_of(order, JsonLayout::one_line));
    const bool refused = order.verdict == Verdict::refused;
    if (json["order"] != order.order) return "JSON has another order";
    if (json["cut_mm"].is_null() != refused || json["keep_mm"].is_null() != refused) return "JSON's cuts contradict the verdict";
    if (json["reasons"].empty() == refused) return "JSON's reasons contradict the verdict";
    return json["checks"].size() == order.checks.size() ? "" : "JSON lost a check";
}

std::string wrong_with_terminal(const WorkOrder& order)
{
    const std::string text = terminal_text(order, Colour::none);
    if (!is_utf8(text) || text.find('\x1b') != std::string::npos) return "the terminal's text is not plain: " + text;
    for (const char c : text)
        if (static_cast<unsigned char>(c) < 0x20 && c != '\n') return "the terminal's text holds a control character: " + text;
    return {};
}

std::string wrong_with_files(const WorkOrder& order)
{
    for (const Paper paper : {Paper::a4, Paper::letter})
        if (!document_of(order, Format::pdf, paper).bytes.starts_with("%PDF-")) return "that is no PDF";
    return document_of(order, Format::xlsx, Paper::a4).bytes.starts_with("PK") ? "" : "that is no workbook";
}

}  // namespace

std::string try_documents(std::string_view bytes, std::size_t every)
{
    const auto& [catalogue, workshop] = demo();
    const auto read = read_job({"f.xml", std::string(bytes)}, catalogue);
    if (!read.value) return {};
    const Units units = bytes.size() % 2 == 0 ? Units::mm : Units::in;
    const WorkOrder order = work_up(*read.value, catalogue, workshop, units);
    if (order.cut.has_value() != (order.verdict != Verdict::refused)) return "a cut plan contradicts the verdict";
    if (std::string wrong = wrong_with_json(order); !wrong.empty()) return wrong;
    if (std::string wrong = wrong_with_terminal(order); !wrong.empty()) return wrong;
    return std::hash<std::string_view>()(bytes) % every == 0 ? wrong_with_files(order) : "";
}

}  // namespace shaftcut::fuzz

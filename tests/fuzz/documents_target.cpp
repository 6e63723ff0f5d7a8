#include <functional>
#include <nlohmann/json.hpp>

#include "fuzz/targets.hpp"
#include "support/engine.hpp"
#include "support/fonts.hpp"
#include "text.hpp"

namespace shaftcut::fuzz {
namespace {

std::string bytes_of(const Answer& answer, Format format, const Wishes& wishes) { return documents(answer, {format}, wishes).at(0).bytes; }

// A refused job's papers show no cut length; an answered job's show all four.
std::string wrong_with_json(const Answer& answer, const Wishes& wishes)
{
    const WorkOrder& order = *answer.work_order;
    const auto json = nlohmann::json::parse(bytes_of(answer, Format::json, wishes));
    const bool refused = order.verdict == Verdict::refused;
    if (json["order"] != order.order) return "JSON has another order";
    if (json["cut_mm"].is_null() != refused || json["keep_mm"].is_null() != refused) return "JSON's cuts contradict the verdict";
    if (json["reasons"].empty() == refused) return "JSON's reasons contradict the verdict";
    return json["checks"].size() == order.checks.size() ? "" : "JSON lost a check";
}

std::string wrong_with_terminal(const Answer& answer, const Wishes& wishes)
{
    const std::string text = bytes_of(answer, Format::terminal, wishes);
    if (!is_utf8(text) || text.find('\x1b') != std::string::npos) return "the terminal's text is not plain: " + text;
    for (const char c : text)
        if (static_cast<unsigned char>(c) < 0x20 && c != '\n') return "the terminal's text holds a control character: " + text;
    return {};
}

std::string wrong_with_files(const Answer& answer, Wishes wishes)
{
    wishes.fonts = test::font_files();
    for (const Paper paper : {Paper::a4, Paper::letter}) {
        wishes.paper = paper;
        if (!bytes_of(answer, Format::pdf, wishes).starts_with("%PDF-")) return "that is no PDF";
    }
    return bytes_of(answer, Format::xlsx, wishes).starts_with("PK") ? "" : "that is no workbook";
}

}  // namespace

std::string try_documents(std::string_view bytes, std::size_t every)
{
    Wishes wishes;
    wishes.units = bytes.size() % 2 == 0 ? Units::mm : Units::in;
    wishes.json = JsonLayout::one_line;
    const Answer answer = test::demo_engine().answer({"f.xml", std::string(bytes)}, wishes);
    if (!answer.work_order) return {};
    const WorkOrder& order = *answer.work_order;
    if (order.cut.has_value() != (order.verdict != Verdict::refused)) return "a cut plan contradicts the verdict";
    if (refuses(answer) != (order.verdict == Verdict::refused)) return "the answer contradicts its work order";
    if (std::string wrong = wrong_with_json(answer, wishes); !wrong.empty()) return wrong;
    if (std::string wrong = wrong_with_terminal(answer, wishes); !wrong.empty()) return wrong;
    return std::hash<std::string_view>()(bytes) % every == 0 ? wrong_with_files(answer, wishes) : "";
}

}  // namespace shaftcut::fuzz

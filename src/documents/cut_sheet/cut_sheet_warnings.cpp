// What can hurt, one line each, the worst first; and why a shaft is refused.
#include <algorithm>
#include <array>

#include "advice/advice_words.hpp"
#include "checks/check_sentences.hpp"
#include "cut_sheet/cut_sheet_parts.hpp"
#include "cut_sheet/warning_words.hpp"
#include "page/fitted_lines.hpp"
#include "order/instruction_words.hpp"
#include "order/instructions.hpp"
#include "order/verdict_words.hpp"
#include "say_all.hpp"

namespace shaftcut::cut_sheet {
namespace {

// What catches people before what breaks the shaft, and that before what wears it.
constexpr std::array by_harm{CheckId::condition,        CheckId::locking,           CheckId::joint_angle_tractor, CheckId::joint_angle_implement, CheckId::connection,
                             CheckId::rating,           CheckId::closing_clearance, CheckId::overlap_turning,     CheckId::overlap_standing,      CheckId::overlap_working,
                             CheckId::guard_cover,      CheckId::guard_clearance,   CheckId::guard_setback,       CheckId::consistency,           CheckId::shortening_allowed,
                             CheckId::irregularity,     CheckId::tube_left,         CheckId::overload_device};

// Said where it is confirmed, and not twice.
bool is_confirmed(const WorkOrder& order, CheckId id)
{
    return std::any_of(order.confirm.begin(), order.confirm.end(), [&](const Confirmation& one) {
        return (id == CheckId::locking && one.why == ConfirmedFor::year_not_stated) || (id == CheckId::consistency && one.why != ConfirmedFor::year_not_stated && one.why != ConfirmedFor::guard_not_measured);
    });
}

std::vector<std::string> warning_lines(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> lines;
    const auto guard = guard_warning_for(order);
    if (guard) lines.push_back(warned(say(*guard, w), w));
    for (const CheckId id : by_harm) {
        const Check& check = check_of(order.checks, id);
        if (check.result != CheckResult::warn || is_confirmed(order, id)) continue;
        const std::vector<std::string> short_ones = in_one_line(check, guard.has_value(), w);
        lines.insert(lines.end(), short_ones.begin(), short_ones.end());
    }
    return lines;
}

bool needs_a_part(const WayOut& way)
{
    if (const auto* remedy = std::get_if<Remedy>(&way)) return *remedy == Remedy::fit_unexposed_locks || *remedy == Remedy::device_at_implement || *remedy == Remedy::put_new_parts;
    return std::holds_alternative<GuardsReach>(way) || std::holds_alternative<SeriesLengths>(way) || std::holds_alternative<NewShaft>(way) || std::holds_alternative<MatchConnection>(way) ||
           std::holds_alternative<SeriesThatCarries>(way);
}

// No way out itself, but said of all of them.
bool is_about_all(const WayOut& way)
{
    const auto* remedy = std::get_if<Remedy>(&way);
    return remedy && *remedy == Remedy::mend_every_failure;
}

// Where no new shaft serves, that comes first; then what needs no part, the shortest first.
int rank(const WayOut& way)
{
    return std::holds_alternative<NoNewShaft>(way) ? 0 : needs_a_part(way) ? 2 : 1;
}

std::vector<std::string> ways_out(const WorkOrder& order, const Wording& w)
{
    std::vector<std::pair<int, std::string>> ranked;
    for (const WayOut& way : order.ways_out)
        if (!is_about_all(way)) ranked.emplace_back(rank(way), say(way, w));
    std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first != b.first ? a.first < b.first : a.second.size() < b.second.size(); });
    std::vector<std::string> numbered;
    for (const auto& [unused, sentence] : ranked) numbered.push_back(numbered_way(numbered.size() + 1, sentence, w));
    return numbered;
}

}  // namespace

double draw_warnings(Canvas& canvas, Rect room, const WorkOrder& order, const Wording& w)
{
    canvas.begin(Part::paragraph);
    for (const std::string& line : warning_lines(order, w)) room.y = draw_fitted_lines(canvas, {room.x, room.y}, room.width, line, lettering::name);
    return room.y;
}

void draw_refusal(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    const Rect room = sheets.room();
    const double column = room.width;
    sheets.move_to(draw_verdict(sheets.canvas(), {room.x, sheets.y(), column, 0}, order, w) + 2);
    sheets.flow({caution_block(say_all(order.cautions, w))});
    Blocks why;
    add_list(why, say(ListHeading::why, w), reasons_to_refuse(order.checks, w), true);
    sheets.flow(why);
    Blocks instead{{Lead::heading, say(ListHeading::instead, w)}};
    for (const WayOut& way : order.ways_out)
        if (is_about_all(way)) instead.push_back({Lead::none, say(way, w)});
    for (const std::string& way : ways_out(order, w)) instead.push_back({Lead::none, way});
    if (instead.size() > 1) sheets.flow(instead);
    if (sheets.left_over() < sign_off_height) return;
    draw_sign_off(sheets.canvas(), {room.x, room.bottom() - sign_off_height, column, 0}, w);
}

}  // namespace shaftcut::cut_sheet

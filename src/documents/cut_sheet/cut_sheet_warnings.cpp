// What can hurt, one line each, the worst first; and why a shaft is refused.
#include <algorithm>
#include <array>

#include "cut_sheet/cut_sheet_parts.hpp"
#include "cut_sheet/refusal_words.hpp"
#include "cut_sheet/warning_words.hpp"
#include "drawing/lock_drawing.hpp"
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

// No way out itself, but said of others: of all, or that there is none of that kind.
bool is_no_way(const WayOut& way)
{
    if (const auto* remedy = std::get_if<Remedy>(&way)) return *remedy == Remedy::mend_every_failure || *remedy == Remedy::raise_shortest_in_vain;
    if (const auto* longest = std::get_if<LongestServed>(&way)) return !longest->longest;
    if (const auto* lengths = std::get_if<SeriesLengths>(&way)) return lengths->as_is.empty() && lengths->after_cut.empty();
    return std::holds_alternative<NoNewShaft>(way);
}

bool overlap_fails(const WorkOrder& order)
{
    return std::any_of(all_ranges.begin(), all_ranges.end(), [&](Range range) { return check_of(order.checks, overlap_check_id(range)).result == CheckResult::fail; });
}

// The longest of every range is one way: none of them serves alone.
std::string longest_served(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> sentences;
    for (const WayOut& way : order.ways_out)
        if (std::holds_alternative<LongestServed>(way) && !is_no_way(way)) sentences.push_back(way_in_short(way, w));
    return running_text(sentences);
}

// What is no way out comes first, among it that no new shaft serves; then what needs no part, the shortest first. Longer guards alone let no
// tubes hold better: then they come last.
std::vector<std::string> ways_out(const WorkOrder& order, const Wording& w)
{
    std::vector<std::pair<int, std::string>> ranked;
    std::vector<std::string> numbered, besides;
    for (const WayOut& way : order.ways_out) {
        if (is_no_way(way)) numbered.push_back(way_in_short(way, w));
        else if (std::holds_alternative<GuardsReach>(way) && overlap_fails(order)) besides.push_back(way_in_short(way, w));
        else if (!std::holds_alternative<LongestServed>(way)) ranked.emplace_back(needs_a_part(way), way_in_short(way, w));
    }
    if (std::string longest = longest_served(order, w); !longest.empty()) ranked.emplace_back(0, std::move(longest));
    std::stable_sort(ranked.begin(), ranked.end(), [](const auto& a, const auto& b) { return a.first != b.first ? a.first < b.first : a.second.size() < b.second.size(); });
    std::size_t number = 0;
    for (const auto& [unused, sentence] : ranked) numbered.push_back(numbered_way(++number, sentence, w));
    numbered.insert(numbered.end(), besides.begin(), besides.end());
    return numbered;
}

// To be read by two people across a counter.
void draw_large(Sheets& sheets, const std::string& heading, const std::vector<std::string>& texts, Weight weight)
{
    const Lettering letters{3.5, weight, 0.85, 1.5};
    sheets.flow({{Lead::heading, heading}});
    for (const std::string& text : texts) {
        const double height = letters.pitch() * static_cast<double>(sheets.canvas().lines_of(text, sheets.room().width, letters).size());
        sheets.ensure(height);
        sheets.canvas().begin(Part::paragraph);
        sheets.move_to(sheets.canvas().paragraph({sheets.room().x, sheets.y()}, sheets.room().width, text, letters) + 1.5);
    }
}

// The locks that refuse, each under its end's name, to be known by looking.
void draw_refused_locks(Sheets& sheets, const WorkOrder& order, const Wording& w)
{
    const Check& locking = check_of(order.checks, CheckId::locking);
    if (locking.result != CheckResult::fail) return;
    const double width = 46, height = 18;
    sheets.ensure(height + 6);
    Rect place{sheets.room().x, sheets.y() + 1, width, height};
    for (const CheckFinding& finding : locking.findings) {
        const auto* lock = std::get_if<LockStandsOut>(&finding);
        if (!lock) continue;
        sheets.canvas().begin(Part::figure);
        sheets.canvas().text({place.x, place.y + 3}, half_name(lock->end, w), lettering::strong);
        draw_lock(sheets.canvas(), {place.x, place.y + 3, place.width, place.height - 3}, lock->lock);
        place.x += width + 6;
    }
    sheets.move_to(place.bottom() + 2);
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
    sheets.move_to(draw_verdict(sheets.canvas(), {room.x, sheets.y(), room.width, 0}, order, w) + 2);
    sheets.flow({caution_block(say_all(order.cautions, w))});
    draw_large(sheets, say(ListHeading::why, w), refusal_reasons(order, w), Weight::bold);
    draw_refused_locks(sheets, order, w);
    const std::vector<std::string> ways = ways_out(order, w);
    if (!ways.empty()) draw_large(sheets, say(ListHeading::instead, w), ways, Weight::regular);
    if (sheets.left_over() < sign_off_height) return;
    draw_sign_off(sheets.canvas(), {room.x, room.bottom() - sign_off_height, room.width, 0}, w);
}

}  // namespace shaftcut::cut_sheet

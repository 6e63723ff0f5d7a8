#include "json/view_json.hpp"

#include <algorithm>

#include "checks/check_sentences.hpp"
#include "cut_sheet/captions.hpp"
#include "cut_sheet/front_lines.hpp"
#include "cut_sheet/front_words.hpp"
#include "cut_sheet/refusal_words.hpp"
#include "json/json_parts.hpp"
#include "order/instruction_words.hpp"
#include "order/step_parts_words.hpp"
#include "order/verdict_words.hpp"
#include "say_all.hpp"
#include "shaft_title_words.hpp"

namespace shaftcut {
namespace {

using namespace cut_sheet;

// The names of the four parts in the JSON of an answer, too.
constexpr const char* name_of(SawnPart part)
{
    switch (part) {
    case SawnPart::inner_tube: return "inner_tube";
    case SawnPart::outer_tube: return "outer_tube";
    case SawnPart::inner_guard: return "inner_guard";
    case SawnPart::outer_guard: break;
    }
    return "outer_guard";
}

Json said_or_null(const std::string& text) { return text.empty() ? Json(nullptr) : Json(text); }

Json band_length(const WorkOrder& order, const TubeView& view, const Wording& w)
{
    const bool cut = view.comes_off();
    return {{"letter", letter_of(view.part())},
            {"part", name_of(view.part())},
            {"what", part_name(view.end, view.guard, w)},
            {"end", to_word(view.end)},
            {"cut", cut},
            {"says", cut ? cut_said(view, w) : say(HalfCaption::do_not_cut, w)},
            {"mm", number(view.cut)},
            {"plus_minus_says", cut ? Json(cut_plus_minus(order.saw.plus_minus, w)) : Json(nullptr)},
            {"keep_says", cut ? kept_said(view, w) : stays_said(view, w)},
            {"keep_mm", number(view.kept)}};
}

// A to D. Of a refused shaft none.
Json band_lengths(const WorkOrder& order, const Wording& w)
{
    Json lengths = Json::array();
    if (!order.cut) return lengths;
    std::vector<TubeView> views = tube_views(order);
    std::sort(views.begin(), views.end(), [](const TubeView& a, const TubeView& b) { return letter_of(a.part()) < letter_of(b.part()); });
    for (const TubeView& view : views) lengths.push_back(band_length(order, view, w));
    return lengths;
}

Json band(const WorkOrder& order, const Wording& w)
{
    return {{"says", verdict_words(order, w)},
            {"title", say(order.shaft_title, w)},
            {"closed_now", closed_now(order, w)},
            {"closed_after", order.verdict == Verdict::cut ? Json(closed_after(order, w)) : Json(nullptr)},
            {"positions", positions_of(order, true, w)},
            {"lengths", band_lengths(order, w)}};
}

TubeView view_of(const WorkOrder& order, SawnPart part)
{
    const Tube tube = part == SawnPart::inner_tube || part == SawnPart::inner_guard ? Tube::inner : Tube::outer;
    return tube_view(order, end_of(order.shaft, tube), part == SawnPart::inner_guard || part == SawnPart::outer_guard);
}

// What a task's letters stand for: what comes off where it is marked and sawn, what must be read where it is read.
class LettersOf {
public:
    LettersOf(const WorkOrder& order, const Wording& w) : order_(order), w_(w) {}

    Json of(const Step& step)
    {
        for (const Task& task : step.tasks) std::visit([this](const auto& one) { take(one); }, task);
        return std::move(lengths_);
    }

private:
    void add(SawnPart part, const std::string& says) { lengths_.push_back({{"letter", letter_of(part)}, {"says", says}}); }
    void add_cuts(const std::vector<SawnPart>& parts)
    {
        for (const SawnPart part : parts) add(part, cut_said(view_of(order_, part), w_));
    }
    template <class Other>
    void take(const Other&) {}
    void take(const MarkCuts& task)
    {
        add_cuts(task.guards);
        add_cuts(task.tubes);
    }
    void take(const SawCuts& task)
    {
        add_cuts(task.guards);
        add_cuts(task.tubes);
    }
    void take(const KeptTubes& task)
    {
        for (const Tube tube : both_tubes)
            add(tube_part(tube), steps::expected_box(Rounded::kept, task.half[tube].value, task.half[tube].most - task.half[tube].value, w_));
    }

    const WorkOrder& order_;
    const Wording& w_;
    Json lengths_ = Json::array();
};

// Positions stand among the marks.
Json says_of(const Step& step, const Wording& w)
{
    Json says = Json::array();
    for (const Task& task : step.tasks)
        if (!std::holds_alternative<ReadRings>(task))
            if (std::string text = say(task, w); !text.empty()) says.push_back(std::move(text));
    return says;
}

Json json_of(const WorkOrder& order, const Step& step, const Wording& w)
{
    return {{"number", step.number}, {"heading", step_heading(step.number, w)}, {"says", says_of(step, w)}, {"lengths", LettersOf(order, w).of(step)}};
}

enum class Side { front, back };

Json steps_on(Side side, const WorkOrder& order, const Wording& w)
{
    Json list = Json::array();
    for (const Step& step : order.steps)
        if ((step.number <= last_of_front(order)) == (side == Side::front)) list.push_back(json_of(order, step, w));
    return list;
}

Json json_of(const ReadRings& position, int step, const Wording& w)
{
    const RingLines lines = ring_lines(position, w);
    const OnRings& rings = position.rings;
    return {{"step", step},
            {"name", position_of(position, w)},
            {"expected_says", lines.expected},
            {"from_says", lines.from},
            {"to_says", lines.to},
            {"never_says", lines.never},
            {"outside_says", lines.remarks},
            {"expected_mm", rings.value.mm()},
            {"from_mm", rings.good_from.mm()},
            {"to_mm", rings.good_to.mm()},
            {"never_mm", (rings.never_under ? *rings.never_under : rings.never_over.value_or(rings.good_to)).mm()}};
}

Json marks(const WorkOrder& order, const Wording& w)
{
    Json list = Json::array();
    for (const Step& step : order.steps)
        for (const Task& task : step.tasks)
            if (const auto* position = std::get_if<ReadRings>(&task)) list.push_back(json_of(*position, step.number, w));
    return list;
}

// In the steps' words, each with the step in which it can be measured.
Json confirmed(const WorkOrder& order, const Wording& w)
{
    Json list = Json::array();
    for (const Step& step : order.steps)
        for (const Task& task : step.tasks)
            if (const auto* one = std::get_if<ConfirmTask>(&task))
                list.push_back({{"what", to_word(one->confirm.what)}, {"step", step.number}, {"says", say(task, w)}, {"why", say(one->confirm, w)},
                                {"expected_mm", number(one->confirm.expected)}, {"plus_minus_mm", number(one->confirm.plus_minus)}});
    return list;
}

// For want of what a check was not made, as the sheet says it.
Json not_checked_ones(const WorkOrder& order, const Wording& w)
{
    Json list = Json::array();
    for (const Check& check : order.checks)
        if (check.result == CheckResult::not_checked) list.push_back({{"id", to_word(check.id)}, {"says", not_checked(check.id, basis(check, w), w)}});
    return list;
}

Json json_of(const WayChoice& choice)
{
    Json changes = Json::array();
    for (const Change& change : choice.changes) changes.push_back({{"path", change.path}, {"value", change.value ? Json(*change.value) : Json(nullptr)}});
    return {{"says", said_or_null(choice.says)}, {"changes", std::move(changes)}};
}

Json ways(const WorkOrder& order, const std::vector<std::vector<WayChoice>>& choices, const Wording& w)
{
    Json list = Json::array();
    for (const WayLine& line : ways_out(order, w)) {
        Json offered = Json::array();
        for (const WayChoice& choice : choices.at(list.size())) offered.push_back(json_of(choice));
        list.push_back({{"number", line.number ? Json(line.number) : Json(nullptr)}, {"says", line.says}, {"choices", std::move(offered)}});
    }
    return list;
}

}  // namespace

std::string view_json_of(const WorkOrder& order, const std::vector<std::vector<WayChoice>>& choices, JsonLayout layout, const Wording& w)
{
    const bool refused = order.verdict == Verdict::refused;
    const Json json = {{"verdict", to_word(order.verdict)},
                       {"band", band(order, w)},
                       {"warnings", refused ? std::vector<std::string>() : warning_lines(order, w)},
                       {"rules", refused ? std::vector<std::string>() : std::vector{say(RuleCaption::all_off, w), say(RuleCaption::small_steps, w)}},
                       {"confirm_outside", order.confirm.empty() ? Json(nullptr) : Json(confirm_outside(order.verdict, w))},
                       {"confirm", confirmed(order, w)},
                       {"front", steps_on(Side::front, order, w)},
                       {"back", steps_on(Side::back, order, w)},
                       {"marks", marks(order, w)},
                       {"not_checked", not_checked_ones(order, w)},
                       {"reasons", refusal_reasons(order, w)},
                       {"ways_out", ways(order, choices, w)},
                       {"cautions", say_all(order.cautions, w)}};
    return dumped(json, layout);
}

}  // namespace shaftcut

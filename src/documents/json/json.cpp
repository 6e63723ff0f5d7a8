#include "shaftcut/documents/json/json.hpp"

#include <cmath>
#include <utility>

#include "advice/advice_words.hpp"
#include "build/build_words.hpp"
#include "checks/check_sentences.hpp"
#include "data/machine_dimensions.hpp"
#include "json/json_parts.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"

namespace shaftcut {
namespace {

Json number(const std::optional<Toleranced>& length) { return length ? Json(length->value.mm()) : Json(nullptr); }
Json number(std::optional<Angle> angle) { return angle ? Json(angle->degrees()) : Json(nullptr); }

Json telescoping(const WorkOrder& order)
{
    const auto& longest = order.fit.longest;
    return {{"closed_before", order.reading.shaft.closed.value.mm()},
            {"closed_after", order.cut ? Json(order.cut->plan.closed.mm()) : Json(nullptr)},
            {"shortest", number(order.fit.shortest)},
            {"longest_working", number(longest[Range::working])},
            {"longest_turning", number(longest[Range::turning])},
            {"longest_standing", number(longest[Range::standing])}};
}

Json cuts(const WorkOrder& order)
{
    if (!order.cut) return nullptr;
    const CutPlan& plan = order.cut->plan;
    return {{"inner_tube", plan.cut[Tube::inner].mm()},
            {"outer_tube", plan.cut[Tube::outer].mm()},
            {"inner_guard", number(plan.guard_cut[Tube::inner])},
            {"outer_guard", number(plan.guard_cut[Tube::outer])}};
}

Json kept(const WorkOrder& order)
{
    if (!order.cut) return nullptr;
    const CutPlan& plan = order.cut->plan;
    return {{"inner_half", plan.half[Tube::inner].mm()},
            {"outer_half", plan.half[Tube::outer].mm()},
            {"inner_guard_half", number(plan.guard_half[Tube::inner])},
            {"outer_guard_half", number(plan.guard_half[Tube::outer])}};
}

Json json_of(const std::vector<Confirmation>& confirmations, const Wording& w)
{
    Json list = Json::array();
    for (const Confirmation& one : confirmations)
        list.push_back({{"what", to_word(one.what)}, {"expected_mm", number(one.expected)}, {"plus_minus_mm", number(one.plus_minus)}, {"says", say(one, w)}});
    return list;
}

Json overlaps(const WorkOrder& order)
{
    Json json = {{"closed_before", number(order.overlap_closed_before)}, {"closed_after", nullptr},    {"shortest", nullptr},
                 {"longest_working", nullptr},                           {"longest_turning", nullptr}, {"longest_standing", nullptr}};
    if (!order.cut) return json;
    const Overlaps& after = order.cut->overlap;
    json["closed_after"] = after.closed.mm();
    json["shortest"] = number(after.shortest);
    for (const Range range : all_ranges) json[std::string("longest_") + to_word(range)] = number(after.longest[range]);
    return json;
}

// For each end and range what `of` gives.
template <class Of>
Json for_ends(const Of& of)
{
    Json ends = Json::object();
    for (const End end : both_ends) {
        Json& ranges = ends[to_word(end)] = Json::object();
        for (const Range range : all_ranges) ranges[to_word(range)] = of(end, range);
    }
    return ends;
}

Json angles(const WorkOrder& order)
{
    return for_ends([&](End end, Range range) { return number(order.fit.angles[end][range]); });
}

Json json_of(const Posture& at)
{
    if (const auto* lift = std::get_if<MountedPosture>(&at)) return {{"height_mm", lift->height.mm()}};
    const auto& turned = std::get<TrailedPosture>(at);
    return {{"turn_deg", turned.turn.degrees()}, {"pitch_deg", turned.pitch.degrees()}, {"roll_deg", turned.roll.degrees()}};
}

template <class Extreme>
Json posture_of(const std::optional<Extreme>& extreme) { return extreme ? json_of(extreme->at) : Json(nullptr); }

Json length_of(const std::optional<ExtremeLength>& extreme) { return extreme ? Json(extreme->length.mm()) : Json(nullptr); }
Json angle_of(const std::optional<ExtremeAngle>& extreme) { return extreme ? Json(extreme->angle.degrees()) : Json(nullptr); }

// The postures of all extremes, under the names that the extremes have.
Json postures(const MachineExtremes& extremes)
{
    Json at = {{"shortest", posture_of(extremes.shortest)}};
    for (const Range range : all_ranges) at[std::string("longest_") + to_word(range)] = posture_of(extremes.longest[range]);
    at.update(for_ends([&](End end, Range range) { return posture_of(extremes.angles[end][range]); }));
    return at;
}

// As the job states it, with the tolerance that holds for it: null for an angle, which is taken as exact.
Json json_of(const StatedDimension& dimension, Length measuring_plus_minus)
{
    if (const auto* angle = std::get_if<AngleDimension>(&dimension.stated))
        return {{"name", dimension.name}, {"value", angle->value.degrees()}, {"plus_minus", number(angle->plus_minus)}, {"unit", to_word(CheckUnit::deg)}};
    const auto& length = std::get<Dimension>(dimension.stated);
    return {{"name", dimension.name}, {"value", length.value.mm()}, {"plus_minus", length.plus_minus.value_or(measuring_plus_minus).mm()}, {"unit", to_word(CheckUnit::mm)}};
}

// What the job states of each machine, by the words of the job file.
Json stated_machines(const WorkOrder& order)
{
    const auto listed = [&](const std::vector<StatedDimension>& dimensions) {
        Json list = Json::array();
        for (const StatedDimension& dimension : dimensions) list.push_back(json_of(dimension, order.measuring_plus_minus));
        return list;
    };
    Json machines = Json::array();
    for (const FitReading& fit : order.fits) {
        if (!fit.geometry) continue;
        const Machine& machine = fit.geometry->machine;
        machines.push_back({{"machine", kind_word(machine)}, {"tractor", fit.tractor.empty() ? Json(nullptr) : Json(fit.tractor)}, {"dimensions", listed(dimensions_of(machine))}});
        for (const Range range : all_ranges) machines.back()[to_word(range)] = listed(movements_of(machine, range));
    }
    return machines;
}

// Whole numbers stay whole.
Json cost_number(std::int64_t cost) { return cost % cost_unit == 0 ? Json(cost / cost_unit) : Json(static_cast<double>(cost) / cost_unit); }
Json bar_number(Length length) { return length.um() % 1000 == 0 ? Json(length.um() / 1000) : Json(length.mm()); }

Json saw_bar(const SawOrder& order, const SawBar& bar)
{
    Json pieces = Json::array();
    for (const std::size_t piece : bar.pieces) pieces.push_back(order.task.pieces[piece].length.mm());
    return {{"stock_mm", bar_number(order.task.stock[bar.stock].length)}, {"count", bar.count}, {"pieces_mm", std::move(pieces)}, {"leftover_mm", bar.leftover.mm()}};
}

// The plan's own fields, in the order of a saw plan's JSON.
Json saw_plan(const SawOrder& order)
{
    const bool mixed = cost_parts(order).mixed();
    Json bars = Json::array();
    for (const SawBar& bar : order.plan.bars) bars.push_back(saw_bar(order, bar));
    return {{"bars", std::move(bars)},
            {"bars_used", order.totals.bars},
            {"cost", mixed ? Json(nullptr) : cost_number(order.plan.cost)},
            {"lower_bound", mixed ? Json(nullptr) : cost_number(order.plan.lower_bound)},
            {"proven_optimal", order.plan.proven_optimal && !mixed},
            {"seconds", std::round(order.seconds * 1000) / 1000}};
}

Json blanks(const BuildPlan& plan)
{
    if (!plan.built) return nullptr;
    const BuiltLengths& lengths = plan.built->lengths;
    return {{"inner_tube", lengths.blank[Tube::inner].mm()},
            {"outer_tube", lengths.blank[Tube::outer].mm()},
            {"inner_guard", number(lengths.guard_blank[Tube::inner])},
            {"outer_guard", number(lengths.guard_blank[Tube::outer])}};
}

Json halves(const BuildPlan& plan)
{
    if (!plan.built) return nullptr;
    const BuiltLengths& lengths = plan.built->lengths;
    return {{"inner_half", lengths.half[Tube::inner].mm()},
            {"outer_half", lengths.half[Tube::outer].mm()},
            {"inner_guard_half", number(lengths.guard_half[Tube::inner])},
            {"outer_guard_half", number(lengths.guard_half[Tube::outer])}};
}

Json parts(const BuildPlan& plan)
{
    Json list = Json::array();
    if (plan.built)
        for (const PartCount& part : counted(plan.built->parts, plan.count)) list.push_back({{"name", say(part.name, wording_of(plan))}, {"count", part.count}});
    return list;
}

// Where the finished shaft may be used, measured as its closed length is.
Json use(const BuildPlan& plan)
{
    if (!plan.built) return nullptr;
    const UseRange& range = plan.built->use;
    Json json = {{"shortest", range.shortest[plan.reference].mm()}};
    for (const Range of : all_ranges) json[std::string("longest_") + to_word(of)] = range.longest[of] ? Json((*range.longest[of])[plan.reference].mm()) : Json(nullptr);
    return json;
}

Json operations(const BuildPlan& plan)
{
    Json list = Json::array();
    if (plan.built)
        for (const Operation& operation : plan.built->operations) list.push_back({{"work", to_word(operation.work)}, {"does", say(operation, wording_of(plan))}});
    return list;
}

Json open_points(const BuildPlan& plan)
{
    Json list = Json::array();
    for (const OpenPoint& point : plan.open) list.push_back({{"ask", to_word(whom_to_ask(point))}, {"says", say(point, wording_of(plan))}});
    return list;
}

Json mass(const BuildPlan& plan)
{
    const auto grams = plan.built ? plan.built->tubes_mass : std::nullopt;
    return thousandths(grams);
}

}  // namespace

std::string lengths_json_of(const WorkOrder& order, JsonLayout layout)
{
    const MachineExtremes& extremes = order.extremes;
    Json lengths = {{"shortest", length_of(extremes.shortest)}};
    for (const Range range : all_ranges) lengths[std::string("longest_") + to_word(range)] = length_of(extremes.longest[range]);
    return dumped({{"order", order.order},
                   {"telescoping_mm", lengths},
                   {"joint_angle_deg", for_ends([&](End end, Range range) { return angle_of(extremes.angles[end][range]); })},
                   {"at", postures(extremes)},
                   {"machines", stated_machines(order)}},
                  layout);
}

std::string json_of(const WorkOrder& order, JsonLayout layout)
{
    const Wording w(order.units);
    const Json json = {{"order", order.order},
                       {"verdict", to_word(order.verdict)},
                       {"reasons", reasons_to_refuse(order.checks, w)},
                       {"telescoping_mm", telescoping(order)},
                       {"cut_mm", cuts(order)},
                       {"keep_mm", kept(order)},
                       {"overlap_mm", overlaps(order)},
                       {"joint_angle_deg", angles(order)},
                       {"checks", json_of(order.checks, w)},
                       {"ways_out", say_all(order.ways_out, w)},
                       {"notes", say_all(order.notes, w)},
                       {"confirm", json_of(order.confirm, w)},
                       {"language", "en"},
                       // What only a register gives.
                       {"issue", nullptr},
                       {"copy", nullptr},
                       {"issued", nullptr},
                       {"fingerprint", nullptr}};
    return dumped(json, layout);
}

std::string json_of(const SawOrder& order, JsonLayout layout) { return dumped(saw_plan(order), layout); }

BatchJson::BatchJson(JsonLayout layout) : between_(layout == JsonLayout::indented ? "\n" : "") {}

std::string BatchJson::begin() { return "{\"orders\": ["; }

std::string BatchJson::entry(const std::string& json)
{
    const bool first = std::exchange(first_, false);
    return (first ? "" : ",") + between_ + json;
}

std::string BatchJson::next(const BuildPlan& plan)
{
    const Wording w = wording_of(plan);
    const Json json = {{"order", plan.order},
                       {"verdict", to_word(plan.verdict)},
                       {"reasons", say(plan.reasons, w)},
                       {"open", open_points(plan)},
                       {"blanks_mm", blanks(plan)},
                       {"half_mm", halves(plan)},
                       {"closed_mm", plan.built ? Json(plan.built->closed_at[plan.reference].mm()) : Json(nullptr)},
                       {"parts", parts(plan)},
                       {"checks", json_of(plan.checks, w)},
                       {"count", plan.count},
                       {"reference", to_word(plan.reference)},
                       {"use_mm", use(plan)},
                       {"tubes_kg", mass(plan)},
                       {"operations", operations(plan)},
                       {"ways_out", say(plan.ways_out, w)},
                       {"notes", say(plan.notes, w)}};
    return entry(json.dump());
}

std::string BatchJson::end(const std::vector<ProfilePlan>& plans)
{
    std::string text = between_ + "], \"saw\": [";
    first_ = true;
    for (const ProfilePlan& plan : plans) {
        Json json = {{"stock", plan.profile}};
        if (plan.order) json.update(saw_plan(*plan.order));
        else json.update({{"bars", nullptr}, {"bars_used", nullptr}, {"cost", nullptr}, {"lower_bound", nullptr}, {"proven_optimal", nullptr}, {"seconds", nullptr}});
        json["refusal"] = plan.refusal ? Json(say(*plan.refusal, Wording(Units::mm))) : Json(nullptr);
        text += entry(json.dump());
    }
    return text + between_ + "]}\n";
}

}  // namespace shaftcut

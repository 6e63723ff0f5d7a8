#include "json/json_parts.hpp"

namespace shaftcut {
namespace {

// What is left to saw and what is missing are known of a part that was judged: 0 where there is none.
Json json_of(const PartAfterCut& part)
{
    const bool judged = part.result != AfterCutVerdict::measure;
    const auto known = [&](Length length) { return judged ? number(length) : Json(nullptr); };
    return {{"part", to_word(part.part)},
            {"result", to_word(part.result)},
            {"measured_mm", number(part.measured)},
            {"expected_mm", part.expected ? Json(part.expected->value.mm()) : Json(nullptr)},
            {"plus_minus_mm", part.expected ? Json((part.expected->most - part.expected->value).mm()) : Json(nullptr)},
            {"saw_more_mm", known(part.saw_more ? part.saw_more->off : Length())},
            {"short_mm", known(part.short_by)}};
}

Json parts(const AfterCut& found)
{
    Json list = Json::array();
    for (const PartAfterCut& part : found.parts) list.push_back(json_of(part));
    return list;
}

// Under the names that a job's answer has for them.
Json telescoping(const WorkOrder& order, const AfterCut& found)
{
    const auto value = [](const std::optional<Toleranced>& length) { return length ? Json(length->value.mm()) : Json(nullptr); };
    Json json = {{"closed_before", order.reading.shaft.closed.value.mm()}, {"closed_after", found.closes_at.mm()}, {"shortest", value(order.fit.shortest)}};
    for (const Range range : all_ranges) json[std::string("longest_") + to_word(range)] = value(order.fit.longest[range]);
    return json;
}

Json overlaps(const WorkOrder& order, const AfterCut& found)
{
    Json json = {{"closed_before", number(order.overlap_closed_before)}, {"closed_after", found.overlap.closed.mm()}, {"shortest", number(found.overlap.shortest)}};
    for (const Range range : all_ranges) json[std::string("longest_") + to_word(range)] = number(found.overlap.longest[range]);
    return json;
}

}  // namespace

std::string json_of(const ShaftAfterCut& shaft, JsonLayout layout)
{
    const WorkOrder& order = shaft.order;
    const std::string& number = order.shaft.number;
    return dumped({{"order", order.order},
                   {"shaft", number.empty() ? Json(nullptr) : Json(number)},
                   {"verdict", to_word(shaft.found.verdict)},
                   {"parts", parts(shaft.found)},
                   {"telescoping_mm", telescoping(order, shaft.found)},
                   {"overlap_mm", overlaps(order, shaft.found)},
                   {"checks", json_of(shaft.found.checks, Wording(order.units))}},
                  layout);
}

}  // namespace shaftcut

// A work order, a shaft as it was cut or a saw plan as JSON, for scripts. Lengths in millimetres with up to three decimals whatever the documents' units.
#pragma once

#include <string>

#include "shaftcut/trade/build/batch.hpp"
#include "shaftcut/trade/choose/choose.hpp"
#include "shaftcut/trade/identify/identified_shaft.hpp"
#include "shaftcut/trade/order/after_cut.hpp"
#include "shaftcut/trade/order/work_order.hpp"
#include "shaftcut/trade/saw/saw_order.hpp"

namespace shaftcut {

enum class JsonLayout { one_line, indented };

// Ends with a newline. What is not known is null; a refused order's cuts, kept lengths, new closed length and overlaps
// (but for the closed one before) are null.
std::string json_of(const WorkOrder& order, JsonLayout layout);

// A shaft as it was cut. Of a part that must be measured it is not known what more to saw or what it lacks: null.
std::string json_of(const ShaftAfterCut& shaft, JsonLayout layout);

// Which shafts would serve: each series at each closed length, ranked, and what can be made to order. Of one that does not serve no cut is known: null.
std::string json_of(const Choices& choices, JsonLayout layout);

// Which series a measured shaft can be: per cents to 0.01, bits to 0.001; `series` of a figure that its series does not state is null.
std::string json_of(const IdentifiedShaft& shaft, JsonLayout layout);

// Bars alike in their lengths, whatever their labels, are one entry. Costs and the bound are in the stock's own unit of cost.
std::string json_of(const SawOrder& order, JsonLayout layout);

// What the machines' geometry gives: telescoping lengths, joint angles, and the posture of each under the same names. What
// no range states is null.
std::string lengths_json_of(const WorkOrder& order, JsonLayout layout);

// A batch of shafts made to order: one document, made piece by piece so that no order need be kept. Each order and each plan stands on
// a line of its own where `layout` is indented. A refused order's lengths are null and its parts empty.
class BatchJson {
public:
    explicit BatchJson(JsonLayout layout);
    // To be written one after the other: the beginning, each order, the end, which ends with a newline.
    std::string begin();
    std::string next(const BuildPlan& plan);
    std::string end(const std::vector<ProfilePlan>& plans);

private:
    std::string entry(const std::string& json);

    std::string between_;  // entries
    bool first_ = true;
};

}  // namespace shaftcut

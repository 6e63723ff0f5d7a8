#include <utility>

#include "order/steps_parts.hpp"

namespace shaftcut {
namespace steps {

void add(std::vector<Step>& steps, int number, std::vector<Task> tasks)
{
    if (!tasks.empty()) steps.push_back({number, std::move(tasks)});
}

}  // namespace steps

std::vector<Step> steps_for(const WorkOrder& order)
{
    std::vector<Step> found;
    if (!order.cut) return found;
    if (order.verdict == Verdict::cut) {
        steps::add_saw_steps(found, order);
        steps::add_reading_steps(found, order);
    } else {
        steps::add_looks(found, order);
    }
    steps::add_machine_steps(found, order);
    return found;
}

}  // namespace shaftcut

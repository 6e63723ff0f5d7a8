#include "order/tube_view.hpp"

namespace shaftcut {

TubeView tube_view(const WorkOrder& order, End end, bool guard)
{
    TubeView view;
    view.end = end;
    view.tube = tube_on(order.shaft, end);
    view.guard = guard;
    view.used = !guard || guard_is_used(order.shaft, view.tube);
    if (!view.used) return view;
    const Half& half = order.reading.shaft.halves[view.tube];
    const std::optional<Toleranced>& before = guard ? half.guard : half.length;
    if (before) view.before = before->value;
    view.measured = before && (guard || half.measured);
    if (order.cut) {
        const CutPlan& plan = order.cut->plan;
        view.cut = guard ? plan.guard_cut[view.tube] : std::optional(plan.cut[view.tube]);
        view.kept = guard ? plan.guard_half[view.tube] : plan.half[view.tube];
    }
    return view;
}

std::vector<TubeView> tube_views(const WorkOrder& order)
{
    std::vector<TubeView> views;
    for (const End end : both_ends)
        for (const bool guard : {true, false})
            if (const TubeView view = tube_view(order, end, guard); view.used) views.push_back(view);
    return views;
}

}  // namespace shaftcut

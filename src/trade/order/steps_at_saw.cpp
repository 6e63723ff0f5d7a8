// What is done up to the last saw stroke, and the bare ends after it. Common practice of published manuals where nothing else is said.
#include <algorithm>

#include "order/steps_parts.hpp"

namespace shaftcut::steps {
namespace {

// The offset of two tubes side by side, the marks and the doubt of the shortest: the project's own choice.
constexpr Length side_by_side_plus_minus = Length::millimetres(10);

using Tasks = std::vector<Task>;

bool has_feature(const WorkOrder& order, Tube tube, Feature feature)
{
    const auto& features = order.reading.shaft.halves[tube].features;
    return std::find(features.begin(), features.end(), feature) != features.end();
}

// Whether a half that loses drive tube has the feature.
bool cut_feature(const WorkOrder& order, Feature feature)
{
    return std::any_of(both_tubes.begin(), both_tubes.end(), [&](Tube tube) { return order.cut->plan.cuts_tube(tube) && has_feature(order, tube, feature); });
}

// A lubrication passage must stay clear, and no hole may be sawn off.
bool hole_near_cut(const WorkOrder& order)
{
    const auto& halves = order.reading.shaft.halves;
    return cuts_a_tube(order) && (halves[Tube::inner].lubrication_hole || halves[Tube::outer].lubrication_hole);
}

bool has_device(const WorkOrder& order)
{
    return std::any_of(both_ends.begin(), both_ends.end(), [&](End end) { return order.shaft.ends[end].device.value_or(Device::none) != Device::none; });
}

bool is_guard(Confirmed what) { return what == Confirmed::inner_guard || what == Confirmed::outer_guard; }
bool is_together(Confirmed what) { return what == Confirmed::closed || what == Confirmed::closed_inner_cross || what == Confirmed::built; }

template <class Which>
void confirm(Tasks& tasks, const WorkOrder& order, Which which)
{
    for (const Confirmation& one : order.confirm)
        if (which(one.what)) tasks.emplace_back(ConfirmTask{one});
}

void add_new_guards(Tasks& tasks, const WorkOrder& order)
{
    NewGuard found{{}, order.limits.length(Limit::guard_setback)};
    for (const Tube tube : both_tubes)
        if (!guard_is_used(order.shaft, tube)) found.guards.push_back(guard_part(tube));
    if (!found.guards.empty()) tasks.emplace_back(found);
}

// Which parts lose something: guards, tubes and those that do not.
struct Parted {
    std::vector<SawnPart> tubes, guards, not_cut, guess;
};

Parted parts_of(const WorkOrder& order)
{
    Parted found;
    for (const Tube tube : both_tubes) {
        if (!guard_is_used(order.shaft, tube)) continue;
        const bool cut = order.cut->plan.cuts_guard(tube);
        (cut ? found.guards : found.not_cut).push_back(guard_part(tube));
        if (cut && !order.reading.shaft.halves[tube].guard) found.guess.push_back(guard_part(tube));
    }
    for (const Tube tube : both_tubes) (order.cut->plan.cuts_tube(tube) ? found.tubes : found.not_cut).push_back(tube_part(tube));
    return found;
}

// Of several fits the position of the one that decides.
const FitReading* deciding(const WorkOrder& order)
{
    for (const FitReading& fit : order.fits)
        if (fit.fit.shortest && fit.fit.shortest->value == order.fit.shortest->value) return &fit;
    return nullptr;
}

ReadShortestAgain read_again(const WorkOrder& order) { return {order.fit.shortest->value, order.fit.shortest->plus_minus + order.measuring_plus_minus}; }

SideBySide side_by_side(const WorkOrder& order)
{
    const CutPlan& plan = order.cut->plan;
    const Length shortest = order.fit.shortest->value, shoulder = order.stops->shoulder[Tube::inner];
    SideBySide check{shortest - plan.half[Tube::outer] - shoulder, false, plan.overlap_at(shortest), side_by_side_plus_minus, plan.cuts_tube(Tube::inner), plan.cuts_tube(Tube::outer), "", {},
                     read_again(order)};
    if (!order.reading.shaft.halves[Tube::inner].shoulder) {
        check.from_face = order.limits.length(Limit::closing_clearance);
        check.from_face_at_least = true;
    }
    if (const FitReading* fit = deciding(order)) {
        check.at = fit->shortest_at;
        if (const ExtremeLength* computed = fit->computed_shortest()) check.posture = computed->at;
    }
    return check;
}

Task check_before_saw(const WorkOrder& order)
{
    if (order.circumstances.machine_here) return side_by_side(order);
    return read_again(order);
}

Tasks together_tasks(const WorkOrder& order)
{
    Tasks tasks;
    if (order.verdict == Verdict::cut && order.stops->agreement != ClosedAgreement::agrees) tasks.emplace_back(PlainTask::find_out_why_not_closed);
    confirm(tasks, order, is_together);
    return tasks;
}

Tasks parting_tasks(const WorkOrder& order)
{
    Tasks tasks{PlainTask::open_guards, PlainTask::look_at_forks, PlainTask::stroke_and_part};
    confirm(tasks, order, is_guard);
    return tasks;
}

Tasks apart_tasks(const WorkOrder& order, const Parted& parts)
{
    Tasks tasks{PlainTask::guards_off};
    if (!parts.guards.empty()) tasks.emplace_back(PlainTask::guard_that_stays);
    add_new_guards(tasks, order);
    confirm(tasks, order, [](Confirmed what) { return !is_guard(what) && !is_together(what); });
    if (check_of(order.checks, CheckId::tube_left).result == CheckResult::not_checked && cuts_a_tube(order)) tasks.emplace_back(PlainTask::compare_tube_left);
    if (cut_feature(order, Feature::end_stop)) tasks.emplace_back(PlainTask::take_end_stop_off);
    return tasks;
}

Tasks end_tasks(const WorkOrder& order)
{
    Tasks tasks{PlainTask::deburr};
    if (cut_feature(order, Feature::coated)) tasks.emplace_back(PlainTask::treat_coated_edge);
    if (cut_feature(order, Feature::end_stop)) tasks.emplace_back(PlainTask::refit_end_stop);
    if (hole_near_cut(order)) tasks.emplace_back(PlainTask::clear_lubrication);
    return tasks;
}

Tasks look_tasks(const WorkOrder& order) { return {LookOver{has_device(order)}, PlainTask::slide_or_stop}; }

}  // namespace

void add_saw_steps(std::vector<Step>& steps, const WorkOrder& order)
{
    const Parted parts = parts_of(order);
    add(steps, 1, look_tasks(order));
    add(steps, 2, together_tasks(order));
    add(steps, 3, parting_tasks(order));
    add(steps, 4, apart_tasks(order, parts));
    Tasks marks{MarkCuts{parts.tubes, parts.guards, parts.not_cut, 2 * order.measuring_plus_minus, parts.guess}};
    if (hole_near_cut(order)) marks.emplace_back(PlainTask::no_hole_in_waste);
    add(steps, 5, marks);
    if (cuts_a_tube(order)) add(steps, 6, {check_before_saw(order)});
    Tasks saw{PlainTask::hold_to_saw};
    if (cut_feature(order, Feature::coated)) saw.emplace_back(PlainTask::saw_coated);
    saw.emplace_back(SawCuts{parts.guards, parts.tubes, parts.not_cut});
    add(steps, last_saw_step, saw);
    add(steps, 8, end_tasks(order));
}

void add_looks(std::vector<Step>& steps, const WorkOrder& order)
{
    add(steps, 1, look_tasks(order));
    add(steps, 2, together_tasks(order));
    Tasks apart;
    confirm(apart, order, [](Confirmed what) { return !is_together(what); });
    add_new_guards(apart, order);
    if (!apart.empty()) apart.insert(apart.begin(), PlainTask::part_and_stroke);
    add(steps, 4, apart);
}

}  // namespace shaftcut::steps

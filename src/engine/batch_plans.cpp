#include "batch_plans.hpp"

#include <algorithm>

#include "saw_in_time.hpp"

namespace shaftcut {
namespace {

// Which pieces, where it is about some: they are of many orders.
std::string refusal_text(const SawTask& task, const SawRefusal& refusal)
{
    constexpr std::size_t most_named = 5;
    std::string text = refusal.wrong + "; " + refusal.right;
    for (std::size_t i = 0; i < std::min(refusal.pieces.size(), most_named); ++i) text += (i == 0 ? " (" : ", ") + task.pieces[refusal.pieces[i]].label;
    if (refusal.pieces.size() > most_named) text += " and " + std::to_string(refusal.pieces.size() - most_named) + " more";
    return text + (refusal.pieces.empty() ? "" : ")");
}

ProfilePlan plan_profile(const Batch& batch, ProfileTask task, double seconds, const BatchSawing& sawing, const SawMeans& means)
{
    ProfilePlan plan{task.profile, {}, {}};
    SawnInTime sawn = plan_in_time(task.task, seconds, means);
    if (const auto* refusal = std::get_if<SawRefusal>(&sawn.outcome)) {
        plan.refusal = refusal_text(task.task, *refusal);
        return plan;
    }
    const SawHeading heading{batch.name + ", " + task.profile, batch.owner, batch.units, sawing.reusable, sawing.least_cut, sawing.plus_minus};
    plan.order = lay_out(heading, std::move(task.task), std::get<SawPlan>(std::move(sawn.outcome)), sawn.end, sawn.seconds);
    return plan;
}

}  // namespace

Batch plan_batch(Batch batch, const BatchSaw& saw, const BatchSawing& sawing, const SawMeans& means)
{
    std::vector<ProfileTask> tasks = saw_tasks(batch, saw);
    batch.unplanned = profiles_without_bars(batch, saw);
    const double start = means.seconds();
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        const double share = (sawing.seconds - (means.seconds() - start)) / static_cast<double>(tasks.size() - i);
        batch.plans.push_back(plan_profile(batch, std::move(tasks[i]), share, sawing, means));
    }
    return batch;
}

}  // namespace shaftcut

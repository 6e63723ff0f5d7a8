#include "batch_plans.hpp"

#include "build/build_words.hpp"
#include "saw_in_time.hpp"

namespace shaftcut {
namespace {

// With the pieces that it is about: they are of many orders.
ProfileRefusal refusal_of(const SawTask& task, const SawRefusal& refusal)
{
    ProfileRefusal of{refusal, {}};
    for (const std::size_t piece : refusal.pieces) of.labels.push_back(task.pieces[piece].label);
    return of;
}

ProfilePlan plan_profile(const Batch& batch, ProfileTask task, double seconds, const BatchSawing& sawing, const SawMeans& means)
{
    ProfilePlan plan{task.profile, {}, {}};
    SawnInTime sawn = plan_in_time(task.task, seconds, means);
    if (const auto* refusal = std::get_if<SawRefusal>(&sawn.outcome)) {
        plan.refusal = refusal_of(task.task, *refusal);
        return plan;
    }
    const SawHeading heading{batch.name + ", " + task.profile, batch.owner, batch.units, sawing.reusable, sawing.least_cut, sawing.plus_minus};
    plan.order = lay_out(heading, std::move(task.task), std::get<SawPlan>(std::move(sawn.outcome)), sawn.end, sawn.seconds);
    return plan;
}

}  // namespace

Batch plan_batch(Batch batch, const BatchSaw& saw, const BatchSawing& sawing, const SawMeans& means)
{
    std::vector<ProfileTask> tasks = saw_tasks(batch, saw, [w = wording_of(batch)](const BatchPiece& piece) { return piece_label(piece, w); });
    batch.unplanned = profiles_without_bars(batch, saw);
    const double start = means.seconds();
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        const double share = (sawing.seconds - (means.seconds() - start)) / static_cast<double>(tasks.size() - i);
        batch.plans.push_back(plan_profile(batch, std::move(tasks[i]), share, sawing, means));
    }
    return batch;
}

}  // namespace shaftcut

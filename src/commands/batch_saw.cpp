#include "batch_saw.hpp"

#include <algorithm>

#include "saw_progress.hpp"
#include "shaftcut/commands/interrupt.hpp"

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

ProfilePlan plan_profile(const Batch& batch, ProfileTask task, double seconds, const BatchSawing& sawing, const InterruptWatch& interrupt, Console& console)
{
    ProfilePlan plan{task.profile, {}, {}};
    SawClock clock(seconds, console);
    const auto left = [&] { return interrupt.came() ? 0.0 : clock.seconds_left(); };
    SawOutcome outcome = plan_saw(task.task, {left, [&](std::int64_t cost, std::int64_t bound) { clock.news(cost, bound); }});
    const SawEnd end = interrupt.came() ? SawEnd::interrupted : clock.seconds_left() <= 0 ? SawEnd::time_was_up : SawEnd::finished;
    clock.clear();
    if (const auto* refusal = std::get_if<SawRefusal>(&outcome)) {
        plan.refusal = refusal_text(task.task, *refusal);
        return plan;
    }
    const SawHeading heading{batch.name + ", " + task.profile, batch.owner, batch.units, sawing.reusable, sawing.least_cut, sawing.plus_minus};
    plan.order = lay_out(heading, std::move(task.task), std::get<SawPlan>(std::move(outcome)), end, clock.seconds_taken());
    return plan;
}

}  // namespace

Batch plan_batch(Batch batch, const BatchSaw& saw, const BatchSawing& sawing, Console& console)
{
    std::vector<ProfileTask> tasks = saw_tasks(batch, saw);
    batch.unplanned = profiles_without_bars(batch, saw);
    const SawClock all(sawing.seconds, console);
    const InterruptWatch interrupt;
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        const double share = (sawing.seconds - all.seconds_taken()) / static_cast<double>(tasks.size() - i);
        batch.plans.push_back(plan_profile(batch, std::move(tasks[i]), share, sawing, interrupt, console));
    }
    return batch;
}

}  // namespace shaftcut

#include "shaftcut/trade/build/batch.hpp"

#include <algorithm>
#include <set>
#include <utility>

namespace shaftcut {
namespace {

std::vector<BatchPiece> pieces_of(const BuildPlan& plan, const Series& series)
{
    std::vector<BatchPiece> pieces;
    const auto add = [&](ShaftTube part, Length length, std::optional<Length> pin_hole, bool sawn) {
        pieces.push_back({plan.order, part, end_of(plan.ordered, part.tube), profile_of(series, part), length, plan.count, pin_hole, sawn});
    };
    const BuiltLengths& lengths = plan.built->lengths;
    for (const Tube tube : both_tubes) {
        add({tube, TubeKind::drive}, lengths.blank[tube], lengths.pin_hole[tube], plan.built->sawn[tube]);
        if (const auto& guard = lengths.guard_blank[tube]) add({tube, TubeKind::guard}, *guard, std::nullopt, true);
    }
    return pieces;
}

BatchOrder row_of(const BuildPlan& plan, const Series& series)
{
    BatchOrder row{plan.order, plan.customer, plan.machine, plan.due, plan.shaft_title, plan.count, plan.verdict, plan.reasons, plan.open, {}, {}, {}};
    if (!plan.built) return row;
    const BuiltShaft& built = *plan.built;
    row.built = BatchLengths{build_inputs(plan, series), built.lengths, built.closed_at[plan.reference], plan.reference, plan.has_wide_angle, built.use};
    row.parts = counted(built.parts, plan.count);
    if (built.tubes_mass) row.mass = *built.tubes_mass * plan.count;
    return row;
}

bool is_guard(const BatchPiece& piece) { return piece.part.kind == TubeKind::guard; }

std::vector<SawStock> bars_for(const BatchPiece& piece, const BatchSaw& saw)
{
    std::vector<SawStock> bars;
    for (const ProfileStock& stock : saw.profile_stock)
        if (stock.profile == piece.profile) bars.push_back(stock.stock);
    if (!bars.empty() || is_guard(piece)) return bars;
    std::copy_if(saw.stock.begin(), saw.stock.end(), std::back_inserter(bars), [](const SawStock& stock) { return !stock.count; });
    return bars;
}

}  // namespace

BatchBuilder::BatchBuilder(std::string name, std::string owner, Units units)
{
    batch_.name = std::move(name);
    batch_.owner = std::move(owner);
    batch_.units = units;
}

void BatchBuilder::add(const BuildPlan& plan, const Series& series)
{
    batch_.orders.push_back(row_of(plan, series));
    if (!plan.built) return;
    for (const PartCount& part : batch_.orders.back().parts) {
        const auto [at, added] = part_at_.emplace(part.name, batch_.parts.size());
        if (added) batch_.parts.push_back(part);
        else batch_.parts[at->second].count += part.count;
    }
    for (BatchPiece& piece : pieces_of(plan, series)) batch_.pieces.push_back(std::move(piece));
}

Batch BatchBuilder::take() { return std::move(batch_); }

std::vector<ProfileTask> saw_tasks(const Batch& batch, const BatchSaw& saw, const PieceLabel& label)
{
    std::vector<ProfileTask> tasks;
    std::map<std::string, std::size_t> task_at;
    std::set<std::pair<std::string, bool>> without_bars;  // tubes and guard tubes of one name are asked apart; each is asked once
    for (const BatchPiece& piece : batch.pieces) {
        if (!piece.sawn) continue;
        if (!task_at.contains(piece.profile)) {
            const std::pair asked(piece.profile, is_guard(piece));
            std::vector<SawStock> bars = without_bars.contains(asked) ? std::vector<SawStock>() : bars_for(piece, saw);
            if (bars.empty()) {
                without_bars.insert(asked);
                continue;
            }
            task_at.emplace(piece.profile, tasks.size());
            tasks.push_back({piece.profile, {{}, std::move(bars), saw.kerf, saw.trim_start, saw.trim_end, saw.reusable}});
        }
        tasks[task_at.at(piece.profile)].task.pieces.push_back({piece.length, piece.count, label(piece)});
    }
    return tasks;
}

std::vector<NotPlanned> not_planned(const Batch& batch)
{
    std::vector<NotPlanned> all;
    const auto add = [&](const std::string& profile, const std::optional<ProfileRefusal>& refusal) {
        NotPlanned left_out{profile, refusal, {}};
        for (const BatchPiece& piece : batch.pieces)
            if (piece.sawn && piece.profile == profile) left_out.pieces.push_back(piece);
        all.push_back(std::move(left_out));
    };
    for (const ProfilePlan& plan : batch.plans)
        if (!plan.order) add(plan.profile, plan.refusal);
    for (const std::string& profile : batch.unplanned) add(profile, std::nullopt);
    return all;
}

std::vector<std::string> profiles_without_bars(const Batch& batch, const BatchSaw& saw)
{
    std::vector<std::string> profiles;
    std::set<std::string> met;
    for (const BatchPiece& piece : batch.pieces)
        if (piece.sawn && met.insert(piece.profile).second && bars_for(piece, saw).empty()) profiles.push_back(piece.profile);
    return profiles;
}

}  // namespace shaftcut

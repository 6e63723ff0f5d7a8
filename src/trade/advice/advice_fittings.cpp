// The way out of a refusal that no length mends: another yoke, lock, device or series, sound parts, or joints that are bent less.
#include <algorithm>

#include "advice/advice_parts.hpp"

namespace shaftcut {
namespace {

// A yoke to match the other side helps only where that side may run at the shaft's speed: else a 1000 min⁻¹ stub would drive
// a 540 min⁻¹ machine.
MatchConnection connection_way(const CheckInput& input, End end)
{
    using Rating = MatchConnection::Rating;
    const std::string& onto = *input.job.shaft.ends[end].onto;
    const Connection* connection = find_connection(input.catalogue, onto);
    const auto& speed = input.job.shaft.speed;
    if (!connection || connection->speeds.empty() || !speed) return {end, onto, Rating::unknown, speed};
    const bool serves = std::find(connection->speeds.begin(), connection->speeds.end(), *speed) != connection->speeds.end();
    return {end, onto, serves ? Rating::serves : Rating::too_slow, speed};
}

// Whether a wide-angle joint at this end would stay within its limits at the angles as they are.
bool wide_angle_would_serve(const CheckInput& input, End end)
{
    return std::all_of(all_ranges.begin(), all_ranges.end(), [&](Range range) {
        const auto& angle = input.fit.angles[end][range];
        return !angle || *angle <= greatest_angle(input.limits, JointKind::wide_angle, range);
    });
}

// A machine whose geometry is known only turns, or is only lifted.
LimitMovement::Of movement_to_limit(const CheckInput& input)
{
    const auto all = [&](auto is_kind) {
        return std::all_of(input.fits.begin(), input.fits.end(), [&](const FitReading& fit) { return fit.geometry && is_kind(fit.geometry->machine); });
    };
    if (all([](const Machine& machine) { return std::holds_alternative<Trailed>(machine); })) return LimitMovement::Of::turn;
    if (all([](const Machine& machine) { return std::holds_alternative<Mounted>(machine); })) return LimitMovement::Of::lift;
    return LimitMovement::Of::either;
}

LimitMovement angle_way(const CheckInput& input, End end)
{
    const JointKind joint = input.job.shaft.ends[end].joint;
    const auto limit = [&](Range range) { return greatest_angle(input.limits, joint, range); };
    return {movement_to_limit(input), end, limit(Range::turning), limit(Range::standing), joint == JointKind::standard && wide_angle_would_serve(input, end)};
}

// Another series carries the power; whether it would fit is not asked here.
SeriesThatCarries rating_way(const CheckInput& input)
{
    SeriesThatCarries way{*input.job.circumstances.power, *input.job.shaft.speed, {}};
    for (const Series& series : input.catalogue.series)
        if (rated_power(series, way.speed).value_or(0) >= way.watts) way.serving.push_back(series.name);
    return way;
}

}  // namespace

std::vector<WayOut> fitting_ways(const CheckInput& input, const std::vector<Check>& checks)
{
    std::vector<WayOut> ways;
    if (failed(checks, CheckId::locking)) ways.emplace_back(Remedy::fit_unexposed_locks);
    for (const End end : both_ends) {
        const JobEnd& job_end = input.job.shaft.ends[end];
        const bool differs = job_end.connection && job_end.onto && *job_end.connection != *job_end.onto;
        if (differs) ways.emplace_back(connection_way(input, end));
    }
    if (failed(checks, CheckId::overload_device)) ways.emplace_back(Remedy::device_at_implement);
    for (const End end : both_ends)
        if (failed(checks, joint_angle_check_id(end))) ways.emplace_back(angle_way(input, end));
    if (failed(checks, CheckId::rating)) ways.emplace_back(rating_way(input));
    if (failed(checks, CheckId::condition)) ways.emplace_back(Remedy::put_new_parts);
    return ways;
}

}  // namespace shaftcut

// The way out of a refusal that no length mends: another yoke, lock, device or series, sound parts, or joints that are bent less.
#include <algorithm>

#include "advice/advice_parts.hpp"
#include "text.hpp"

namespace shaftcut {
namespace {

constexpr const char* locking_way = "Fit yokes whose locks have no part that stands out (a covered collar, a shrouded push pin, a clamp bolt). "
                                    "Then measure again and make a new sheet.";

// A yoke to match the other side helps only where that side may run at the shaft's speed: else a 1000 min⁻¹ stub would drive
// a 540 min⁻¹ machine.
std::string connection_way(const CheckInput& input, End end)
{
    const std::string& onto = *input.job.shaft.ends[end].onto;
    const Connection* connection = find_connection(input.catalogue, onto);
    const auto& speed = input.job.shaft.speed;
    const std::string yoke = "a yoke of type " + onto + " at " + end_named(end);
    const std::string no_adaptor = " Never fit an adaptor that lets a 1000 min⁻¹ tractor drive a 540 min⁻¹ machine.";
    if (!connection || connection->speeds.empty() || !speed)
        return "Fit " + yoke + " if what it is coupled to runs at the shaft's rated speed." + no_adaptor;
    if (std::find(connection->speeds.begin(), connection->speeds.end(), *speed) != connection->speeds.end())
        return "Fit " + yoke + "." + no_adaptor;
    return "Do not change the yoke at " + end_named(end) + ": " + onto + " is not rated for the " + std::to_string(*speed) +
           " min⁻¹ of this shaft. Use a stub that is." + no_adaptor;
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
std::string movement_to_limit(const CheckInput& input)
{
    const auto all = [&](auto is_kind) {
        return std::all_of(input.fits.begin(), input.fits.end(), [&](const FitReading& fit) { return fit.geometry && is_kind(fit.geometry->machine); });
    };
    if (all([](const Machine& machine) { return std::holds_alternative<Trailed>(machine); })) return "the turn";
    if (all([](const Machine& machine) { return std::holds_alternative<Mounted>(machine); })) return "the lift";
    return "the turn or the lift";
}

std::string angle_way(const CheckInput& input, End end)
{
    const JointKind joint = input.job.shaft.ends[end].joint;
    const auto limit = [&](Range range) { return figure(greatest_angle(input.limits, joint, range), 3) + "°"; };
    std::string way = "Limit " + movement_to_limit(input) + " so that the joint at " + end_named(end) + " bends by " + limit(Range::turning) +
                      " at most with the PTO turning and by " + limit(Range::standing) + " at most with it stopped";
    if (joint == JointKind::standard && wide_angle_would_serve(input, end)) way += ", or fit a shaft with a wide-angle joint at that end";
    return way + ".";
}

// Another series carries the power; whether it would fit is not asked here.
std::string rating_way(const CheckInput& input)
{
    const std::int64_t power = *input.job.circumstances.power;
    const int speed = *input.job.shaft.speed;
    std::vector<std::string> serving;
    for (const Series& series : input.catalogue.series)
        if (rated_power(series, speed).value_or(0) >= power) serving.push_back(series.name);
    const std::string needed = kilowatts(power) + " at " + std::to_string(speed) + " min⁻¹";
    return "Take a shaft of a series that carries " + needed + (serving.empty() ? ": none of the catalogue's does." : ", of the catalogue " + listed(serving, "or") + ", both halves of it.");
}

}  // namespace

std::vector<std::string> fitting_ways(const CheckInput& input, const std::vector<Check>& checks)
{
    std::vector<std::string> ways;
    if (failed(checks, CheckId::locking)) ways.push_back(locking_way);
    for (const End end : both_ends) {
        const JobEnd& job_end = input.job.shaft.ends[end];
        const bool differs = job_end.connection && job_end.onto && *job_end.connection != *job_end.onto;
        if (differs) ways.push_back(connection_way(input, end));
    }
    if (failed(checks, CheckId::overload_device))
        ways.emplace_back("Fit the device at the implement end, the way round that is marked on it, and a plain yoke at the tractor end.");
    for (const End end : both_ends)
        if (failed(checks, joint_angle_check_id(end))) ways.push_back(angle_way(input, end));
    if (failed(checks, CheckId::rating)) ways.push_back(rating_way(input));
    if (failed(checks, CheckId::condition)) ways.emplace_back("Put new parts in the place of those named, or take another shaft. Then measure again and make a new sheet.");
    return ways;
}

}  // namespace shaftcut

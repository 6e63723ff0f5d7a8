#include "shaftcut/trade/build/plate.hpp"

#include <algorithm>
#include <numbers>

#include "checks/check_parts.hpp"

namespace shaftcut {
namespace {

std::optional<int> lesser(std::optional<int> speed, std::optional<int> bound)
{
    if (!speed || !bound) return speed ? speed : bound;
    return std::min(*speed, *bound);
}

std::optional<int> greatest_of(const Connection& connection)
{
    if (connection.speeds.empty()) return std::nullopt;
    return *std::max_element(connection.speeds.begin(), connection.speeds.end());
}

std::optional<int> greatest_rated(const Series& series)
{
    std::optional<int> greatest;
    for (const Rating& rating : series.ratings) greatest = std::max(greatest.value_or(0), rating.speed);
    return greatest;
}

std::optional<int> greatest_speed(const BuildOrder& order, const Catalogue& catalogue, const Series& series)
{
    std::optional<int> speed = lesser(order.shaft.speed, greatest_rated(series));
    for (const End end : both_ends) {
        const auto& name = order.shaft.ends[end].connection;
        const Connection* connection = name ? find_connection(catalogue, *name) : nullptr;
        if (connection) speed = lesser(speed, greatest_of(*connection));
    }
    return speed;
}

std::int64_t torque_of(std::int64_t power, int speed) { return static_cast<std::int64_t>(60.0 * static_cast<double>(power) / (2 * std::numbers::pi * speed)); }

}  // namespace

PlateFigures plate_figures(const BuildOrder& order, const Catalogue& catalogue, const Series& series)
{
    PlateFigures figures;
    figures.speed = greatest_speed(order, catalogue, series);
    if (!figures.speed || *figures.speed <= 0) return figures;
    figures.power = rated_power(series, *figures.speed);
    if (figures.power) figures.torque = torque_of(*figures.power, *figures.speed);
    return figures;
}

}  // namespace shaftcut

#include "shaftcut/trade/data/catalogue.hpp"

#include <algorithm>

namespace shaftcut {
namespace {

template <class T>
const T* find_by_name(const std::vector<T>& all, std::string_view name)
{
    const auto found = std::find_if(all.begin(), all.end(), [&](const T& one) { return one.name == name; });
    return found == all.end() ? nullptr : &*found;
}

}  // namespace

const Series* find_series(const Catalogue& catalogue, std::string_view name) { return find_by_name(catalogue.series, name); }

const Connection* find_connection(const Catalogue& catalogue, std::string_view name) { return find_by_name(catalogue.connections, name); }

std::optional<Reference> usual_reference(Shape shape)
{
    switch (shape) {
    case Shape::lemon:
    case Shape::star: return Reference::outer_cross;
    case Shape::triangular: return Reference::inner_cross;
    default: return std::nullopt;
    }
}

std::optional<Length> cross_to_groove(const Series& series, std::string_view connection, JointKind joint)
{
    for (const Yoke& yoke : series.yokes)
        if (yoke.connection == connection && yoke.joint.value_or(joint) == joint) return yoke.cross_to_groove;
    return std::nullopt;
}

}  // namespace shaftcut

#include "source/known_names.hpp"

#include <algorithm>

#include "text.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_listed = 12;
constexpr std::size_t most_compared = 1000;

}  // namespace

KnownNames::KnownNames(std::vector<std::string> names, NamesOf list) : names_(std::move(names)), list_(list)
{
    std::sort(names_.begin(), names_.end());
}

bool KnownNames::holds(std::string_view name) const
{
    return std::binary_search(names_.begin(), names_.end(), name, std::less<>());
}

UnknownName KnownNames::unknown(Stated stated) const
{
    UnknownName found{std::move(stated), list_};
    if (names_.size() <= most_compared) found.nearest = nearest_name(found.stated.value, names_);
    if (!found.nearest.empty()) return found;
    const std::size_t count = std::min(names_.size(), most_listed);
    found.first.assign(names_.begin(), names_.begin() + static_cast<std::ptrdiff_t>(count));
    found.more = names_.size() - count;
    return found;
}

}  // namespace shaftcut

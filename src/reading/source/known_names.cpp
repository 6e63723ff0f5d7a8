#include "source/known_names.hpp"

#include <algorithm>

#include "text.hpp"

namespace shaftcut {
namespace {

constexpr std::size_t most_listed = 12;
constexpr std::size_t most_compared = 1000;

}  // namespace

KnownNames::KnownNames(std::vector<std::string> names, std::string what) : names_(std::move(names)), what_(std::move(what))
{
    std::sort(names_.begin(), names_.end());
}

bool KnownNames::holds(std::string_view name) const
{
    return std::binary_search(names_.begin(), names_.end(), name, std::less<>());
}

std::string KnownNames::instead_of(std::string_view name) const
{
    if (names_.empty()) return what_ + " holds none";
    const std::string nearest = names_.size() > most_compared ? std::string() : nearest_name(name, names_);
    if (!nearest.empty()) return "the nearest there is " + quoted(nearest);
    std::vector<std::string> first;
    for (std::size_t i = 0; i < std::min(names_.size(), most_listed); ++i) first.push_back(quoted(names_[i]));
    const std::string more = names_.size() > most_listed ? ", and " + std::to_string(names_.size() - most_listed) + " more" : "";
    return what_ + " holds " + listed(first, "and") + more;
}

}  // namespace shaftcut

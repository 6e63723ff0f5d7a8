// A list of names that a file may refer to.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace shaftcut {

class KnownNames {
public:
    // `what` says in messages where the names come from: "the catalogue".
    KnownNames(std::vector<std::string> names, std::string what);

    bool holds(std::string_view name) const;
    const std::string& what() const { return what_; }
    // What to write instead of `name`, which is not among them: the nearest one, or the first dozen. Of more than 1,000
    // names none is looked for, so that a hostile file cannot make it slow.
    std::string instead_of(std::string_view name) const;

private:
    std::vector<std::string> names_;  // sorted
    std::string what_;
};

// The names of all things in `things`, each of which has a `name`.
template <class Things>
KnownNames names_in(const Things& things, std::string what)
{
    std::vector<std::string> names;
    for (const auto& thing : things) names.push_back(thing.name);
    return {std::move(names), std::move(what)};
}

}  // namespace shaftcut

// A list of names that a file may refer to.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "source/findings.hpp"

namespace shaftcut {

class KnownNames {
public:
    KnownNames(std::vector<std::string> names, NamesOf list);

    bool holds(std::string_view name) const;
    // What is found of `stated`, which is not among them: the nearest one, or the first dozen. Of more than 1,000
    // names none is looked for, so that a hostile file cannot make it slow.
    UnknownName unknown(Stated stated) const;

private:
    std::vector<std::string> names_;  // sorted
    NamesOf list_;
};

// The names of all things in `things`, each of which has a `name`.
template <class Things>
KnownNames names_in(const Things& things, NamesOf list)
{
    std::vector<std::string> names;
    for (const auto& thing : things) names.push_back(thing.name);
    return {std::move(names), list};
}

}  // namespace shaftcut

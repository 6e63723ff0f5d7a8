#include "shaftcut/words/problem.hpp"

namespace shaftcut {

std::string to_string(const Place& place)
{
    return place.file + ":" + std::to_string(place.line) + ":" + std::to_string(place.column);
}

std::string to_string(const Problem& problem)
{
    return to_string(problem.place) + ": " + problem.wrong + "; " + problem.right;
}

}  // namespace shaftcut

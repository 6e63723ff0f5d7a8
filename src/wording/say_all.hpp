// What was found, each said by the overload of say() for it.
#pragma once

#include <string>
#include <vector>

#include "wording.hpp"

namespace shaftcut {

template <class Finding>
std::vector<std::string> say_all(const std::vector<Finding>& findings, const Wording& w)
{
    std::vector<std::string> sentences;
    for (const Finding& finding : findings) sentences.push_back(say(finding, w));
    return sentences;
}

}  // namespace shaftcut

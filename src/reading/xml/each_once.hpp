// Children of which there is at most one for each word: an end for each side, a half for each tube.
#pragma once

#include <string>

#include "xml/element.hpp"

namespace shaftcut {

template <class E>
class EachOnce {
public:
    // The word of `attribute`. One that was taken before is a fault: "a second " and `what` with that word.
    std::optional<E> take(const Attribute& attribute, const std::string& what)
    {
        const auto word = attribute.word<E>();
        if (!word) return word;
        if (met_[*word]) attribute.fault("a second " + what + " " + to_word(*word), "leave one of them out");
        met_[*word] = true;
        return word;
    }
    bool met(E word) const { return met_[word]; }

private:
    PerEach<E, bool> met_;
};

}  // namespace shaftcut

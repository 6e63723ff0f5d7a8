// Children of which there is at most one for each word: an end for each side, a half for each tube.
#pragma once

#include "xml/element.hpp"

namespace shaftcut {

template <class E>
class EachOnce {
public:
    // The word of `attribute`, which stands on an `element`. One that was taken before is a fault.
    std::optional<E> take(const Attribute& attribute, const char* element)
    {
        const auto word = attribute.word<E>();
        if (!word) return word;
        if (met_[*word]) attribute.fault(SecondOfWord{element, attribute.called(), to_word(*word)});
        met_[*word] = true;
        return word;
    }
    bool met(E word) const { return met_[word]; }

private:
    PerEach<E, bool> met_;
};

}  // namespace shaftcut

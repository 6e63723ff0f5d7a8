// What stands at a square to tick: the words for what a job file chooses among.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "wording.hpp"

namespace shaftcut::measuring_form {

std::string tick_word(End end, const Wording& w);
std::string tick_word(Shape shape, const Wording& w);
std::string tick_word(JointKind joint, const Wording& w);
std::string tick_word(Lock lock, const Wording& w);
std::string tick_word(Device device, const Wording& w);
std::string tick_word(Completeness state, const Wording& w);
std::string tick_word(CrossWear state, const Wording& w);
std::string tick_word(TubeState state, const Wording& w);
std::string tick_word(LockState state, const Wording& w);
std::string tick_word(Weld state, const Wording& w);
std::string tick_word(DeviceState state, const Wording& w);
std::string tick_word(Phase state, const Wording& w);
std::string tick_word(Slides state, const Wording& w);
std::string tick_word(Feature feature, const Wording& w);
std::string tick_word(Range range, const Wording& w);
std::string tick_word(Tube tube, const Wording& w);
std::string tick_word(Circlip circlip, const Wording& w);
std::string tick_word(Nipple nipple, const Wording& w);
std::string tick_word(Reference reference, const Wording& w);

// One for each enumerator of E, in their order.
template <class E>
std::vector<std::string> tick_words(const Wording& w)
{
    std::vector<std::string> words;
    for (std::size_t i = 0; i < Words<E>::all.size(); ++i) words.push_back(tick_word(static_cast<E>(i), w));
    return words;
}

}  // namespace shaftcut::measuring_form

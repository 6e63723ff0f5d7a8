#include "reading/choice_words.hpp"

namespace shaftcut {
namespace {

std::string said(std::monostate, const Wording&) { return {}; }
std::string said(const ClosedChosen& choice, const Wording& w) { return w("closed {closed}, {cut:fits as it is|to be cut}", {{"closed", w.both(Rounded::measured, choice.closed)}, {"cut", choice.cut}}); }
std::string said(const LiftedUpTo& choice, const Wording& w) { return w("up to {height}", {{"height", w.both(Rounded::at_most, choice.height)}}); }
std::string said(const LoweredDownTo& choice, const Wording& w) { return w("down to {height}", {{"height", w.both(Rounded::at_least, choice.height)}}); }
std::string said(const ReadFrom& choice, const Wording& w) { return w("the closed length was read from the {cross:OUTER|INNER} cross", {{"cross", choice.cross}}); }
std::string said(HalvesOtherWayRound, const Wording& w) { return w("the two halves are exchanged"); }
std::string said(const InOtherUnit& choice, const Wording& w) { return w("it was read in {unit:millimetres|inches}", {{"unit", choice.unit}}); }

}  // namespace

std::string say(const ChoiceOf& choice, const Wording& w)
{
    return std::visit([&w](const auto& one) { return said(one, w); }, choice);
}

}  // namespace shaftcut

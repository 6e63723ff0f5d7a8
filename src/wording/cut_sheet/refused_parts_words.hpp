// A finding that refuses, said to a customer. Empty where this finding is not what refuses. Private to the cut sheet's wording.
#pragma once

#include <string>

#include "shaftcut/trade/checks/findings.hpp"
#include "wording.hpp"

namespace shaftcut::cut_sheet {

// Of those that refuse nothing by themselves.
template <class Finding>
std::string refused(const Finding&, const Wording&)
{
    return {};
}

// Whether what was measured can be true.
std::string refused(const Contradicting& found, const Wording& w);
std::string refused(const AnglesContradict& found, const Wording& w);
std::string refused(const TubesDoNotMeet& found, const Wording& w);
std::string refused(const OutOfBounds& found, const Wording& w);
std::string refused(const LengthsUnreadable& found, const Wording& w);
std::string refused(const StopImpossible& found, const Wording& w);
std::string refused(const StopUnlikeSeries& found, const Wording& w);
std::string refused(const ReadAtOtherCross& found, const Wording& w);
std::string refused(const ListedAtOtherCross& found, const Wording& w);
std::string refused(const HalvesExchanged& found, const Wording& w);

// Whether it would hold, be covered and be let run. `at`: where the position that decides is; may be empty.
std::string refused(const ClearanceLeft& found, const Wording& w);
std::string refused(const ClearanceAtWorst& found, const Wording& w);
std::string refused(const OverlapLeft& found, const std::string& at, const Wording& w);
std::string refused(const TubeTooShort& found, const Wording& w);
std::string refused(const GuardClearance& found, const Wording& w);
std::string refused(const GuardOverlap& found, const Wording& w);
std::string refused(const GuardsApartAtWorst& found, const Wording& w);
std::string refused(const GuardCutAway& found, const Wording& w);
std::string refused(const JointAngles& found, const Wording& w);
std::string refused(const ShorteningForbidden& found, const Wording& w);
std::string refused(const HoleCutOff& found, const Wording& w);
std::string refused(const LockStandsOut& found, const Wording& w);
std::string refused(const CouplingDiffers& found, const Wording& w);
std::string refused(const DeviceAtTractor& found, const Wording& w);
std::string refused(const LoadTaken& found, const Wording& w);
std::string refused(PlainFinding found, const Wording& w);

}  // namespace shaftcut::cut_sheet

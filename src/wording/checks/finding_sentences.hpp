// A sentence for each finding of the checks, a clause for each reason and basis: the compiler asks for each. Private to the checks' wording.
#pragma once

#include <string>

#include "shaftcut/trade/checks/findings.hpp"
#include "wording.hpp"

namespace shaftcut {

std::string sentence(PlainFinding finding, const Wording& w);
std::string sentence(const NotChecked& finding, const Wording& w);

std::string sentence(const Contradicting& finding, const Wording& w);
std::string sentence(const AnglesContradict& finding, const Wording& w);
std::string sentence(const TubesDoNotMeet& finding, const Wording& w);
std::string sentence(const OutOfBounds& finding, const Wording& w);
std::string sentence(const LengthsUnreadable& finding, const Wording& w);
std::string sentence(const ReadInLine& finding, const Wording& w);
std::string sentence(const MachineDisagrees& finding, const Wording& w);
std::string sentence(const LimitLoosened& finding, const Wording& w);
std::string sentence(const StopImpossible& finding, const Wording& w);
std::string sentence(const StopUnlikeSeries& finding, const Wording& w);
std::string sentence(const StopRestsAlone& finding, const Wording& w);
std::string sentence(const ClosedDisagrees& finding, const Wording& w);
std::string sentence(const ReadAtOtherCross& finding, const Wording& w);
std::string sentence(const ListedAtOtherCross& finding, const Wording& w);
std::string sentence(const ClosedNotListed& finding, const Wording& w);
std::string sentence(const HalvesExchanged& finding, const Wording& w);

std::string sentence(const ClearanceLeft& finding, const Wording& w);
std::string sentence(const ClearanceAtWorst& finding, const Wording& w);
std::string sentence(const LeftAsCut& finding, const Wording& w);
std::string sentence(const OverlapLeft& finding, const Wording& w);
std::string sentence(const OverlapAtWorst& finding, const Wording& w);
std::string sentence(const NeverLongEnough& finding, const Wording& w);
std::string sentence(const TubeTooShort& finding, const Wording& w);
std::string sentence(const TubesLeft& finding, const Wording& w);
std::string sentence(const GuardClearance& finding, const Wording& w);
std::string sentence(const GuardOverlap& finding, const Wording& w);
std::string sentence(const GuardsApartAtWorst& finding, const Wording& w);
std::string sentence(const GuardCutAway& finding, const Wording& w);
std::string sentence(const GuardSetback& finding, const Wording& w);
std::string sentence(const GuardBeyondTube& finding, const Wording& w);

std::string sentence(const JointAngles& finding, const Wording& w);
std::string sentence(const SpeedRipple& finding, const Wording& w);
std::string sentence(const RippleGreatestAt& finding, const Wording& w);
std::string sentence(const RippleOutOfPhase& finding, const Wording& w);

std::string sentence(const ShorteningForbidden& finding, const Wording& w);
std::string sentence(const HoleCutOff& finding, const Wording& w);
std::string sentence(const WorkAfterCut& finding, const Wording& w);
std::string sentence(const LockNotStated& finding, const Wording& w);
std::string sentence(const LockUnknown& finding, const Wording& w);
std::string sentence(const LockStandsOut& finding, const Wording& w);
std::string sentence(const CouplingNotStated& finding, const Wording& w);
std::string sentence(const CouplingDiffers& finding, const Wording& w);
std::string sentence(const SpeedNotRated& finding, const Wording& w);
std::string sentence(const DeviceAtTractor& finding, const Wording& w);
std::string sentence(const LoadTaken& finding, const Wording& w);
std::string sentence(const HalfWithoutGuard& finding, const Wording& w);
std::string sentence(const OtherTractor& finding, const Wording& w);

// "the half lengths are not known".
std::string clause(const NotCheckedReason& reason, const Wording& w);
std::string clause(const CheckBasis& basis, const Wording& w);

}  // namespace shaftcut

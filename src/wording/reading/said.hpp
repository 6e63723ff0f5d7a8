// What is wrong with a file and what would be right, in words.
#pragma once

#include <string>

#include "both_halves.hpp"
#include "source/faults.hpp"
#include "wording.hpp"

namespace shaftcut {

Said say(const UnreadableValue&, const Wording&);
Said say(const WrongValue&, const Wording&);
Said say(const NumberInDoubt&, const Wording&);
Said say(const DateInDoubt&, const Wording&);
Said say(const OutsideBounds&, const Wording&);
Said say(const UnknownWord&, const Wording&);
Said say(const UnknownName&, const Wording&);
Said say(const Empty&, const Wording&);
Said say(const TooLong&, const Wording&);
Said say(const NamedTwice&, const Wording&);
Said say(const Hidden&, const Wording&);
Said say(const MissingAttribute&, const Wording&);
Said say(const MissingElement&, const Wording&);
Said say(const MissingEnd&, const Wording&);
Said say(const Unknown&, const Wording&);
Said say(const SecondAttribute&, const Wording&);
Said say(const SecondElement&, const Wording&);
Said say(const SecondOfWord&, const Wording&);
Said say(const SecondNamed&, const Wording&);
Said say(const SecondOrder&, const Wording&);
Said say(const Misplaced&, const Wording&);
Said say(const TooMany&, const Wording&);
Said say(const UnknownColumn&, const Wording&);
Said say(const MissingColumns&, const Wording&);
Said say(const OtherUnits&, const Wording&);
Said say(const UnknownArticle&, const Wording&);
Said say(const OtherThanArticle&, const Wording&);
Said say(const NoHeader&, const Wording&);
Said say(const FieldCount&, const Wording&);
Said say(const BesideSeries&, const Wording&);
Said say(const OwnSeries&, const Wording&);
Said say(const NoWideAngle&, const Wording&);
Said say(const NoSpacing&, const Wording&);
Said say(const OfShaftThatIsThere&, const Wording&);
Said say(const NoReference&, const Wording&);
Said say(const GuardIncomplete&, const Wording&);
Said say(const OtherOrder&, const Wording&);
Said say(const UnusedGuard&, const Wording&);
Said say(const ShoulderShort&, const Wording&);
Said say(const PartIndependent&, const Wording&);
Said say(const MissingView&, const Wording&);
Said say(const StillToFill&, const Wording&);
Said say(const AngleAndViews&, const Wording&);
Said say(const WithoutFit&, const Wording&);
Said say(const UnknownYoke&, const Wording&);
Said say(Contradiction, const Wording&);
Said say(FormFault, const Wording&);
Said say(const OfMachine&, const Wording&);
Said say(const OfSaw&, const Wording&);
Said say(const FaultFinding&, const Wording&);

// `spacing "65 mm"`; the value alone where nothing names it.
std::string named(const Stated& stated);

Problem problem_of(const Fault& fault);
Problems problems_of(const FaultList& faults);

}  // namespace shaftcut

// A task of a step, said. Private to the order's wording.
#pragma once

#include <string>

#include "order/step_words.hpp"

namespace shaftcut::steps {

// Where the bench is: 1 to 8.
std::string said(PlainTask task, const Wording& w);
std::string said(const LookOver& task, const Wording& w);
std::string said(const ConfirmTask& task, const Wording& w);
std::string said(const NewGuard& task, const Wording& w);
std::string said(const MarkCuts& task, const Wording& w);
std::string said(const SideBySide& task, const Wording& w);
std::string said(const ReadShortestAgain& task, const Wording& w);
std::string said(const SawCuts& task, const Wording& w);

// 9 to 16.
std::string said(const CloseDry& task, const Wording& w);
std::string said(const KeptTubes& task, const Wording& w);
std::string said(const StandsOut& task, const Wording& w);
std::string said(const CloseGreased& task, const Wording& w);
std::string said(const Ripple& task, const Wording& w);
std::string said(const Couple& task, const Wording& w);
std::string said(const ReadRings& task, const Wording& w);
std::string said(const StandingNotMeasured& task, const Wording& w);

// The text in one piece, whatever the width: its spaces do not break.
std::string in_one_piece(const std::string& text);
// "860 mm ± 4 mm ▭", in one piece.
std::string expected_box(Rounded as, Length value, Length plus_minus, const Wording& w);
// "A, B".
std::string letters(const std::vector<SawnPart>& parts, const Wording& w);

}  // namespace shaftcut::steps

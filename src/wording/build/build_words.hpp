// How shafts made to order are said: what was found about them, their parts and the work. Checked in tests/wording/build/build_words_test.cpp.
#pragma once

#include "half_figure_words.hpp"
#include "shaftcut/trade/build/batch.hpp"
#include "wording.hpp"

namespace shaftcut {

Wording wording_of(const BuildPlan& plan);
Wording wording_of(const Batch& batch);

std::string say(const BuildWay& way, const Wording& w);
std::string say(const BuildNote& note, const Wording& w);
std::string say(BuildCaution caution, const Wording& w);
std::string say(const Operation& operation, const Wording& w);

// A failed check that found several contradictions is as many sentences.
std::vector<std::string> say(const std::vector<BuildReason>& reasons, const Wording& w);
std::vector<std::string> say(const std::vector<BuildWay>& ways, const Wording& w);
std::vector<std::string> say(const std::vector<BuildNote>& notes, const Wording& w);
std::vector<std::string> say(const std::vector<BuildCaution>& cautions, const Wording& w);

// What is open, and whom to ask: "whoever supplies the parts".
std::string say(const OpenPoint& point, const Wording& w);
std::string say(Asked asked, const Wording& w);
// A text ready to send to each who is to be asked, in the order of the points.
struct TextToSend {
    Asked to;
    std::string text;
};
std::vector<TextToSend> texts_to_send(const BuildPlan& plan, const Wording& w);

// The catalogue's name, else what it is: "Alder 2 pin, inner tube".
std::string say(const PartName& name, const Wording& w);
// Where it goes: "tractor end", "inner tube, at the implement end".
std::string place_of(const ShaftPart& part, const Wording& w);
// "inner tube", "outer guard tube".
std::string say(ShaftTube tube, const Wording& w);
// What a piece is called on its label, in its code and in the saw plan: "K-1042 inner tube".
std::string piece_label(const BatchPiece& piece, const Wording& w);
// "17 mm", in inches "17 mm (0.669 in)": where a hole is drilled, in millimetres first, for a sixteenth of an inch may be half a
// millimetre beside it.
std::string hole_length(Length length, const Wording& w);

// Why a profile has no plan, and of which pieces: five at most by their labels, and how many more.
std::string say(const ProfileRefusal& refusal, const Wording& w);

}  // namespace shaftcut

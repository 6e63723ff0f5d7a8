#include "form/tick_words.hpp"

namespace shaftcut::measuring_form {

std::string tick_word(End end, const Wording& w) { return w("{end:tractor|machine}", {{"end", end}}); }
std::string tick_word(Shape shape, const Wording& w) { return w("{shape:lemon|star|triangle|square|splined|other}", {{"shape", shape}}); }
std::string tick_word(JointKind joint, const Wording& w) { return w("{joint:standard, one cross|wide-angle, two crosses}", {{"joint", joint}}); }

std::string tick_word(Lock lock, const Wording& w)
{
    return w("{lock:collar to pull, bare|collar to pull, covered|pin to press, stands out|pin to press, sunk in|bolt across the groove|cone bolt, drawn tight|bolted face to face|cannot be told}", {{"lock", lock}});
}

std::string tick_word(Device device, const Wording& w) { return w("{device:slip clutch|overrunning clutch|shear bolt|none, plain yoke}", {{"device", device}}); }
std::string tick_word(Completeness state, const Wording& w) { return w("{state:complete|missing|broken}", {{"state", state}}); }
std::string tick_word(CrossWear state, const Wording& w) { return w("{state:free, no play|worn}", {{"state", state}}); }
std::string tick_word(TubeState state, const Wording& w) { return w("{state:straight|bent|dented|twisted}", {{"state", state}}); }
std::string tick_word(LockState state, const Wording& w) { return w("{state:spring back|stiff|broken}", {{"state", state}}); }
std::string tick_word(Weld state, const Wording& w) { return w("{state:none|welded|cracked}", {{"state", state}}); }
std::string tick_word(DeviceState state, const Wording& w) { return w("{state:free|stuck}", {{"state", state}}); }
std::string tick_word(Phase state, const Wording& w) { return w("{state:in one plane|turned}", {{"state", state}}); }
std::string tick_word(Slides state, const Wording& w) { return w("{state:by hand|does not}", {{"state", state}}); }
std::string tick_word(Feature feature, const Wording& w) { return w("{feature:coated tube|stop at the free end|guard on one chain}", {{"feature", feature}}); }
std::string tick_word(Tube tube, const Wording& w) { return w("{tube:inner|outer}", {{"tube", tube}}); }
std::string tick_word(Circlip circlip, const Wording& w) { return w("{circlip:in bores|in caps}", {{"circlip", circlip}}); }
std::string tick_word(Nipple nipple, const Wording& w) { return w("{nipple:in body|in cap}", {{"nipple", nipple}}); }
std::string tick_word(Reference reference, const Wording& w) { return w("{reference:from the outer cross|from the inner or only cross}", {{"reference", reference}}); }
std::string tick_word(Range range, const Wording& w) { return w("{range:working|turning|standing}", {{"range", range}}); }

}  // namespace shaftcut::measuring_form

// What is known before anything is done.
#include "order/instruction_words.hpp"

#include "cautions.hpp"

namespace shaftcut {

std::string say(Caution caution, const Wording& w)
{
    switch (caution) {
    case Caution::leave_shaft_alone: return w("Do not cut this shaft and do not run it on this machine as it is.");
    case Caution::turning_shaft_kills: return w("DANGER: a turning shaft catches clothing and kills. PTO off, engine off, key out first.");
    case Caution::guards_complete: return w("Run it only with guard, shields, chains complete.");
    case Caution::bottoming_or_parting: return w("WARNING: bottoming or parting breaks gearboxes.");
    case Caution::manuals_come_first: break;
    }
    return manuals_come_first(w);
}

std::string say(const GuardWarning& warning, const Wording& w)
{
    std::vector<std::string> halves;
    for (const GuardWarning::Half& half : warning.halves)
        halves.push_back(w("the {end:tractor|implement} half{damaged: has no guard|'s guard is damaged and not used again}", {{"end", half.end}, {"damaged", half.damaged}}));
    return running_text({w("The shaft must not run as it is: {halves}.", {{"halves", w.all_of(halves)}}),
                         w("Fit a new one, its tube standing out of it by 0 to {setback}.", {{"setback", w.both(Rounded::setback, warning.setback)}})});
}

}  // namespace shaftcut

#include "condition_words.hpp"

#include "separated.hpp"

namespace shaftcut {

std::string condition_words(const Condition& found, const Wording& w)
{
    std::vector<std::string> parts;
    if (found.guard) parts.push_back(w("guard {state:complete|missing|damaged}", {{"state", *found.guard}}));
    if (found.chains) parts.push_back(w("chains {state:complete|missing|damaged}", {{"state", *found.chains}}));
    if (found.crosses) parts.push_back(w("crosses {state:good|worn}", {{"state", *found.crosses}}));
    if (found.tubes) parts.push_back(w("tubes {state:straight|bent|dented|twisted}", {{"state", *found.tubes}}));
    if (found.locks) parts.push_back(w("locks {state:good|stiff|damaged}", {{"state", *found.locks}}));
    if (found.weld) parts.push_back(w("{state:no weld|welded|cracked}", {{"state", *found.weld}}));
    if (found.device) parts.push_back(w("device {state:free|stuck}", {{"state", *found.device}}));
    if (found.phase) parts.push_back(w("forks {state:in plane|turned}", {{"state", *found.phase}}));
    if (found.slides) parts.push_back(w("{state:slides by hand|does not slide by hand, though clean}", {{"state", *found.slides}}));
    return separated(parts, ", ");
}

}  // namespace shaftcut

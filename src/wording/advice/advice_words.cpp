#include "advice/advice_words.hpp"

#include "advice/advice_parts_words.hpp"

namespace shaftcut {

std::string say(const WayOut& way, const Wording& w)
{
    return std::visit([&w](const auto& one) { return advice::said(one, w); }, way);
}

namespace advice {

std::string said(Remedy way, const Wording& w)
{
    switch (way) {
    case Remedy::mend_every_failure: return w("Each failed check must be put right: no one of the ways below cures all of them.");
    case Remedy::measure_halves: return w("Measure both half lengths, from the inner cross to the tube's free end, and write them into the job.");
    case Remedy::measure_between_crosses: return w("Measure the shortest and longest lengths between the crosses instead of between the grooves.");
    case Remedy::measure_contradictions: return w("Measure again what contradicts: one figure of each pair is wrong, or they are swapped or in another unit.");
    case Remedy::measure_more_exactly: return w("Measure the shortest and the closed length more exactly: what they may be wrong by leaves no clearance.");
    case Remedy::raise_shortest_in_vain: return w("Raising the shortest position does not make this shaft serve the longest lengths.");
    case Remedy::fit_unexposed_locks:
        return running_text({w("Fit yokes whose locks have no part that stands out (a covered collar, a shrouded push pin, a clamp bolt)."),
                             w("Then measure again and make a new sheet.")});
    case Remedy::device_at_implement: return w("Fit the device at the implement end, the way round that is marked on it, and a plain yoke at the tractor end.");
    case Remedy::put_new_parts: break;
    }
    return running_text({w("Put new parts in the place of those named, or take another shaft."), w("Then measure again and make a new sheet.")});
}

}  // namespace advice
}  // namespace shaftcut

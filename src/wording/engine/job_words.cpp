#include "engine/job_words.hpp"

namespace shaftcut::job_words {

std::string how_to_fill(const Wording& w)
{
    return running_text({w("Begun from what was measured to tell the series."), w("Each \"?\" is still to be measured or looked at: while one is left, nothing is cut.")});
}

std::string of_series(IdentifyVerdict verdict, const Wording& w)
{
    switch (verdict) {
    case IdentifyVerdict::one: return w("It measures like this series; what measures alike may stop elsewhere, so each half's stop is measured too.");
    case IdentifyVerdict::mixed: return w("It is of more than one make: each half states its own series, or none.");
    case IdentifyVerdict::none: return w("It is of no series that is known: it is cut by its own lengths and stops.");
    case IdentifyVerdict::several: break;
    }
    return w("Its series is not decided, and need not be: it is cut by its own lengths and stops.");
}

std::string of_others(const MixedShaft& mixed, const Wording& w)
{
    std::vector<std::string> names;
    for (const SeriesPercent& one : mixed.others_like) names.push_back(one.series);
    return w("Everything but the {part:tractor end's joint|implement end's joint|tubes} measures like {series}: lay old beside new and state which.", {{"part", mixed.odd}, {"series", w.either(names)}});
}

std::string of_halves(const Wording& w)
{
    return w("A guard that is not used again: guard=\"none\" or guard=\"damaged\". The stop depth: from the tube's free end in to the face that stops the other tube.");
}

std::string of_half_at(End end, const Wording& w) { return w("The half at the {end:tractor|implement} end: state which tube it carries.", {{"end", end}}); }

std::string of_measures(const Wording& w) { return w("What its series was told by."); }

}  // namespace shaftcut::job_words

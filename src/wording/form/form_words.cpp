#include "form/form_words.hpp"

#include "form/tick_words.hpp"

namespace shaftcut::measuring_form {

std::string document_title(const Wording& w) { return w("Measuring form"); }
std::string document_subject(const std::optional<Series>& series, const Wording& w) { return series ? series->name : w("A shaft of any series"); }

std::string series_states(const Series& series, const std::optional<Reference>& reference, const Wording& w)
{
    const NamedValue section{"section", tick_word(series.shape, w)};
    if (!series.wide_angle) return w("Known of it: section {section}; standard joints only.", {section});
    const NamedValue spacing{"spacing", w.both(Rounded::measured, series.wide_angle->spacing)};
    if (!reference) return w("Known of it: section {section}; the crosses of its wide-angle joint {spacing} apart.", {section, spacing});
    return w("Known of it: section {section}; the crosses of its wide-angle joint {spacing} apart; lengths usually from the {reference:outer|inner} cross.",
             {section, spacing, {"reference", *reference}});
}

std::string expected(Length length, const Wording& w) { return w("as made {length}", {{"length", w.length(Rounded::measured, length)}}); }

std::string closed_hint(Length plus_minus, const Wording& w)
{
    return w("middle of cap to middle of cap; a box for ± left empty: ± {tolerance}", {{"tolerance", w.length(Rounded::doubt, plus_minus)}});
}

std::string closed_as_made(const std::vector<Length>& lengths, const Wording& w)
{
    std::vector<std::string> names;
    for (const Length length : lengths) names.push_back(w.length(Rounded::measured, length));
    return w("As made: {lengths}.", {{"lengths", w.either(names)}});
}

std::string position_name(Position position, const Wording& w)
{
    return w("{position:shortest|longest working|longest turning|longest standing}", {{"position", position}});
}

std::string position_meaning(Position position, const Wording& w)
{
    switch (position) {
    case Position::shortest: return w("the least of all positions");
    case Position::working: return w("usual working position");
    case Position::turning: return w("greatest with the PTO turning");
    case Position::standing: break;
    }
    return w("greatest with the PTO stopped");
}

std::string mounted_positions(Position position, const Wording& w)
{
    switch (position) {
    case Position::shortest: return w("Mounted: raised, level, lowered.");
    case Position::working: return w("Mounted: at working height.");
    case Position::turning: return w("Mounted: lowest, highest, PTO on.");
    case Position::standing: break;
    }
    return w("Mounted: fully raised, lowered.");
}

std::string trailed_positions(Position position, const Wording& w)
{
    switch (position) {
    case Position::shortest: return w("Trailed: straight, tightest turn, in a hollow.");
    case Position::working: return w("Trailed: straight ahead.");
    case Position::turning: return w("Trailed: straight, turn with PTO on, over a crest.");
    case Position::standing: break;
    }
    return w("Trailed: straight, tightest turn, over a crest.");
}

std::string angle_name(End end, Range range, const Wording& w) { return w("{end:tractor|machine}, {range:working|turning|standing}", {{"end", end}, {"range", range}}); }
std::string side_view_name(End end, const Wording& w) { return w("{end:tractor|machine}, from the side", {{"end", end}}); }
std::string plan_name(End end, const Wording& w) { return w("{end:tractor|machine}, from above", {{"end", end}}); }

std::string dimension_name(TrailedDimension dimension, const std::string& letter, const Wording& w)
{
    return w("{letter} {dimension:PTO height|pin behind|pin height|input behind|input height|input left|input tilt}", {{"letter", letter}, {"dimension", dimension}});
}

std::string dimension_name(MountedDimension dimension, const std::string& letter, const Wording& w)
{
    return w("{letter} {dimension:PTO height|lower pivot behind|lower pivot height|lower link|top pivot behind|top pivot height|top link|mast|input behind|input above|input tilt}",
             {{"letter", letter}, {"dimension", dimension}});
}

std::string dimension_name(TrailedMovement movement, const std::string& letter, const Wording& w)
{
    return w("{letter} {movement:turn|pitch|roll}", {{"letter", letter}, {"movement", movement}});
}

std::string dimension_name(MountedMovement movement, const std::string& letter, const Wording& w)
{
    return w("{letter} {movement:lowest|highest}", {{"letter", letter}, {"movement", movement}});
}

std::string range_heading(Range range, const Wording& w)
{
    return w("{range:working|with the PTO turning|with the PTO stopped}", {{"range", range}});
}

}  // namespace shaftcut::measuring_form

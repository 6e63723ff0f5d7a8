#include "form/form_words.hpp"

namespace shaftcut::measuring_form {

std::string document_title(const Wording& w) { return w("Measuring form"); }
std::string document_subject(const std::optional<Series>& series, const Wording& w) { return series ? series->name : w("A shaft of any series"); }

std::string series_states(const Series& series, const std::optional<Reference>& reference, const Wording& w)
{
    const NamedValue shape{"shape", to_word(series.shape)};
    if (!series.wide_angle) return w("The series states: shape {shape}; standard joints only, so no spacing and no reference.", {shape});
    const NamedValue spacing{"spacing", w.both(Rounded::measured, series.wide_angle->spacing)};
    if (!reference) return w("The series states: shape {shape}, spacing {spacing}, no reference: tick it.", {shape, spacing});
    return w("The series states: shape {shape}, spacing {spacing}, reference {reference} where none is ticked.", {shape, spacing, {"reference", to_word(*reference)}});
}

std::string closed_hint(Length plus_minus, const Wording& w)
{
    return w("centre to centre of the crosses, the middle of their caps; plus-minus left empty: ± {tolerance}", {{"tolerance", w.length(Rounded::doubt, plus_minus)}});
}

std::string connection_names(const std::vector<std::string>& connections, const Wording& w)
{
    return w("connection and onto: {connections}", {{"connections", w.either(connections)}});
}

std::string between_crosses(Reference reference, const Wording& w) { return w("between crosses, reference {reference}", {{"reference", to_word(reference)}}); }
std::string tube_heading(Tube tube, const Wording& w) { return w("tube {tube}", {{"tube", to_word(tube)}}); }

std::string position_name(Position position, const Wording& w)
{
    switch (position) {
    case Position::shortest: return w("shortest");
    case Position::working: return w("longest when working");
    case Position::turning: return w("longest when turning");
    case Position::standing: break;
    }
    return w("longest when standing");
}

std::string position_meaning(Position position, const Wording& w)
{
    switch (position) {
    case Position::shortest: return w("least of all positions, PTO turning or stopped");
    case Position::working: return w("usual working position");
    case Position::turning: return w("greatest with the PTO turning");
    case Position::standing: break;
    }
    return w("greatest with the PTO stopped");
}

std::string mounted_positions(Position position, const Wording& w)
{
    switch (position) {
    case Position::shortest: return w("raised, level, lowered");
    case Position::working: return w("at working height");
    case Position::turning: return w("lowest, highest, PTO on");
    case Position::standing: break;
    }
    return w("fully raised, fully lowered");
}

std::string trailed_positions(Position position, const Wording& w)
{
    switch (position) {
    case Position::shortest: return w("straight, tightest turn, in a hollow");
    case Position::working: return w("straight ahead");
    case Position::turning: return w("straight, tightest turn with PTO on, over a crest");
    case Position::standing: break;
    }
    return w("straight, tightest turn, over a crest");
}

std::string angle_name(End end, Range range, const Wording& w) { return w("{end} {range}", {{"end", to_word(end)}, {"range", to_word(range)}}); }
std::string side_view_name(End end, const Wording& w) { return w("{end} side-view", {{"end", to_word(end)}}); }
std::string plan_name(End end, const Wording& w) { return w("{end} plan (above)", {{"end", to_word(end)}}); }

}  // namespace shaftcut::measuring_form

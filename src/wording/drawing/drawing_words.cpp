#include "drawing/drawing_words.hpp"

#include "whose.hpp"

namespace shaftcut::geometry {

std::string stated_heading(const std::string& tractor, bool mounted, const Wording& w)
{
    return of_tractor(tractor, w("The machine as the job states it: {mounted:trailed|mounted}", {{"mounted", mounted}}), w);
}

std::string extremes_heading(const std::string& tractor, const Wording& w) { return of_tractor(tractor, w("From the machine's geometry, between the inner crosses"), w); }

std::string scale_heading(const std::string& tractor, const Wording& w)
{
    if (tractor.empty()) return w("The machine and its shaft, to scale");
    return w("The machine and its shaft, to scale: {tractor}", {{"tractor", tractor}});
}

std::string shortest_name(const Wording& w) { return w("shortest"); }
std::string longest_name(Range range, const Wording& w) { return w("longest, {range:working|turning|standing}", {{"range", range}}); }
std::string joint_name(End end, Range range, const Wording& w) { return w("{end:tractor|implement} joint, {range:working|turning|standing}", {{"end", end}, {"range", range}}); }

std::string position_and_doubt(const std::string& position, const std::string& doubt, const Wording& w)
{
    return w("{position}; {doubt}", {{"position", position}, {"doubt", doubt}});
}

std::string seen_to_scale(Seen from, int scale, const Wording& w) { return w(", {seen:from above|from the left}, 1 : {scale}", {{"seen", from}, {"scale", scale}}); }

std::string about_scenes(bool mounted, const Wording& w)
{
    return running_text({w("Travel is to the left."), w("The heavy line is the shaft's tubes between the inner crosses, its figure the telescoping length."),
                         mounted ? w("Angles are the joints' whole angles; heights are the lower hitch point's above ground.") : w("Angles are the joints' whole angles, in space.")});
}

std::string height_axis(const Wording& w) { return w("height of the lower hitch point above ground, {unit:mm|in}", {{"unit", w.units()}}); }
std::string length_axis(const Wording& w) { return w("telescoping length, {unit:mm|in}", {{"unit", w.units()}}); }
std::string overlap_axis(const Wording& w) { return w("overlap after the cut, {unit:mm|in}", {{"unit", w.units()}}); }
std::string range_name(Range range, const Wording& w) { return w("{range:working|turning|standing}", {{"range", range}}); }
std::string longest_allowed(Range range, const Wording& w) { return w("longest allowed, {range:working|turning|standing}", {{"range", range}}); }
std::string extreme(const std::string& name, const std::string& length, const Wording& w) { return w("{name} {length}", {{"name", name}, {"length", length}}); }

std::string about_plot(const std::optional<Range>& level_range, bool cut, const Wording& w)
{
    std::vector<std::string> sentences;
    if (level_range) {
        sentences.push_back(w("Heavy: level."));
        sentences.push_back(w("Thin: shortest and longest over the pitch and roll of the {range:working|turning|standing} range.", {{"range", *level_range}}));
    }
    sentences.push_back(w("Bars below: how far each range goes."));
    sentences.push_back(cut ? w("Broken lines: the least length that this shaft allows, and the longest that leaves the overlap asked in each range.")
                            : w("The job is refused: no overlap and no limit of a cut is shown."));
    return running_text(sentences);
}

}  // namespace shaftcut::geometry

// Other positions for a shaft, or another shaft for these positions.
#include "advice/advice_parts_words.hpp"

namespace shaftcut::advice {
namespace {

// Where a closed length runs: it is said of a shaft with a wide-angle joint only.
enum class At { crosses, outer_cross, inner_cross };

At at(std::optional<Reference> reference)
{
    if (!reference) return At::crosses;
    return *reference == Reference::outer_cross ? At::outer_cross : At::inner_cross;
}

std::string lengths(const std::vector<Length>& closed, const Wording& w)
{
    std::vector<std::string> words;
    for (const Length length : closed) words.push_back(w.both(Rounded::measured, length));
    return w.all_of(words);
}

std::string none_of_known_series(const NoNewShaft& way, const Wording& w)
{
    const NamedValue series{"series", way.series};
    if (way.raised_in_vain) return w("No new shaft of series {series} serves these positions, nor would it with the shortest position raised.", {series});
    if (!way.shortest) return w("No new shaft of series {series} serves these positions.", {series});
    return w("No new shaft of series {series} serves these positions; one could if the shortest position were {shortest} between {wide:crosses|the inner crosses} or more.",
             {series, {"shortest", w.both(Rounded::at_least, *way.shortest)}, {"wide", way.has_wide_angle}});
}

}  // namespace

std::string said(const LongestServed& way, const Wording& w)
{
    const NamedValue cut{"cut", way.after_cut}, range{"range", way.range};
    if (!way.longest)
        return w("With the shortest position as it is, this shaft{cut:|, cut for it,} has too little overlap for any "
                 "{range:usual working position|position with the PTO turning|position with the PTO stopped}.",
                 {cut, range});
    return w("With the shortest position as it is, this shaft{cut:|, cut for it,} can serve no "
             "{range:usual working position|position with the PTO turning|position with the PTO stopped} longer than {longest} between {wide:crosses|the inner crosses}.",
             {cut, range, {"longest", w.both(Rounded::at_most, *way.longest)}, {"wide", way.has_wide_angle}});
}

std::string said(const GuardsReach& way, const Wording& w)
{
    if (!way.longest) return w("Fit longer guard tubes.");
    return w("Fit longer guard tubes; as they are, no position may be longer than {longest} between {wide:crosses|the inner crosses}.",
             {{"longest", w.both(Rounded::at_most, *way.longest)}, {"wide", way.has_wide_angle}});
}

std::string said(const ShortestServed& way, const Wording& w)
{
    return w("With the longest lengths as they are, this shaft would serve {cut:uncut|once cut as a new sheet says} if the shortest position"
             "{several:| of every tractor} were raised to {least} between {wide:crosses|the inner crosses} or more (now {now}).",
             {{"cut", way.after_cut},
              {"several", way.several_tractors},
              {"least", w.both(Rounded::at_least, way.least)},
              {"wide", way.has_wide_angle},
              {"now", w.both(Rounded::shortest, way.now)}});
}

std::string said(const SeriesLengths& way, const Wording& w)
{
    const NamedValue series{"series", way.series}, from{"at", at(way.reference)}, holes{"holes", way.past_holes};
    const NamedValue as_is{"as_is", lengths(way.as_is, w)}, some{"some", way.as_is.size() > 1};
    const NamedValue after_cut{"after_cut", lengths(way.after_cut, w)}, others{"others", way.after_cut.size() > 1};
    if (way.as_is.empty() && way.after_cut.empty()) return w("None of series {series}'s closed lengths{at:| (from the outer cross)| (from the inner cross)} serves.", {series, from});
    if (way.after_cut.empty())
        return w("Of new shafts of series {series}'s closed lengths{at:| (from the outer cross)| (from the inner cross)}, {as_is} {some:fits as it is|fit as they are}"
                 "{holes:|, if its tubes reach past their lubrication holes}.",
                 {series, from, as_is, some, holes});
    if (way.as_is.empty())
        return w("Of new shafts of series {series}'s closed lengths{at:| (from the outer cross)| (from the inner cross)}, {after_cut} {others:serves|serve} after a cut"
                 "{holes:|, if its tubes reach past their lubrication holes}.",
                 {series, from, after_cut, others, holes});
    return w("Of new shafts of series {series}'s closed lengths{at:| (from the outer cross)| (from the inner cross)}, {as_is} {some:fits as it is|fit as they are}; "
             "{after_cut} {others:serves|serve} after a cut{holes:|, if its tubes reach past their lubrication holes}.",
             {series, from, as_is, some, after_cut, others, holes});
}

std::string said(const NewShaft& way, const Wording& w)
{
    return w("To order: a new shaft of closed length {closed} {at:between crosses|from the outer cross|from the inner cross}{holes:|, if its tubes reach past their lubrication holes}.",
             {{"closed", w.both(Rounded::at_most, way.closed)}, {"at", at(way.reference)}, {"holes", way.past_holes}});
}

std::string said(const NoNewShaft& way, const Wording& w)
{
    if (!way.series.empty()) return none_of_known_series(way, w);
    if (way.raised_in_vain) return w("No new shaft with this one's yokes serves these positions, nor would it with the shortest position raised.");
    if (!way.shortest) return w("No new shaft with this one's yokes serves these positions.");
    return w("No new shaft with this one's yokes serves these positions; one could if the shortest position were {shortest} between {wide:crosses|the inner crosses} or more.",
             {{"shortest", w.both(Rounded::at_least, *way.shortest)}, {"wide", way.has_wide_angle}});
}

}  // namespace shaftcut::advice

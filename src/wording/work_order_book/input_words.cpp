#include "work_order_book/input_words.hpp"

#include "separated.hpp"

namespace shaftcut::workbook {
namespace {

std::string between(FitBetween what, const Wording& w)
{
    switch (what) {
    case FitBetween::crosses: return w("cross to cross");
    case FitBetween::outer_cross: return w("cross to cross, at a wide-angle joint its OUTER cross (at the connection yoke)");
    case FitBetween::inner_cross: return w("cross to cross, at a wide-angle joint its INNER cross (at the tube yoke)");
    case FitBetween::inner_crosses: return w("cross to cross, between the inner crosses");
    case FitBetween::grooves: break;
    }
    return w("between the locking grooves of the two stubs");
}

std::string when_empty(FitEmpty empty, const Wording& w)
{
    switch (empty) {
    case FitEmpty::nothing: return {};
    case FitEmpty::of_geometry_unless_changed: return w("from the machine's geometry unless changed");
    case FitEmpty::of_geometry: return w("empty: from the machine's geometry");
    case FitEmpty::not_checked: break;
    }
    return w("empty: not checked");
}

// What a cell is, one remark behind the other; those that are empty are left out.
std::string remarks(std::vector<std::string> each)
{
    std::erase(each, "");
    return separated(each, "; ");
}

}  // namespace

std::string inputs_heading(const Wording& w) { return w("1  Measured lengths: change only the pale cells"); }
std::vector<std::string> input_heads(const Wording& w) { return {w("Length"), w("Now"), w("Unit"), w("±"), w("As issued"), w("From where to where"), w("mm")}; }

std::string closed_name(const Wording& w) { return w("Closed length"); }

std::string fit_name(std::optional<Range> range, const Wording& w)
{
    if (!range) return w("Shortest, in any position");
    switch (*range) {
    case Range::working: return w("Longest in the usual working position");
    case Range::turning: return w("Longest with the PTO turning");
    case Range::standing: break;
    }
    return w("Longest with the PTO stopped");
}

std::string fit_at_least_name(std::optional<Range> range, const Wording& w) { return w("{length}: at least", {{"length", fit_name(range, w)}}); }

std::string closed_between(std::optional<Reference> reference, const Wording& w)
{
    if (!reference) return w("pushed together, cross to cross");
    return *reference == Reference::outer_cross ? w("pushed together, cross to cross, at a wide-angle joint its OUTER cross (at the connection yoke)")
                                                : w("pushed together, cross to cross, at a wide-angle joint its INNER cross (at the tube yoke)");
}

std::string fit_between(const FitPlaces& places, const Wording& w) { return remarks({between(places.between, w), when_empty(places.empty, w), places.position}); }

std::string deciding_between(const std::optional<Length>& at_least, bool may_stay_empty, const std::string& position, const Wording& w)
{
    const std::string deciding = w("cross to cross, between the inner crosses: the deciding one of all tractors");
    if (!at_least) return remarks({deciding, when_empty(may_stay_empty ? FitEmpty::not_checked : FitEmpty::nothing, w), position});
    return remarks({deciding, w("empty: some state none, it is known only as at least {least}", {{"least", figure_with_unit(*at_least, w.units(), Toward::nearest, 3)}}), position});
}

}  // namespace shaftcut::workbook

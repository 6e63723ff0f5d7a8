// Which series of a catalogue a measured shaft can be, how probable each is, and what to measure next.
//
// A shaft has three parts: the joint at each end, and the tubes (both are one part: a tube of another series does not slide in this one's). Each
// part is of a series of the catalogue or of none. What is answered is the probability of each possibility given the figures,
//
//     P(h | figures) = P(h)·p(figures | h) / sum over all h        h: one series, mixed of several, of none
//
// computed exactly, in one pass over the catalogue. p(y | x), a reading y of a figure that the series states as x: a normal distribution by
// the reading's ± and the series' tolerance, with wear, dirt and now and then a slip (src/trade/identify/figure_kinds.hpp: the figures and that
// they are the project's own choice). Priors: src/trade/identify/priors.hpp, the project's own choice.
//
// Probabilities are per cent, from 0 to 100, not rounded: one_series + mixed + none of an answer are 100. Bits are what a measurement is expected to
// tell of one series, mixed or none. Every series of the catalogue weighs the same, and their order decides nothing but that of equals.
//
// Checked in tests/trade/identify: against figures of a second implementation, against sums over all pairs written out, and by letting it answer for
// true shafts drawn by other laws (docs/identify-calibration.md).
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/measures.hpp"
#include "shaftcut/trade/data/terms.hpp"
#include "shaftcut/words/length.hpp"
#include "shaftcut/words/problem.hpp"

namespace shaftcut {

// What a shaft is put together from where its series is asked for.
enum class IdentifiedPart { tractor, implement, tubes };
template <> struct Words<IdentifiedPart> { static constexpr std::array all{"tractor", "implement", "tubes"}; };
inline constexpr std::array identified_parts{IdentifiedPart::tractor, IdentifiedPart::implement, IdentifiedPart::tubes};

// one: one series, whole, is at least 95 % probable. mixed: parts of several series, or some of a series and some of none, likewise.
// none: of no series of the catalogue, likewise. several: none of these, which may also be for want of figures.
enum class IdentifyVerdict { one, mixed, none, several };
template <> struct Words<IdentifyVerdict> { static constexpr std::array all{"one", "mixed", "none", "several"}; };

// What is measured or looked at. role: which tube slides in which. The closed length tells of no series by itself, for shafts get cut: it is never what
// to measure next.
enum class IdentifyingKind { joint, cap, cap_in_bore, span, spacing, circlip, nipple, shape, role, width, wall, closed, writing };
template <> struct Words<IdentifyingKind> {
    static constexpr std::array all{"joint", "cap", "cap-in-bore", "span", "spacing", "circlip", "nipple", "shape", "role", "width", "wall", "closed", "writing"};
};

// A figure or look of a shaft.
struct IdentifyingFigure {
    std::optional<IdentifiedPart> part{};  // nothing: the guard, or the whole shaft's closed length
    IdentifyingKind kind = IdentifyingKind::joint;
    std::optional<CrossPlace> cross{};     // of a wide-angle joint where it is stated or asked for
    CapPair pair = CapPair::first;
    std::optional<Tube> tube{};            // of a width or wall where it is stated or asked for
    bool other = false;                    // of the tube, or the wide-angle joint's cross, that was not measured, where of neither is known which it is
    bool operator==(const IdentifyingFigure&) const = default;
};

// What is usual where a reading states no ±, at 95 % (the project's own choice): a cap 0.1 mm, in the bore 0.2, a span 0.3, over spacers 0.4, a spacing 1,
// a width 0.4, a wall 0.3, a closed length 4. Nothing for a look.
std::optional<Length> usual_plus_minus(IdentifyingKind kind, bool over_spacers);

struct SeriesPercent {
    std::string series;
    double percent = 0;  // the whole shaft is of it; in `parts`: that part is of it
};

struct ListedSeries {
    std::string series;
    double percent = 0;           // the whole shaft is of it
    double percent_any_part = 0;  // the whole shaft or some part of it
};

// What a part is of, whatever the whole: up to five series of at least 0.1 %, the most probable first.
struct PartOrigin {
    IdentifiedPart part = IdentifiedPart::tractor;
    double none_percent = 0;
    std::vector<SeriesPercent> series{};
};

// A measured figure beside a series' own. Of several readings their mean. off = measured − series; sigma: half of √(u² + t²), of the first reading's ±
// and the series' tolerance.
struct ComparedFigure {
    IdentifyingFigure figure{};
    Length measured{};
    std::optional<Length> series{};  // nothing: the series does not state it
    std::optional<Length> off{};
    std::optional<double> off_sigma{};
};

struct ComparedSeries {
    std::string series;
    std::vector<ComparedFigure> figures{};  // tractor end, implement end, tubes, each as they were measured
};

// Of a shaft whose verdict is mixed, the most probable way in which it is.
struct MixedShaft {
    IdentifiedPart odd = IdentifiedPart::tractor;  // the odd part
    std::optional<std::string> others_series{};    // what the other two parts are likeliest of; nothing: of no series here
    std::vector<ComparedFigure> odd_figures{};     // the odd part's beside those of others_series; empty where that is nothing
    std::vector<SeriesPercent> odd_like{};         // what the odd part may be of, given that it is odd: at least 5 % each, five at most
    double odd_none_percent = 0;                   // likewise that it is of no series here
    std::vector<ComparedFigure> others_figures{};  // the other two parts', as odd_figures
    std::vector<SeriesPercent> others_like{};      // what the other two parts may be of, as odd_like
    double others_none_percent = 0;
};

// What a measurement takes, from the easiest. look: eye and rag. as_it_lies: with the cross fitted and the joint in line. halves_apart: pulled
// apart. circlip_off: the cap laid bare.
enum class MeasuringEffort { look, as_it_lies, halves_apart, circlip_off };
template <> struct Words<MeasuringEffort> { static constexpr std::array all{"look", "as-it-lies", "halves-apart", "circlip-off"}; };

// 0.5, 1, 2 and 10 (the project's own choice).
double minutes_of(MeasuringEffort effort);

struct NextMeasurement {
    IdentifyingFigure figure{};
    bool again = false;               // it has been measured, and would be once more
    MeasuringEffort effort = MeasuringEffort::look;
    double bits = 0;                  // what it is expected to tell
    double expected_best_percent = 0; // of the most probable of one series, mixed or none afterwards
    double settles_percent = 0;       // that one of these is then at least 95 % probable
};

// It is expected to bring 0.05 bit or more (the project's own choice).
bool is_worth_measuring(const NextMeasurement& next);

// Why two series stay together when nothing more is worth measuring.
enum class WhyTogether { same_figures, catalogue_lacks_figures, only_wide_angle, measured_between };
template <> struct Words<WhyTogether> {
    static constexpr std::array all{"same-figures", "catalogue-lacks-figures", "only-wide-angle", "measured-between"};
};

// same_figures: all figures are the same within tolerance. catalogue_lacks_figures: those that both state are, and some figure is stated by one or none.
// only_wide_angle: only a wide-angle joint would show it. measured_between: the figures `by` would tell these apart; what was measured agrees with neither
// or with both.
struct NotToldApart {
    std::array<std::string, 2> series;
    WhyTogether why = WhyTogether::same_figures;
    std::vector<IdentifyingFigure> by{};  // of only_wide_angle and measured_between: the fewest that tell them apart (look_alikes.hpp)
};

// A measured figure that no shaft of the trade has: is it in millimetres? It enters as it is.
struct OutsideTrade {
    IdentifyingFigure figure{};
    Length measured{};
    Length least{}, greatest{};
    Place place{};
};

struct Identification {
    IdentifyVerdict verdict = IdentifyVerdict::several;
    double one_series_percent = 0, mixed_percent = 0, none_percent = 0;
    std::vector<ListedSeries> series{};    // the most probable first; every series of at least 0.1 % in any part, and more where those leave out too much
    PerEach<IdentifiedPart, PartOrigin> parts{};
    PerEach<IdentifiedPart, double> odd_part_percent{};  // mixed with this part the odd one; what is left of mixed_percent: all three parts differ
    ComparedSeries fits{};                 // the most probable series
    std::optional<MixedShaft> mixed{};     // where the verdict is mixed
    std::vector<NextMeasurement> next{};   // everything that could be measured, what to do first in front
    bool stop = false;                     // nothing is worth measuring any more
    std::vector<NotToldApart> not_told_apart{};  // where the verdict is several and nothing is worth measuring
    std::optional<std::string> written_series{}; // the series that the guard's writing names
    bool rests_on_writing = false;         // without the writing the verdict would be another
    std::vector<OutsideTrade> outside_trade{};
};

// The catalogue has at least one series; else std::invalid_argument.
Identification identify(const Catalogue& catalogue, const Measures& measures);

}  // namespace shaftcut

// Plain catalogues and shafts measured once, for tests of what an answer must hold to.
#pragma once

#include <algorithm>
#include <cmath>

#include "shaftcut/trade/identify/identify.hpp"
#include "support/catch.hpp"

namespace shaftcut::test {


inline SizeReadings read(double mm) { return {{Length::from_mm(mm), {}, {}, {}}}; }

inline Series plain_series(const std::string& name, double cap, double span, double inner, double outer)
{
    Series series;
    series.name = name;
    series.shape = Shape::lemon;
    series.crosses.push_back({Length::from_mm(cap), Length::from_mm(span), {}, {}, {}, {}, {}});
    series.halves[Tube::inner].width = Length::from_mm(inner);
    series.halves[Tube::outer].width = Length::from_mm(outer);
    return series;
}

inline Catalogue four()
{
    Catalogue catalogue;
    catalogue.series = {plain_series("Alder 2", 22, 54, 43, 51), plain_series("Birch 1", 23.8, 61.3, 51, 60), plain_series("Larch 6", 27, 70, 54, 63), plain_series("Elm 4", 30.2, 80, 60, 70)};
    return catalogue;
}

// All its figures, as the series states them.
inline Measures measured(const Series& series)
{
    Measures measures;
    for (const End end : both_ends) {
        measures.ends[end].joint = JointKind::standard;
        MeasuredPair& pair = measures.ends[end].crosses.emplace_back().pairs[CapPair::first];
        pair.cap = read(series.crosses[0].cap.mm());
        pair.span = read(series.crosses[0].span.mm());
    }
    measures.shape = series.shape;
    for (const Tube tube : both_tubes) measures.tubes.push_back({tube, read(series.halves[tube].width->mm()), {}});
    return measures;
}

inline std::vector<SizeReadings*> all_readings(Measures& measures)
{
    std::vector<SizeReadings*> all;
    for (const End end : both_ends) {
        all.push_back(&measures.ends[end].spacing);
        for (MeasuredCross& cross : measures.ends[end].crosses)
            for (const CapPair pair : {CapPair::first, CapPair::second}) {
                all.push_back(&cross.pairs[pair].cap);
                all.push_back(&cross.pairs[pair].span);
            }
    }
    for (MeasuredTube& tube : measures.tubes) {
        all.push_back(&tube.width);
        all.push_back(&tube.wall);
    }
    std::erase_if(all, [](const SizeReadings* one) { return one->empty(); });
    return all;
}

inline bool lists(const Identification& answer, const std::string& series)
{
    return std::any_of(answer.series.begin(), answer.series.end(), [&](const ListedSeries& one) { return one.series == series; });
}

inline double percent_of(const Identification& answer, const std::string& series)
{
    for (const ListedSeries& one : answer.series)
        if (one.series == series) return one.percent;
    return 0;
}

inline void check_sound(const Identification& answer)
{
    CHECK(answer.one_series_percent + answer.mixed_percent + answer.none_percent == Approx(100).epsilon(1e-12));
    for (const double one : {answer.one_series_percent, answer.mixed_percent, answer.none_percent}) CHECK((one >= 0 && one <= 100 + 1e-9));
    for (const ListedSeries& one : answer.series) {
        CHECK((one.percent >= 0 && one.percent <= one.percent_any_part + 1e-9));
        CHECK(one.percent_any_part <= 100 + 1e-9);
    }
    for (const NextMeasurement& one : answer.next) {
        CHECK((std::isfinite(one.bits) && one.bits >= 0));
        CHECK((one.expected_best_percent > 0 && one.expected_best_percent <= 100));
        CHECK((one.settles_percent >= 0 && one.settles_percent <= 100));
    }
}

}  // namespace shaftcut::test

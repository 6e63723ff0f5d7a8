// How long it takes to say which series a measured shaft can be, with what to measure next: milliseconds of the processor. Not run by the tests.
#include <algorithm>
#include <cstdio>
#include <ctime>
#include <string>

#include "shaftcut/trade/identify/look_alikes.hpp"
#include "support/identify/invented.hpp"

namespace {

using namespace shaftcut;

template <class Work>
double milliseconds(const Work& work)
{
    const std::clock_t start = std::clock();
    work();
    return 1000.0 * static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

// The best of three: what else the computer does is not counted.
template <class Work>
double least(const Work& work)
{
    return std::min({milliseconds(work), milliseconds(work), milliseconds(work)});
}

double least_time(const Catalogue& catalogue, const Measures& measures)
{
    return least([&] { identify(catalogue, measures); });
}

SizeReadings once(double mm) { return {{Length::from_mm(mm), {}, {}, {}}}; }

MeasuredEnd measured_end(const test::TrueEnd& is, bool stated)
{
    MeasuredEnd end;
    if (stated) end.joint = JointKind::wide_angle;
    end.spacing = once(is.spacing > 0 ? is.spacing : 80);
    for (const CrossPlace place : {CrossPlace::inner, CrossPlace::outer}) {
        MeasuredCross& cross = end.crosses.emplace_back();
        if (stated) cross.at = place;
        for (const CapPair pair : {CapPair::first, CapPair::second}) {
            cross.pairs[pair].cap = once(is.crosses[place].cap[pair]);
            cross.pairs[pair].span = once(is.crosses[place].span[pair]);
        }
    }
    return end;
}

// Every figure once; `stated`: with the places of all.
Measures all_measured(const test::TrueShaft& shaft, bool stated)
{
    Measures measures;
    for (const End end : both_ends) measures.ends[end] = measured_end(shaft.ends[end], stated);
    if (stated) measures.shape = shaft.shape;
    for (const Tube tube : both_tubes) {
        MeasuredTube& made = measures.tubes.emplace_back();
        if (stated) made.tube = tube;
        made.width = once(shaft.width[tube]);
        made.wall = once(shaft.wall[tube]);
    }
    if (stated) measures.writing = shaft.writing;
    return measures;
}

Measures one_figure_each(const test::TrueShaft& shaft)
{
    Measures measures;
    for (const End end : both_ends) measures.ends[end].crosses.emplace_back().pairs[CapPair::first].cap = once(shaft.ends[end].crosses[CrossPlace::outer].cap[CapPair::first]);
    measures.tubes.emplace_back().width = once(shaft.width[Tube::inner]);
    return measures;
}

void print(const char* what, double taken) { std::printf("| %s | %.2f |\n", what, taken); }

void measure(int series)
{
    support::Dice dice(20);
    const Catalogue inside = test::invented_catalogue(dice, series, "Inside"), outside = test::invented_catalogue(dice, series, "Outside");
    const test::TrueShaft shaft = test::drawn_shaft(dice, inside, outside, {});
    std::printf("%d series\n", series);
    print("nothing measured", least_time(inside, {}));
    print("a cap at each end, one tube's width, nothing said of them", least_time(inside, one_figure_each(shaft)));
    print("every figure once, nothing said of them", least_time(inside, all_measured(shaft, false)));
    print("every figure once, all places, shape and writing", least_time(inside, all_measured(shaft, true)));
    double mean = 0, greatest = 0;
    constexpr int shafts = 200;
    for (int i = 0; i < shafts; ++i) {
        const test::TrueShaft one = test::drawn_shaft(dice, inside, outside, {});
        const double taken = least_time(inside, test::drawn_measures(dice, one, {}));
        mean += taken / shafts;
        greatest = std::max(greatest, taken);
    }
    print("200 shafts as they come in, mean", mean);
    print("the slowest of these", greatest);
    print("what the catalogue cannot tell apart", least([&] { look_alikes(inside); }));
}

}  // namespace

int main()
{
    for (const int series : {50, 500, 5000}) measure(series);
}

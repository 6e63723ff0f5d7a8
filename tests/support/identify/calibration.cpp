#include "support/identify/calibration.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace shaftcut::test {
namespace {

using support::Dice;

constexpr std::array<double, 8> bin_ends{0.1, 0.3, 0.5, 0.7, 0.9, 0.95, 0.98, 1.1};

Said& bin_of(std::vector<Said>& bins, double claim)
{
    bins.resize(bin_ends.size());
    return bins[static_cast<std::size_t>(std::upper_bound(bin_ends.begin(), bin_ends.end(), claim) - bin_ends.begin())];
}

bool is_listed(const Identification& answer, const std::string& series)
{
    return std::any_of(answer.series.begin(), answer.series.end(), [&](const ListedSeries& one) { return one.series == series; });
}

bool names(const Identification& answer, const TrueShaft& shaft)
{
    return shaft.truth == IdentifyVerdict::one && answer.series.front().series == shaft.series;
}

void count_one(Calibration& made, const TrueShaft& shaft, bool right, double claim)
{
    made.one.add(right, claim);
    if (right) return;
    if (shaft.truth == IdentifyVerdict::mixed) ++made.wrong_mixed;
    else if (shaft.truth == IdentifyVerdict::none) ++made.wrong_none;
    else ++made.wrong_other;
}

void count(Calibration& made, const TrueShaft& shaft, const Identification& answer)
{
    const double best = answer.series.empty() ? 0 : answer.series.front().percent / 100;
    switch (answer.verdict) {
    case IdentifyVerdict::one: count_one(made, shaft, names(answer, shaft), best); break;
    case IdentifyVerdict::mixed: made.mixed.add(shaft.truth == IdentifyVerdict::mixed, answer.mixed_percent / 100); break;
    case IdentifyVerdict::none: made.none.add(shaft.truth == IdentifyVerdict::none, answer.none_percent / 100); break;
    case IdentifyVerdict::several: ++made.several; break;
    }
    if (!answer.series.empty()) bin_of(made.best, best).add(names(answer, shaft), best);
    bin_of(made.mixed_bins, answer.mixed_percent / 100).add(shaft.truth == IdentifyVerdict::mixed, answer.mixed_percent / 100);
    if (shaft.truth != IdentifyVerdict::one) return;
    ++made.of_one_series;
    if (is_listed(answer, shaft.series)) ++made.listed;
}

double probability_of(const Identification& answer, const TrueShaft& shaft)
{
    if (shaft.truth == IdentifyVerdict::mixed) return answer.mixed_percent / 100;
    if (shaft.truth == IdentifyVerdict::none) return answer.none_percent / 100;
    for (const ListedSeries& one : answer.series)
        if (one.series == shaft.series) return one.percent / 100;
    return 1e-5;
}

double claim_of(const Identification& answer)
{
    if (answer.verdict == IdentifyVerdict::one) return answer.series.front().percent / 100;
    return (answer.verdict == IdentifyVerdict::mixed ? answer.mixed_percent : answer.none_percent) / 100;
}

bool is_right(const Identification& answer, const TrueShaft& shaft)
{
    return answer.verdict == IdentifyVerdict::one ? names(answer, shaft) : answer.verdict == shaft.truth;
}

}  // namespace

void Said::add(bool is_right_, double claim)
{
    ++count;
    right += is_right_ ? 1 : 0;
    claimed += claim;
}

double Said::right_percent() const { return count == 0 ? 0 : 100.0 * right / count; }
double Said::claimed_percent() const { return count == 0 ? 0 : 100 * claimed / count; }

Calibration calibrate(const Study& study)
{
    Dice dice(study.start);
    const Catalogue inside = invented_catalogue(dice, study.series, "Inside"), outside = invented_catalogue(dice, study.series, "Outside");
    Calibration made;
    for (int i = 0; i < study.shafts; ++i) {
        const TrueShaft shaft = drawn_shaft(dice, inside, outside, study.world);
        count(made, shaft, identify(inside, drawn_measures(dice, shaft, study.world)));
    }
    return made;
}

Asked ask(const Study& study, bool at_verdict)
{
    Dice dice(study.start);
    const Catalogue inside = invented_catalogue(dice, study.series, "Inside"), outside = invented_catalogue(dice, study.series, "Outside");
    Asked made;
    for (int i = 0; i < study.shafts; ++i) {
        const TrueShaft shaft = drawn_shaft(dice, inside, outside, study.world);
        Measures measures;
        Identification answer = identify(inside, measures);
        int asked = 0;
        const double before = std::log2(probability_of(answer, shaft));
        for (; asked < 60 && !answer.stop && !(at_verdict && answer.verdict != IdentifyVerdict::several); ++asked) {
            made.bits_told += answer.next.front().bits / study.shafts;
            made.minutes += minutes_of(answer.next.front().effort) / study.shafts;
            measure(measures, dice, shaft, study.world, answer.next.front().figure);
            answer = identify(inside, measures);
        }
        made.bits_came += (std::log2(probability_of(answer, shaft)) - before) / study.shafts;
        made.measurements += static_cast<double>(asked) / study.shafts;
        made.counts.push_back(asked);
        if (answer.verdict == IdentifyVerdict::several) ++made.undecided;
        else made.decided.add(is_right(answer, shaft), claim_of(answer));
    }
    std::sort(made.counts.begin(), made.counts.end());
    return made;
}

std::string as_markdown(const std::string& name, const Calibration& of)
{
    return fmt::format("| {} | {} | {:.2f} % ({} mixed, {} none, {} another series) | {:.2f} % | {:.1f} % of {} | {:.1f} % of {} | {:.3f} % of {} |\n", name, of.one.count, of.one.right_percent(),
                       of.wrong_mixed, of.wrong_none, of.wrong_other, of.one.claimed_percent(), of.mixed.right_percent(), of.mixed.count, of.none.right_percent(), of.none.count,
                       100.0 * of.listed / of.of_one_series, of.of_one_series);
}

std::string bins_as_markdown(const std::string& name, const std::vector<Said>& bins)
{
    std::string made = "| " + name + " |";
    for (const Said& bin : bins) made += bin.count == 0 ? " |" : fmt::format(" {:.1f} → {:.1f} % of {} |", bin.claimed_percent(), bin.right_percent(), bin.count);
    return made + "\n";
}

std::string as_markdown(const std::string& name, const Asked& asked)
{
    const int shafts = asked.decided.count + asked.undecided;
    return fmt::format("| {} | {:.1f} % | {:.2f} % | {:.2f} % | {:.1f} | {} | {:.1f} | {:.2f} → {:.2f} |\n", name, 100.0 * asked.decided.count / shafts, asked.decided.right_percent(),
                       asked.decided.claimed_percent(), asked.measurements, asked.counts[asked.counts.size() * 95 / 100], asked.minutes, asked.bits_told, asked.bits_came);
}

}  // namespace shaftcut::test

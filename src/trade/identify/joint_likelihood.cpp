#include "identify/joint_likelihood.hpp"

#include <algorithm>
#include <array>

namespace shaftcut::identifying {
namespace {

PairSizes first_pair(const Cross& cross) { return {cross.cap, cross.span}; }

bool states_other(const Cross& cross) { return cross.other_cap || cross.other_span; }

std::optional<PairSizes> pair_of(const Cross* cross, Pairing pairing, CapPair pair)
{
    if (!cross || pairing == Pairing::unknown) return std::nullopt;
    if (pairing == (pair == CapPair::first ? Pairing::second_known : Pairing::first_known)) return std::nullopt;
    const bool is_other = pairing == (pair == CapPair::first ? Pairing::exchanged : Pairing::stated);
    if (is_other) return PairSizes{cross->other_cap.value_or(cross->cap), cross->other_span.value_or(cross->span)};
    return first_pair(*cross);
}

double looks_likelihood(const CrossFigures& figures, const Cross* cross)
{
    return look_likelihood(figures.circlip, cross ? cross->circlip : std::nullopt) * look_likelihood(figures.nipple, cross ? cross->nipple : std::nullopt);
}

double cross_likelihood(const CrossFigures& figures, const Cross* cross, Pairing pairing)
{
    double likelihood = looks_likelihood(figures, cross);
    for (const CapPair pair : both_pairs) likelihood *= pair_likelihood(figures.pairs[pair], pair_of(cross, pairing, pair));
    return likelihood;
}

struct Weighted {
    Pairing pairing;
    double weight;
};

// Which measured pair is which, each with the likelihood of the cross's figures, where there are any.
std::vector<Weighted> pairings(const Cross* cross, const CrossFigures* figures)
{
    std::vector<Weighted> all;
    if (!cross) all = {{Pairing::unknown, 1}};
    else if (states_other(*cross)) all = {{Pairing::stated, 0.5}, {Pairing::exchanged, 0.5}};
    else {
        const double unlike = (1 - unstated_pair_alike) / 2;
        all = {{Pairing::alike, unstated_pair_alike}, {Pairing::first_known, unlike}, {Pairing::second_known, unlike}};
    }
    if (figures)
        for (Weighted& one : all) one.weight *= cross_likelihood(*figures, cross, one.pairing);
    return all;
}

double prior_of(const Series& series, JointKind joint)
{
    const double wide = series.wide_angle ? wide_listed : wide_unlisted;
    return joint == JointKind::wide_angle ? wide : 1 - wide;
}

void add_standard(JointWays& ways, const Series& series, const EndFigures& end)
{
    const std::size_t count = std::max<std::size_t>(series.crosses.size(), 1);
    for (std::size_t i = 0; i < count; ++i) {
        const Cross* cross = series.crosses.empty() ? nullptr : &series.crosses[i];
        JointWay way{prior_of(series, JointKind::standard) / static_cast<double>(count), JointKind::standard, {}, {}, static_cast<std::uint16_t>(i)};
        for (const CrossFigures& figures : end.crosses) way.weight *= cross_likelihood(figures, cross, cross ? Pairing::alike : Pairing::unknown);
        ways.push_back(way);
    }
}

// That the cross measured first is at `place`.
double place_prior(const EndFigures& end, CrossPlace place)
{
    if (end.crosses.empty()) return place == CrossPlace::inner ? 1 : 0;
    if (!end.crosses[0].at) return 0.5;
    return *end.crosses[0].at == place ? place_right : 1 - place_right;
}

const CrossFigures* figures_at(const EndFigures& end, CrossPlace first, CrossPlace place)
{
    const std::size_t index = place == first ? 0 : 1;
    return index < end.crosses.size() ? &end.crosses[index] : nullptr;
}

void add_wide_angle(JointWays& ways, const Series& series, const EndFigures& end, CrossPlace first)
{
    double weight = prior_of(series, JointKind::wide_angle) * place_prior(end, first);
    if (weight == 0) return;
    if (end.spacing) weight *= end.spacing->like(series.wide_angle ? std::optional(series.wide_angle->spacing) : std::nullopt);
    const auto inner = pairings(cross_at(series, CrossPlace::inner), figures_at(end, first, CrossPlace::inner));
    const auto outer = pairings(cross_at(series, CrossPlace::outer), figures_at(end, first, CrossPlace::outer));
    for (const Weighted& a : inner)
        for (const Weighted& b : outer) {
            JointWay way{weight * a.weight * b.weight, JointKind::wide_angle, first, {}, 0};
            way.pairing[CrossPlace::inner] = a.pairing;
            way.pairing[CrossPlace::outer] = b.pairing;
            ways.push_back(way);
        }
}

}  // namespace

const Cross* cross_at(const Series& series, CrossPlace place)
{
    if (!series.wide_angle || series.wide_angle->crosses.empty()) return nullptr;
    return place == CrossPlace::inner ? &series.wide_angle->crosses.front() : &series.wide_angle->crosses.back();
}

double pair_likelihood(const PairFigures& figures, const std::optional<PairSizes>& sizes)
{
    if (sizes) return (figures.cap ? figures.cap->like(sizes->cap) : 1) * (figures.span ? figures.span->like(sizes->span) : 1);
    double likelihood = figures.cap ? figures.cap->unknown() : 1;
    if (figures.span && figures.cap) likelihood *= figures.span->over([&](double span) { return span_density(span, figures.cap->mean()); });
    else if (figures.span) likelihood *= figures.span->unknown();
    return likelihood;
}

JointWays joint_ways(const Series& series, const EndFigures& end)
{
    JointWays ways;
    if (end.joint != JointKind::wide_angle) add_standard(ways, series, end);
    if (end.joint != JointKind::standard)
        for (const CrossPlace first : both_places) add_wide_angle(ways, series, end, first);
    return ways;
}

std::optional<PairSizes> pair_at(const Series& series, const JointWay& way, CrossPlace place, CapPair pair)
{
    return pair_of(cross_at(series, place), way.pairing[place], pair);
}

const Cross* cross_measured(const Series& series, const JointWay& way, std::size_t index)
{
    if (way.joint == JointKind::wide_angle) return cross_at(series, index == 0 ? way.first : other(way.first));
    return way.cross < series.crosses.size() ? &series.crosses[way.cross] : nullptr;
}

std::optional<PairSizes> pair_measured(const Series& series, const JointWay& way, std::size_t index, CapPair pair)
{
    if (way.joint == JointKind::wide_angle) return pair_at(series, way, index == 0 ? way.first : other(way.first), pair);
    const Cross* cross = cross_measured(series, way, index);
    return cross ? std::optional(first_pair(*cross)) : std::nullopt;
}

}  // namespace shaftcut::identifying

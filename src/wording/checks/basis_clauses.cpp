// How a check's value is computed, and where its limit comes from.
#include "checks/finding_sentences.hpp"
#include "checks/limit_words.hpp"
#include "hitch/geometry_figures.hpp"
#include "separated.hpp"

namespace shaftcut {
namespace {

std::string said(PlainBasis basis, const Wording& w)
{
    switch (basis) {
    case PlainBasis::geometry: return w("geometry: no length can be outside what the others leave; lengths compared between the inner crosses");
    case PlainBasis::contradicting_lengths: return w("computed from lengths that contradict each other");
    case PlainBasis::overlap_not_computed: return w("overlap is inner half + outer half − length; without the halves it cannot be computed");
    case PlainBasis::overlap_at_clearance: return w("inner half + outer half − (closed length + closing clearance)");
    case PlainBasis::tube_left: return w("half after the cut − seat − the series' least tube, the lesser of the halves that are cut");
    case PlainBasis::new_tube_left: return w("half − seat − the series' least tube, the lesser of both halves");
    case PlainBasis::clearance: return w.of_new_shaft() ? w("shortest − closed length") : w("shortest − closed length after the cut");
    case PlainBasis::guard_clearance: return w("shortest − the guards' own closed length");
    case PlainBasis::guard_clearance_fails: return w("it fails below 0");
    case PlainBasis::guard_cover: return w.of_new_shaft() ? w("guard halves − the greatest known longest") : w("guard halves after the cut − the greatest known longest");
    case PlainBasis::guard_cover_fails: return w("it fails where the worst case is below 0");
    case PlainBasis::guard_setback: return w.of_new_shaft() ? w("half − guard half") : w("half − guard half after the cut");
    case PlainBasis::ripple_of_geometry: return w("greatest over the whole working range of the machine's geometry, out of plane too, the shaft in phase");
    case PlainBasis::ripple_of_angles: return w("1/cos β − cos β of the equivalent single joint; both joints taken in one plane and the shaft in phase");
    case PlainBasis::series_statement: return w("the series' own statement");
    case PlainBasis::lubrication_passage: return w("two manuals: a lubrication passage in the inner tube limits the cut");
    case PlainBasis::locks:
        return w("EN 12965:2019 (primary shafts, from tractor to first fixed bearing): on shafts built from 2021 the yokes' locks at both ends have no exposed or protruding part");
    case PlainBasis::lock_not_stated: return w("the lock is not stated at every end");
    case PlainBasis::coupling: return w("the same type on both sides of a coupling");
    case PlainBasis::couplings_not_stated:
        return w.of_new_shaft() ? w("the order does not state every end's connection and what it goes onto") : w("the job does not state every end's connection and what it goes onto");
    case PlainBasis::device: return w("three manuals: a torque limiter or overrunning device belongs at the machine end only");
    case PlainBasis::load_warning: return w("warns above 80 % of it (the project's own choice)");
    case PlainBasis::half_without_rating: return w("a half is of a series without a rating, or of none");
    case PlainBasis::as_it_came_in: break;
    }
    return w("what the job says of the shaft as it came in, and of the tractors that drive the machine");
}

std::string said(const NotCheckedReason& reason, const Wording& w) { return clause(reason, w); }
std::string said(const LimitBasis& from, const Wording& w) { return say(from, w); }

std::string said(const OverlapOf& basis, const Wording& w)
{
    return w.of_new_shaft() ? w("inner half + outer half − longest {range:working|turning|standing} length", {{"range", basis.range}})
                            : w("inner half + outer half after the cut − longest {range:working|turning|standing} length", {{"range", basis.range}});
}

std::string said(const LimitFloor& basis, const Wording& w)
{
    return w("floor {floor}: {source}", {{"floor", w.both(Rounded::clearance, basis.floor)}, {"source", say(basis.from, w)}});
}

std::string said(const LimitAtLeast& basis, const Wording& w)
{
    return w("at least {least}: {source}", {{"least", w.both(Rounded::overlap, basis.least)}, {"source", say(basis.from, w)}});
}

std::string said(const AngleLimitOf& basis, const Wording& w)
{
    return w("{range:working|turning|standing}: {source}", {{"range", basis.range}, {"source", say(basis.from, w)}});
}

std::string said(const AngleNotOfAll& basis, const Wording& w) { return w("not every fit gives the {range:working|turning|standing} angle", {{"range", basis.range}}); }
std::string said(const OneChainLimit& basis, const Wording& w) { return w("one-chain guards: {source}", {{"source", say(basis.from, w)}}); }

std::string said(const GuardKeeps& basis, const Wording& w)
{
    return w("a guard that is cut keeps its seat and {free} (the project's own choice)", {{"free", w.both(Rounded::overlap, basis.free)}});
}

std::string said(const LengthOfGeometry& basis, const Wording& w)
{
    return w("the {which:length|shortest} is computed from the machine's geometry, {posture}, {doubt}",
             {{"which", basis.is_shortest}, {"posture", in_words(basis.length.at, w)}, {"doubt", doubt_in_words(basis.length, w)}});
}

std::string said(const RatingOf& basis, const Wording& w)
{
    const auto with = [&](std::string_view pattern) { return w(pattern, {{"series", basis.series}, {"power", w.power(basis.power)}, {"speed", basis.speed}}); };
    switch (basis.rule) {
    case RatingRule::next_higher: return with("series {series}: {power} at {speed} min⁻¹, the next higher speed that it states, and the torque of that");
    case RatingRule::highest: return with("series {series}: {power} at {speed} min⁻¹, the highest speed that it states");
    case RatingRule::stated: break;
    }
    return with("series {series}: {power} at {speed} min⁻¹");
}

std::string said(const RatedSpeedsBy& basis, const Wording& w)
{
    std::vector<std::string> sources;
    for (const RatedSpeedSource& one : basis.sources) sources.push_back(w("{connection}: {source}", {{"connection", one.connection}, {"source", one.source}}));
    return w("rated speeds by {sources}", {{"sources", separated(sources, "; ")}});
}

}  // namespace

std::string clause(const CheckBasis& basis, const Wording& w)
{
    return std::visit([&](const auto& one) { return said(one, w); }, basis);
}

}  // namespace shaftcut

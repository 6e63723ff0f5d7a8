// Jobs and catalogues for tests, built in code: the shaft that the tests vary is the one drawn in the documents' examples.
#pragma once

#include <algorithm>

#include "advice/advice_words.hpp"
#include "build/build_words.hpp"
#include "order/instruction_words.hpp"
#include "say_all.hpp"
#include "shaftcut/trade/order/work_order.hpp"

namespace shaftcut::test {

// Of a shaft that exists, in the units of its documents.
inline Wording wording_of(const WorkOrder& order) { return Wording(order.units); }
using shaftcut::wording_of;

inline Length mm(double millimetres) { return Length::from_mm(millimetres); }
inline Measurement measured(double millimetres) { return {mm(millimetres), std::nullopt, {"job.xml", 1, 1}}; }
inline Measurement measured(double millimetres, double plus_minus) { return {mm(millimetres), mm(plus_minus), {"job.xml", 1, 1}}; }

// A lemon series whose shaft of closed length 796 between inner crosses has halves 690 and 668.
inline Catalogue catalogue()
{
    Catalogue found;
    found.connections.push_back({"1-3/8-6", {540, 1000}, "ISO 500-1:2014 type 1"});
    found.connections.push_back({"1-3/8-21", {1000}, "ISO 500-1:2014 type 2"});
    Series series;
    series.name = "Alder 2";
    series.shape = Shape::lemon;
    series.wide_angle_reference = Reference::outer_cross;
    series.crosses = {{mm(22), mm(54)}};
    series.wide_angle = WideAngleJoint{mm(64), {{mm(22), mm(54)}, {mm(27), mm(70)}}};
    SeriesHalf inner;
    inner.shoulder = mm(128);
    inner.seat = mm(62);
    inner.least_tube = mm(180);
    SeriesHalf outer;
    outer.shoulder = mm(106);
    outer.seat = mm(58);
    outer.least_tube = mm(180);
    series.halves[Tube::inner] = inner;
    series.halves[Tube::outer] = outer;
    series.yokes = {{"1-3/8-6", std::nullopt, mm(60)}};
    series.closed_lengths = {mm(480), mm(590), mm(705), mm(830), mm(960), mm(1100), mm(1250)};
    found.series.push_back(series);
    return found;
}

inline Workshop workshop()
{
    Workshop found;
    found.saw = {mm(1), mm(3), mm(1), mm(5)};
    found.measuring_plus_minus = mm(2);
    return found;
}

// A primary shaft with a wide-angle joint at the tractor, to be cut by 94 mm off each tube and guard.
inline Job job()
{
    Job found;
    found.order = "K-1042";
    found.date = "2026-11-24";
    JobShaft& shaft = found.shaft;
    shaft.series = "Alder 2";
    shaft.speed = 540;
    shaft.inner_tube = End::implement;
    shaft.closed = measured(860);
    shaft.closed_reference = Reference::outer_cross;
    shaft.ends[End::tractor] = {JointKind::wide_angle, "1-3/8-6", "1-3/8-6", Lock::shrouded_push_pin, Device::none, {}};
    shaft.ends[End::implement] = {JointKind::standard, "1-3/8-6", "1-3/8-6", Lock::clamp_bolt, Device::none, {}};
    shaft.halves[Tube::inner] = {measured(690), measured(672), std::nullopt, std::nullopt, {}};
    shaft.halves[Tube::outer] = {measured(668), measured(650), std::nullopt, std::nullopt, {}};
    JobFit fit;
    fit.reference = Reference::inner_cross;
    fit.shortest = measured(742);
    fit.longest[Range::working] = measured(800);
    fit.longest[Range::turning] = measured(850);
    fit.longest[Range::standing] = measured(905);
    const auto angles = [](int working, int turning, int standing) {
        PerEach<Range, std::optional<Angle>> all;
        all[Range::working] = Angle::degrees(working);
        all[Range::turning] = Angle::degrees(turning);
        all[Range::standing] = Angle::degrees(standing);
        return all;
    };
    fit.angles[End::tractor] = angles(12, 40, 65);
    fit.angles[End::implement] = angles(8, 15, 20);
    found.fits.push_back(fit);
    return found;
}

// A shaft of no known series with two standard joints, measured between its crosses.
inline Job plain_job(double closed, double inner, double outer, double shortest, double longest)
{
    Job found = job();
    found.shaft.series.reset();
    found.shaft.shape = Shape::star;
    found.shaft.closed = measured(closed);
    found.shaft.closed_reference.reset();
    found.shaft.ends[End::tractor].joint = JointKind::standard;
    found.shaft.halves[Tube::inner] = {measured(inner), std::nullopt, std::nullopt, std::nullopt, {}};
    found.shaft.halves[Tube::outer] = {measured(outer), std::nullopt, std::nullopt, std::nullopt, {}};
    found.fits[0] = JobFit();
    found.fits[0].shortest = measured(shortest);
    found.fits[0].longest[Range::turning] = measured(longest);
    return found;
}

inline WorkOrder worked(const Job& job_) { return work_up(job_, catalogue(), workshop(), job_.units); }

inline const Check& check(const WorkOrder& order, CheckId id) { return check_of(order.checks, id); }
inline bool failed(const WorkOrder& order, CheckId id) { return check(order, id).result == CheckResult::fail; }

// The sentence that holds these words; empty where there is none.
inline std::string sentence_with(const std::vector<std::string>& sentences, const std::string& words)
{
    const auto found = std::find_if(sentences.begin(), sentences.end(), [&](const std::string& sentence) { return sentence.find(words) != std::string::npos; });
    return found == sentences.end() ? "" : *found;
}

inline bool says(const std::vector<std::string>& sentences, const std::string& words) { return !sentence_with(sentences, words).empty(); }

// Of findings, in millimetres.
template <class Finding>
bool says(const std::vector<Finding>& findings, const std::string& words)
{
    return says(say_all(findings, Wording(Units::mm)), words);
}

}  // namespace shaftcut::test

#include "support/drawn/true_shafts.hpp"

#include <algorithm>
#include <cmath>

#include "support/jobs.hpp"

namespace shaftcut::test {
namespace {

constexpr Um mm_ = 1000;

class Draws {
public:
    Draws(std::uint64_t number, Draw draw) : dice_(number), draw_(draw) {}
    Measured drawn();

private:
    void draw_workshop();
    void draw_ends();
    void draw_stops();
    void draw_halves();
    void alter();
    void measure_shaft();
    void measure_half(std::size_t i);
    void state_stop(std::size_t i);
    void list_closed(Length stated);
    void draw_fit();
    Length distance(const JobFit& fit, Range range, Um telescoping, bool in_line);

    Um tolerance() { return std::array<Um, 4>{shop_, shop_, dice_.from(0, 6) * mm_, dice_.from(0, 20) * mm_}[static_cast<std::size_t>(dice_.up_to(3))]; }
    // As read by somebody whose error is within the tolerance, often at its very end.
    Um error(Um tolerance)
    {
        if (!at_extremes_ && dice_.one_in(2)) return dice_.from(-tolerance, tolerance);
        return dice_.one_in(2) ? tolerance : -tolerance;
    }
    Measurement read(Um truth)
    {
        const Um plus_minus = tolerance();
        Measurement found{Length::micrometres(truth + error(plus_minus)), std::nullopt, {"job.xml", 1, 1}};
        if (plus_minus != shop_) found.plus_minus = Length::micrometres(plus_minus);
        return found;
    }
    Um spacing(End end) const { return job_shaft().ends[end].joint == JointKind::wide_angle ? series_spacing_ : 0; }
    JobShaft& to_measure() { return found_.world.job.shaft; }
    const JobShaft& job_shaft() const { return found_.world.job.shaft; }
    Series& series() { return found_.world.catalogue.series[0]; }

    Dice dice_;
    Draw draw_;
    Measured found_;
    Um shop_ = 0;
    Um series_spacing_ = 0;
    bool at_extremes_ = false;         // every reading at the end of its tolerance
    std::array<bool, 2> measured_{};
    std::array<bool, 2> of_series_{};  // whose stop the series states
};

void Draws::draw_workshop()
{
    World& world = found_.world;
    world = {job(), catalogue(), workshop(), dice_.one_in(5) ? Units::in : Units::mm};
    static constexpr std::array<Um, 4> steps{1000, 500, 2000, 1588};
    world.workshop.saw = {Length::micrometres(steps[static_cast<std::size_t>(dice_.up_to(3))]), mm(3), dice_.length(0, 2), dice_.length(0, 6)};
    shop_ = dice_.from(0, 4) * mm_;
    world.workshop.measuring_plus_minus = Length::micrometres(shop_);
    world.job.units = world.units;
    world.job.fits.clear();
    if (dice_.one_in(3)) world.job.limits[Limit::closing_clearance] = LimitSetting{{dice_.from(25, 60) * mm_, 1}, {}};
}

void Draws::draw_ends()
{
    JobShaft& to = to_measure();
    series_spacing_ = dice_.from(40, 90) * mm_;
    series().wide_angle->spacing = Length::micrometres(series_spacing_);
    for (const End end : both_ends) to.ends[end].joint = dice_.one_in(3) ? JointKind::wide_angle : JointKind::standard;
    to.inner_tube = dice_.one_in(2) ? End::tractor : End::implement;
    to.closed_reference = dice_.one_in(2) ? Reference::outer_cross : Reference::inner_cross;
}

// Where the stops truly are; the series' own differ from them by no more than the tape that measured them.
void Draws::draw_stops()
{
    for (const Tube tube : both_tubes) {
        const std::size_t i = static_cast<std::size_t>(tube);
        SeriesHalf& half = series().halves[tube];
        found_.shaft.shoulder[i] = dice_.from(75, 150) * mm_;
        half.shoulder = Length::micrometres(found_.shaft.shoulder[i] + error(shop_));
        half.seat = mm(40);
        half.least_tube = mm(60);
        if (dice_.one_in(2)) half.guard_shoulder = Length::micrometres(found_.shaft.shoulder[i] - dice_.from(0, 20) * mm_);
        of_series_[i] = !dice_.one_in(5);
        if (!of_series_[i]) half.shoulder.reset();
        measured_[i] = !dice_.one_in(5);
    }
}

// Halves that stop together, or one of them cut before: a half that is left out is as the job's figures make it.
void Draws::draw_halves()
{
    TrueShaft& to = found_.shaft;
    const Um closed = dice_.from(450, 1200) * mm_ + dice_.from(0, 999);
    const std::size_t shortened = dice_.one_in(2) ? 0 : 1;
    for (std::size_t i = 0; i < 2; ++i) {
        to.half[i] = closed - to.shoulder[1 - i];
        if (i == shortened && measured_[i] && !dice_.one_in(3)) to.half[i] -= dice_.one_in(2) ? dice_.from(0, 8'000) : dice_.from(0, 120) * mm_;
        to.guard[i] = to.half[i] - dice_.from(2, 24) * mm_;
    }
}

// The path that does not set the closed length hides where its stop is; a half that nobody measured hides its length.
void Draws::alter()
{
    TrueShaft& to = found_.shaft;
    const std::size_t hidden = to.path(0) < to.path(1) ? 0 : 1;
    const Um room = to.closed() - to.path(hidden);
    if (room > 0) {
        const Um off = dice_.from(-40 * mm_, std::min(40 * mm_, room));
        to.shoulder[1 - hidden] = std::max<Um>(30 * mm_, to.shoulder[1 - hidden] + off);
        found_.stop_altered = std::abs(off) > 2 * shop_;
    }
    for (std::size_t i = 0; i < 2; ++i) {
        if (measured_[i] || to.path(1 - i) < to.closed()) continue;
        const Um off = dice_.from(0, 60 * mm_);
        to.half[i] -= off;
        found_.half_altered |= off > 2 * shop_;
    }
}

// By its own figure, by the depth to it from the tube's end, or by the series.
void Draws::state_stop(std::size_t i)
{
    const Tube tube = static_cast<Tube>(i);
    JobHalf& half = to_measure().halves[tube];
    const bool hidden = draw_ == Draw::altered && found_.shaft.path(1 - i) < found_.shaft.closed();
    if (hidden || (of_series_[i] && !dice_.one_in(5)) || dice_.one_in(3)) return;
    if (half.length && dice_.one_in(2)) half.stop_depth = read(found_.shaft.half[i] - found_.shaft.shoulder[i]);
    else half.shoulder = read(found_.shaft.shoulder[i]);
}

void Draws::measure_half(std::size_t i)
{
    JobHalf& half = to_measure().halves[static_cast<Tube>(i)];
    half = JobHalf();
    if (measured_[i]) half.length = read(found_.shaft.half[i]);
    if (!dice_.one_in(4)) half.guard = read(found_.shaft.guard[i]);
    state_stop(i);
}

// An uncut shaft is one of its series' own.
void Draws::list_closed(Length stated)
{
    Length at_series = stated;
    const Length both = Length::micrometres(spacing(End::tractor) + spacing(End::implement));
    if (job_shaft().closed_reference == Reference::inner_cross) at_series += both;
    series().closed_lengths = {at_series + Length::millimetres(dice_.from(-4, 4))};
}

void Draws::measure_shaft()
{
    JobShaft& to = to_measure();
    Um closed = found_.shaft.closed();
    if (to.closed_reference == Reference::outer_cross) closed += spacing(End::tractor) + spacing(End::implement);
    to.closed = read(closed);
    list_closed(to.closed.length);
    for (std::size_t i = 0; i < 2; ++i) measure_half(i);
}

// The straight distance that a tape finds over joints bent by no more than the stated angles, each to either side.
Length Draws::distance(const JobFit& fit, Range range, Um telescoping, bool in_line)
{
    if (fit.reference == Reference::inner_cross) return Length::micrometres(telescoping);
    double x = static_cast<double>(telescoping), y = 0;
    for (const End end : both_ends) {
        const double share = in_line ? 0 : static_cast<double>(dice_.from(-100, 100)) / 100;
        const double bent = share * fit.angles[end][range]->radians() / 2;
        x += static_cast<double>(spacing(end)) * std::cos(bent);
        y += static_cast<double>(spacing(end)) * std::sin(bent);
    }
    return Length::micrometres(std::llround(std::hypot(x, y)));
}

void Draws::draw_fit()
{
    TrueFit to;
    to.shortest = found_.shaft.closed() + dice_.from(-120, 60) * mm_ + dice_.from(0, 999);
    to.longest[0] = to.shortest + dice_.from(45, 90) * mm_;
    to.longest[1] = to.longest[0] + dice_.from(45, 90) * mm_;
    to.longest[2] = to.longest[1] + dice_.from(45, 90) * mm_;
    JobFit fit;
    fit.reference = dice_.one_in(3) ? Reference::outer_cross : Reference::inner_cross;
    for (const End end : both_ends)
        for (const Range range : all_ranges) fit.angles[end][range] = Angle::degrees(dice_.from(1, 8) + 8 * static_cast<std::int64_t>(range));
    fit.shortest = read(distance(fit, Range::working, to.shortest, dice_.one_in(2)).um());
    for (const Range range : all_ranges) {
        const Um truth = to.longest[static_cast<std::size_t>(range)];
        if (range == Range::turning || !dice_.one_in(6)) fit.longest[range] = read(distance(fit, range, truth, false).um());
    }
    found_.shaft.fits.push_back(to);
    found_.world.job.fits.push_back(fit);
}

Measured Draws::drawn()
{
    at_extremes_ = dice_.one_in(3);
    draw_workshop();
    draw_ends();
    draw_stops();
    draw_halves();
    if (draw_ == Draw::altered) alter();
    measure_shaft();
    for (std::int64_t fits = dice_.one_in(4) ? dice_.from(2, 3) : 1; fits > 0; --fits) draw_fit();
    return found_;
}

}  // namespace

Measured measured_shaft(std::uint64_t number, Draw draw) { return Draws(number, draw).drawn(); }

}  // namespace shaftcut::test

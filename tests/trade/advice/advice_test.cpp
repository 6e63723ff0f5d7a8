// Every figure that a way out names is tried by the program's own rules: it serves, and a millimetre beyond it does not.
#include "advice/advice.hpp"

#include <algorithm>

#include "support/catch.hpp"
#include "support/jobs.hpp"
#include "support/drawn/random_jobs.hpp"

using namespace shaftcut;
using namespace shaftcut::test;

namespace {

constexpr std::array on_lengths{CheckId::closing_clearance,  CheckId::overlap_working, CheckId::overlap_turning, CheckId::overlap_standing, CheckId::tube_left,
                                CheckId::shortening_allowed, CheckId::guard_clearance, CheckId::guard_cover,     CheckId::consistency};
constexpr std::array overlap_checks{CheckId::overlap_working, CheckId::overlap_turning, CheckId::overlap_standing};

WorkOrder worked(const World& world) { return work_up(world.job, world.catalogue, world.workshop, world.units); }

bool lengths_fail(const World& world)
{
    const WorkOrder order = worked(world);
    return std::any_of(on_lengths.begin(), on_lengths.end(), [&](CheckId id) { return failed(order, id); });
}

std::string way_with(const WorkOrder& order, const std::string& words) { return sentence_with(say_all(order.ways_out, wording_of(order)), words); }

// The figure that follows these words.
Length after(const std::string& text, const std::string& words) { return Length::from_mm(std::stod(text.substr(text.find(words) + words.size()))); }

// The same job with every fit stated in the lengths that the cut works in, in millimetres.
World in_telescoping_lengths(World world)
{
    world.units = Units::mm;
    const WorkOrder order = worked(world);
    for (std::size_t i = 0; i < order.fits.size(); ++i) {
        JobFit& fit = world.job.fits[i];
        const Fit& read = order.fits[i].fit;
        if (!read.shortest) continue;
        fit.between = Between::crosses;
        fit.reference = Reference::inner_cross;
        fit.shortest = {read.shortest->value, read.shortest->plus_minus, {}};
        for (const Range range : all_ranges)
            if (fit.longest[range]) fit.longest[range] = Measurement{read.longest[range]->value, read.longest[range]->plus_minus, {}};
    }
    return world;
}

World with_shortest_at_least(World world, Length least)
{
    for (JobFit& fit : world.job.fits) fit.shortest->length = std::max(fit.shortest->length, least);
    return world;
}

// A fit that leaves this range out reaches it at least as far as its lesser ranges.
World with_longest(World world, Range range, Length longest)
{
    for (JobFit& fit : world.job.fits) {
        if (fit.longest[range]) fit.longest[range]->length = longest;
        else
            for (const Range lesser : all_ranges)
                if (lesser < range && fit.longest[lesser]) fit.longest[lesser]->length = std::min(fit.longest[lesser]->length, longest);
    }
    return world;
}

Length least_longest(const World& world)
{
    Length least = Length::millimetres(100'000);
    for (const JobFit& fit : world.job.fits)
        for (const Range range : all_ranges)
            if (fit.longest[range]) least = std::min(least, fit.longest[range]->length);
    return least;
}

// A new shaft of the series with this closed length, its guards as they are built, measured as well as the job's shaft.
World with_new_shaft(World world, Length closed, Reference reference)
{
    JobShaft& shaft = world.job.shaft;
    const WorkOrder order = worked(world);
    const Length telescoping = closed - order.reading.closed_at[reference] + order.reading.shaft.closed.value;
    shaft.closed.length = closed;
    shaft.closed_reference = reference;
    for (const Tube tube : both_tubes) {
        const Series& series = world.catalogue.series[0];
        const Length length = telescoping - *series.halves[other(tube)].shoulder;
        Length guard = length - order.limits.length(Limit::guard_setback_new);
        if (const auto& face = series.halves[other(tube)].guard_shoulder) guard = std::min(guard, telescoping - *face);
        shaft.halves[tube] = JobHalf();
        shaft.halves[tube].length = Measurement{length, shaft.closed.plus_minus, {}};
        shaft.halves[tube].guard = Measurement{guard, shaft.closed.plus_minus, {}};
    }
    return world;
}

// The longest new shaft that closes with its clearance at this shortest.
World with_longest_shaft(const World& world, Length shortest)
{
    const WorkOrder order = worked(world);
    const Length doubt = order.fit.shortest->plus_minus + order.reading.shaft.closed.plus_minus + mm(0.01);
    // Shoulders are whole millimetres here, so that halves on the saw's step come with a clearance on it.
    const Length clearance = round_up_to_step(std::max(order.limits.length(Limit::closing_clearance), doubt), order.saw.step_um);
    return with_new_shaft(with_shortest_at_least(world, shortest), shortest - clearance, Reference::inner_cross);
}

// Sound shafts, of which some may not be shortened, some have long least tubes, and some are measured badly.
World tried_world(std::uint64_t number)
{
    World world = sound_world(number);
    Series& series = world.catalogue.series[0];
    if (number % 7 == 0) series.shortening_forbidden = true;
    if (number % 7 == 1) series.halves[Tube::inner].least_tube = mm(360);
    if (number % 7 == 2) world.job.fits[0].shortest->plus_minus = mm(38);
    if (number % 7 == 3) world.job.shaft.halves[Tube::outer].guard = measured(250);
    return world;
}

void try_longest(const World& world, const WorkOrder& order)
{
    static constexpr std::array positions{"usual working position", "position with the PTO turning", "position with the PTO stopped"};
    for (const Range range : all_ranges) {
        const std::size_t i = static_cast<std::size_t>(range);
        if (!failed(order, overlap_checks[i])) continue;
        const std::string named = std::string("can serve no ") + positions[i] + " longer than ";
        const std::string way = way_with(order, named);
        if (way.empty()) {
            REQUIRE_FALSE(way_with(order, std::string("too little overlap for any ") + positions[i]).empty());
            CHECK(failed(worked(with_longest(world, range, order.fit.shortest->value)), overlap_checks[i]));
            continue;
        }
        INFO(way);
        CHECK_FALSE(failed(worked(with_longest(world, range, after(way, named))), overlap_checks[i]));
        CHECK(failed(worked(with_longest(world, range, after(way, named) + mm(1))), overlap_checks[i]));
    }
}

void try_shortest(const World& world, const WorkOrder& order)
{
    const std::string named = "were raised to ";
    const std::string way = way_with(order, named);
    INFO(way);
    if (way.empty()) {
        REQUIRE_FALSE(way_with(order, "Raising the shortest position does not").empty());
        CHECK(lengths_fail(with_shortest_at_least(world, Length::micrometres(least_longest(world).um() / 1000 * 1000))));
        return;
    }
    const World raised = with_shortest_at_least(world, after(way, named));
    CHECK_FALSE(lengths_fail(raised));
    // Nobody fits uncut what must be cut first.
    if (const auto& cut = worked(raised).cut) CHECK(nothing_to_cut(cut->plan) == (way.find("would serve uncut") != std::string::npos));
    CHECK(lengths_fail(with_shortest_at_least(world, after(way, named) - mm(1))));
}

bool named_in(const std::string& text, Length length)
{
    return text.find(" " + figure_with_unit(length, Units::mm)) != std::string::npos;
}

void try_series_lengths(const World& world, const WorkOrder& order)
{
    const std::string way = way_with(order, "closed lengths");
    REQUIRE((!way.empty() || !way_with(order, "No new shaft of").empty()));
    const std::size_t ends = std::min(way.find(" fits as it is"), way.find(" fit as they are"));
    const std::size_t cut_begins = ends == std::string::npos ? 0 : ends;
    const std::string as_is = way.substr(0, cut_begins);
    const std::string after_cut = way.substr(cut_begins);
    for (const Length closed : world.catalogue.series[0].closed_lengths) {
        const World tried = with_new_shaft(world, closed, Reference::outer_cross);
        INFO(way << " " << closed.mm());
        CHECK(lengths_fail(tried) == (!named_in(as_is, closed) && !named_in(after_cut, closed)));
        if (!named_in(as_is, closed) && !named_in(after_cut, closed)) continue;
        const auto& cut = worked(tried).cut;
        if (cut) CHECK(nothing_to_cut(cut->plan) == named_in(as_is, closed));
    }
}

void try_order(const World& world, const WorkOrder& order)
{
    const std::string ordered = way_with(order, "To order: a new shaft");
    const std::string way = ordered.empty() ? way_with(order, "o new shaft") : ordered;
    REQUIRE_FALSE(way.empty());
    INFO(way);
    // No length of a half: on a refused shaft's paper it could be sawn to.
    CHECK(way.find("half") == std::string::npos);
    if (!ordered.empty()) {
        const World tried = with_new_shaft(world, after(way, "closed length "), order.reading.reference);
        CHECK_FALSE(lengths_fail(tried));
        if (const auto& cut = worked(tried).cut) CHECK(nothing_to_cut(cut->plan));
        return;
    }
    CHECK(lengths_fail(with_longest_shaft(world, order.fit.shortest->value)));
    CHECK(way_with(order, "closed lengths").empty());
    const std::string named = "shortest position were ";
    if (way.find(named) == std::string::npos) return;
    CHECK_FALSE(lengths_fail(with_longest_shaft(world, after(way, named))));
    CHECK(lengths_fail(with_longest_shaft(world, after(way, named) - mm(1))));
}

void try_guards(const World& world, const WorkOrder& order)
{
    if (!failed(order, CheckId::guard_cover)) return;
    const std::string named = "no position may be longer than ";
    const std::string way = way_with(order, "Fit longer guard tubes");
    REQUIRE_FALSE(way.empty());
    INFO(way);
    const auto fails_at = [&](Length longest) {
        World tried = world;
        for (JobFit& fit : tried.job.fits)
            for (const Range range : all_ranges)
                if (fit.longest[range]) fit.longest[range]->length = longest;
        return failed(worked(tried), CheckId::guard_cover);
    };
    if (way.find(named) == std::string::npos) {
        CHECK(fails_at(order.fit.shortest->value));
        return;
    }
    CHECK_FALSE(fails_at(after(way, named)));
    CHECK(fails_at(after(way, named) + mm(1)));
}

}  // namespace

TEST_CASE("each figure of a way out serves, and a millimetre beyond it does not")
{
    int tried = 0;
    for (std::uint64_t number = 0; number < 1'500; ++number) {
        const World world = tried_world(number);
        const WorkOrder order = worked(world);
        if (!lengths_fail(world)) continue;
        ++tried;
        INFO("shaft " << number);
        try_longest(world, order);
        try_shortest(world, order);
        try_series_lengths(world, order);
        try_order(world, order);
        try_guards(world, order);
    }
    CHECK(tried > 300);
}

TEST_CASE("the positions named for any job that lengths refuse, read from any reference, hold too")
{
    int tried = 0;
    for (std::uint64_t number = 0; number < 3'000; ++number) {
        const World world = in_telescoping_lengths(random_world(number));
        const WorkOrder order = worked(world);
        if (!lengths_fail(world) || failed(order, CheckId::consistency) || !order.stops) continue;
        ++tried;
        INFO("job " << number);
        try_longest(world, order);
        try_shortest(world, order);
        try_guards(world, order);
    }
    CHECK(tried > 300);
}

TEST_CASE("no way out is named where nothing is refused, and each refusal names one")
{
    for (std::uint64_t number = 0; number < 3'000; ++number) {
        const WorkOrder order = worked(random_world(number));
        INFO(number);
        CHECK(order.ways_out.empty() == (order.verdict != Verdict::refused));
        for (const std::string& way : say_all(order.ways_out, wording_of(order))) CHECK(way.back() == '.');
        CHECK((way_with(order, "No new shaft of").empty() || way_with(order, "None of series").empty()));
    }
}

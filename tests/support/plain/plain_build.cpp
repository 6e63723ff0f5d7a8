#include "support/plain/plain_build.hpp"

#include <algorithm>
#include <cmath>

namespace shaftcut::test::plain {
namespace {

struct Wanted {
    const BuildOrder& order;
    const Series& series;
    const Workshop& workshop;
    Units units;
};

bool wide_at(const Wanted& wanted, std::size_t tube)
{
    const std::size_t inner_end = wanted.order.shaft.inner_tube == End::tractor ? 0 : 1;
    const std::size_t end = tube == 0 ? inner_end : 1 - inner_end;
    return wanted.order.shaft.ends[static_cast<End>(end)].joint == JointKind::wide_angle;
}

Um both_spacings(const Wanted& wanted)
{
    Um sum = 0;
    for (const End end : {End::tractor, End::implement})
        if (wanted.order.shaft.ends[end].joint == JointKind::wide_angle) sum += wanted.series.wide_angle->spacing.um();
    return sum;
}

bool from_outer_cross(const Wanted& wanted)
{
    if (wanted.order.shaft.closed_reference) return *wanted.order.shaft.closed_reference == Reference::outer_cross;
    if (wanted.series.wide_angle_reference) return *wanted.series.wide_angle_reference == Reference::outer_cross;
    return wanted.series.shape == Shape::lemon || wanted.series.shape == Shape::star;
}

Um setting(const Wanted& wanted, Limit limit, Um otherwise)
{
    if (const auto& of_order = wanted.order.limits[limit]) return of_order->value.numerator;
    if (const auto& of_series = wanted.series.limits[limit]) return of_series->value.numerator;
    if (const auto& of_shop = wanted.workshop.limits[limit]) return of_shop->value.numerator;
    return otherwise;
}

// Half micrometres: a sixteenth of an inch is 3175 of them.
std::int64_t step_of(const Wanted& wanted)
{
    const std::int64_t shop = 2 * wanted.workshop.saw.step.um();
    return wanted.units == Units::mm ? shop : (shop + 3174) / 3175 * 3175;
}

Um floor_to_step(Um length, std::int64_t step)
{
    if (length <= 0) return length;
    std::int64_t steps = 2 * length / step;
    // As it is stored, to the micrometre.
    if (((steps + 1) * step + 1) / 2 - length < 10) ++steps;
    return (steps * step + 1) / 2;
}

Um ceil_to_step(Um length, std::int64_t step)
{
    std::int64_t steps = 2 * length / step;
    if (2 * length - steps * step >= 20) ++steps;
    return (steps * step + 1) / 2;
}

Maybe seat_of_guard(const Wanted& wanted, std::size_t tube)
{
    const SeriesHalf& half = wanted.series.halves[static_cast<Tube>(tube)];
    const auto& seat = wide_at(wanted, tube) ? half.guard_seat_wide_angle : half.guard_seat;
    return seat ? Maybe(seat->um()) : std::nullopt;
}

bool all_stated(const Wanted& wanted)
{
    for (std::size_t tube = 0; tube < 2; ++tube) {
        const SeriesHalf& half = wanted.series.halves[static_cast<Tube>(tube)];
        if (!half.shoulder || !half.seat || (wanted.order.guard && !seat_of_guard(wanted, tube))) return false;
    }
    return true;
}

PlainBuilt lengths_for(const Wanted& wanted, Um room)
{
    const std::int64_t step = step_of(wanted);
    const Um setback = setting(wanted, Limit::guard_setback_new, 10'000);
    PlainBuilt built;
    for (std::size_t tube = 0; tube < 2; ++tube) {
        const SeriesHalf& mine = wanted.series.halves[static_cast<Tube>(tube)];
        const SeriesHalf& theirs = wanted.series.halves[static_cast<Tube>(1 - tube)];
        built.half[tube] = floor_to_step(room - theirs.shoulder->um(), step);
        built.blank[tube] = built.half[tube] - mine.seat->um();
        const Um reach = built.half[tube] + theirs.shoulder->um();
        built.closed = tube == 0 ? reach : std::max(built.closed, reach);
        if (!wanted.order.guard) continue;
        Um guard = built.half[tube] - setback;
        if (guard > 0) guard = ceil_to_step(guard, step);
        if (theirs.guard_shoulder) guard = std::min(guard, floor_to_step(room - theirs.guard_shoulder->um(), step));
        built.guard_half[tube] = guard;
        built.guard_blank[tube] = guard - *seat_of_guard(wanted, tube);
    }
    return built;
}

// The job of somebody who measured it.
Job as_measured(const Wanted& wanted, const PlainBuilt& built)
{
    const Length sure = wanted.workshop.saw.plus_minus;
    Job job;
    job.shaft = wanted.order.shaft;
    job.shaft.built = 2021;  // new
    job.shaft.closed = {Length::micrometres(built.closed + (from_outer_cross(wanted) ? both_spacings(wanted) : 0)), sure, {}};
    job.shaft.closed_reference = from_outer_cross(wanted) ? Reference::outer_cross : Reference::inner_cross;
    for (std::size_t tube = 0; tube < 2; ++tube) {
        JobHalf& half = job.shaft.halves[static_cast<Tube>(tube)];
        half.length = Measurement{Length::micrometres(built.half[tube]), sure, {}};
        if (built.guard_half[tube]) half.guard = Measurement{Length::micrometres(*built.guard_half[tube]), sure, {}};
    }
    job.fits = wanted.order.fits;
    job.limits = wanted.order.limits;
    return job;
}

Maybe spare_tube(const Wanted& wanted, const PlainBuilt& built)
{
    Maybe least;
    for (std::size_t tube = 0; tube < 2; ++tube) {
        const SeriesHalf& half = wanted.series.halves[static_cast<Tube>(tube)];
        if (!half.least_tube) continue;
        const Um spare = built.blank[tube] - half.least_tube->um();
        least = std::min(least.value_or(spare), spare);
    }
    return least;
}

PlainCheck tubes_left(const Wanted& wanted, const PlainBuilt& built)
{
    const Maybe least = spare_tube(wanted, built);
    const bool short_of_it = least && *least <= -10;
    const bool unknown = !wanted.series.halves[Tube::inner].least_tube || !wanted.series.halves[Tube::outer].least_tube;
    if (unknown && !short_of_it) return {};
    return {short_of_it ? CheckResult::fail : CheckResult::pass, least, std::nullopt, 0};
}

PlainCheck setback_of_new(const Wanted& wanted, const PlainBuilt& built)
{
    if (!wanted.order.guard) return {};
    const std::array<Um, 2> back{built.half[0] - *built.guard_half[0], built.half[1] - *built.guard_half[1]};
    const Um least = std::min(back[0], back[1]);
    const Um value = least < 0 ? least : std::max(back[0], back[1]);
    const Um limit = setting(wanted, Limit::guard_setback_new, 10'000);
    return {value <= -10 || value - limit >= 10 ? CheckResult::warn : CheckResult::pass, value, std::nullopt, limit};
}

bool pieces_exist(const Wanted& wanted, const PlainBuilt& built)
{
    for (std::size_t tube = 0; tube < 2; ++tube) {
        const SeriesHalf& half = wanted.series.halves[static_cast<Tube>(tube)];
        if (built.blank[tube] <= 0 || built.guard_blank[tube].value_or(1) <= 0) return false;
        if (half.pin_hole && half.pin_hole->um() >= built.half[tube]) return false;
    }
    return true;
}

LimitValue fraction(const Wanted& wanted, Limit limit, LimitValue otherwise)
{
    if (const auto& of_order = wanted.order.limits[limit]) return of_order->value;
    if (const auto& of_series = wanted.series.limits[limit]) return of_series->value;
    if (const auto& of_shop = wanted.workshop.limits[limit]) return of_shop->value;
    return otherwise;
}

Um part_of(LimitValue part, Um whole)
{
    return std::llround(static_cast<long double>(whole) * static_cast<long double>(part.numerator) / static_cast<long double>(part.denominator));
}

// The overlap that must be left: working, turning, standing.
std::array<Um, 3> overlaps_asked(const Wanted& wanted, const PlainBuilt& built)
{
    const Um closed_overlap = built.half[0] + built.half[1] - built.closed;
    return {part_of(fraction(wanted, Limit::overlap_working, {1, 2}), closed_overlap),
            std::max(part_of(fraction(wanted, Limit::overlap_turning, {1, 3}), closed_overlap), setting(wanted, Limit::least_overlap_turning, 150'000)),
            setting(wanted, Limit::least_overlap_standing, 100'000)};
}

void find_pulled(PlainBuilt& built, const Wanted& wanted)
{
    const auto asked = overlaps_asked(wanted, built);
    const Um doubt = 2 * wanted.workshop.saw.plus_minus.um() + wanted.workshop.measuring_plus_minus.um();
    const Um shortest = built.closed + setting(wanted, Limit::closing_clearance, 40'000);
    Um most = built.half[0] + built.half[1];
    if (built.guard_half[0] && built.guard_half[1])
        most = std::min(most, *built.guard_half[0] + *built.guard_half[1] - doubt - setting(wanted, Limit::guard_overlap, 50'000));
    for (int range = 2; range >= 0; --range) {
        const auto i = static_cast<std::size_t>(range);
        most = std::min(most, built.half[0] + built.half[1] - asked[i] - doubt);
        const Um stepped = floor_to_step(most, step_of(wanted));
        if (most > 0 && shortest - stepped < 10) built.pulled[i] = stepped;
    }
}

bool can_never_turn(const Wanted& wanted, const PlainBuilt& built)
{
    const Um closed_overlap = built.half[0] + built.half[1] - built.closed;
    return overlaps_asked(wanted, built)[1] - (closed_overlap - setting(wanted, Limit::closing_clearance, 40'000)) >= 10;
}

bool is_named(const Wanted& wanted, PartKind kind)
{
    for (const CataloguePart& part : wanted.series.parts)
        if (part.kind == kind) return true;
    return false;
}

// Inner or outer cross of a wide-angle joint, or that of a standard one. One that is stated stands for both.
bool cross_is_named(const std::vector<Cross>& crosses, std::size_t which)
{
    if (crosses.empty()) return false;
    return !crosses[std::min(which, crosses.size() - 1)].part.empty();
}

bool end_is_known(const Wanted& wanted, End which)
{
    const JobEnd& end = wanted.order.shaft.ends[which];
    if (!end.connection) return false;
    bool has_yoke = true;
    if (end.device.value_or(Device::none) != Device::none) {
        std::optional<Replaces> replaces;
        for (const CataloguePart& part : wanted.series.parts)
            if (part.kind == PartKind::device) replaces = part.replaces;
        if (!replaces) return false;
        has_yoke = *replaces == Replaces::nothing;
    }
    if (has_yoke && !is_named(wanted, PartKind::connection_yoke)) return false;
    if (end.joint != JointKind::wide_angle) return cross_is_named({wanted.series.crosses.begin(), wanted.series.crosses.begin() + (wanted.series.crosses.empty() ? 0 : 1)}, 0);
    const auto& crosses = wanted.series.wide_angle->crosses;
    return is_named(wanted, PartKind::double_yoke) && cross_is_named(crosses, 0) && cross_is_named(crosses, 1);
}

// The random catalogues' parts do not depend on tube, joint, connection or lock.
bool all_known(const Wanted& wanted)
{
    for (const PartKind kind : {PartKind::tube, PartKind::tube_yoke, PartKind::pin, PartKind::label, PartKind::book})
        if (!is_named(wanted, kind)) return false;
    if (wanted.order.guard)
        for (const PartKind kind : {PartKind::guard_tube, PartKind::guard_bearing, PartKind::chain})
            if (!is_named(wanted, kind)) return false;
    return end_is_known(wanted, End::tractor) && end_is_known(wanted, End::implement);
}

bool fails(const PlainCheck& check) { return check.result == CheckResult::fail; }

// Checks that need no fit, on a job whose fit is one that nothing can fail by.
std::array<PlainCheck, check_count> checks_without_fit(const Wanted& wanted, const PlainBuilt& built, const Catalogue& catalogue)
{
    Job job = as_measured(wanted, built);
    JobFit easy;
    easy.reference = Reference::inner_cross;
    easy.shortest = Measurement{Length::micrometres(3'500'000), Length(), {}};
    easy.longest[Range::turning] = easy.shortest;
    job.fits = {easy};
    return answer(job, catalogue, wanted.workshop, wanted.units).checks;
}

}  // namespace

PlainBuildAnswer build_answer(const BuildOrder& order, const Catalogue& catalogue, const Workshop& workshop, Units units)
{
    const Wanted wanted{order, catalogue.series[0], workshop, units};
    PlainBuildAnswer result;
    if (!all_stated(wanted)) return result;
    Um room = 0;
    if (order.closed) {
        room = order.closed->length.um() - (from_outer_cross(wanted) ? both_spacings(wanted) : 0);
    } else {
        // plain_method reads the fits of a shaft of any length.
        const PlainAnswer read = answer(as_measured(wanted, PlainBuilt()), catalogue, workshop, units);
        if (!read.shaft.deciding.shortest) return result;
        room = *read.shaft.deciding.shortest - setting(wanted, Limit::closing_clearance, 40'000);
    }
    PlainBuilt built = lengths_for(wanted, room);
    auto checks = order.closed ? checks_without_fit(wanted, built, catalogue) : answer(as_measured(wanted, built), catalogue, workshop, units).checks;
    checks[static_cast<std::size_t>(CheckId::tube_left)] = tubes_left(wanted, built);
    checks[static_cast<std::size_t>(CheckId::guard_setback)] = setback_of_new(wanted, built);
    // Beside lengths that contradict each other no length passes.
    for (const CheckId id : {CheckId::tube_left, CheckId::guard_setback}) {
        CheckResult& of_length = checks[static_cast<std::size_t>(id)].result;
        if (fails(checks[static_cast<std::size_t>(CheckId::consistency)]) && of_length != CheckResult::fail) of_length = CheckResult::not_checked;
    }
    bool refused = !pieces_exist(wanted, built) || (order.closed && can_never_turn(wanted, built));
    for (std::size_t i = 0; i < checks.size(); ++i) {
        const CheckId id = static_cast<CheckId>(i);
        const bool needs_fit = id >= CheckId::closing_clearance && id <= CheckId::overlap_standing;
        if (order.closed && (needs_fit || id == CheckId::guard_cover || id == CheckId::guard_clearance)) continue;
        refused |= fails(checks[i]);
    }
    if (!order.closed) result.checks = checks;
    if (refused) return result;
    result.held = !all_known(wanted);
    if (result.held) return result;
    find_pulled(built, wanted);
    result.built = built;
    return result;
}

}  // namespace shaftcut::test::plain

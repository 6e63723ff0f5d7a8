#include "support/drawn/random_slips.hpp"

#include <utility>
#include <vector>

namespace shaftcut::test {
namespace {

// Every length that somebody measured.
std::vector<Length*> lengths_of(Job& job)
{
    std::vector<Length*> found{&job.shaft.closed.length};
    const auto add = [&](std::optional<Measurement>& one) {
        if (one) found.push_back(&one->length);
    };
    for (const Tube tube : both_tubes) {
        JobHalf& half = job.shaft.halves[tube];
        for (auto* one : {&half.length, &half.guard, &half.shoulder, &half.stop_depth}) add(*one);
    }
    for (JobFit& fit : job.fits) {
        add(fit.shortest);
        for (const Range range : all_ranges) add(fit.longest[range]);
    }
    return found;
}

Length& any_length(Dice& dice, Job& job)
{
    const auto all = lengths_of(job);
    return *all[static_cast<std::size_t>(dice.up_to(static_cast<std::int64_t>(all.size()) - 1))];
}

// Another digit in the place of the hundreds, tens or ones of millimetres, or the decimal point one place to the left.
void mistype(Dice& dice, Length& length)
{
    if (dice.one_in(6)) {
        length = Length::micrometres(length.um() / 10);
        return;
    }
    static constexpr std::int64_t places[]{100'000, 10'000, 1'000};
    const std::int64_t place = places[dice.up_to(2)];
    const std::int64_t digit = length.um() / place % 10;
    length += Length::micrometres((dice.up_to(9) - digit) * place);
}

void read_other_unit(Dice& dice, Length& length)
{
    const std::int64_t um = length.um();
    length = Length::micrometres(dice.one_in(2) ? um * 10 / 254 : um * 254 / 10);
}

// Called what it was not, or measured where it was not said to be.
void take_other_cross(Dice& dice, World& world)
{
    JobShaft& shaft = world.job.shaft;
    if (dice.one_in(2) && shaft.closed_reference) {
        shaft.closed_reference = *shaft.closed_reference == Reference::outer_cross ? Reference::inner_cross : Reference::outer_cross;
        return;
    }
    const Length spacing = shaft.spacing ? *shaft.spacing : world.catalogue.series[0].wide_angle->spacing;
    shaft.closed.length += (dice.one_in(2) ? -1 : 1) * spacing;
}

void shrink_guard(Dice& dice, Job& job)
{
    auto& guard = job.shaft.halves[dice.one_in(2) ? Tube::inner : Tube::outer].guard;
    if (guard) guard->length = dice.length(45, 160);
}

}  // namespace

void slip(Dice& dice, World& world, Slip which)
{
    Job& job = world.job;
    switch (which) {
    case Slip::other_cross: return take_other_cross(dice, world);
    case Slip::exchanged_halves: return std::swap(job.shaft.halves[Tube::inner].length, job.shaft.halves[Tube::outer].length);
    case Slip::digit: return mistype(dice, any_length(dice, job));
    case Slip::inches: return read_other_unit(dice, any_length(dice, job));
    case Slip::standing_left_out: return job.fits.back().longest[Range::standing].reset();
    case Slip::tiny_guard: return shrink_guard(dice, job);
    }
}

void slip(Dice& dice, World& world) { slip(dice, world, static_cast<Slip>(dice.up_to(slip_count - 1))); }

}  // namespace shaftcut::test

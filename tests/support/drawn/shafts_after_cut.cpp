#include "support/drawn/shafts_after_cut.hpp"

#include <algorithm>

namespace shaftcut::test {
namespace {

// Within the tolerance, often at its very end.
Um error(Dice& dice, Um tolerance)
{
    if (dice.one_in(2)) return dice.from(-tolerance, tolerance);
    return dice.one_in(2) ? tolerance : -tolerance;
}

Um sawn_part(Um truth, Um cut, Um kept, Um saw, Dice& dice)
{
    if (cut == 0) return truth;
    return (dice.one_in(2) ? truth - cut : kept) + error(dice, saw);
}

Um greatest(const TrueShaft& shaft, std::size_t range)
{
    Um found = shaft.fits[0].longest[range];
    for (const TrueFit& fit : shaft.fits) found = std::max(found, fit.longest[range]);
    return found;
}

Um least_shortest(const TrueShaft& shaft)
{
    Um found = shaft.fits[0].shortest;
    for (const TrueFit& fit : shaft.fits) found = std::min(found, fit.shortest);
    return found;
}

class Reader {
public:
    Reader(const WorkOrder& order, Dice& dice) : dice_(dice), shop_(order.measuring_plus_minus.um()) {}

    Measurement read(Um truth)
    {
        const Um plus_minus = dice_.one_in(4) ? dice_.from(0, 6) * 1000 : shop_;
        Measurement found{Length::micrometres(truth + error(dice_, plus_minus)), std::nullopt, {"measured.xml", 1, 1}};
        if (plus_minus != shop_) found.plus_minus = Length::micrometres(plus_minus);
        return found;
    }
    bool mostly() { return !dice_.one_in(4); }

private:
    Dice& dice_;
    Um shop_;
};

void read_halves(MeasuredAfterCut& found, const TrueShaft& shaft, const WorkOrder& order, Reader& reader)
{
    for (const Tube tube : both_tubes) {
        const std::size_t i = static_cast<std::size_t>(tube);
        found.halves[tube].length = reader.read(shaft.half[i]);
        if (!order.reading.shaft.halves[tube].guard_used) continue;
        if (reader.mostly()) found.halves[tube].guard = reader.read(shaft.guard[i]);
        else found.halves[tube].stands_out = reader.read(shaft.half[i] - shaft.guard[i]);
    }
}

// Two rings somewhere on the guards.
void read_rings(MarksAfterCut& marks, const TrueShaft& shaft, Reader& reader)
{
    const Um apart = 412'000, over_ends = 180'000 + shaft.closed();
    marks.overall_dry = reader.read(over_ends);
    marks.overall = marks.overall_dry;
    marks.closed = reader.read(apart);
    marks.shortest = reader.read(apart + least_shortest(shaft) - shaft.closed());
    for (const Range range : {Range::turning, Range::standing}) marks.longest[range] = reader.read(apart + greatest(shaft, static_cast<std::size_t>(range)) - shaft.closed());
}

}  // namespace

TrueShaft sawn_as_allowed(const TrueShaft& shaft, const Promise& promise, Dice& dice)
{
    TrueShaft sawn = shaft;
    for (std::size_t i = 0; i < 2; ++i) {
        sawn.half[i] = sawn_part(shaft.half[i], promise.cut[i], promise.kept[i], promise.saw, dice);
        sawn.guard[i] = sawn_part(shaft.guard[i], promise.guard_cut[i], promise.guard_kept[i].value_or(shaft.guard[i] - promise.guard_cut[i]), promise.saw, dice);
    }
    return sawn;
}

TrueShaft sawn_otherwise(const TrueShaft& shaft, const Promise& promise, Dice& dice)
{
    TrueShaft sawn = sawn_as_allowed(shaft, promise, dice);
    const std::size_t one = dice.one_in(2) ? 0 : 1, two = 1 - one;
    const auto off = [&] { return (dice.one_in(2) ? 1 : -1) * dice.from(0, dice.one_in(2) ? 12 : 60) * 1000; };
    switch (dice.up_to(4)) {
    case 0: sawn.half[one] += off(); break;
    case 1:
        sawn.half = {sawn.half[0] + off(), sawn.half[1] + off()};
        sawn.guard = {sawn.guard[0] + off(), sawn.guard[1] + off()};
        break;
    case 2:  // what the one half should lose came off the other
        sawn.half[one] = shaft.half[one];
        sawn.half[two] = shaft.half[two] - promise.cut[two] - promise.cut[one];
        break;
    case 3: sawn.half = {shaft.half[0] - promise.cut[1], shaft.half[1] - promise.cut[0]}; break;
    default: sawn.half[one] = shaft.half[one]; break;
    }
    // Nothing grows under the saw.
    for (std::size_t i = 0; i < 2; ++i) {
        sawn.half[i] = std::min(sawn.half[i], shaft.half[i]);
        sawn.guard[i] = std::min(sawn.guard[i], shaft.guard[i]);
    }
    return sawn;
}

TrueShaft sawn_again(const TrueShaft& shaft, const AfterCut& found, Um saw, Dice& dice)
{
    TrueShaft sawn = shaft;
    for (const PartAfterCut& part : found.parts) {
        if (!part.saw_more) continue;
        const std::size_t i = part.part == SawnPart::inner_tube || part.part == SawnPart::inner_guard ? 0 : 1;
        const bool tube = part.part == SawnPart::inner_tube || part.part == SawnPart::outer_tube;
        (tube ? sawn.half : sawn.guard)[i] -= part.saw_more->off.um() + error(dice, saw);
    }
    return sawn;
}

MeasuredAfterCut read_after_cut(const TrueShaft& shaft, const WorkOrder& order, Dice& dice)
{
    Reader reader(order, dice);
    MeasuredAfterCut found;
    found.order = order.order;
    read_halves(found, shaft, order, reader);
    const Reference reference = dice.one_in(2) ? Reference::outer_cross : Reference::inner_cross;
    const Um beyond = (order.reading.closed_at[reference] - order.reading.closed_at[Reference::inner_cross]).um();
    if (reader.mostly()) found.closed = ClosedAfterCut{reader.read(shaft.closed() + beyond), reference};
    if (reader.mostly()) read_rings(found.marks, shaft, reader);
    return found;
}

Um true_clearance(const TrueShaft& shaft) { return least_shortest(shaft) - shaft.closed(); }

Um true_overlap(const TrueShaft& shaft, Range range) { return shaft.half[0] + shaft.half[1] - greatest(shaft, static_cast<std::size_t>(range)); }

}  // namespace shaftcut::test

#include <algorithm>
#include <array>
#include <cmath>

#include "support/identify/invented.hpp"

namespace shaftcut::test {
namespace {

using support::Dice;

// Of one kind of size: ± of making (95 %), how many are worn and by how much, which way, how many are dirty and by how much. After the page that the program was
// written from; the laws are others: making is even, wear half a normal distribution and greater on an old shaft, dirt even.
struct Kind {
    double making, worn, wear, way, dirty, dirt;
};
constexpr Kind cap_kind{0.05, 0.30, 0.06, -1, 0.10, 0.08}, span_kind{0.20, 0.30, 0.20, -1, 0.10, 0.15}, spacing_kind{0.50, 0.30, 0.40, 1, 0.10, 0.40},
    inner_kind{0.40, 0.50, 0.35, -1, 0.15, 0.20}, outer_kind{0.40, 0.10, 0.20, -1, 0.30, 0.25}, wall_kind{0.30, 0.30, 0.20, -1, 0.15, 0.15};

double normal(Dice& dice)
{
    double sum = -6;
    for (int i = 0; i < 12; ++i) sum += dice.between(0, 1);
    return sum;
}

const Series& any_series(Dice& dice, const Catalogue& catalogue)
{
    const auto count = static_cast<double>(catalogue.series.size());
    return catalogue.series[static_cast<std::size_t>(std::min(dice.between(0, count), count - 0.5))];
}

class Maker {
public:
    Maker(Dice& dice, const World& world) : dice_(dice), world_(world), age_(dice.between(0.4, 1.6)) {}

    TrueEnd end(const Series& series)
    {
        TrueEnd made;
        made.joint = chance(dice_, series.wide_angle ? 0.35 : 0.02) ? JointKind::wide_angle : JointKind::standard;
        if (made.joint == JointKind::standard) {
            made.crosses[CrossPlace::inner] = made.crosses[CrossPlace::outer] = cross(&series.crosses.front(), false);
            return made;
        }
        const auto* listed = series.wide_angle && !series.wide_angle->crosses.empty() ? &series.wide_angle->crosses : nullptr;
        made.crosses[CrossPlace::inner] = cross(listed ? &listed->front() : nullptr, true);
        made.crosses[CrossPlace::outer] = cross(listed ? &listed->back() : nullptr, true);
        made.spacing = size(series.wide_angle ? series.wide_angle->spacing.mm() : dice_.between(50, 120), spacing_kind);
        return made;
    }

    double tube(const std::optional<Length>& stated, double low, double high, const Kind& kind) { return size(stated ? stated->mm() : dice_.between(low, high), kind); }

private:
    double size(double stated, const Kind& kind)
    {
        double made = stated + kind.making * 0.87 * dice_.between(-1, 1);
        if (chance(dice_, kind.worn)) made += kind.way * kind.wear * world_.worn * age_ * 1.25 * std::abs(normal(dice_));
        else if (chance(dice_, kind.dirty / (1 - kind.worn))) made -= kind.way * dice_.between(0, 2 * kind.dirt);
        return made;
    }

    TrueCross cross(const Cross* stated, bool wide_angle)
    {
        const double cap = dice_.between(22, 41);
        const Cross unknown{Length::from_mm(cap), Length::from_mm(2.6 * cap), {}, {}, {}, {}, {}};
        const Cross& is = stated ? *stated : unknown;
        double other_cap = is.other_cap.value_or(is.cap).mm(), other_span = is.other_span.value_or(is.span).mm();
        const bool unlike = wide_angle && !is.other_cap && chance(dice_, 0.5);
        if (unlike) {
            other_cap = dice_.between(22, 41);
            other_span = 2.6 * other_cap;
        }
        const bool turned = wide_angle && chance(dice_, 0.5);
        TrueCross made;
        for (const CapPair pair : {CapPair::first, CapPair::second}) {
            const bool own = !wide_angle || (pair == CapPair::first) != turned;
            made.cap[pair] = size(own ? is.cap.mm() : other_cap, cap_kind);
            made.span[pair] = size(own ? is.span.mm() : other_span, span_kind);
        }
        return made;
    }

    Dice& dice_;
    const World& world_;
    double age_;
};

// What each part is of.
struct Origins {
    PerEach<IdentifiedPart, const Series*> part;
    IdentifyVerdict truth = IdentifyVerdict::one;
};

Origins mixed_origins(Dice& dice, const Catalogue& inside, const Catalogue& outside)
{
    const Series& others = any_series(dice, chance(dice, 0.1) ? outside : inside);
    Origins made{{}, IdentifyVerdict::mixed};
    for (const IdentifiedPart part : identified_parts) made.part[part] = &others;
    const double which = dice.between(0, 1);
    for (std::size_t i = 0; i < 3; ++i)
        if (which > 0.9 || (which >= 0.3 * static_cast<double>(i) && which < 0.3 * static_cast<double>(i + 1)))
            made.part[identified_parts[i]] = &any_series(dice, chance(dice, 0.2) ? outside : inside);
    const bool same = made.part[IdentifiedPart::tractor] == made.part[IdentifiedPart::implement] && made.part[IdentifiedPart::tubes] == made.part[IdentifiedPart::tractor];
    return same ? mixed_origins(dice, inside, outside) : made;
}

Origins origins(Dice& dice, const Catalogue& inside, const Catalogue& outside, const World& world)
{
    const double kind = dice.between(0, 1);
    if (kind < world.mixed) return mixed_origins(dice, inside, outside);
    const bool none = kind < world.mixed + world.outsiders;
    const Series& whole = any_series(dice, none ? outside : inside);
    Origins made{{}, none ? IdentifyVerdict::none : IdentifyVerdict::one};
    for (const IdentifiedPart part : identified_parts) made.part[part] = &whole;
    return made;
}

// A guard goes with its tubes; a wrong one is of tubes like them, of any, or of a make that nobody here knows.
std::optional<std::string> writing(Dice& dice, const Series& tubes, const Catalogue& inside, const World& world)
{
    if (!chance(dice, world.wrong_writing)) return tubes.name;
    if (chance(dice, 0.25)) return "Elsewhere";
    const Series* found = &any_series(dice, inside);
    for (const Series& series : inside.series)
        if (&series != &tubes && series.shape == tubes.shape && series.halves[Tube::outer].width == tubes.halves[Tube::outer].width && chance(dice, 0.6)) found = &series;
    return found->name;
}

}  // namespace

TrueShaft drawn_shaft(Dice& dice, const Catalogue& inside, const Catalogue& outside, const World& world)
{
    const Origins of = origins(dice, inside, outside, world);
    Maker maker(dice, world);
    const Series& tubes = *of.part[IdentifiedPart::tubes];
    TrueShaft shaft{of.truth, of.truth == IdentifyVerdict::one ? tubes.name : std::string(), {}, tubes.shape, {}, {}, 0, {}};
    shaft.ends[End::tractor] = maker.end(*of.part[IdentifiedPart::tractor]);
    shaft.ends[End::implement] = maker.end(*of.part[IdentifiedPart::implement]);
    shaft.width[Tube::inner] = maker.tube(tubes.halves[Tube::inner].width, 25, 80, inner_kind);
    shaft.width[Tube::outer] = maker.tube(tubes.halves[Tube::outer].width, 28, 95, outer_kind);
    for (const Tube tube : both_tubes) shaft.wall[tube] = maker.tube(tubes.halves[tube].wall, 2.5, 5, wall_kind);
    const auto& lengths = tubes.closed_lengths;
    shaft.closed = lengths.empty() ? dice.between(450, 1300) : lengths[static_cast<std::size_t>(dice.between(0, static_cast<double>(lengths.size()) - 0.01))].mm();
    if (chance(dice, 0.6)) shaft.closed *= dice.between(0.65, 1);
    shaft.writing = writing(dice, tubes, inside, world);
    return shaft;
}

}  // namespace shaftcut::test

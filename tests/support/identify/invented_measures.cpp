#include <algorithm>
#include <array>
#include <cmath>

#include "support/identify/invented.hpp"

namespace shaftcut::test {
namespace {

using support::Dice;

double normal(Dice& dice)
{
    double sum = -6;
    for (int i = 0; i < 12; ++i) sum += dice.between(0, 1);
    return sum;
}

// A slip: anything, a centimetre out, or two figures exchanged (27.4 as 72.4).
double slipped(Dice& dice, double size, double low, double high)
{
    const double kind = dice.between(0, 1);
    if (kind < 0.5) return dice.between(low, high);
    if (kind < 0.75) return std::max(size + (chance(dice, 0.5) ? 10 : -10), 0.5);
    const double tens = std::floor(size / 10), ones = std::floor(size - 10 * tens);
    return std::max(10 * ones + tens + (size - std::floor(size)), 0.5);
}

// Somebody with a caliper, now and then without care.
class Reader {
public:
    Reader(Measures& measures, Dice& dice, const TrueShaft& shaft, const World& world) : measures_(measures), dice_(dice), shaft_(shaft), world_(world) {}

    void cap(MeasuredPair& into, double size, bool in_bore)
    {
        into.cap_read = in_bore ? CapRead::bore : CapRead::cap;
        // The bore is no narrower than its cap, and worn by itself.
        const double bore = size + (chance(dice_, 0.4) ? 0.12 * world_.worn * std::abs(normal(dice_)) * 1.25 : 0);
        into.cap.push_back(reading(in_bore ? bore : size, in_bore ? 0.2 : 0.1, 10, 60));
    }
    void span(MeasuredPair& into, double size) { into.span.push_back(reading(size, 0.3, 20, 150)); }
    void spacing(MeasuredEnd& end, double size) { end.spacing.push_back(reading(size, 1, 30, 150)); }
    void width(MeasuredTube& tube, double size) { tube.width.push_back(reading(size, 0.4, 15, 130)); }
    void wall(MeasuredTube& tube, double size) { tube.wall.push_back(reading(size, 0.3, 1, 15)); }
    void closed() { measures_.closed = MeasuredClosed{reading(shaft_.closed, 4, 200, 3000), {}}; }

    void shape()
    {
        constexpr std::array wrong{Shape::lemon, Shape::star, Shape::triangular, Shape::square};
        measures_.shape = chance(dice_, 0.985) ? shaft_.shape : wrong[static_cast<std::size_t>(dice_.between(0, 3.99))];
    }

private:
    SizeReading reading(double size, double usual, double low, double high)
    {
        constexpr std::array care{0.7, 1.0, 1.0, 1.0, 1.5, 2.0};
        const double factor = care[static_cast<std::size_t>(dice_.between(0, 5.99))];
        double read = size + usual * factor * world_.errors / 2 * normal(dice_);
        if (chance(dice_, world_.slips)) read = slipped(dice_, size, low, high);
        SizeReading made{Length::from_mm(std::round(100 * std::max(read, 0.1)) / 100), {}, {}, {}};
        if (factor != 1) made.plus_minus = Length::from_mm(usual * factor);
        return made;
    }

    Measures& measures_;
    Dice& dice_;
    const TrueShaft& shaft_;
    const World& world_;
};

// Where it is stated wrongly, the other one was measured.
template <class Place>
Place meant(Dice& dice, Place stated, Place other, double wrong) { return chance(dice, wrong) ? other : stated; }

CrossPlace across(CrossPlace place) { return place == CrossPlace::inner ? CrossPlace::outer : CrossPlace::inner; }

void read_cross(Reader& reader, Dice& dice, MeasuredCross& cross, const TrueCross& is)
{
    const bool in_bore = chance(dice, 0.6);
    if (chance(dice, 0.7)) reader.cap(cross.pairs[CapPair::first], is.cap[CapPair::first], in_bore);
    if (!cross.pairs[CapPair::first].cap.empty() && chance(dice, 0.15)) reader.cap(cross.pairs[CapPair::first], is.cap[CapPair::first], in_bore);
    if (chance(dice, 0.7)) reader.span(cross.pairs[CapPair::first], is.span[CapPair::first]);
    if (chance(dice, 0.15)) reader.cap(cross.pairs[CapPair::second], is.cap[CapPair::second], in_bore);
}

void read_end(Reader& reader, Dice& dice, MeasuredEnd& end, const TrueEnd& is, const World& world)
{
    if (chance(dice, 0.2)) return;
    if (chance(dice, 0.9)) end.joint = is.joint;
    if (is.joint == JointKind::standard) {
        read_cross(reader, dice, end.crosses.emplace_back(), is.crosses[CrossPlace::inner]);
        return;
    }
    if (chance(dice, 0.6)) reader.spacing(end, is.spacing);
    const bool places = chance(dice, 0.8), turned = places ? chance(dice, world.wrong_place) : chance(dice, 0.5);
    for (const CrossPlace place : {CrossPlace::inner, CrossPlace::outer}) {
        if (chance(dice, 0.4)) continue;
        MeasuredCross& cross = end.crosses.emplace_back();
        if (places) cross.at = place;
        read_cross(reader, dice, cross, is.crosses[turned ? across(place) : place]);
    }
}

void read_tubes(Reader& reader, Dice& dice, Measures& measures, const TrueShaft& shaft, const World& world)
{
    if (chance(dice, 0.9)) reader.shape();
    const bool places = chance(dice, 0.8), turned = places ? chance(dice, world.wrong_place * 0.6) : chance(dice, 0.5);
    for (const Tube tube : both_tubes) {
        if (chance(dice, 0.3)) continue;
        const Tube is = turned ? other(tube) : tube;
        MeasuredTube& made = measures.tubes.emplace_back();
        if (places) made.tube = tube;
        reader.width(made, shaft.width[is]);
        if (chance(dice, 0.3)) reader.wall(made, shaft.wall[is]);
        if (chance(dice, 0.1)) reader.width(made, shaft.width[is]);
    }
}

// The cross that is asked for, and which it truly is.
struct AskedCross {
    MeasuredCross& cross;
    const TrueCross& is;
};

AskedCross asked_cross(MeasuredEnd& end, const TrueEnd& is, const IdentifyingFigure& asked)
{
    const auto same = [&](const MeasuredCross& one) { return one.at == asked.cross; };
    auto found = std::find_if(end.crosses.begin(), end.crosses.end(), same);
    if (found == end.crosses.end()) {
        end.crosses.emplace_back().at = asked.cross;
        found = end.crosses.end() - 1;
    }
    return {*found, is.crosses[asked.cross.value_or(CrossPlace::outer)]};
}

MeasuredTube& asked_tube(Measures& measures, Tube tube)
{
    for (MeasuredTube& one : measures.tubes)
        if (one.tube == tube) return one;
    measures.tubes.emplace_back().tube = tube;
    return measures.tubes.back();
}

void measure_at_end(Reader& reader, MeasuredEnd& end, const TrueEnd& is, const IdentifyingFigure& asked)
{
    if (asked.kind == IdentifyingKind::joint) {
        end.joint = is.joint;
        return;
    }
    if (asked.kind == IdentifyingKind::spacing) return reader.spacing(end, is.spacing);
    if (is.joint == JointKind::wide_angle && !asked.cross) {
        end.joint = is.joint;  // who is asked for a cross of a joint with two says that there are two
        return;
    }
    const AskedCross of = asked_cross(end, is, asked);
    if (asked.kind == IdentifyingKind::span) reader.span(of.cross.pairs[asked.pair], of.is.span[asked.pair]);
    else reader.cap(of.cross.pairs[asked.pair], of.is.cap[asked.pair], asked.kind == IdentifyingKind::cap_in_bore);
}

}  // namespace

Measures drawn_measures(Dice& dice, const TrueShaft& shaft, const World& world)
{
    Measures measures;
    Reader reader(measures, dice, shaft, world);
    for (const End end : both_ends) read_end(reader, dice, measures.ends[end], shaft.ends[end], world);
    read_tubes(reader, dice, measures, shaft, world);
    if (chance(dice, 0.25)) measures.writing = shaft.writing;
    if (chance(dice, 0.3)) reader.closed();
    return measures;
}

void measure(Measures& measures, Dice& dice, const TrueShaft& shaft, const World& world, const IdentifyingFigure& asked)
{
    Reader reader(measures, dice, shaft, world);
    if (!asked.part) measures.writing = shaft.writing;
    else if (asked.part != IdentifiedPart::tubes) {
        const End end = asked.part == IdentifiedPart::tractor ? End::tractor : End::implement;
        measure_at_end(reader, measures.ends[end], shaft.ends[end], asked);
    } else if (asked.kind == IdentifyingKind::shape) reader.shape();
    else {
        const Tube tube = asked.tube.value();
        const Tube is = meant(dice, tube, other(tube), world.wrong_place * 0.6);
        if (asked.kind == IdentifyingKind::width) reader.width(asked_tube(measures, tube), shaft.width[is]);
        else reader.wall(asked_tube(measures, tube), shaft.wall[is]);
    }
}

}  // namespace shaftcut::test

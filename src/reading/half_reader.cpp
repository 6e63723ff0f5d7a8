#include "half_reader.hpp"

#include "measurement_reader.hpp"

namespace shaftcut {
namespace {

// Words for a guard that is not used again stand in its length's place.
GuardUse guard_use(const Attribute& guard)
{
    if (!guard.given()) return GuardUse::kept;
    for (const GuardUse use : {GuardUse::none, GuardUse::damaged})
        if (guard.value() == to_word(use)) return use;
    return GuardUse::kept;
}

std::optional<OtherSeries> other_series(const Attribute& attribute, const KnownNames& series)
{
    if (!attribute.given()) return std::nullopt;
    if (attribute.value() == "none") return OtherSeries{};
    const auto name = attribute.one_of(series);
    return name ? std::optional(OtherSeries{name}) : std::nullopt;
}

// Without a length nothing is held against it.
std::optional<Length> read_cut_to(const Attribute& cut_to, const Attribute& length)
{
    if (cut_to.given() && !length.given()) cut_to.fault(Contradiction::cut_to_alone);
    return cut_to.length();
}

void check_stop_depth(const Attribute& stop_depth, const Attribute& shoulder, const Attribute& length)
{
    if (!stop_depth.given()) return;
    if (shoulder.given()) stop_depth.fault(Contradiction::shoulder_and_stop_depth);
    if (!length.given()) stop_depth.fault(Contradiction::stop_depth_alone);
}

}  // namespace

HalfReading read_half(Element& half, const KnownNames& series)
{
    const Attribute length = half.optional("length");
    const Attribute guard = half.optional("guard");
    const Attribute shoulder = half.optional("shoulder");
    const Attribute stop_depth = half.optional("stop-depth");
    const Attribute hole = half.optional("lubrication-hole");
    HalfReading reading{{}, half.optional("series"), true};
    JobHalf& read = reading.half;
    read.features = half.optional("features").words<Feature>();
    const auto plus_minus = half.optional("plus-minus").plus_minus();
    read.place = half.place();
    read.length = read_measurement(length, plus_minus);
    read.guard_use = guard_use(guard);
    if (read.guard_use == GuardUse::kept) read.guard = read_measurement(guard, plus_minus);
    read.shoulder = read_measurement(shoulder, plus_minus);
    read.stop_depth = read_measurement(stop_depth, plus_minus);
    read.lubrication_hole = read_measurement(hole, plus_minus);
    read.cut_to = read_cut_to(half.optional("cut-to"), length);
    read.series = other_series(reading.series, series);
    reading.sound = read.series || !reading.series.given();
    check_stop_depth(stop_depth, shoulder, length);
    return reading;
}

}  // namespace shaftcut

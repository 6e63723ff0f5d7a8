// The trade's terms as types, each with the word by which files and documents name it.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace shaftcut {

// The end nearer the power source, or nearer the driven machine; on a secondary shaft too.
enum class End { tractor, implement };
// The profile tubes: the inner slides inside the outer. A half is named after the tube it carries.
enum class Tube { inner, outer };
// One cross, or two crosses `spacing` apart that each take half the angle.
enum class JointKind { standard, wide_angle };
// Of a wide-angle joint: the outer cross carries the connection yoke, the inner cross the tube yoke.
enum class Reference { outer_cross, inner_cross };
// The usual working position; any position with the PTO turning; any position with it stopped.
enum class Range { working, turning, standing };
// Between tractor and machine, or elsewhere on the machine.
enum class Role { primary, secondary };
// What a fit's lengths run between.
enum class Between { crosses, grooves };
// The section of the profile tubes.
enum class Shape { lemon, star, triangular, square, splined, other };
// What holds a connection yoke on its stub.
enum class Lock { exposed_collar, covered_collar, exposed_push_pin, shrouded_push_pin, clamp_bolt, tapered_clamp, flange, unknown };
// Whether a part of it stands out and can catch clothing.
constexpr bool is_exposed(Lock lock) { return lock == Lock::exposed_collar || lock == Lock::exposed_push_pin; }
// The overload or overrunning device built into an end.
enum class Device { slip_clutch, overrunning_clutch, shear_bolt, none };
// What a half has that asks for work after a cut.
enum class Feature { coated, end_stop, one_chain_guard };

// How a shaft came in: a guard and its chains, the crosses, the tubes, the locks, welds, an overload device, the yokes' phase,
// and whether the tubes slide in each other once cleaned.
enum class Completeness { complete, missing, damaged };
enum class CrossWear { good, worn };
enum class TubeState { straight, bent, dented, twisted };
enum class LockState { good, stiff, damaged };
enum class Weld { none, welded, cracked };
enum class DeviceState { free, stuck };
enum class Phase { in_plane, turned };
enum class Slides { yes, no };
// Whether a half's guard goes back on: there is none, or it is damaged, and then it is not used again.
enum class GuardUse { kept, none, damaged };

// Words<E>::all holds the word of each enumerator of E, in the order of the enumerators.
template <class E>
struct Words;

template <> struct Words<End> { static constexpr std::array all{"tractor", "implement"}; };
template <> struct Words<Tube> { static constexpr std::array all{"inner", "outer"}; };
template <> struct Words<JointKind> { static constexpr std::array all{"standard", "wide-angle"}; };
template <> struct Words<Reference> { static constexpr std::array all{"outer-cross", "inner-cross"}; };
template <> struct Words<Range> { static constexpr std::array all{"working", "turning", "standing"}; };
template <> struct Words<Role> { static constexpr std::array all{"primary", "secondary"}; };
template <> struct Words<Between> { static constexpr std::array all{"crosses", "grooves"}; };
template <> struct Words<Shape> { static constexpr std::array all{"lemon", "star", "triangular", "square", "splined", "other"}; };
template <> struct Words<Lock> {
    static constexpr std::array all{"exposed-collar", "covered-collar", "exposed-push-pin", "shrouded-push-pin",
                                    "clamp-bolt", "tapered-clamp", "flange", "unknown"};
};
template <> struct Words<Device> { static constexpr std::array all{"slip-clutch", "overrunning-clutch", "shear-bolt", "none"}; };
template <> struct Words<Feature> { static constexpr std::array all{"coated", "end-stop", "one-chain-guard"}; };
template <> struct Words<Completeness> { static constexpr std::array all{"complete", "missing", "damaged"}; };
template <> struct Words<CrossWear> { static constexpr std::array all{"good", "worn"}; };
template <> struct Words<TubeState> { static constexpr std::array all{"straight", "bent", "dented", "twisted"}; };
template <> struct Words<LockState> { static constexpr std::array all{"good", "stiff", "damaged"}; };
template <> struct Words<Weld> { static constexpr std::array all{"none", "welded", "cracked"}; };
template <> struct Words<DeviceState> { static constexpr std::array all{"free", "stuck"}; };
template <> struct Words<Phase> { static constexpr std::array all{"in-plane", "turned"}; };
template <> struct Words<Slides> { static constexpr std::array all{"yes", "no"}; };
template <> struct Words<GuardUse> { static constexpr std::array all{"kept", "none", "damaged"}; };

template <class E>
constexpr const char* to_word(E value)
{
    return Words<E>::all[static_cast<std::size_t>(value)];
}

// The enumerator whose word is `word`; nothing where there is none.
template <class E>
constexpr std::optional<E> from_word(std::string_view word)
{
    for (std::size_t i = 0; i < Words<E>::all.size(); ++i)
        if (word == Words<E>::all[i]) return static_cast<E>(i);
    return std::nullopt;
}

// The words of E as strings.
template <class E>
std::vector<std::string> words_of()
{
    return {Words<E>::all.begin(), Words<E>::all.end()};
}

// One T for each enumerator of E, indexed by it: PerEach<Tube, Length> has an inner and an outer length.
template <class E, class T>
class PerEach {
public:
    constexpr T& operator[](E which) { return values_[static_cast<std::size_t>(which)]; }
    constexpr const T& operator[](E which) const { return values_[static_cast<std::size_t>(which)]; }
    bool operator==(const PerEach&) const = default;

private:
    std::array<T, Words<E>::all.size()> values_{};
};

inline constexpr std::array both_ends{End::tractor, End::implement};
inline constexpr std::array both_tubes{Tube::inner, Tube::outer};
inline constexpr std::array all_ranges{Range::working, Range::turning, Range::standing};

constexpr End other(End end) { return end == End::tractor ? End::implement : End::tractor; }
constexpr Tube other(Tube tube) { return tube == Tube::inner ? Tube::outer : Tube::inner; }

}  // namespace shaftcut

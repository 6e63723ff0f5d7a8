// What is confirmed before sawing, in the second implementation.
#include <array>

#include "support/plain/plain_method.hpp"

namespace shaftcut::test::plain {
namespace {

constexpr std::array half_of{Confirmed::inner_half, Confirmed::outer_half};
constexpr std::array shoulder_of{Confirmed::inner_shoulder, Confirmed::outer_shoulder};
constexpr std::array guard_of{Confirmed::inner_guard, Confirmed::outer_guard};

class Asked {
public:
    explicit Asked(Um tape) : tape_(tape) {}
    void length(Confirmed what, const Figure& expected) { found_[static_cast<std::size_t>(what)] = {what, expected.value, expected.plus_minus + tape_}; }
    void look(Confirmed what) { found_[static_cast<std::size_t>(what)] = {what, {}, {}}; }
    std::vector<PlainConfirmation> all() const
    {
        std::vector<PlainConfirmation> asked;
        for (const auto& one : found_)
            if (one) asked.push_back(*one);
        return asked;
    }

private:
    Um tape_;
    std::array<std::optional<PlainConfirmation>, Words<Confirmed>::all.size()> found_{};
};

bool wide_without_known_path(const PlainShaft& shaft)
{
    if (!is_wide(shaft, 0) && !is_wide(shaft, 1)) return false;
    return (shaft.halves[0].measured || shaft.halves[1].measured) && !shaft.stops.paths[0] && !shaft.stops.paths[1];
}

void ask_for_half(Asked& asked, const PlainShaft& shaft, std::size_t i)
{
    const PlainHalf& half = shaft.halves[i];
    const bool doubted = asks_for_half(shaft, i) || (shaft.stops.apart && shaft.stops.sets_model[i]);
    if (!half.measured || doubted) asked.length(half_of[i], *half.length);
    if (asks_for_stop(shaft, i)) asked.length(shoulder_of[i], *half.shoulder);
    if (half.guard_used && !half.guard) asked.look(guard_of[i]);
}

}  // namespace

std::vector<PlainConfirmation> confirmations(const PlainShaft& shaft)
{
    Asked asked(shaft.workshop->measuring_plus_minus.um());
    if (shaft.stops.apart) asked.length(Confirmed::closed, shaft.closed_as_stated);
    if (wide_without_known_path(shaft)) asked.length(Confirmed::closed_inner_cross, shaft.closed);
    for (std::size_t i = 0; i < 2; ++i) ask_for_half(asked, shaft, i);
    if (exposed_lock(shaft) && !shaft.job->shaft.built) asked.look(Confirmed::built);
    return asked.all();
}

}  // namespace shaftcut::test::plain

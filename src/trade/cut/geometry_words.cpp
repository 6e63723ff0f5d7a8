#include "cut/geometry_words.hpp"

#include <cstdlib>

namespace shaftcut {
namespace {

std::string turned(Angle angle, const char* what, const char* positive, const char* negative)
{
    return std::string(what) + figure(Angle::millidegrees(std::abs(angle.mdeg()))) + "° " + (angle > Angle() ? positive : negative);
}

std::string in_words(const TrailedPosture& at)
{
    std::string words;
    const auto add = [&](Angle angle, const std::string& said) {
        if (angle != Angle()) words += (words.empty() ? "" : ", ") + said;
    };
    add(at.turn, turned(at.turn, "turned ", "to the right", "to the left"));
    add(at.pitch, turned(at.pitch, "rear ", "down", "up"));
    add(at.roll, turned(at.roll, "right side ", "up", "down"));
    return words.empty() ? "straight ahead and level" : words;
}

// Of the fits that have the deciding length the one known least well; null where none has it.
template <class Of>
const FitReading* deciding_among(const std::vector<FitReading>& fits, const std::optional<Toleranced>& deciding, const Of& of)
{
    const FitReading* found = nullptr;
    for (const FitReading& fit : fits) {
        const std::optional<Toleranced>& length = of(fit.fit);
        if (!length || !deciding || length->value != deciding->value) continue;
        if (!found || length->plus_minus > of(found->fit)->plus_minus) found = &fit;
    }
    return found;
}

}  // namespace

std::string in_words(const Posture& posture, Units units)
{
    if (const auto* lift = std::get_if<MountedPosture>(&posture)) return "with the lower hitch point at " + figure_with_unit(lift->height, units);
    return in_words(std::get<TrailedPosture>(posture));
}

const ExtremeLength* deciding_shortest(const std::vector<FitReading>& fits, const Fit& deciding)
{
    const FitReading* fit = deciding_among(fits, deciding.shortest, [](const Fit& of) -> const auto& { return of.shortest; });
    return fit ? fit->computed_shortest() : nullptr;
}

const ExtremeLength* deciding_longest(const std::vector<FitReading>& fits, const Fit& deciding, Range range)
{
    const FitReading* fit = deciding_among(fits, deciding.longest[range], [&](const Fit& of) -> const auto& { return of.longest[range]; });
    return fit ? fit->computed_longest(range) : nullptr;
}

const ExtremeAngle* deciding_angle(const std::vector<FitReading>& fits, const Fit& deciding, End end, Range range)
{
    for (const FitReading& fit : fits)
        if (deciding.angles[end][range] && fit.fit.angles[end][range] == deciding.angles[end][range]) return fit.computed_angle(end, range);
    return nullptr;
}

std::string doubt_in_words(const ExtremeLength& length, Units units)
{
    std::string words = "± " + figure_of_with_unit(Rounded::doubt, length.plus_minus, units);
    constexpr std::size_t named = 2;
    for (std::size_t i = 0; i < named && i < length.influences.size() && length.influences[i].effect > Length(); ++i)
        words += (i == 0 ? ", most of it from " : " and ") + length.influences[i].dimension + " (" + figure_with_unit(length.influences[i].effect, units) + ")";
    return words;
}

std::string origin_in_words(const ExtremeLength& length, Units units)
{
    return "computed from the machine's geometry, " + in_words(length.at, units) + ", " + doubt_in_words(length, units);
}

std::string whose(const FitReading& fit, std::size_t fits)
{
    return fits > 1 && !fit.tractor.empty() ? fit.tractor + ": " : "";
}

}  // namespace shaftcut

#include "build/ability_words.hpp"

#include "build/build_words.hpp"

namespace shaftcut {
namespace {

std::string can(const SeriesAbilities& abilities, const Wording& w)
{
    if (!abilities.shortened) return abilities.builds() ? w("  can           build; none of it may be cut\n") : w("  can           nothing yet; none of it may be cut\n");
    if (abilities.cuts()) return w("  can           cut, cut with halves measured{build:|, build}\n", {{"build", abilities.builds()}});
    return w("  can           cut with halves measured{build:|, build}\n", {{"build", abilities.builds()}});
}

std::string lacked(const ConnectionNotStated&, const Wording& w) { return w("a yoke"); }
std::string lacked(const YokeLockNotStated&, const Wording& w) { return w("a lock"); }
std::string lacked(const PartWithoutName& point, const Wording& w) { return say(point.part, w); }
std::string lacked(const BookMissing&, const Wording& w) { return w("its instruction book"); }
std::string lacked(const HoldNotKnown& point, const Wording& w) { return w("how the {tube:inner|outer} tube is held in its yoke", {{"tube", point.tube}}); }
std::string lacked(const YokeOfDevice& point, const Wording& w) { return w("what the {device} replaces", {{"device", to_word(point.device)}}); }

std::string cannot(const TubeDoesNotGoIn& found, const Wording& w)
{
    return w("  CANNOT BE     an inner tube of {width} does not go into an outer one of {bore} inside\n",
             {{"width", w.both(Rounded::measured, found.width)}, {"bore", w.both(Rounded::measured, found.bore)}});
}

std::string cannot(const ClosedTooShort& found, const Wording& w)
{
    return w("  CANNOT BE     closed {closed}: {left} of the {tube:inner|outer} tube would be left, {least} is the least\n",
             {{"closed", w.both(Rounded::measured, found.closed)}, {"left", w.both(Rounded::measured, found.left)}, {"tube", found.tube}, {"least", w.both(Rounded::measured, found.least)}});
}

}  // namespace

std::string ability_lines(const SeriesAbilities& abilities, const Wording& w)
{
    std::string lines = can(abilities, w);
    if (abilities.shortened && !abilities.lacks_to_cut.empty()) lines += w("  to cut        state {figures}\n", {{"figures", say(abilities.lacks_to_cut, w)}});
    if (!abilities.lacks_to_build.empty()) lines += w("  to build      state {figures}\n", {{"figures", say(abilities.lacks_to_build, w)}});
    std::vector<std::string> names;
    for (const OpenPoint& point : abilities.open) names.push_back(std::visit([&](const auto& one) { return lacked(one, w); }, point));
    if (!names.empty()) lines += w("  to build      name {parts}\n", {{"parts", w.all_of(names)}});
    for (const Impossible& found : abilities.impossible) lines += std::visit([&](const auto& one) { return cannot(one, w); }, found);
    return lines;
}

}  // namespace shaftcut

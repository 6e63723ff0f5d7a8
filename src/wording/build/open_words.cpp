// What must be known before a shaft made to order is built, and how it is asked.
#include <algorithm>

#include "build/build_words.hpp"
#include "shaft_title_words.hpp"

namespace shaftcut {
namespace {

std::string open(const ConnectionNotStated& point, const Wording& w) { return w("What the {end:tractor|implement} end fits is not stated.", {{"end", point.end}}); }
std::string open(const YokeLockNotStated& point, const Wording& w) { return w("How the {end:tractor|implement} end is locked is not stated, and the yokes differ by it.", {{"end", point.end}}); }
std::string open(const PartWithoutName& point, const Wording& w) { return w("{count} × {part}: the catalogue has no name for it.", {{"count", point.count}, {"part", say(point.part, w)}}); }
std::string open(const BookMissing& point, const Wording& w)
{
    return w("{count} × instruction book of {series}: the catalogue has none, and no new shaft goes out without it.", {{"count", point.count}, {"series", point.series}});
}
std::string open(const HoldNotKnown& point, const Wording& w)
{
    return w("How is the {tube:inner|outer} tube held in its yoke? The catalogue states neither a pin hole nor a pin.", {{"tube", point.tube}});
}
std::string open(const YokeOfDevice& point, const Wording& w)
{
    return w("Is the yoke part of the {device} at the {end:tractor|implement} end? The catalogue does not say what the device replaces.", {{"device", to_word(point.device)}, {"end", point.end}});
}

std::string asked(const ConnectionNotStated& point, const Wording& w) { return w("Which spline or flange does the shaft fit at the {end:tractor|implement} end?", {{"end", point.end}}); }
std::string asked(const YokeLockNotStated& point, const Wording& w) { return w("How is it to be locked at the {end:tractor|implement} end: collar, push pin or clamp bolt?", {{"end", point.end}}); }
std::string asked(const PartWithoutName& point, const Wording& w)
{
    return w("What do you call the {part}? We need {count}.", {{"part", say(point.part, w)}, {"count", point.count}});
}
std::string asked(const BookMissing& point, const Wording& w)
{
    return w("Please send {count} × the instruction book of {series} in the language of the country where it is used, and what you call it.", {{"count", point.count}, {"series", point.series}});
}
std::string asked(const HoldNotKnown& point, const Wording& w) { return w("How is the {tube:inner|outer} tube held in its yoke, and if by a pin, by which and where?", {{"tube", point.tube}}); }
std::string asked(const YokeOfDevice& point, const Wording& w)
{
    return w("Is the yoke at the {end:tractor|implement} end part of the {device}, or is it bought beside it?", {{"end", point.end}, {"device", to_word(point.device)}});
}

std::string opening(const BuildPlan& plan, const Wording& w)
{
    const NamedValue order{"order", plan.order}, count{"count", plan.count}, shaft{"shaft", say(plan.shaft_title, w)};
    if (plan.due.empty()) return w("Our order {order}, {count} × {shaft}: we cannot build it before we know this.", {order, count, shaft});
    return w("Our order {order}, {count} × {shaft}, due {due}: we cannot build it before we know this.", {order, count, shaft, {"due", plan.due}});
}

std::string text_for(const BuildPlan& plan, Asked to, const Wording& w)
{
    std::vector<std::string> said{opening(plan, w)};
    for (const OpenPoint& point : plan.open)
        if (whom_to_ask(point) == to) said.push_back(std::visit([&](const auto& one) { return asked(one, w); }, point));
    return running_text(said);
}

}  // namespace

std::string say(const OpenPoint& point, const Wording& w)
{
    return std::visit([&](const auto& one) { return open(one, w); }, point);
}

std::string say(Asked asked, const Wording& w) { return w("{asked:whoever ordered it|whoever supplies the parts}", {{"asked", asked}}); }

std::vector<TextToSend> texts_to_send(const BuildPlan& plan, const Wording& w)
{
    std::vector<TextToSend> texts;
    for (const Asked to : {Asked::customer, Asked::supplier})
        if (std::any_of(plan.open.begin(), plan.open.end(), [&](const OpenPoint& point) { return whom_to_ask(point) == to; })) texts.push_back({to, text_for(plan, to, w)});
    return texts;
}

}  // namespace shaftcut

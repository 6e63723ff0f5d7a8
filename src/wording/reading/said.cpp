#include "reading/said.hpp"

#include "hitch/hitch_problem_words.hpp"
#include "saw/saw_words.hpp"
#include "text.hpp"

namespace shaftcut {

Said say(const OfMachine& found, const Wording&)
{
    FaultWords words = say(found.fault, Wording(found.units));
    return {std::move(words.wrong), std::move(words.right)};
}

Said say(const OfSaw& found, const Wording&)
{
    const Wording w(found.units);
    return {wrong_of(found.found, w), right_for(found.found, w)};
}

Said say(const FaultFinding& finding, const Wording& w)
{
    return std::visit([&](const auto& found) { return say(found, w); }, finding);
}

std::string named(const Stated& stated) { return stated.name.empty() ? quoted(stated.value) : stated.name + " " + quoted(stated.value); }

// A file's figures are quoted as they stand there; the few others are in millimetres, or in the file's own unit.
Problem problem_of(const Fault& fault)
{
    const Wording w(Units::mm);
    Said said = say(fault.what, w);
    const NamedValue right{"right", said.right}, lines{"lines", fault.more_lines};
    if (fault.more_lines == 1) said.right = w("{right} (in one more line too)", {right});
    else if (fault.more_lines > 1) said.right = w("{right} (in {lines} more lines too)", {right, lines});
    return {fault.place, std::move(said.wrong), std::move(said.right), fault.path};
}

Problems problems_of(const FaultList& faults)
{
    Problems problems;
    for (const Fault& fault : faults) problems.push_back(problem_of(fault));
    return problems;
}

}  // namespace shaftcut

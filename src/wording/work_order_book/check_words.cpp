#include "work_order_book/check_words.hpp"
#include "checks/finding_sentences.hpp"

namespace shaftcut::workbook {
namespace {

std::string least_of(Length limit, const Wording& w) { return figure_with_unit(limit, w.units(), Toward::up, 3); }

using Sentences = std::vector<std::string>;

std::string with_at_least(Sentences sentences, bool at_least, const Wording& w)
{
    if (at_least) sentences.push_back(w("Some tractors state no such length: it can fail and cannot pass."));
    return running_text(sentences);
}

std::string with_guards(Sentences sentences, bool lacks_guard, const Wording& w)
{
    if (lacks_guard) sentences.push_back(w("A guard is missing or not used again: fit a complete one before the shaft runs."));
    return running_text(sentences);
}

void add_work(Sentences& sentences, const HalfWork& half, Length one_chain, const Wording& w)
{
    if (half.shortening_forbidden) sentences.push_back(w("The {tube:inner|outer} tube must not be cut.", {{"tube", half.tube}}));
    if (half.lubrication_hole) sentences.push_back(w("The {tube:inner|outer} tube must not end before its lubrication hole.", {{"tube", half.tube}}));
    if (half.coated) sentences.push_back(w("If the {tube:inner|outer} tube is cut: deburr without tearing its coating, treat the bare edge.", {{"tube", half.tube}}));
    if (half.end_stop) sentences.push_back(w("If the {tube:inner|outer} tube is cut: take its end stop off first, fit it again at the new end.", {{"tube", half.tube}}));
    if (half.one_chain_guard)
        sentences.push_back(w("If the {tube:inner|outer} guard loses more than {most}: second chain at the tractor end.", {{"tube", half.tube}, {"most", least_of(one_chain, w)}}));
}

}  // namespace

std::string checks_heading(const Wording& w) { return w("6  Checks (lengths in {inches:mm|inches})", {{"inches", w.units() == Units::in}}); }
std::vector<std::string> check_heads(const Wording& w) { return {w("Check"), w("Result"), w("Value"), w("Worst"), w("Limit"), w("What is asked")}; }
std::string lengths_agree(const Wording& w) { return sentence(PlainFinding::lengths_agree, w); }

std::string clearance_asked(Length floor, const Wording& w)
{
    return running_text({w("Left to close at the shortest."),
                         w("Fails under the limit or if the tolerances could use it up, by either way of stopping and of marking; warns if they could leave under {floor}.",
                           {{"floor", least_of(floor, w)}})});
}

std::string overlap_working_asked(const std::string& part, bool at_least, const Wording& w)
{
    return with_at_least({w("Of the new closed overlap at least {part} at the longest working length.", {{"part", part}})}, at_least, w);
}

std::string overlap_turning_asked(const std::string& part, Length least, bool at_least, const Wording& w)
{
    return with_at_least({w("Of the new closed overlap at least {part} and at least {least} at the longest turning length.", {{"part", part}, {"least", least_of(least, w)}})}, at_least, w);
}

std::string overlap_standing_asked(Length least, bool at_least, const Wording& w)
{
    return with_at_least({w("At least {least} at the longest length with the PTO stopped.", {{"least", least_of(least, w)}})}, at_least, w);
}

std::string tube_left_asked(bool figures_known, const Wording& w)
{
    Sentences sentences{w("What the shorter tube keeps beyond the series' least tube; fails below 0.")};
    if (!figures_known) sentences.push_back(w("It needs every seat and least tube, which no series gives here."));
    return running_text(sentences);
}

std::string shortening_asked(const std::vector<HalfWork>& halves, Length one_chain, const Wording& w)
{
    Sentences sentences;
    for (const HalfWork& half : halves) add_work(sentences, half, one_chain, w);
    return sentences.empty() ? w("Nothing that is known of this shaft forbids a cut.") : running_text(sentences);
}

std::string guard_clearance_asked(bool shoulders_known, bool lacks_guard, const Wording& w)
{
    Sentences sentences{w("Left to close between the guards at the shortest."), w("Warns under the limit, fails below 0.")};
    if (!shoulders_known) sentences.push_back(w("It needs both guard shoulders, which no series gives here."));
    return with_guards(sentences, lacks_guard, w);
}

std::string guard_cover_asked(bool lacks_guard, const Wording& w)
{
    return with_guards({w("Guard on guard at the greatest longest."),
                        w("Warns under the limit, fails if the tolerances could bare the shaft or a guard that is cut would keep too little.")},
                       lacks_guard, w);
}

std::string guard_setback_asked(bool lacks_guard, const Wording& w)
{
    return with_guards({w("How far a guard tube ends short of its drive tube; warns beyond the limit or if it is longer.")}, lacks_guard, w);
}

}  // namespace shaftcut::workbook

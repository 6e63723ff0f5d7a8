#include "cut_sheet/refusal_words.hpp"

#include "checks/check_sentences.hpp"
#include "cut_sheet/refused_parts_words.hpp"
#include "hitch/geometry_figures.hpp"

namespace shaftcut::cut_sheet {
namespace {

// Where the fit that decides is longest: as the machine's geometry or the job says.
std::string longest_named(const WorkOrder& order, Range range, const Wording& w)
{
    for (const FitReading& fit : order.fits) {
        const auto &length = fit.fit.longest[range], &decided = order.fit.longest[range];
        if (!length || !decided || length->value != decided->value) continue;
        const ExtremeLength* computed = fit.computed_longest(range);
        return computed ? in_words(computed->at, w) : fit.longest_at[range];
    }
    return {};
}

std::string said(const WorkOrder& order, const CheckFinding& finding, const Wording& w)
{
    if (const auto* overlap = std::get_if<OverlapLeft>(&finding)) return refused(*overlap, longest_named(order, overlap->range, w), w);
    return std::visit([&](const auto& one) { return refused(one, w); }, finding);
}

void clear(StatedFigure& stated) { stated.place = {}; }
template <class Finding>
void clear_places(Finding&)
{
}
void clear_places(Contradicting& found)
{
    clear(found.one);
    clear(found.than);
}
void clear_places(StopUnlikeSeries& found) { clear(found.shoulder); }
void clear_places(StopRestsAlone& found) { clear(found.shoulder); }
void clear_places(ReadAtOtherCross& found) { clear(found.closed); }
void clear_places(ListedAtOtherCross& found) { clear(found.closed); }
void clear_places(ClosedNotListed& found) { clear(found.closed); }
void clear_places(HalvesExchanged& found)
{
    clear(found.inner);
    clear(found.outer);
}

}  // namespace

std::vector<std::string> refusal_reasons(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> reasons;
    for (const Check& check : order.checks) {
        if (check.result != CheckResult::fail) continue;
        const std::size_t before = reasons.size();
        for (const CheckFinding& finding : check.contradictions.empty() ? check.findings : check.contradictions)
            if (std::string reason = said(order, finding, w); !reason.empty()) reasons.push_back(std::move(reason));
        // Never refused without a word.
        if (reasons.size() == before) reasons.push_back(say(check, w));
    }
    return reasons;
}

std::string says_without_places(Check check, const Wording& w)
{
    for (auto* findings : {&check.contradictions, &check.findings})
        for (CheckFinding& finding : *findings) std::visit([](auto& one) { clear_places(one); }, finding);
    return say(check, w);
}

}  // namespace shaftcut::cut_sheet

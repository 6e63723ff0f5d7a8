#include "terminal/identify_terminal.hpp"

#include <algorithm>

#include "identify/figure_words.hpp"
#include "identify/verdict_words.hpp"
#include "terminal/terminal_lines.hpp"

namespace shaftcut {
namespace {

using namespace terminal;

constexpr std::size_t most_series = 5, name_columns = 11;
constexpr double said_from = 0.5;

const char* code_of(IdentifyVerdict verdict) { return verdict == IdentifyVerdict::one ? "1;32" : verdict == IdentifyVerdict::several ? "1;33" : "1;31"; }

std::string sure_lines(const Identification& found, const Wording& w)
{
    std::string lines;
    std::size_t said = 0;
    for (const ListedSeries& listed : found.series)
        if (listed.percent >= said_from && said++ < most_series) lines += wrapped(padded(identify_words::percent(listed.percent, w), name_columns), listed.series);
    if (found.mixed_percent >= said_from) lines += wrapped(padded(identify_words::percent(found.mixed_percent, w), name_columns), identify_words::mixed_column(w));
    if (found.none_percent >= said_from) lines += wrapped(padded(identify_words::percent(found.none_percent, w), name_columns), identify_words::none_column(w));
    return lines;
}

}  // namespace

std::string identify_text(const IdentifiedShaft& shaft, Colour colour, const Wording& w)
{
    using namespace identify_words;
    std::vector<std::string> sentences = reasons(shaft, w);
    for (const std::vector<std::string>& more : {next_steps(shaft, w), cautions(shaft.found, w)}) sentences.insert(sentences.end(), more.begin(), more.end());
    if (shaft.found.verdict == IdentifyVerdict::mixed) sentences.push_back(for_a_job(w));
    const std::string first = order_and_verdict(shaft.measures.shaft, painted(verdict(shaft, w), code_of(shaft.found.verdict), colour), w);
    return first + "\n" + wrapped(" ", running_text(sentences)) + sure_lines(shaft.found, w);
}

}  // namespace shaftcut

// What kind of paper it is, what is done with each shaft, and what was found.
#include <algorithm>

#include "condition_words.hpp"
#include "quote_sheet/quote_sheet_words.hpp"
#include "shaft_title_words.hpp"

namespace shaftcut::quote_sheet {
namespace {

bool is_refused(const QuotedWork& work) { return work.verdict == Verdict::refused || !work.failing.empty(); }

bool is_sawn(const QuotedWork& work)
{
    const auto any = [](const PerEach<Tube, bool>& cut) { return cut[Tube::inner] || cut[Tube::outer]; };
    return work.verdict == Verdict::cut || any(work.tube_cut) || any(work.guard_cut);
}

// Refused: one shaft that exists, one that is to be made, or some of several.
std::string refused_loudly(const Quote& quote, const Wording& w)
{
    const bool all = std::all_of(quote.work.begin(), quote.work.end(), is_refused);
    if (!all && !quote.work.empty()) return w("NOT ALL OF IT CAN BE DONE");
    const bool made = !quote.work.empty() && quote.work.front().made_to_order;
    return made ? w("CANNOT BE MADE AS ORDERED") : w("THIS SHAFT CANNOT BE CUT");
}

std::size_t open_prices(const Quote& quote)
{
    return static_cast<std::size_t>(std::count_if(quote.lines.begin(), quote.lines.end(), [](const QuoteLine& line) { return !line.amount; }));
}

std::string machine_of(const QuotedWork& work, const Wording& w) { return work.machine.empty() ? w("your machine") : work.machine; }
std::string tractors_of(const QuotedWork& work, const Wording& w) { return work.tractors.empty() ? w("your tractor") : w.all_of(work.tractors); }

enum class Cut { both, tubes, guards };

std::string of_existing(const QuotedWork& work, std::initializer_list<NamedValue> values, const Wording& w)
{
    if (is_refused(work)) return w("{shaft} cannot be cut to fit {machine} on {tractors}.", values);
    if (!work.verdict) return w("{shaft} is measured, and shortened to fit {machine} on {tractors} if the lengths allow it.", values);
    if (work.verdict == Verdict::fits && !is_sawn(work)) return w("{shaft} fits {machine} on {tractors} as it is: nothing is sawn off.", values);
    const bool tubes = work.tube_cut[Tube::inner] || work.tube_cut[Tube::outer], guards = work.guard_cut[Tube::inner] || work.guard_cut[Tube::outer];
    if (tubes && !guards) return w("{shaft} is shortened to fit {machine} on {tractors}: its tubes are sawn, its guards stay as they are.", values);
    if (guards && !tubes) return w("{shaft} is made to fit {machine} on {tractors}: its guards are sawn, its tubes stay as they are.", values);
    return w("{shaft} is shortened to fit {machine} on {tractors}: tubes and guards are sawn.", values);
}

std::string shaft_of(const QuotedWork& work, const Wording& w)
{
    const NamedValue title{"title", say(work.shaft, w)};
    if (work.shaft_number.empty()) return w("Your shaft ({title})", {title});
    return w("Your shaft {number} ({title})", {{"number", work.shaft_number}, title});
}

std::string of_new(const QuotedWork& work, const Wording& w)
{
    const NamedValue machine{"machine", machine_of(work, w)}, tractors{"tractors", tractors_of(work, w)}, title{"title", say(work.shaft, w)}, count{"count", work.count};
    if (work.held) return w("The shaft ordered ({title}) for {machine} on {tractors} is not offered yet: something is still to be asked.", {title, machine, tractors});
    if (is_refused(work)) return w("The shaft ordered ({title}) cannot be made as ordered for {machine} on {tractors}.", {title, machine, tractors});
    if (work.count == 1) return w("A shaft is made to measure for {machine} on {tractors}: {title}.", {machine, tractors, title});
    return w("{count} equal shafts are made to measure for {machine} on {tractors}: {title}.", {count, machine, tractors, title});
}

std::string of_one(const QuotedWork& work, const Wording& w)
{
    if (work.made_to_order) return of_new(work, w);
    return of_existing(work, {{"shaft", shaft_of(work, w)}, {"machine", machine_of(work, w)}, {"tractors", tractors_of(work, w)}}, w);
}

// What of it is not good.
Condition faults_of(const Condition& all)
{
    Condition faults;
    const auto keep = [](auto& to, const auto& from, auto good) {
        if (from && *from != good) to = from;
    };
    keep(faults.guard, all.guard, Completeness::complete);
    keep(faults.chains, all.chains, Completeness::complete);
    keep(faults.crosses, all.crosses, CrossWear::good);
    keep(faults.tubes, all.tubes, TubeState::straight);
    keep(faults.locks, all.locks, LockState::good);
    keep(faults.weld, all.weld, Weld::none);
    keep(faults.device, all.device, DeviceState::free);
    keep(faults.phase, all.phase, Phase::in_plane);
    keep(faults.slides, all.slides, Slides::yes);
    return faults;
}

}  // namespace

Kind kind_of(const Quote& quote)
{
    switch (quote.verdict) {
    case QuoteVerdict::complete: return quote.binding == Binding::fixed ? Kind::offer : Kind::estimate;
    case QuoteVerdict::incomplete: return Kind::incomplete;
    case QuoteVerdict::refused: return Kind::refused;
    case QuoteVerdict::estimate: break;
    }
    return Kind::before_measuring;
}

std::string loudly(const Quote& quote, const Wording& w)
{
    switch (kind_of(quote)) {
    case Kind::offer: return w("OFFER");
    case Kind::estimate: return w("ESTIMATE");
    case Kind::incomplete: return w("INCOMPLETE");
    case Kind::refused: return refused_loudly(quote, w);
    case Kind::before_measuring: break;
    }
    return w("ESTIMATE BEFORE MEASURING: holds if the lengths allow a cut");
}

std::string meaning(const Quote& quote, const Wording& w)
{
    switch (kind_of(quote)) {
    case Kind::offer: return w("At a fixed price: what is listed is done for the amount stated.");
    case Kind::estimate: return w("The bill may differ by ± {percent} %. Before it comes to more, we ask you.", {{"percent", estimate_percent}});
    case Kind::incomplete: {
        const std::size_t open = open_prices(quote);
        if (open == 0) return w("Not an offer yet: not all that was ordered can be made as it was ordered.");
        return w("Not an offer yet: {count} {several:price is|prices are} still open, so there is no total.", {{"count", open}, {"several", open != 1}});
    }
    case Kind::refused:
        return quote.alternatives.empty() ? w("Why stands below.") : w("Why, and what would serve instead, stands below.");
    case Kind::before_measuring: break;
    }
    return w("Nothing has been measured yet. After measuring you get an offer, or hear that this shaft cannot be cut.");
}

std::string what_is_done(const Quote& quote, const QuotedWork& work, const Wording& w)
{
    if (quote.work.size() == 1) return of_one(work, w);
    return w("{order}: {what}", {{"order", work.order}, {"what", of_one(work, w)}});
}

std::string cannot_be_undone(const Quote& quote, const Wording& w)
{
    const bool work = std::any_of(quote.work.begin(), quote.work.end(), [](const QuotedWork& one) { return !is_refused(one) && (one.made_to_order || !one.verdict || is_sawn(one)); });
    const bool instead = std::any_of(quote.alternatives.begin(), quote.alternatives.end(), [](const Alternative& one) { return one.is_cut || one.kind != AlternativeKind::change_at_machine; });
    return work || instead ? w("Sawing cannot be undone: a shaft that was cut or made to measure cannot be returned.") : std::string();
}

std::string found(const Quote& quote, const QuotedWork& work, const Wording& w)
{
    const std::string faults = work.condition ? condition_words(faults_of(*work.condition), w) : std::string();
    if (faults.empty()) return {};
    if (quote.work.size() > 1) return w("Found on {order}, and not included in these prices: {faults}.", {{"order", work.order}, {"faults", faults}});
    return w("Found when it came in, and not included in these prices: {faults}.", {{"faults", faults}});
}

}  // namespace shaftcut::quote_sheet

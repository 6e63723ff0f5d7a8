#include "order/after_cut_words.hpp"

namespace shaftcut {
namespace {

std::string right(const PartAfterCut& part, const Wording& w)
{
    const std::string read = w.both(Rounded::measured, part.measured.value());
    if (!part.expected)
        return w("The {part:inner tube|outer tube|inner guard|outer guard} is right: {read}; it was not measured before.", {{"part", part.part}, {"read", read}});
    const Expected& expected = *part.expected;
    const std::string kept = w.both(Rounded::kept, expected.value);
    const std::string plus_minus = w.both(Rounded::allowed, expected.most - expected.value);
    if (expected.holds(*part.measured))
        return w("The {part:inner tube|outer tube|inner guard|outer guard} is right: {read}, expected {kept} ± {plus_minus}.",
                 {{"part", part.part}, {"read", read}, {"kept", kept}, {"plus_minus", plus_minus}});
    return w("The {part:inner tube|outer tube|inner guard|outer guard} is {longer:shorter|longer} than was to be kept, {read} where {kept} ± {plus_minus} was expected; {longer:it is long enough|nothing need come off it}.",
             {{"part", part.part}, {"longer", *part.measured > expected.value}, {"read", read}, {"kept", kept}, {"plus_minus", plus_minus}});
}

std::string saw_more(const PartAfterCut& part, const Wording& w)
{
    const SawMore& more = part.saw_more.value();
    const std::string off = w.both(Rounded::cut, more.off);
    if (!more.least_cut) return w("Saw {off} more off the {part:inner tube|outer tube|inner guard|outer guard}.", {{"off", off}, {"part", part.part}});
    return w("Saw {off} more off the {part:inner tube|outer tube|inner guard|outer guard}: your saw's least; {need} was needed.",
             {{"off", off}, {"part", part.part}, {"need", w.both(Rounded::cut, more.need)}});
}

std::string say_at_shortest(const RingsFinding& rings, const Wording& w)
{
    const auto clearance = [&](const std::optional<Length>& length) { return w.both(Rounded::clearance, length.value()); };
    switch (rings.show) {
    case RingsShow::as_expected: return w("At the shortest position the rings read as expected: {proven} is left to close.", {{"proven", clearance(rings.proven)}});
    case RingsShow::outside: return w("At the shortest position {proven} is left to close, less than was expected; it will do.", {{"proven", clearance(rings.proven)}});
    case RingsShow::too_little:
        return w("At the shortest position only {proven} is left to close; {least} is the least. Take the shaft off and measure the shortest again.",
                 {{"proven", clearance(rings.proven)}, {"least", clearance(rings.least)}});
    case RingsShow::not_the_shortest: return w("This was not the shortest position, or the shortest was read too long: go on in small steps to the least reading.");
    case RingsShow::not_closed: break;
    }
    return w("The reading at the shortest position proves nothing: the lengths over both ends, dry and greased, do not agree or were not read. The rings were read on grease.");
}

std::string say_at_longest(const RingsFinding& rings, const Wording& w)
{
    const Range range = rings.longest.value();
    const auto overlap = [&](const std::optional<Length>& length) { return w.both(Rounded::overlap, length.value()); };
    const std::string pulled_out = w.both(Rounded::measured, rings.pulled_out), expected = w.both(Rounded::measured, rings.expected.value);
    switch (rings.show) {
    case RingsShow::as_expected: return w("At the longest {range:working|turning|standing} position the rings read as expected.", {{"range", range}});
    case RingsShow::outside:
        if (rings.pulled_out < rings.expected.value)
            return w("At the longest {range:working|turning|standing} position the shaft is pulled out by {pulled_out}, less than the {expected} expected: that was not the longest position, or it was read too long.",
                     {{"range", range}, {"pulled_out", pulled_out}, {"expected", expected}});
        return w("At the longest {range:working|turning|standing} position the shaft is pulled out by {pulled_out}, {expected} was expected; the overlap of {proven} that is left will do.",
                 {{"range", range}, {"pulled_out", pulled_out}, {"expected", expected}, {"proven", overlap(rings.proven)}});
    case RingsShow::too_little:
        if (*rings.proven < Length())
            return w("At the longest {range:working|turning|standing} position the tubes do not overlap; {least} is the least. The PTO stays off.", {{"range", range}, {"least", overlap(rings.least)}});
        return w("At the longest {range:working|turning|standing} position the tubes overlap by only {proven}; {least} is the least. The PTO stays off.",
                 {{"range", range}, {"proven", overlap(rings.proven)}, {"least", overlap(rings.least)}});
    case RingsShow::not_the_shortest:
    case RingsShow::not_closed: break;
    }
    return w("The reading at the longest {range:working|turning|standing} position proves nothing: the closed length was not read, or the rings were read on grease.", {{"range", range}});
}

}  // namespace

std::string verdict_words(AfterCutVerdict verdict, const Wording& w)
{
    switch (verdict) {
    case AfterCutVerdict::right: return w("RIGHT");
    case AfterCutVerdict::saw_more: return w("SAW MORE");
    case AfterCutVerdict::measure: return w("MEASURE AGAIN");
    case AfterCutVerdict::too_short: break;
    }
    return w("DO NOT USE");
}

std::string say(const PartAfterCut& part, const Wording& w)
{
    switch (part.result) {
    case AfterCutVerdict::right: return right(part, w);
    case AfterCutVerdict::saw_more: return saw_more(part, w);
    case AfterCutVerdict::measure: return w("Measure the {part:inner tube|outer tube|inner guard|outer guard}.", {{"part", part.part}});
    case AfterCutVerdict::too_short: break;
    }
    return w("The {part:inner tube|outer tube|inner guard|outer guard} is too short by {short_by}: do not use it. One that is longer by so much would serve.",
             {{"part", part.part}, {"short_by", w.both(Rounded::cut, part.short_by)}});
}

std::string say(const ClosedFinding& closed, const Wording& w)
{
    switch (closed.is) {
    case ClosedAfterCutIs::as_expected: return "";
    case ClosedAfterCutIs::longer:
        return w("It closes {excess} longer than its halves explain: look for a burr, chips, a guard that meets the other, a bent tube. Put it right and measure again.",
                 {{"excess", w.both(Rounded::cut, closed.measured - closed.expected.most)}});
    case ClosedAfterCutIs::shorter: break;
    }
    return w("It closes {lack} shorter than its halves explain: a half was sawn short, or its stop lies deeper.", {{"lack", w.both(Rounded::cut, closed.expected.least - closed.measured)}});
}

std::string say(const RingsFinding& rings, const Wording& w) { return rings.longest ? say_at_longest(rings, w) : say_at_shortest(rings, w); }

std::vector<std::string> sentences_beside_parts(const AfterCut& found, const Wording& w)
{
    std::vector<std::string> sentences;
    if (found.perhaps_exchanged) sentences.push_back(w("The other way round both tubes are as they are to be kept: measure both again, and the closed length."));
    if (found.closed && found.closed->is != ClosedAfterCutIs::as_expected) sentences.push_back(say(*found.closed, w));
    for (const RingsFinding& rings : found.rings) sentences.push_back(say(rings, w));
    return sentences;
}

std::vector<std::string> sentences_of(const AfterCut& found, const Wording& w)
{
    std::vector<std::string> sentences;
    for (const PartAfterCut& part : found.parts) sentences.push_back(say(part, w));
    for (std::string& beside : sentences_beside_parts(found, w)) sentences.push_back(std::move(beside));
    return sentences;
}

}  // namespace shaftcut

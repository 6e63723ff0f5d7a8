#include "tag/tag_words.hpp"

namespace shaftcut::tag {
namespace {

// Those that were measured, by name: of one fit without a name of its own the job's.
std::vector<std::string> tractors_of(const WorkOrder& order)
{
    std::vector<std::string> names;
    for (const FitReading& fit : order.fits)
        if (!fit.tractor.empty()) names.push_back(fit.tractor);
    if (names.empty() && !order.tractor.empty()) names.push_back(order.tractor);
    return names;
}

std::string of_lift(const FitReading& fit, const MountedRange& range, const Wording& w)
{
    const NamedValue lowest{"lowest", w.both(Rounded::at_least, range.lowest.value)}, highest{"highest", w.both(Rounded::at_most, range.highest.value)};
    if (fit.tractor.empty()) return w("PTO on only with the lower hitch points {lowest} to {highest} above the ground.", {lowest, highest});
    return w("{tractor}: PTO on only with the lower hitch points {lowest} to {highest} above the ground.", {{"tractor", fit.tractor}, lowest, highest});
}

std::string of_turn(const FitReading& fit, const TrailedRange& range, const Wording& w)
{
    const NamedValue turn{"turn", w.angle(range.turn.value)};
    if (fit.tractor.empty()) return w("In turns PTO off before the machine stands {turn} to the tractor.", {turn});
    return w("{tractor}: in turns PTO off before the machine stands {turn} to the tractor.", {{"tractor", fit.tractor}, turn});
}

std::string of_machine(const FitReading& fit, const Wording& w)
{
    if (const auto* mounted = std::get_if<Mounted>(&fit.geometry->machine)) return mounted->ranges.turning ? of_lift(fit, *mounted->ranges.turning, w) : std::string();
    const auto& trailed = std::get<Trailed>(fit.geometry->machine);
    return trailed.ranges.turning ? of_turn(fit, *trailed.ranges.turning, w) : std::string();
}

std::string of_measured(const FitReading& fit, const Wording& w)
{
    const std::string& at = fit.longest_at[Range::turning];
    if (at.empty() || !fit.longest[Range::turning]) return {};
    if (fit.tractor.empty()) return w("PTO on no further than measured: {position}.", {{"position", at}});
    return w("{tractor}: PTO on no further than measured: {position}.", {{"tractor", fit.tractor}, {"position", at}});
}

}  // namespace

std::string document_title(const std::string& order, const Wording& w) { return w("Tag {order}", {{"order", order}}); }
std::string document_subject(const Wording& w) { return w("What goes with the shaft to its driver"); }

std::string say(PageCaption caption, const Wording& w)
{
    switch (caption) {
    case PageCaption::as_sticker: return w("Cut out along the frame. A sticker: on the wider guard tube, clear of the rings and the paint strokes.");
    case PageCaption::as_card: return w("Where it does not hold: a card with the machine's papers.");
    case PageCaption::never_tie: break;
    }
    return w("Never tie anything to the shaft, its guard or its chains.");
}

std::string say(TagCaption caption, const Wording& w)
{
    switch (caption) {
    case TagCaption::not_yet_tried: return w("NOT YET TRIED: do steps 14 to 16 of its cut sheet first");
    case TagCaption::other_machine: return w("Other tractor, hole, drawbar, hitch or coupling frame: have it measured first.");
    case TagCaption::tractor: return w("TRACTOR");
    case TagCaption::machine: return w("MACHINE");
    case TagCaption::speed_not_stated: return w("Speed: as the machine's plate says");
    case TagCaption::grease: return w("Grease crosses, inner tube and guard bearings every ____ h (its book says)");
    case TagCaption::engine_off: return w("Before you touch it: PTO off, engine off, key out, wait until it stands.");
    case TagCaption::stand_clear: return w("Stand clear while it turns.");
    case TagCaption::guard_complete: return w("Guard complete, chains hooked on, or the PTO stays off.");
    case TagCaption::never_step_over: return w("Never step over a turning shaft.");
    case TagCaption::more_on_the_sheet: return w("More tractors: see the cut sheet.");
    case TagCaption::overall_box: return w("O");
    case TagCaption::rings_box: break;
    }
    return w("P");
}

std::string say(WhyNoTag why, const std::string& order, const Wording& w)
{
    switch (why) {
    case WhyNoTag::refused: return w("no tag for {order}: the shaft is refused", {{"order", order}});
    case WhyNoTag::guard_not_used: return w("no tag for {order}: a half has no guard that can be used; the shaft goes on no stub before it has a new one", {{"order", order}});
    case WhyNoTag::guard_incomplete: break;
    }
    return w("no tag for {order}: its guard came in missing or damaged; the shaft goes on no stub before it is complete", {{"order", order}});
}

std::string made_for(const WorkOrder& order, const Wording& w)
{
    const auto tractors = tractors_of(order);
    const NamedValue cut{"cut", order.verdict == Verdict::cut}, machine{"machine", order.machine.empty() ? w("the machine measured") : order.machine},
        tractor{"tractors", tractors.empty() ? w("the tractor measured") : w.all_of(tractors)};
    const std::string& measured = order.circumstances.measured_by.date;
    const NamedValue date{"date", measured.empty() ? order.date : measured};
    if (date.value.text().empty()) return w("{cut:Measured|Cut} for {machine} on {tractors}, hole and hitch as measured.", {cut, machine, tractor});
    if (order.circumstances.hitch.empty()) return w("{cut:Measured|Cut} for {machine} on {tractors}, hole and hitch as on {date}.", {cut, machine, tractor, date});
    return w("{cut:Measured|Cut} for {machine} on {tractors}, hole and hitch as on {date}: {hitch}.", {cut, machine, tractor, date, {"hitch", order.circumstances.hitch}});
}

std::string speed(int per_minute, const Wording& w) { return w("PTO speed at most {speed} min⁻¹", {{"speed", per_minute}}); }

std::vector<std::string> position_limits(const WorkOrder& order, const Wording& w)
{
    std::vector<std::string> limits;
    for (const FitReading& fit : order.fits) {
        const std::string limit = fit.geometry ? of_machine(fit, w) : of_measured(fit, w);
        if (!limit.empty()) limits.push_back(limit);
    }
    return limits;
}

std::string tube_name(Tube tube, const Wording& w) { return w("{tube:inner|outer} tube", {{"tube", tube}}); }

std::string firm_line(const Firm& firm, const Wording& w)
{
    if (firm.phone.empty()) return firm.name;
    return w("{firm}, telephone {phone}", {{"firm", firm.name}, {"phone", firm.phone}});
}

std::string numbers(const std::string& order, const std::string& shaft, const Wording& w)
{
    if (shaft.empty()) return w("Order {order}", {{"order", order}});
    return w("Order {order}, shaft {shaft}", {{"order", order}, {"shaft", shaft}});
}

std::string lengths(const WorkOrder& order, const Wording& w)
{
    const NamedValue closed{"closed", w.both(Rounded::closed_after, order.cut->closed_at[Reference::inner_cross])}, inner{"inner", order.reading.has_wide_angle};
    if (!order.fit.shortest || !order.fit.longest[Range::turning]) return w("Between the {inner:|inner }crosses: closed {closed}.", {inner, closed});
    return w("Between the {inner:|inner }crosses: closed {closed}, shortest {shortest}, longest turning {longest}.",
             {inner, closed, {"shortest", w.both(Rounded::shortest, order.fit.shortest->value)}, {"longest", w.both(Rounded::longest, order.fit.longest[Range::turning]->value)}});
}

}  // namespace shaftcut::tag

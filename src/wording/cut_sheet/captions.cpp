#include "cut_sheet/captions.hpp"

namespace shaftcut::cut_sheet {

std::string say(TitleCaption caption, const Wording& w)
{
    switch (caption) {
    case TitleCaption::type: return w("cut sheet");
    case TitleCaption::lengths_type: return w("lengths");
    case TitleCaption::date: return w("Date");
    case TitleCaption::approved: return w("Approved");
    case TitleCaption::customer: return w("Customer: ");
    case TitleCaption::machine: return w("Machine: ");
    case TitleCaption::not_here: return w("NOT HERE");
    case TitleCaption::tractor: return w("Tractor: ");
    case TitleCaption::other_tractors: break;
    }
    return w("Other tractors: ");
}

std::string say(ListHeading heading, const Wording& w)
{
    switch (heading) {
    case ListHeading::look_out: return w("Look out");
    case ListHeading::not_checked: return w("Not checked, and what to measure for it");
    case ListHeading::sources: return w("Sources");
    case ListHeading::notes: return w("Notes");
    case ListHeading::why: return w("Why");
    case ListHeading::instead: return w("What would serve instead; then measured again, and a new sheet");
    case ListHeading::confirmed_and_why: break;
    }
    return w("What is confirmed, and why");
}

std::string say(HalfCaption caption, const Wording& w)
{
    switch (caption) {
    case HalfCaption::tube: return w("TUBE");
    case HalfCaption::guard: return w("GUARD");
    case HalfCaption::cut_off: return w("cut off");
    case HalfCaption::do_not_cut: return w("do not cut");
    case HalfCaption::not_measured_in_brackets: return w("(not measured)");
    case HalfCaption::confirm_in_brackets: return w("(confirm)");
    case HalfCaption::hold_side_by_side: return w("not measured: hold side by side");
    case HalfCaption::centre_of_cross: return w("centre of cross");
    case HalfCaption::inner_cross: return w("INNER cross");
    case HalfCaption::outer_cross: return w("outer cross");
    case HalfCaption::no_guard: return w("there is none: fit a new one");
    case HalfCaption::damaged_guard: break;
    }
    return w("damaged: not used again, fit a new one");
}

std::string say(EntryCaption caption, const Wording& w)
{
    switch (caption) {
    case EntryCaption::name: return w("Name");
    case EntryCaption::date: return w("Date");
    case EntryCaption::signature: break;
    }
    return w("Signature");
}

std::string say(RuleCaption caption, const Wording& w)
{
    if (caption == RuleCaption::all_off) return w("PTO off, engine off, key in your pocket, machine lowered or on stands.");
    return running_text({w("Shaft off the machine (a clutch bolted to the machine stays)."),
                         w("Move the machine only from the seat, in small steps, nobody between; at each stop PTO off, engine off, key in your pocket, lifted parts on stands.")});
}

std::string say(RingCaption caption, const Wording& w)
{
    switch (caption) {
    case RingCaption::expected: return w("expected");
    case RingCaption::read: return w("read ▭");
    case RingCaption::from: return w("good from");
    case RingCaption::to: return w("to");
    case RingCaption::never_under: return w("NEVER under");
    case RingCaption::never_over: break;
    }
    return w("NEVER over");
}

std::string on_rings(RingCaption caption, const std::string& sum, const Wording& w) { return w("{name} {sum}", {{"name", say(caption, w)}, {"sum", sum}}); }

std::string say(TableCaption caption, const Wording& w)
{
    switch (caption) {
    case TableCaption::all_checks: return w("All checks");
    case TableCaption::check: return w("check");
    case TableCaption::result: return w("result");
    case TableCaption::value: return w("value");
    case TableCaption::worst_case: return w("worst case");
    case TableCaption::limit: return w("limit");
    case TableCaption::readings: return w("How each length was read");
    case TableCaption::length: return w("length");
    case TableCaption::as_stated: return w("as stated");
    case TableCaption::between_inner_crosses: return w("between inner crosses");
    case TableCaption::inner_cross_to_free_end: return w("inner cross to free end");
    case TableCaption::not_known: return w("not known");
    case TableCaption::not_measured: return w("not measured");
    case TableCaption::source: break;
    }
    return w("source");
}

std::string say(StatedCaption caption, const Wording& w)
{
    switch (caption) {
    case StatedCaption::heading: return w("The shaft and its machine as stated");
    case StatedCaption::what: return w("what");
    case StatedCaption::as_stated: return w("as stated");
    case StatedCaption::shaft_number: return w("shaft number");
    case StatedCaption::telephone: return w("telephone");
    case StatedCaption::hitch: return w("hitch");
    case StatedCaption::power: return w("power taken at the PTO");
    case StatedCaption::other_tractors: return w("other tractors");
    case StatedCaption::no_other_tractors: return w("none");
    case StatedCaption::machine: return w("machine");
    case StatedCaption::machine_elsewhere: return w("not here: the shaft is tried elsewhere");
    case StatedCaption::measured: return w("measured");
    case StatedCaption::came_in: return w("as it came in");
    case StatedCaption::loosened: return w("a limit made looser");
    case StatedCaption::no_series: return w("of no known series");
    case StatedCaption::no_guard: return w("there is none");
    case StatedCaption::damaged_guard: break;
    }
    return w("damaged: not used again");
}

}  // namespace shaftcut::cut_sheet

#include "work_order_book/order_sheet_words.hpp"

#include "shaft_title_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(OrderCaption which)
{
    switch (which) {
    case OrderCaption::customer: return "Customer";
    case OrderCaption::machine: return "Machine";
    case OrderCaption::tractor: return "Tractor";
    case OrderCaption::date: return "Date";
    case OrderCaption::hitch: return "Hitch";
    case OrderCaption::other_tractors: return "Other tractors";
    case OrderCaption::power: return "Power";
    case OrderCaption::as_it_came_in: return "As it came in";
    case OrderCaption::measured_by: return "Measured by";
    case OrderCaption::limits_loosened: return "Limits loosened";
    case OrderCaption::verdict: return "Verdict";
    case OrderCaption::lengths_changed: return "Lengths changed";
    case OrderCaption::refused_because: return "Why it was refused, for the lengths as issued";
    case OrderCaption::ways_out: return "What would serve instead, for the lengths as issued";
    case OrderCaption::notes: return "Notes, for the lengths as issued";
    case OrderCaption::cut_and_measured_by: return "Cut and measured by, date";
    case OrderCaption::checked_by: break;
    }
    return "Checked on the machine by, date";
}

// Those that are not empty, one behind the other.
std::string row(const std::vector<std::string>& texts, const char* between)
{
    std::string all;
    for (const std::string& text : texts)
        if (!text.empty()) all += (all.empty() ? "" : between) + text;
    return all;
}

}  // namespace

std::string caption(OrderCaption which, const Wording& w) { return w(english(which)); }

std::string shaft_words(const WorkOrder& order, const Wording& w)
{
    return order.shaft.number.empty() ? say(order.shaft_title, w) : w("{shaft}, shaft {number}", {{"shaft", say(order.shaft_title, w)}, {"number", order.shaft.number}});
}

std::string customer_words(const WorkOrder& order, const Wording& w)
{
    const std::string& phone = order.circumstances.phone;
    return row({order.customer, phone.empty() ? "" : w("phone {phone}", {{"phone", phone}})}, ", ");
}

std::string machine_words(const WorkOrder& order, const Wording& w) { return row({order.machine, order.circumstances.machine_here ? "" : w("the machine is not here")}, ", "); }

std::string other_tractors_words(const Circumstances& around, const Wording& w)
{
    if (around.no_other_tractors) return w("none drives this machine");
    const std::string names = row(around.other_tractors, "; ");
    return names.empty() ? "" : w("{tractors}: not measured, the shaft is not checked for them", {{"tractors", names}});
}

std::string power_words(const Circumstances& around, const Wording& w)
{
    if (!around.power) return "";
    return w("{power} taken at the PTO", {{"power", w.power(*around.power)}});
}

std::string measured_by_words(const MeasuredBy& by, const Wording& w) { return row({by.name, by.date, by.with.empty() ? "" : w("with {tool}", {{"tool", by.with}})}, ", "); }

std::string limits_words(const Circumstances& around, const Wording& w)
{
    return row({around.limits_why, around.limits_by.empty() ? "" : w("by {name}", {{"name", around.limits_by}})}, ", ");
}

std::string verdict_sentence(Verdict verdict, const Wording& w)
{
    switch (verdict) {
    case Verdict::cut: return w("Cut as in block 3. Hold the halves side by side at the shortest position first.");
    case Verdict::fits: return w("Fits as it is: nothing is cut.");
    case Verdict::refused: break;
    }
    return w("DO NOT CUT. See the checks that say FAIL.");
}

std::string confirm_first(const std::string& verdict, const std::string& count, const Wording& w)
{
    return w("{verdict}: CONFIRM {count} FIRST. See block 2 before anything is sawn.", {{"verdict", verdict}, {"count", count}});
}

std::string lengths_changed_words(bool changed, const Wording& w)
{
    return changed ? w("LENGTHS CHANGED since issue: the cut sheet of this order no longer holds.") : w("The lengths are as issued.");
}

}  // namespace shaftcut::workbook

#include "work_order_book/sheet_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(Foot which)
{
    switch (which) {
    case Foot::pale_cells: return "Change pale cells only";
    case Foot::danger: break;
    }
    return "DANGER: engine off, key out, before anyone touches the shaft";
}

const char* english(Measured what)
{
    switch (what) {
    case Measured::half: return "inner cross to the tube's free end";
    case Measured::half_or_derived: return "inner cross to the tube's free end; empty: from the closed length";
    case Measured::guard: return "inner cross to the guard tube's free end";
    case Measured::guard_or_not: return "inner cross to the guard tube's free end; empty: not measured";
    case Measured::guard_not_used: break;
    }
    return "not used again: for a new guard write a new job";
}

}  // namespace

std::string work_order_title(const std::string& order, const Wording& w) { return w("Work order {order}", {{"order", order}}); }

std::string foot(Foot which, const Wording& w) { return w(english(which)); }
std::string page_of_pages(const std::string& page, const std::string& pages, const Wording& w) { return w("Page {page} of {pages}", {{"page", page}, {"pages", pages}}); }

std::string refused_entry(const Wording& w) { return w("Not taken"); }
std::string takes_a_length(const Wording& w) { return w("A length, 0 or more."); }
std::string takes_a_length_in(const std::string& unit, const Wording& w)
{
    return w("A length in {unit}, 0 or more, with a decimal point as your program writes it.", {{"unit", unit}});
}

std::string half_name(End end, Tube tube, const Wording& w) { return w("{end:Tractor|Implement} half ({tube:inner|outer} tube)", {{"end", end}, {"tube", tube}}); }
std::string guard_name(End end, Tube tube, const Wording& w) { return w("{end:Tractor|Implement} half ({tube:inner|outer} tube): guard", {{"end", end}, {"tube", tube}}); }
std::string measured_between(Measured what, const Wording& w) { return w(english(what)); }

std::string not_known(const Wording& w) { return w("not known"); }

}  // namespace shaftcut::workbook

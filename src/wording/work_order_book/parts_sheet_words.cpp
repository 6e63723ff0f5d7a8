#include "work_order_book/parts_sheet_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(PartsBlock block)
{
    switch (block) {
    case PartsBlock::tubes: return "Tubes to saw";
    case PartsBlock::operations: return "Operations, in this order";
    case PartsBlock::parts: return "Parts and consumables used";
    case PartsBlock::cautions: break;
    }
    return "Cautions";
}

}  // namespace

std::string parts_sheet_name(const Wording& w) { return w("Parts and operations"); }
std::string parts_title(const std::string& order, const Wording& w) { return w("Parts and operations, work order {order}", {{"order", order}}); }

std::string heading(PartsBlock block, const Wording& w) { return w(english(block)); }

std::vector<std::string> heads(PartsBlock block, const Wording& w)
{
    switch (block) {
    case PartsBlock::tubes: return {w("Mark"), w("Tube"), w("Cut off"), w("Keep"), w("Done")};
    case PartsBlock::operations: return {w("No."), w("Operation"), w("By"), w("Remark"), w("Done")};
    case PartsBlock::parts: return {w("No."), w("What"), w("Count"), w("Where from"), w("Done")};
    case PartsBlock::cautions: break;
    }
    return {};
}

std::string tube_to_saw(End end, Tube tube, bool guard, const Wording& w)
{
    return w("{end:Tractor|Implement} half ({tube:inner|outer} tube): {guard:drive tube|guard tube} ({unit})",
             {{"end", end}, {"tube", tube}, {"guard", guard}, {"unit", unit_word(w.units())}});
}

std::string no_operations(const Wording& w) { return w("None: the order was refused as issued."); }

std::vector<std::string> ticks(const Wording& w) { return {w("x"), w("not needed")}; }
std::string takes_a_tick(const Wording& w) { return w("x when done, or: not needed"); }

std::string parts_of_refused(const std::string& sheet, const Wording& w) { return w("DO NOT CUT: the order is refused. See the sheet {sheet}.", {{"sheet", sheet}}); }
std::string parts_of_changed(const Wording& w) { return w("LENGTHS CHANGED since issue: run the program again for the operations; the cuts below are for the new lengths."); }
std::string parts_as_issued(const Wording& w) { return w("The operations below are for the lengths as issued."); }
std::string confirm_before_parts(const std::string& count, const std::string& sheet, const Wording& w)
{
    return w("CONFIRM {count} FIRST: sheet {sheet}, block 2.", {{"count", count}, {"sheet", sheet}});
}

}  // namespace shaftcut::workbook

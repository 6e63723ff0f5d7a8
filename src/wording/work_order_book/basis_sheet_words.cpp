#include "work_order_book/basis_sheet_words.hpp"

namespace shaftcut::workbook {
namespace {

const char* english(BasisBlock block)
{
    switch (block) {
    case BasisBlock::lengths: return "Lengths between the crosses";
    case BasisBlock::findings: return "Contradictions and doubts (the check on consistency)";
    case BasisBlock::stops: return "Where the tubes stop";
    case BasisBlock::compared: return "What the checks compare";
    case BasisBlock::as_cut: return "The shaft as it is after the cut";
    case BasisBlock::fixed: return "Fixed figures";
    case BasisBlock::limits: return "Limits in force";
    case BasisBlock::checks: return "Basis of each check (as issued)";
    case BasisBlock::expressions: break;
    }
    return "Named expressions: what the formulas mean by these names (mm)";
}

const char* english(LengthRead read)
{
    switch (read) {
    case LengthRead::as_measured: return "as measured";
    case LengthRead::half_or_derived: return "as measured; else the closed length less the other half's shoulder";
    case LengthRead::deciding: return "the deciding one of all tractors: the least shortest, the greatest longest";
    case LengthRead::of_geometry: return "as measured; else from the machine's geometry";
    case LengthRead::of_geometry_inner_crosses: return "as measured, read between the inner crosses; else from the machine's geometry";
    case LengthRead::joints_in_line: return "read with the joints in line, which is the least it can be";
    case LengthRead::joints_bent: break;
    }
    return "read over joints bent by their stated angles, both the same way in one plane, which is the most it can be";
}

const char* english(StopFound found)
{
    switch (found) {
    case StopFound::path_confirmed: return "yes: half measured, shoulder stated, the closed length within the ± beside it";
    case StopFound::modelled_closed: return "the greater path of the halves that were measured; the ± is that of its own path";
    case StopFound::agreement:
        return "agrees: the stated shoulders shift by the difference; longer, shorter: each shoulder is the greater of what is stated and what the closed length leaves";
    case StopFound::exchanged_closed: break;
    }
    return "max(outer half + outer shoulder, inner half + inner shoulder)";
}

}  // namespace

std::string basis_title(const std::string& order, const Wording& w) { return w("Basis of work order {order}", {{"order", order}}); }

std::string basis_introduction(const Wording& w)
{
    return running_text({w("Everything here is in millimetres."),
                         w("The Order sheet's pale cells are turned into the lengths below, between the crosses that carry the tube yokes, each rounded to 0.001 mm."),
                         w("The cut and what it leaves are computed by named expressions, so that no cell holds them while the job is refused."),
                         w("Comparisons with a limit, and rounding up to the saw's step, ignore less than 0.01 mm."),
                         w("Worst cases are the value less the sum of the ± of what enters it; of the clearance it is that of the worse way of stopping and of marking a cut."),
                         w("Limits and fixed figures are those in force when the order was written; to change them, run the program again.")});
}

std::string heading(BasisBlock block, const Wording& w) { return w(english(block)); }

std::vector<std::string> heads(BasisBlock block, const Wording& w)
{
    switch (block) {
    case BasisBlock::lengths: return {w("Length"), w("mm"), w("± mm"), w("Name"), w("How it is read")};
    case BasisBlock::findings: return {w("What is looked for"), w("Found"), "", w("If found"), w("What is found first, from here on")};
    case BasisBlock::stops: return {w("Figure"), w("mm"), w("± mm"), w("Name"), w("How it is found")};
    case BasisBlock::compared: return {w("Figure"), w("mm"), "", w("Name"), ""};
    case BasisBlock::as_cut: return {w("Figure"), w("mm"), w("± mm"), w("Name"), ""};
    case BasisBlock::fixed: return {w("Figure"), w("mm"), "", w("Name"), w("Where it comes from")};
    case BasisBlock::limits: return {w("Limit"), w("mm"), "", w("Name"), w("Basis")};
    case BasisBlock::checks:
    case BasisBlock::expressions: break;
    }
    return {};
}

std::string how_it_is_read(LengthRead read, const Wording& w) { return w(english(read)); }

std::string less_joint_spacing(const std::string& millimetres, const Wording& w)
{
    return w("as measured less {spacing} mm, the spacing of the wide-angle joints it starts from", {{"spacing", millimetres}});
}

std::string how_it_is_found(StopFound found, const Wording& w) { return w(english(found)); }

std::string how_path_is_found(Tube tube, const Wording& w)
{
    return w("{tube:inner|outer} half + {tube:outer|inner} shoulder as stated; the closed length where the one or the other follows from it", {{"tube", tube}});
}

}  // namespace shaftcut::workbook

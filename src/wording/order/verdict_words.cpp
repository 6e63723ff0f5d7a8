#include "order/verdict_words.hpp"

namespace shaftcut {

namespace {

enum class Said { cut, guards_only, fits, refused };

Said what_to_do(const WorkOrder& order)
{
    if (order.verdict == Verdict::fits) return Said::fits;
    if (order.verdict == Verdict::refused) return Said::refused;
    const CutPlan& plan = order.cut->plan;
    return plan.cuts_tube(Tube::inner) || plan.cuts_tube(Tube::outer) ? Said::cut : Said::guards_only;
}

}  // namespace

std::string verdict_name(Verdict verdict, const Wording& w) { return w("{verdict:CUT|FITS AS IT IS|DO NOT CUT}", {{"verdict", verdict}}); }

std::string verdict_words(const WorkOrder& order, const Wording& w)
{
    const NamedValue verdict{"verdict", what_to_do(order)};
    if (order.confirm.empty()) return w("{verdict:CUT|CUT THE GUARDS ONLY|FITS AS IT IS|DO NOT CUT}", {verdict});
    return w("{verdict:CUT|CUT THE GUARDS ONLY|FITS AS IT IS|DO NOT CUT}: CONFIRM {count} FIRST", {verdict, {"count", order.confirm.size()}});
}

std::string warned(const std::string& warning, const Wording& w) { return w("WARNING: {warning}", {{"warning", warning}}); }

}  // namespace shaftcut

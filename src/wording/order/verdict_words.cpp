#include "order/verdict_words.hpp"

namespace shaftcut {

std::string verdict_name(Verdict verdict, const Wording& w) { return w("{verdict:CUT|FITS AS IT IS|DO NOT CUT}", {{"verdict", verdict}}); }

std::string verdict_words(const WorkOrder& order, const Wording& w)
{
    if (order.confirm.empty()) return verdict_name(order.verdict, w);
    return w("{verdict:CUT|FITS AS IT IS|DO NOT CUT}: CONFIRM {count} FIRST", {{"verdict", order.verdict}, {"count", order.confirm.size()}});
}

std::string warned(const std::string& warning, const Wording& w) { return w("WARNING: {warning}", {{"warning", warning}}); }

}  // namespace shaftcut

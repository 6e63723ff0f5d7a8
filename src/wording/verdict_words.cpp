#include "verdict_words.hpp"

namespace shaftcut {
namespace {

const char* word_of(Verdict verdict)
{
    switch (verdict) {
    case Verdict::cut: return "CUT";
    case Verdict::fits: return "FITS AS IT IS";
    case Verdict::refused: break;
    }
    return "DO NOT CUT";
}

}  // namespace

std::string verdict_words(const WorkOrder& order)
{
    const std::string word = word_of(order.verdict);
    return order.confirm.empty() ? word : word + ": CONFIRM " + std::to_string(order.confirm.size()) + " FIRST";
}

}  // namespace shaftcut

#include "source/hidden_text.hpp"

#include "text.hpp"

namespace shaftcut {

ParseFault hidden_fault(char32_t point)
{
    const bool breaks_line = point == '\t' || point == '\n' || point == '\r';
    return {"holds " + hidden_named(point), breaks_line ? "write it on one line, without tabs" : "take it out: what is read would not be what you see"};
}

std::vector<ParseFault> hidden_faults(std::string_view text, std::u32string_view allowed)
{
    if (!first_hidden(text)) return {};
    std::vector<ParseFault> faults;
    std::u32string met(allowed);
    for (const char32_t point : code_points(text)) {
        if (!is_hidden(point) || met.find(point) != std::u32string::npos) continue;
        met += point;
        faults.push_back(hidden_fault(point));
    }
    return faults;
}

}  // namespace shaftcut

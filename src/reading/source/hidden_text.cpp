#include "source/hidden_text.hpp"

#include "text.hpp"

namespace shaftcut {

std::u32string hidden_in(std::string_view text, std::u32string_view allowed)
{
    if (!first_hidden(text)) return {};
    std::u32string found;
    for (const char32_t point : code_points(text))
        if (is_hidden(point) && allowed.find(point) == std::u32string_view::npos && found.find(point) == std::u32string::npos) found += point;
    return found;
}

}  // namespace shaftcut

#include "drawing_faults.hpp"

namespace shaftcut {

std::string font_fault(const std::string& file, const Wording& w)
{
    return file.empty() ? w("the font library cannot be started") : w("the font file {file} cannot be read", {{"file", file}});
}

std::string drawing_fault(const std::string& reason, const Wording& w) { return w("drawing failed: {reason}", {{"reason", reason}}); }

}  // namespace shaftcut

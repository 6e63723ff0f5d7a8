#include "page/sheet_parts.hpp"

namespace shaftcut::sheet {

void draw_entry(Canvas& canvas, Rect box, const std::string& name, const std::string& expected)
{
    canvas.box(box, pen::guard);
    canvas.text({box.x + 1.5, box.y + 3.8}, name, lettering::note);
    if (!expected.empty()) canvas.text({box.right() - 1.5, box.bottom() - 1.8}, "(" + expected + ")", lettering::note, Align::right);
}

}  // namespace shaftcut::sheet

// A drawing that finds room for its labels: lines first, then each label beside its anchor where it covers no line and no
// other label. Private to the documents.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "page/canvas.hpp"

namespace shaftcut {

class LabelledDrawing {
public:
    // Labels stay inside `room`.
    LabelledDrawing(Canvas& canvas, Rect room) : canvas_(canvas), room_(room) {}

    void line(Point from, Point to, double width, std::initializer_list<double> dashes = {});
    void path(const std::vector<Point>& points, double width);
    void disc(Point centre, double radius, Fill fill, double width = 0);
    // A line with an arrow at each end, both inside.
    void measure(Point from, Point to);
    // Text that stands where it is put.
    void text(Point at, const std::string& text, Lettering lettering, Align align = Align::left);

    // The text beside `anchor`, with a leader where it stands off: one that crosses no line if that can be and is
    // not long. False where there is no room for the text.
    bool label(Point anchor, const std::string& text, Lettering lettering);

private:
    bool free(const Rect& box) const;
    bool crosses_label(Point from, Point to) const;
    bool crosses_line(Point from, Point to) const;
    bool label_within(Point anchor, const std::string& text, Lettering lettering, bool over_lines, double furthest);

    Canvas& canvas_;
    Rect room_;
    std::vector<std::pair<Point, Point>> lines_;
    std::vector<Rect> taken_;   // by discs and texts
    std::vector<Rect> labels_;
};

}  // namespace shaftcut

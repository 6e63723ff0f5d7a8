// Drawing on a page: lines, shapes and text with the line widths and lettering of the sheets.
//
// Lengths are millimetres. Habits of ISO 128, ISO 129-1 and ISO 3098, with wider lines than they need, for a greasy print.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "page/font.hpp"
#include "shaftcut/documents/page/page.hpp"

namespace shaftcut {

enum class Align { left, centre, right };

namespace pen {
inline constexpr double outline = 0.7;
inline constexpr double guard = 0.5;
inline constexpr double dimension = 0.35;  // 0.25 fades on a greasy print
inline constexpr double axis = 0.25;
inline constexpr double cut_mark = 1.0;
}  // namespace pen

struct Lettering {
    double cap_height = 2.5;
    Weight weight = Weight::regular;
    double stretch = text_stretch;  // of the font's own width
    double leading = 1.6;           // from baseline to baseline, in capital heights
    double pitch() const { return leading * cap_height; }
};

namespace lettering {
inline constexpr Lettering note{2.5, Weight::regular};
inline constexpr Lettering strong{2.5, Weight::bold};
inline constexpr Lettering figure{3.5, Weight::regular};
inline constexpr Lettering name{3.5, Weight::bold};
inline constexpr Lettering cut{5.5, Weight::bold};
// Notes that must share one sheet with much else.
inline constexpr Lettering close_note{2.5, Weight::regular, 0.85, 1.4};
inline constexpr Lettering close_strong{2.5, Weight::bold, 0.85, 1.4};
inline constexpr Lettering close_name{3.0, Weight::bold, 0.85, 1.4};
}  // namespace lettering

class Canvas {
public:
    // `fonts` must outlive the canvas.
    Canvas(const Fonts& fonts, double width, double height);

    // What the marks drawn from here on belong to.
    void begin(Part part) { part_ = part; }

    void line(Point from, Point to, double width, std::initializer_list<double> dashes = {});
    void path(std::vector<Point> points, double width);
    void shape(std::vector<Point> corners, double width, Fill fill);
    void box(Rect rect, double width, Fill fill = Fill::none);
    void disc(Point centre, double radius, Fill fill, double width = 0);
    void code(Code code, Point top_left);

    // One line of text whose baseline starts, has its middle or ends at `at`; the rectangle that it covers.
    Rect text(Point at, std::string_view text, Lettering lettering, Align align = Align::left, Ink ink = Ink::black);
    // The same, narrowed down to 0.7 of the usual width so that it takes no more than `room` mm.
    Rect fitted(Point at, double room, std::string_view text, Lettering lettering, Align align = Align::left);
    // Lines of at most `width` mm below `top_left`; the y below the last.
    double paragraph(Point top_left, double width, std::string_view text, Lettering lettering);

    // The lines that paragraph() draws.
    std::vector<std::string> lines_of(std::string_view text, double width, Lettering lettering) const;

    const Fonts& fonts() const { return fonts_; }
    double width_of(std::string_view text, Lettering lettering) const;
    const Page& page() const { return page_; }

private:
    void add(std::variant<Path, Disc, Text, Code> what) { page_.marks.push_back({part_, std::move(what)}); }
    Rect set(Point at, const std::string& printable, Lettering lettering, Align align, Ink ink, double stretch);

    const Fonts& fonts_;
    Page page_;
    Part part_ = Part::paragraph;
};

// A horizontal dimension between two x at the height `y`, its figure above the line. The extension lines run from
// `from_y` and `to_y` to just past the line. The arrows are 3 × 1.1, and stand outside where the space is under 9.
struct DimensionLine {
    double from = 0, to = 0;      // x of its ends, from < to
    double y = 0;                 // of the dimension line
    double from_y = 0, to_y = 0;  // where the extension lines start
    std::string figure;           // may be empty
    double gap_from = 0, gap_to = 0;  // x between which the line is left out for a box; no gap where equal
};
void draw_dimension(Canvas& canvas, const DimensionLine& dimension);

// An arrow head of 3 × 1.1 whose tip points away from `from`; none where both are one point.
void draw_arrow(Canvas& canvas, Point from, Point tip);

// A letter or number in a disc: black where something is cut, white in a ring where nothing is.
void draw_mark(Canvas& canvas, Point centre, const std::string& mark, Fill fill);
inline constexpr double number_radius = 2.9;

}  // namespace shaftcut

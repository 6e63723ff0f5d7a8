// A drawn page as a list of marks in millimetres, origin top left, y downwards; black ink on white.
//
// Marks are drawn in their order. A text carries the rectangle that it covers, so that a test can prove that no two texts
// overlap and none leaves the page (tests/documents/page/page_checks.hpp).
#pragma once

#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace shaftcut {

struct Point {
    double x = 0;
    double y = 0;
};

struct Rect {
    double x = 0;
    double y = 0;
    double width = 0;
    double height = 0;

    double right() const { return x + width; }
    double bottom() const { return y + height; }
};

enum class Weight { regular, bold };
enum class Ink { black, white };
// What fills an outline; `hatched`: lines at 45°, which everywhere means waste.
enum class Fill { none, white, black, hatched };
// What a mark belongs to: the structure tag under which a reader program finds it.
enum class Part { heading, paragraph, table, figure };

// Straight lines from point to point. Width 0 draws no outline. `dashes`: lengths of strokes and gaps in turn.
struct Path {
    std::vector<Point> points;
    bool closed = false;
    double width = 0;
    Fill fill = Fill::none;
    std::vector<double> dashes;
};

struct Disc {
    Point centre;
    double radius = 0;
    double width = 0;
    Fill fill = Fill::none;
};

// One line of text: all its code points have glyphs. `stretch`: its width as a part of the font's own.
struct Text {
    std::string text;
    Point baseline;  // at its left end
    double cap_height = 0;
    Weight weight = Weight::regular;
    double stretch = 1;
    Ink ink = Ink::black;
    Rect box;  // from above its brackets to below its descenders
};

// A square code of modules × modules, row by row; true is dark. `box` is without its quiet zone.
struct Code {
    Rect box;
    int modules = 0;
    std::vector<bool> dark;
};

struct Mark {
    Part part = Part::paragraph;
    std::variant<Path, Disc, Text, Code> what;
};

struct Page {
    double width = 0;
    double height = 0;
    std::vector<Mark> marks;
};

// What a reader program shows about the file.
struct DocumentInfo {
    std::string title;
    std::string author;
    std::string subject;
    std::string language;  // BCP 47, such as "en"
    std::string created;   // YYYY-MM-DD
};

// Of a document in English, by the program where no owner is named, and of a fixed day where no date is: the same order must
// give the same bytes.
inline DocumentInfo document_info(std::string title, const std::string& owner, std::string subject, const std::string& date = "")
{
    return {std::move(title), owner.empty() ? "shaftcut" : owner, std::move(subject), "en", date.empty() ? "2000-01-01" : date};
}

}  // namespace shaftcut

// The top of the sheet, and the shaft drawn as it was seen: each joint with one cross or two, the tubes in one another.
#include <algorithm>

#include "drawing/joint_drawing.hpp"
#include "drawing/tube_section.hpp"
#include "identify_sheet/identify_sheet_parts.hpp"

namespace shaftcut::identify_sheet {
namespace {

constexpr double title_height = 9, drawing_height = 22, first_cross = 15, crosses_apart = 15, section_width = 18;
constexpr std::size_t most_reasons = 4;

double tube_from(const Measures& measures, End end) { return first_cross + (measures.ends[end].joint == JointKind::wide_angle ? crosses_apart : 0) + yoke; }

void draw_end(Canvas& canvas, const Frame& frame, const MeasuredEnd& end)
{
    const double inner = first_cross + (end.joint == JointKind::wide_angle ? crosses_apart : 0);
    draw_joint(canvas, frame, first_cross, inner);
}

}  // namespace

double draw_title(Canvas& canvas, Rect room, const IdentifiedShaft& shaft, const Wording& w)
{
    canvas.begin(Part::heading);
    const Rect title = canvas.text({room.x, room.y + 5}, say(Caption::title, w), {4, Weight::bold});
    const double most = room.width * 0.45;
    const bool large = canvas.width_of(shaft.measures.shaft, {4, Weight::bold}) <= most;
    canvas.fitted({title.right() + 6, room.y + 5}, most, shaft.measures.shaft, large ? Lettering{4, Weight::bold} : lettering::close_strong);
    canvas.begin(Part::paragraph);
    canvas.text({room.right(), room.y + 5}, shaft.measures.date, lettering::note, Align::right);
    canvas.text({room.x, room.y + title_height}, units_of(w), lettering::note);
    if (!shaft.owner.empty()) canvas.fitted({room.right(), room.y + title_height}, room.width * 0.6, shaft.owner, lettering::note, Align::right);
    return room.y + title_height;
}

double draw_band(Canvas& canvas, Rect room, const IdentifiedShaft& shaft, const Wording& w)
{
    canvas.begin(Part::heading);
    const double top = room.y, inset = 3;
    canvas.fitted({room.x + inset, top + 7.4}, room.width - 2 * inset, loudly(shaft, w), {4.5, Weight::bold});
    canvas.begin(Part::paragraph);
    double y = top + 9.4;
    std::vector<std::string> sentences = identify_words::reasons(shaft, w);
    if (shaft.found.verdict == IdentifyVerdict::mixed) sentences.push_back(identify_words::for_a_job(w));
    if (sentences.size() > most_reasons) sentences.resize(most_reasons);
    for (const std::string& sentence : sentences) y = canvas.paragraph({room.x + inset, y}, room.width - 2 * inset, sentence, lettering::strong);
    canvas.begin(Part::figure);
    canvas.box({room.x, top, room.width, y + 1.4 - top}, pen::cut_mark);
    return y + 1.4;
}

double draw_shaft(Canvas& canvas, Rect room, const IdentifiedShaft& shaft, const Wording& w)
{
    canvas.begin(Part::figure);
    const double width = room.width - section_width;
    const Frame left{room.x, width, room.y, drawing_height / 2, false}, right{room.x, width, room.y, drawing_height / 2, true};
    const double from = tube_from(shaft.measures, End::tractor), to = width - tube_from(shaft.measures, End::implement), middle = (from + to) / 2;
    draw_end(canvas, left, shaft.measures.ends[End::tractor]);
    draw_end(canvas, right, shaft.measures.ends[End::implement]);
    canvas.box(along_axis(left, middle - 10, to, 3, -3), pen::outline, Fill::white);
    canvas.box(along_axis(left, from, middle + 10, 4.4, -4.4), pen::outline, Fill::white);
    draw_section(canvas, {room.right() - section_width + 2, room.y + 2, section_width - 2, 14}, shaft.measures.shape.value_or(Shape::other));
    const double below = room.y + drawing_height - 0.6;
    canvas.begin(Part::paragraph);
    const double third = width / 3;
    canvas.fitted({room.x, below}, third, joint(shaft.measures.ends[End::tractor].joint, w), lettering::note);
    canvas.fitted({room.x + width / 2, below}, third - 4, tubes(shaft.measures.shape, w), lettering::note, Align::centre);
    canvas.fitted({room.x + width - 4, below}, third, joint(shaft.measures.ends[End::implement].joint, w), lettering::note, Align::right);
    return room.y + drawing_height;
}

}  // namespace shaftcut::identify_sheet

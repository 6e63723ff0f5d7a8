#include "commands/series_words.hpp"

#include "text.hpp"

namespace shaftcut {
namespace {

std::string of_half(const SeriesQuestion& question, const Wording& w)
{
    const NamedValue tube{"tube", question.tube.value_or(Tube::inner)};
    switch (question.figure) {
    case SeriesFigure::shoulder: return w("{tube:Inner|Outer} half: shoulder, to the face that stops the other tube's free end: ", {tube});
    case SeriesFigure::seat: return w("{tube:Inner|Outer} half: seat, to the tube's end inside its yoke: ", {tube});
    case SeriesFigure::least_tube: return w("{tube:Inner|Outer} half: least length of tube to be left beyond the seat: ", {tube});
    case SeriesFigure::width: return w("{tube:Inner|Outer} tube: width, by calliper: ", {tube});
    case SeriesFigure::wall: return w("{tube:Inner|Outer} tube: wall, by calliper: ", {tube});
    case SeriesFigure::guard_shoulder: return w("{tube:Inner|Outer} half: guard shoulder, to the face that stops the other guard's free end: ", {tube});
    case SeriesFigure::guard_seat: return w("{tube:Inner|Outer} half: guard seat, to the guard tube's inner end: ", {tube});
    case SeriesFigure::guard_seat_wide_angle: return w("{tube:Inner|Outer} half: guard seat on a wide-angle joint: ", {tube});
    case SeriesFigure::pin_hole: return w("{tube:Inner|Outer} half: to the centre of the pin's hole in the tube: ", {tube});
    case SeriesFigure::mass_per_metre: return w("{tube:Inner|Outer} tube: mass of a metre, in kilograms: ", {tube});
    default: break;
    }
    return w("{tube:Inner|Outer} half: forbidden, if its tube must not be shortened: ", {tube});
}

std::string of_part(const SeriesQuestion& question, const Wording& w)
{
    const NamedValue tube{"tube", question.tube.value_or(Tube::inner)}, wide{"wide", question.joint == JointKind::wide_angle}, connection{"connection", question.connection};
    switch (*question.part) {
    case PartKind::tube: return w("What it calls the {tube:inner|outer} tube: ", {tube});
    case PartKind::tube_yoke: return w("What it calls the tube yoke of the {tube:inner|outer} tube: ", {tube});
    case PartKind::guard_tube: return w("What it calls the {tube:inner|outer} guard tube: ", {tube});
    case PartKind::pin: return w("What it calls the pin that holds a tube in its yoke: ");
    case PartKind::double_yoke: return w("What it calls the double yoke between the wide-angle joint's crosses: ");
    case PartKind::guard_bearing: return w("What it calls the guard bearing{wide:| of the wide-angle joint, where it is another}: ", {wide});
    case PartKind::connection_yoke: return w("What it calls the yoke {connection}{wide:| of the wide-angle joint, where it is another}: ", {connection, wide});
    case PartKind::device: return w("What it calls the {device}, where there is one: ", {{"device", to_word(question.device.value_or(Device::none))}});
    case PartKind::chain: return w("What it calls the guard's chain: ");
    case PartKind::book: return w("What it calls the instruction book: ");
    case PartKind::label: break;
    }
    return w("What it calls the safety label: ");
}

}  // namespace

std::string series_begins(const std::string& file, Units units, const Wording& w)
{
    return w("A new series for {file}. Lengths in {units:mm|in} where you write no unit; those of a half from its inner cross.\n"
             "What is not known, or is not there, leave empty: what depends on it is then not checked, or refused.\n",
             {{"file", file}, {"units", units}});
}

std::string say(const SeriesQuestion& question, const Wording& w)
{
    if (question.part) return of_part(question, w);
    if (question.tube) return of_half(question, w);
    const NamedValue connection{"connection", question.connection};
    switch (question.figure) {
    case SeriesFigure::name: return w("Name of the series: ");
    case SeriesFigure::shape: return w("Section of the tubes (lemon, star, triangular, square, splined or other): ");
    case SeriesFigure::cap: return w("Cross: diameter of a bearing cap: ");
    case SeriesFigure::span: return w("Cross: over two opposite caps: ");
    case SeriesFigure::spacing: return w("Wide-angle joint: spacing, from the centre of one cross to the centre of the other (empty: the series has none): ");
    case SeriesFigure::reference: return w("Closed lengths start from (outer-cross or inner-cross): ");
    case SeriesFigure::inner_cap: return w("Wide-angle joint, inner cross: diameter of a bearing cap: ");
    case SeriesFigure::inner_span: return w("Wide-angle joint, inner cross: over two opposite caps: ");
    case SeriesFigure::outer_cap: return w("Wide-angle joint, outer cross, where it is another size: diameter of a bearing cap: ");
    case SeriesFigure::outer_span: return w("Wide-angle joint, outer cross: over two opposite caps: ");
    case SeriesFigure::cross_to_groove:
        if (question.joint == JointKind::wide_angle) return w("Yoke {connection} on the wide-angle joint, where it differs: from its cross to the locking groove: ", {connection});
        return w("Yoke {connection}: from its cross to the locking groove: ", {connection});
    case SeriesFigure::power: return w("Rating at {speed} min⁻¹, in kilowatts: ", {{"speed", question.speed}});
    case SeriesFigure::own_parts: return w("Is a shaft of it made to order, so that its parts need names? (yes or no): ");
    case SeriesFigure::cross_part: return w("What the workshop calls its cross: ");
    case SeriesFigure::inner_part: return w("What it calls the inner cross of the wide-angle joint: ");
    case SeriesFigure::outer_part: return w("What it calls the outer cross of the wide-angle joint: ");
    case SeriesFigure::replaces: return w("Does the {device} sit in the connection yoke's place? (connection-yoke or nothing): ", {{"device", to_word(question.device.value_or(Device::none))}});
    case SeriesFigure::own_limits: return w("Has it limits of its own, in the place of the workshop's? (yes or no): ");
    case SeriesFigure::limit: return w("Limit {limit}: ", {{"limit", row_of(question.limit.value()).name}});
    default: break;
    }
    return w("Closed lengths it is sold in, shortest first, with blanks between: ");
}

std::string series_to_write(const std::string& series, const Wording& w) { return w("\n{series}\nWrite this? (yes or no): ", {{"series", series}}); }

bool is_yes(const std::string& answer, const Wording& w) { return answer == w("yes"); }

std::string series_dropped(const Wording& w) { return w("Nothing was written."); }

std::string series_written(const std::vector<std::string>& names, const std::string& file, const Wording& w)
{
    std::vector<std::string> in_quotes;
    for (const std::string& name : names) in_quotes.push_back(quoted(name));
    return w("Now in {file}: {series}. Prove it: cut a job of that shaft as it was measured; consistency must not warn of its closed length.",
             {{"series", w.all_of(in_quotes)}, {"file", file}});
}

}  // namespace shaftcut

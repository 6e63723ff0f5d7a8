// Of the form that asks for what tells a shaft's series.
#include "form/captions.hpp"

namespace shaftcut::measuring_form {

std::string say(IdentifyCaption caption, const Wording& w)
{
    switch (caption) {
    case IdentifyCaption::title: return w("Which shaft is it?");
    case IdentifyCaption::shaft: return w("shaft (its name here)");
    case IdentifyCaption::writing: return w("what stands on the guard, as written");
    case IdentifyCaption::how_heading: return w("How");
    case IdentifyCaption::how_hint: return w("bright metal, no paint or rust under the jaws; what cannot be reached stays empty: each figure helps");
    case IdentifyCaption::span: return w("span: over two equal spacer pieces on opposite caps, cross fitted");
    case IdentifyCaption::bore: return w("cap in its bore: inside jaws at the mouth, outside the circlip");
    case IdentifyCaption::cap: return w("cap itself: only with the circlip off");
    case IdentifyCaption::spacing: return w("spacing: two crosses, middle to middle, joint in line");
    case IdentifyCaption::spacer_box: return w("spacer pieces, both");
    case IdentifyCaption::ends_heading: return w("Joints");
    case IdentifyCaption::ends_hint: return w("the span as read over the pieces; other pair: the two caps at right angles to the first");
    case IdentifyCaption::tractor_end: return w("Tractor end");
    case IdentifyCaption::machine_end: return w("Machine end");
    case IdentifyCaption::one_or_inner: return w("only or inner cross");
    case IdentifyCaption::outer: return w("outer cross");
    case IdentifyCaption::cap_box: return w("cap or bore ⌀");
    case IdentifyCaption::again_box: return w("again");
    case IdentifyCaption::second_cap_box: return w("other pair ⌀");
    case IdentifyCaption::span_box: return w("span, as read");
    case IdentifyCaption::second_span_box: return w("other pair, span");
    case IdentifyCaption::spacing_box: return w("spacing");
    case IdentifyCaption::in_bore: return w("in the bore");
    case IdentifyCaption::on_cap: return w("on the cap");
    case IdentifyCaption::circlips: return w("circlips");
    case IdentifyCaption::nipple: return w("nipple");
    case IdentifyCaption::tubes_heading: return w("Tubes");
    case IdentifyCaption::tubes_hint: return w("the calliper as drawn for each shape; the wall at a free end, burr off");
    case IdentifyCaption::width_lemon: return w("across the width");
    case IdentifyCaption::width_star: return w("between opposite points");
    case IdentifyCaption::width_flats: return w("across the flats");
    case IdentifyCaption::width_rounding: return w("flat to rounding");
    case IdentifyCaption::width_splined: return w("over the outside");
    case IdentifyCaption::width_other: return w("the widest");
    case IdentifyCaption::tube_a: return w("One tube");
    case IdentifyCaption::tube_b: return w("The other tube");
    case IdentifyCaption::which_tube: return w("it is the");
    case IdentifyCaption::not_known: return w("not known");
    case IdentifyCaption::width_box: return w("width");
    case IdentifyCaption::wall_box: return w("wall");
    case IdentifyCaption::closed_heading: return w("Closed length");
    case IdentifyCaption::with: return w("with (calliper, rule)");
    case IdentifyCaption::closed_hint: return w("pushed fully together, middle of cap to middle of cap");
    case IdentifyCaption::closed_box: break;
    }
    return w("closed length");
}

}  // namespace shaftcut::measuring_form

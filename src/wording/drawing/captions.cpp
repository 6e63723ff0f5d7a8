#include "drawing/captions.hpp"

namespace shaftcut::geometry {

std::string say(FigureCaption caption, const Wording& w)
{
    switch (caption) {
    case FigureCaption::trailed_from_above: return w("from above; travel is to the left");
    case FigureCaption::trailed_from_left: return w("from the left, on level ground");
    case FigureCaption::mounted_from_left: return w("from the left; travel is to the left");
    case FigureCaption::pto_stub: return w("PTO stub");
    case FigureCaption::hitch_pin: return w("hitch pin");
    case FigureCaption::input_shaft: return w("input shaft");
    case FigureCaption::lower_hitch_point: return w("lower hitch point");
    case FigureCaption::upper_hitch_point: return w("upper hitch point");
    case FigureCaption::pin: return w("pin");
    case FigureCaption::pto: break;
    }
    return w("PTO");
}

std::string say(StatedCaption caption, const Wording& w)
{
    switch (caption) {
    case StatedCaption::stated: return w("stated");
    case StatedCaption::workshops: return w("the workshop's");
    case StatedCaption::not_stated: return w("not stated");
    case StatedCaption::hold_against_form: break;
    }
    return w("Hold it against the measuring form, box by box: a lost sign or two figures swapped spoil the shaft.");
}

std::string say(PlotCaption caption, const Wording& w)
{
    switch (caption) {
    case PlotCaption::least_allowed: return w("least allowed: closed + clearance");
    case PlotCaption::turn: break;
    }
    return w("turn: to the left below 0, to the right above");
}

}  // namespace shaftcut::geometry

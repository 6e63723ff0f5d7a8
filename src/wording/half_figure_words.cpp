#include "half_figure_words.hpp"

namespace shaftcut {
namespace {

std::string half_figure(const HalfFigure& figure, const Wording& w)
{
    return w("the {half:inner|outer} half's {figure}", {{"half", figure.half}, {"figure", to_word(figure.kind)}});
}

}  // namespace

std::string say(const std::vector<HalfFigure>& figures, const Wording& w)
{
    std::vector<std::string> names;
    for (const HalfFigure& figure : figures) names.push_back(half_figure(figure, w));
    return w.all_of(names);
}

}  // namespace shaftcut

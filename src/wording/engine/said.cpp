#include "engine/said.hpp"

#include "text.hpp"

namespace shaftcut {

Said say_no_machine(const Wording& w)
{
    return {w("no fit holds a machine's geometry"), w("add a trailed or mounted machine, from which lengths can be computed")};
}

Said say_no_cut(const Wording& w)
{
    return {w("the answer to this job is DO NOT CUT, so nothing says what its shaft must measure after a cut"),
            w("give the job that it was cut by; a shaft that was cut all the same is not to be used")};
}

std::string no_such_list_map(const std::string& name, const std::vector<std::string>& known, const Wording& w)
{
    const NamedValue asked{"name", quoted(name)};
    if (known.empty()) return w("--list {name} is not known; lists.xml holds no map, --learn writes one", {asked});
    std::vector<std::string> names;
    for (const std::string& one : known) names.push_back(quoted(one));
    const NamedValue there{"known", w.all_of(names)};
    const std::string near = nearest_name(name, known);
    if (near.empty()) return w("--list {name} is not known; lists.xml holds {known}", {asked, there});
    return w("--list {name} is not known; did you mean {near}? lists.xml holds {known}", {asked, {"near", quoted(near)}, there});
}

std::string no_such_series(const UnknownName& found, const Wording& w)
{
    return in_one(say(found, w), w);
}

std::string too_many_for_a_sheet(std::size_t pieces, std::size_t most, const Wording& w)
{
    return w("the plan has {pieces} pieces on bars that are cut differently, more than the {most} that a sheet or workbook holds", {{"pieces", pieces}, {"most", most}});
}

std::string too_many_labels(std::size_t labels, std::size_t most, const Wording& w)
{
    return w("{labels} labels are more than the {most} of one file, so none are made; split the list", {{"labels", labels}, {"most", most}});
}

std::string batch_saw_title(const std::string& list, const Wording& w) { return w("Saw plans {list}", {{"list", list}}); }
std::string batch_saw_subject(const Wording& w) { return w("Bars, pieces in cutting order and stops"); }
std::string labels_title(const std::string& list, const Wording& w) { return w("Labels {list}", {{"list", list}}); }
std::string labels_subject(const Wording& w) { return w("labels for pieces and shafts"); }

std::string connection_lines(const Connection& connection, const Wording& w)
{
    return w("connection {name}: {source}\n", {{"name", connection.name}, {"source", connection.source}});
}

std::string series_lines(const Series& series, const Wording& w)
{
    std::vector<std::string> crosses, lengths;
    for (const Cross& cross : series.crosses) crosses.push_back("⌀" + figure(cross.cap, w.units()) + " × " + figure_with_unit(cross.span, w.units()));
    for (const Length closed : series.closed_lengths) lengths.push_back(figure(closed, w.units()));
    std::string text = w("{name} ({shape})\n  cross         {crosses}\n", {{"name", series.name}, {"shape", to_word(series.shape)}, {"crosses", w.all_of(crosses)}});
    if (series.wide_angle) text += w("  wide-angle    crosses {spacing} apart\n", {{"spacing", figure_with_unit(series.wide_angle->spacing, w.units())}});
    if (series.shortening_forbidden) text += w("  shortening    forbidden\n");
    if (!lengths.empty()) text += w("  closed, {unit:mm|in}    {lengths}\n", {{"unit", w.units()}, {"lengths", w.all_of(lengths)}});
    return text;
}

}  // namespace shaftcut

// Of the shaft, its series and its machine.
#include "reading/said.hpp"
#include "text.hpp"

namespace shaftcut {

Said say(const BesideSeries& found, const Wording& w)
{
    const NamedValue attribute{"attribute", found.attribute};
    const std::string right = w("leave out what the series states");
    if (found.half_series.empty()) return {w("shaft states series and {attribute}", {attribute}), right};
    return {w("end states {attribute}, and its half is of series {series}", {attribute, {"series", quoted(found.half_series)}}), right};
}

Said say(const OwnSeries& found, const Wording& w)
{
    return {w("the {tube:inner|outer} half states the shaft's own series {series}", {{"tube", found.tube}, {"series", quoted(found.series)}}),
            w("leave it out, or write the series that this half is of")};
}

Said say(const NoWideAngle& found, const Wording& w)
{
    const NamedValue series{"series", quoted(found.series)};
    if (found.column.empty()) return {w("joint \"wide-angle\", but series {series} has no wide-angle joint", {series}), w("write joint=\"standard\", or another series")};
    return {w("{column} \"wide-angle\", but series {series} has no wide-angle joint", {{"column", found.column}, series}), w("write standard, or another series")};
}

Said say(const NoSpacing& found, const Wording& w)
{
    return {w("the {end:tractor|implement} end has a wide-angle joint of no known series, and nothing states its spacing", {{"end", found.end}}),
            w("add spacing=\"...\" to that end, centre to centre of the joint's crosses")};
}

Said say(const OfShaftThatIsThere& found, const Wording& w)
{
    return {w("{name} belongs to a shaft that is there, and this one is still to be chosen", {{"name", found.name}}),
            w("leave it out: every series is tried at every closed length")};
}

Said say(const NoReference& found, const Wording& w)
{
    const NamedValue series{"series", quoted(found.series)};
    switch (found.what) {
    case ReferenceOf::fit:
        return {w("fit has no reference, and series {series} does not state one", {series}),
                w("add reference=\"outer-cross\" or reference=\"inner-cross\", whichever its lengths run from")};
    case ReferenceOf::column:
        return {w("{column} is empty, and series {series} does not state a reference", {{"column", found.column}, series}), w("write outer-cross or inner-cross")};
    case ReferenceOf::closed_measured:
    case ReferenceOf::closed_ordered: break;
    }
    return {found.series.empty() ? w("closed has no reference, and no series states one") : w("closed has no reference, and series {series} does not state one", {series}),
            found.what == ReferenceOf::closed_measured ? w("add reference=\"outer-cross\" or reference=\"inner-cross\", whichever the closed length was measured from")
                                                       : w("add reference=\"outer-cross\" or reference=\"inner-cross\", whichever the closed length is to run from")};
}

Said say(const GuardIncomplete& found, const Wording& w)
{
    return {w("guard \"complete\", but the {tube:inner|outer} half states guard=\"{use}\"", {{"tube", found.tube}, {"use", to_word(found.use)}}),
            w("write guard=\"missing\" or guard=\"damaged\", or that half's guard length")};
}

Said say(const OtherOrder& found, const Wording& w)
{
    return {w("order {found}, but the job is order {order}", {{"found", quoted(found.found)}, {"order", quoted(found.order)}}),
            w("name the job and what was measured of one order, in this order")};
}

Said say(const UnusedGuard& found, const Wording& w)
{
    return {w("{attribute} of the {tube:inner|outer} half, whose guard is not used again: the job states guard=\"{use}\"",
              {{"attribute", found.attribute}, {"tube", found.tube}, {"use", to_word(found.use)}}),
            w("leave it out, or write that guard's length in the job")};
}

Said say(const ShoulderShort& found, const Wording& w)
{
    return {w("{what} lies short of the tube's own end in its yoke, seat {seat}", {{"what", named(found.stated)}, {"seat", figure_with_unit(found.seat, found.units)}}),
            found.tube == Tube::inner ? w("the face that stops the other tube is at least as far from the cross as the seat")
                                      : w("the face that stops the other tube is at most 30 mm nearer to the cross than the seat")};
}

Said say(const PartIndependent& found, const Wording& w)
{
    return {w("part for {part} states {attribute}", {{"part", to_word(found.part)}, {"attribute", found.attribute}}), w("leave it out: such a part does not depend on it")};
}

Said say(const StillToFill& found, const Wording& w)
{
    return {w("{name} is still open", {{"name", found.name}}), w("measure it or look, and write it in the place of the \"?\"")};
}

Said say(const MissingView& found, const Wording& w)
{
    return {w("angle has no {view}", {{"view", found.attribute}}), w("state side-view and plan, as the joint is seen from the side and from above, or leave out both")};
}

Said say(const AngleAndViews& found, const Wording& w)
{
    return {w("angle states {range:working|turning|standing} and its two views", {{"range", found.range}}), w("leave one of them out")};
}

Said say(const WithoutFit& found, const Wording& w) { return {w("{column} says nothing without shortest and longest", {{"column", found.column}}), w("leave it empty")}; }

Said say(const UnknownYoke& found, const Wording& w)
{
    const NamedValue who{"who", found.of_machine}, end{"end", found.end};
    const std::string right = !found.of_machine ? found.own ? w("add cross-to-groove=\"...\" to that end") : w("give it in the catalogue")
                              : found.own       ? w("add cross-to-groove=\"...\" to that end, or measure the lengths instead")
                                                : w("give it in the catalogue, or measure the lengths instead");
    if (!found.series)
        return {w("{who:a fit between grooves|the machine's geometry} needs the length of the {end:tractor|implement} end's yoke, cross to groove, and no series gives it", {who, end}), right};
    if (!found.connection)
        return {w("{who:a fit between grooves|the machine's geometry} needs the length of the {end:tractor|implement} end's yoke, cross to groove, and that end states no connection", {who, end}),
                right};
    return {w("{who:a fit between grooves|the machine's geometry} needs the length of the {end:tractor|implement} end's yoke, cross to groove, and series {series} gives none for connection {connection}",
              {who, end, {"series", quoted(*found.series)}, {"connection", quoted(*found.connection)}}),
            right};
}

Said say(Contradiction found, const Wording& w)
{
    switch (found) {
    case Contradiction::other_tractors: return {w("for states other-tractors=\"none\" and holds other-tractor"), w("leave one of them out")};
    case Contradiction::two_machines: return {w("fit holds a trailed and a mounted machine"), w("leave one of them out")};
    case Contradiction::two_spacings: return {w("shaft and end state spacing"), w("leave one of them out")};
    case Contradiction::spacing_of_standard_joint: return {w("end states spacing, and its joint is standard"), w("leave it out, or write joint=\"wide-angle\"")};
    case Contradiction::at_of_standard_joint: return {w("cross states at, and its end's joint is standard"), w("leave it out, or write joint=\"wide-angle\"")};
    case Contradiction::second_cross_of_standard_joint: return {w("a second cross, and its end's joint is standard"), w("leave one of them out, or write joint=\"wide-angle\"")};
    case Contradiction::caps_read_both_ways: return {w("one cap is read in its bore and on itself"), w("keep one kind of reading, or state pair=\"second\" of the other")};
    case Contradiction::shoulder_and_stop_depth:
        return {w("half states shoulder and stop-depth"), w("leave one of them out: the shoulder is the length less the stop depth")};
    case Contradiction::stop_depth_alone:
        return {w("half states stop-depth and no length"), w("add length=\"...\": the shoulder is the length less the stop depth")};
    case Contradiction::cut_to_alone:
        return {w("half states cut-to and no length"), w("add length=\"...\", as it is measured now")};
    case Contradiction::guard_missing_but_stated:
        return {w("guard \"missing\", but both halves state theirs"), w("write guard=\"none\" in the half whose guard is missing, or guard=\"damaged\" here")};
    case Contradiction::guard_and_stands_out:
        return {w("half states guard and stands-out"), w("leave one of them out: the guard is the length less what the tube stands out of it")};
    case Contradiction::reference_before_choice: return {w("reference says nothing between grooves"), w("leave it out")};
    case Contradiction::reference_of_grooves: return {w("reference says nothing between grooves"), w("leave it out, or write between=\"crosses\"")};
    case Contradiction::column_reference_of_grooves:
        return {w("fit_reference says nothing between grooves"), w("leave it empty, or write crosses in fit_between")};
    case Contradiction::no_shortest: return {w("fit holds no shortest"), w("add one, or the machine's geometry")};
    case Contradiction::no_turning: return {w("fit holds no longest when=\"turning\""), w("add <longest when=\"turning\" length=\"...\"/>")};
    case Contradiction::no_turning_of_machine:
        return {w("fit holds no longest when=\"turning\""), w("add <longest when=\"turning\" length=\"...\"/>, or the machine's turning range")};
    case Contradiction::neither_series_nor_shape:
        return {w("shaft has neither series nor shape"), w("state the series, or shape=\"...\" for one of no known series")};
    case Contradiction::closed_and_fit:
        return {w("order holds a closed length and a fit"), w("leave one of them out: the shaft is made to the one or to the other")};
    case Contradiction::neither_closed_nor_fit:
        return {w("order holds neither a closed length nor a fit"), w("add <closed length=\"...\"/> to its shaft, or a fit")};
    case Contradiction::column_closed_and_fit:
        return {w("closed stands beside lengths of a fit"), w("leave one of them out: the shaft is made to the one or to the other")};
    case Contradiction::column_neither_closed_nor_fit:
        return {w("the order states neither closed nor shortest and longest_turning"), w("write the one or the others")};
    case Contradiction::no_order_in_list: return {w("the list holds no order"), w("write one a line under its header")};
    case Contradiction::item_for_one_thing:
        return {w("item is for nothing, or for more than one thing"), w("name one of part, profile, service, or series with closed-length")};
    case Contradiction::item_price:
        return {w("item does not state one price of its kind"), w("write per-metre for a profile, each or from and to for a service, each for anything else")};
    case Contradiction::price_range: return {w("to is less than from"), w("write the lesser amount in from")};
    case Contradiction::tax_note_alone: return {w("tax-note stands without tax"), w("write the rate that it explains in tax")};
    case Contradiction::column_price: return {w("the line states no price, or two"), w("write either each or per_metre")};
    case Contradiction::list_without_currency: return {w("the list has prices in no currency"), w("write prices with their currency in workshop.xml")};
    case Contradiction::crosses_before_choice:
        return {w("the fit's lengths run between crosses, and no shaft is chosen yet whose crosses they could be"),
                w("measure between the locking grooves of the two stubs and write between=\"grooves\", or state the machine's geometry")};
    case Contradiction::no_piece_in_list: break;
    }
    return {w("the list holds no piece to cut"), w("write one a line under its header")};
}

}  // namespace shaftcut

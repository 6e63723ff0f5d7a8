#include "saw_sheet/saw_sheet_words.hpp"

#include <array>

#include "build/build_words.hpp"

namespace shaftcut::saw_sheet_words {
namespace {

constexpr std::array captions{"Bars, pieces in cutting order and stops", "Bars to fetch", "How to saw from this sheet", "No.", "Length", "Stop", "Label", "use whole", "RACK",
                              "These pieces stand in no saw plan of this file: they are still to be sawn."};
static_assert(captions.size() == static_cast<std::size_t>(Caption::not_planned) + 1);

std::string length_of(Length length, const Wording& w) { return saw_figure_with_unit(length, w.units()); }

// "66.5 m", to the millimetre; in inches "2618-1/8 in (66.5 m)".
std::string sum_of(Length length, const Wording& w)
{
    constexpr std::int64_t thousand = 1000;
    const std::string metres = figure(Length::micrometres(length.um() / thousand), Units::mm, Toward::nearest, 3) + " m";
    return w.units() == Units::mm ? metres : figure_with_unit(length, Units::in) + " (" + metres + ")";
}

struct NumberedBars {
    NamedValue number, last, count, length;
};
NumberedBars numbered(const BarLayout& bar, std::int64_t number, const Wording& w)
{
    return {{"number", number}, {"last", number + bar.count - 1}, {"count", bar.count}, {"length", length_of(bar.length, w)}};
}

}  // namespace

std::string say(Caption caption, const Wording& w) { return w(captions[static_cast<std::size_t>(caption)]); }

std::string title(const std::string& name, const Wording& w) { return w("Saw plan {name}", {{"name", name}}); }

std::string settings(const SawOrder& order, const Wording& w)
{
    const auto with = [&](std::string_view pattern) {
        return w(pattern, {{"kerf", length_of(order.task.kerf, w)}, {"start", length_of(order.task.trim_start, w)}, {"end", length_of(order.task.trim_end, w)},
                           {"tolerance", figure_with_unit(order.plus_minus, Units::mm, Toward::nearest, 3)}, {"reusable", length_of(order.reusable.value_or(Length()), w)}});
    };
    if (order.plus_minus > Length() && order.reusable)
        return with("Kerf {kerf}  ·  start trim {start}  ·  end trim {end}  ·  sawn lengths ± {tolerance}  ·  back to the rack from {reusable}");
    if (order.plus_minus > Length()) return with("Kerf {kerf}  ·  start trim {start}  ·  end trim {end}  ·  sawn lengths ± {tolerance}");
    if (order.reusable) return with("Kerf {kerf}  ·  start trim {start}  ·  end trim {end}  ·  back to the rack from {reusable}");
    return with("Kerf {kerf}  ·  start trim {start}  ·  end trim {end}");
}

std::vector<std::string> how_to_saw(const Wording& w)
{
    return {w("Bars are drawn to scale from their starting end, pieces in cutting order. Hatched is waste."),
            w("Bold, in a bar and in a table: the length of the piece. Not bold: its stop, its label, and what is left over."),
            w("Stop: the figure under a cut, or in the table, from the bar's starting end to where the piece ends, with trim and kerfs before it. Mark or feed the "
              "whole bar to the stops; the blade cuts beyond the mark."),
            w("With a fence that the sawn end is pushed against: set it to the length of the piece instead.")};
}

std::string fetch(const BarsToFetch& bars, const Wording& w) { return w("{count} × {length}", {{"count", bars.count}, {"length", length_of(bars.length, w)}}); }

std::string totals(const SawTotals& totals, const Wording& w)
{
    std::vector<std::string> said{w("{bars} {bar:bars|bar}, {bars_length}, for {pieces} {piece:pieces|piece}, {pieces_length}.",
                                    {{"bars", totals.bars}, {"bar", totals.bars == 1}, {"bars_length", sum_of(totals.bars_length, w)},
                                     {"pieces", totals.pieces}, {"piece", totals.pieces == 1}, {"pieces_length", sum_of(totals.pieces_length, w)}})};
    if (totals.rack_length > Length()) said.push_back(w("Back to the rack: {length}.", {{"length", sum_of(totals.rack_length, w)}}));
    said.push_back(w("Waste, with kerfs and trims: {waste}.", {{"waste", w.percent(totals.waste)}}));
    return running_text(said);
}

std::string bar(const BarLayout& bar, std::int64_t first, const Wording& w)
{
    const auto& [number, last, count, length] = numbered(bar, first, w);
    if (bar.count == 1) return w("Bar {number}: {length}", {number, length});
    return w("Bars {number}–{last}: {count} alike of {length}", {number, last, count, length});
}

std::string bar_continued(const BarLayout& bar, std::int64_t first, const Wording& w)
{
    const auto& [number, last, count, length] = numbered(bar, first, w);
    if (bar.count == 1) return w("Bar {number}: {length}, continued", {number, length});
    return w("Bars {number}–{last}: {count} alike of {length}, continued", {number, last, count, length});
}

std::string leftover(const BarLayout& bar, Length trim_end, const Wording& w)
{
    if (bar.whole) return w("use whole, no cut");
    if (bar.ends_with_piece) return w("no leftover, no last cut");
    if (bar.thin_end) return w("THIN END: the last cut takes off only {length}", {{"length", length_of(*bar.thin_end, w)}});
    if (bar.use == LeftoverUse::none) return w("no leftover");
    const NamedValue length{"length", length_of(bar.leftover, w)}, rack{"rack", bar.use == LeftoverUse::rack};
    if (trim_end == Length()) return w("leftover {length}: {rack:scrap|BACK TO THE RACK}", {length, rack});
    return w("leftover {length} after its end trim: {rack:scrap|BACK TO THE RACK}", {length, rack});
}

std::string not_planned_title(const std::string& batch, const Wording& w) { return w("NOT PLANNED of {batch}", {{"batch", batch}}); }
std::string not_planned(const std::string& profile, const Wording& w) { return w("NOT PLANNED: {profile}", {{"profile", profile}}); }

std::string why(const NotPlanned& left_out, const Wording& w)
{
    if (left_out.refusal) return w("No plan could be made: {why}.", {{"why", say(*left_out.refusal, w)}});
    return w("No bars are stated for this profile: state some in the workshop's configuration, or with --stock.");
}

std::string piece(const BatchPiece& piece, const Wording& w)
{
    return w("{count} × {length} — order {order}, {tube:inner|outer} {kind:tube|guard tube}",
             {{"count", piece.count}, {"length", length_of(piece.length, w)}, {"order", piece.order}, {"tube", piece.part.tube}, {"kind", piece.part.kind}});
}

}  // namespace shaftcut::saw_sheet_words

#include "shaftcut/documents/geometry_sheet.hpp"

#include "geometry_parts.hpp"
#include "shaftcut/trade/geometry_words.hpp"

namespace shaftcut {

namespace cut_sheet {
namespace {

std::vector<std::string> length_row(const WorkOrder& order, const std::string& name, const ExtremeLength& extreme, Toward toward)
{
    return {name, printed_with_both(order, extreme.length, toward), in_words(extreme.at, order.units) + "; " + doubt_in_words(extreme, order.units)};
}

std::vector<std::string> angle_row(const std::string& name, const ExtremeAngle& extreme, Units units)
{
    return {name, figure(extreme.angle, 2) + "°", in_words(extreme.at, units)};
}

void add_rows(const WorkOrder& order, const FitReading& fit, Table& table)
{
    const std::string start = whose(fit, order.fits.size());
    const OperatingLengths& lengths = fit.geometry->lengths;
    table.rows.push_back(length_row(order, start + "shortest", lengths.shortest, Toward::down));
    for (const Range range : all_ranges)
        if (lengths.ranges[range]) table.rows.push_back(length_row(order, start + "longest, " + to_word(range), lengths.ranges[range]->longest, Toward::up));
    for (const Range range : all_ranges) {
        if (!lengths.ranges[range]) continue;
        table.rows.push_back(angle_row(start + "tractor joint, " + to_word(range), lengths.ranges[range]->tractor, order.units));
        table.rows.push_back(angle_row(start + "implement joint, " + to_word(range), lengths.ranges[range]->implement, order.units));
    }
}

}  // namespace

void draw_extremes(Sheets& sheets, const WorkOrder& order)
{
    const double width = sheets.room().width;
    Table table{"From the machine's geometry: lengths between the inner crosses, whole joint angles", {44, 36, width - 44 - 36}, {"extreme", "figure", "where it occurs; how far it can be trusted, and what to measure again first"}, {}};
    for (const FitReading& fit : order.fits)
        if (fit.geometry) add_rows(order, fit, table);
    draw_table(sheets, table);
}

void draw_machines(Sheets& sheets, const WorkOrder& order)
{
    std::size_t machine = 0;
    for (const FitReading& fit : order.fits) {
        if (!fit.geometry) continue;
        const MachineView& view = order.machines[machine++];
        sheets.next();
        sheets.flow({{Lead::heading, "The machine and its shaft, to scale" + (view.tractor.empty() ? "" : ": " + view.tractor)}});
        sheets.move_to(sheets.y() + 1);
        draw_scenes(sheets, order, view);
        draw_plot(sheets, order, view, fit.geometry->machine);
    }
}

}  // namespace cut_sheet

std::vector<Page> draw_geometry_sheet(const WorkOrder& order, Paper paper)
{
    using namespace cut_sheet;
    const Fonts fonts;
    Sheets sheets(fonts, heading_of(order, "lengths"), paper);
    draw_extremes(sheets, order);
    Blocks notes;
    for (const std::string& note : order.machine_notes) notes.push_back({Lead::bullet, note});
    if (!notes.empty()) notes.insert(notes.begin(), {Lead::heading, "Notes"});
    sheets.flow(notes);
    draw_machines(sheets, order);
    return sheets.finished();
}

DocumentInfo geometry_sheet_info(const WorkOrder& order)
{
    return document_info("Operating lengths " + order.order, order.owner, order.shaft_title, order.date);
}

}  // namespace shaftcut

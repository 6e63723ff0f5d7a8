// The top of each side, whom and what the shaft is for, and what comes before everything else.
#include "form/measuring_form_parts.hpp"

namespace shaftcut::measuring_form {
namespace {

constexpr double caution_height = 11;

double draw_strip(Canvas& canvas, Rect room, TitleCaption side, const std::vector<Entry>& entries, double entries_width, const MeasuringForm& form, const Wording& w)
{
    const double words = room.width - entries_width - 4;
    canvas.begin(Part::heading);
    canvas.fitted({room.x, room.y + 4.4}, words, say(side, w), {4, Weight::bold});
    canvas.begin(Part::paragraph);
    canvas.text({room.x, room.y + 8.6}, say(form.units == Units::mm ? TitleCaption::units_mm : TitleCaption::units_in, w), lettering::note);
    canvas.begin(Part::table);
    draw_entries(canvas, {room.right() - entries_width, room.y, entries_width, box_height}, entries);
    return room.y + box_height;
}

void draw_caution_box(Canvas& canvas, Rect room)
{
    canvas.begin(Part::paragraph);
    canvas.box({room.x, room.y, room.width, caution_height}, pen::cut_mark);
}

}  // namespace

double draw_front_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    double y = draw_strip(canvas, room, TitleCaption::front, {{1.3, say(TitleCaption::order, w), ""}, {1, say(TitleCaption::date, w), ""}}, 76, form, w) + gap;
    draw_entries(canvas, {room.x, y, room.width, box_height},
                 {{1.3, say(TitleCaption::customer, w), ""}, {1, say(TitleCaption::phone, w), ""}, {1.3, say(TitleCaption::shaft_number, w), ""}});
    y += box_height + gap;
    draw_entries(canvas, {room.x, y, room.width, box_height},
                 {{1.2, say(TitleCaption::machine, w), ""}, {1.2, say(TitleCaption::tractor, w), ""}, {1, say(TitleCaption::hitch, w), ""}, {0.8, say(TitleCaption::power, w), "kW"}});
    y += box_height + tick_pitch;
    draw_ticks(canvas, {room.x, y}, say(TitleCaption::machine_here, w), {say(TitleCaption::yes, w), say(TitleCaption::no, w)});
    return y + 1;
}

double draw_back_title(Canvas& canvas, Rect room, const MeasuringForm& form, const Wording& w)
{
    return draw_strip(canvas, room, TitleCaption::back, {{1, say(TitleCaption::order, w), ""}}, 60, form, w);
}

double draw_cautions(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    draw_caution_box(canvas, room);
    canvas.text({room.x + 3, room.y + 4.7}, say(CautionCaption::turning_shaft, w), lettering::name);
    double x = room.x + 3;
    for (const CautionCaption what : {CautionCaption::pto_off, CautionCaption::engine_off, CautionCaption::key_out, CautionCaption::machine_blocked})
        x = draw_tick(canvas, {x, room.y + 9.5}, say(what, w)) + 5;
    return room.y + caution_height;
}

double draw_machine_cautions(Canvas& canvas, Rect room, const MeasuringForm&, const Wording& w)
{
    draw_caution_box(canvas, room);
    canvas.text({room.x + 3, room.y + 4.7}, say(CautionCaption::nothing_moving, w), lettering::name);
    canvas.fitted({room.x + 3, room.y + 9.3}, room.width - 6, say(CautionCaption::each_position, w), lettering::strong);
    return room.y + caution_height;
}

}  // namespace shaftcut::measuring_form

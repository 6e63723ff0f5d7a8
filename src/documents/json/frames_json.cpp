#include "json/frames_json.hpp"

#include "drawing/geometry_parts.hpp"
#include "hitch/frame_words.hpp"
#include "json/json_parts.hpp"
#include "page/screen_svg.hpp"

namespace shaftcut {
namespace {

using geometry::ScreenScenes;
using geometry::Seen;

// Both views of one machine: one from above only where it turns.
struct Views {
    ScreenScenes side;
    std::optional<ScreenScenes> top;
};

Json json_of(const Posture& at)
{
    if (const auto* lift = std::get_if<MountedPosture>(&at)) return {{"height_mm", lift->height.mm()}};
    const auto& turned = std::get<TrailedPosture>(at);
    return {{"turn_deg", turned.turn.degrees()}, {"pitch_deg", turned.pitch.degrees()}, {"roll_deg", turned.roll.degrees()}};
}

Json json_of(const MachineScene& scene, const std::string& says, const Views& views)
{
    return {{"says", says},
            {"telescoping_mm", scene.length.mm()},
            {"tractor_deg", scene.angles[End::tractor].degrees()},
            {"implement_deg", scene.angles[End::implement].degrees()},
            {"at", json_of(scene.at)},
            {"side", screen_svg_of(views.side.draw(scene))},
            {"top", views.top ? Json(screen_svg_of(views.top->draw(scene))) : Json(nullptr)}};
}

Json frames_of(const MachineFrames& machine, const Views& views, const Wording& w)
{
    Json list = Json::array();
    for (const MachineFrame& frame : machine.frames) {
        Json json = {{"range", to_word(frame.range)}, {"movement", to_word(frame.movement)}};
        json.update(json_of(frame.scene, frame_said(frame.scene.at, w.length(frame.scene.printed_as, frame.scene.length), w), views));
        list.push_back(std::move(json));
    }
    return list;
}

std::string said(const ExtremeFrame& frame, const Wording& w)
{
    const MachineScene& scene = frame.scene;
    switch (frame.of) {
    case ExtremeOf::shortest: return shortest_said(w.length(Rounded::shortest, scene.length), scene.at, w);
    case ExtremeOf::longest: return longest_said(frame.range.value(), w.length(Rounded::longest, scene.length), scene.at, w);
    case ExtremeOf::tractor_angle: return angle_said(End::tractor, frame.range.value(), scene.angles[End::tractor], scene.at, w);
    case ExtremeOf::implement_angle: break;
    }
    return angle_said(End::implement, frame.range.value(), scene.angles[End::implement], scene.at, w);
}

Json extremes_of(const MachineFrames& machine, const Views& views, const Wording& w)
{
    Json list = Json::array();
    for (const ExtremeFrame& frame : machine.extremes) {
        Json json = {{"of", to_word(frame.of)}, {"range", frame.range ? Json(to_word(*frame.range)) : Json(nullptr)}};
        json.update(json_of(frame.scene, said(frame, w), views));
        list.push_back(std::move(json));
    }
    return list;
}

Json json_of(const MachineFrames& machine, bool is_drawn, const Fonts& fonts, const Wording& w)
{
    Json json = {{"tractor", machine.tractor.empty() ? Json(nullptr) : Json(machine.tractor)}, {"kind", machine.mounted ? "mounted" : "trailed"}};
    if (machine.unreadable || !is_drawn) {
        json.update(Json{{"says", machine.unreadable ? why_no_frames(*machine.unreadable, w) : only_first_drawn(most_machines_drawn, w)}, {"frames", Json::array()}, {"extremes", Json::array()}});
        return json;
    }
    const Views views{ScreenScenes(fonts, machine, Seen::from_left, w), machine.mounted ? std::nullopt : std::optional<ScreenScenes>(std::in_place, fonts, machine, Seen::from_above, w)};
    json.update(Json{{"says", nullptr}, {"frames", frames_of(machine, views, w)}, {"extremes", extremes_of(machine, views, w)}});
    return json;
}

}  // namespace

std::string machine_frames_json_of(const std::vector<MachineFrames>& machines, const FontFiles& files, JsonLayout layout, const Wording& w)
{
    const Fonts fonts(files);
    Json fits = Json::array();
    for (const MachineFrames& machine : machines) fits.push_back(json_of(machine, fits.size() < most_machines_drawn, fonts, w));
    return dumped({{"fits", std::move(fits)}}, layout);
}

}  // namespace shaftcut

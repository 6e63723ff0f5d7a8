#include "answers.hpp"

#include "answer_parts.hpp"
#include "parse.hpp"

namespace shaftcut {

std::optional<Wishes> wishes_of(const Desk& desk, const Target& target, bool fonts)
{
    const std::string units = field(target, "units"), paper = field(target, "paper");
    if (!units.empty() && units != "mm" && units != "in") return std::nullopt;
    if (!paper.empty() && paper != "a4" && paper != "letter") return std::nullopt;
    Wishes wishes;
    wishes.units = units.empty() ? desk.units : units == "mm" ? Units::mm : Units::in;
    wishes.paper = paper.empty() ? desk.paper : paper == "a4" ? Paper::a4 : Paper::letter;
    if (fonts) wishes.fonts = desk.fonts;
    return wishes;
}

Reply unprocessable(const Problems& problems) { return json_reply(faults_json(problems), 422); }

Reply unprocessable(const std::string& why) { return json_reply("{\"faults\":[],\"says\":" + json_text(why) + "}", 422); }

Reply catalogue_reply(const Desk& desk, const Request& request, const Target& target)
{
    auto wishes = wishes_of(desk, target);
    if (!wishes) return no_reply(NoReply::unknown_field, desk.w);
    wishes->json = JsonLayout::one_line;
    const bool offers_pairing = desk.network && request.door == Door::here;
    std::string json = desk.engine.bench_catalogue(*wishes);
    json.insert(1, std::string("\"printer\":") + (desk.print ? "true" : "false") + ",\"pairing\":" + (offers_pairing ? "true" : "false") + ",\"paper\":\"" + (desk.paper == Paper::letter ? "letter\"," : "a4\","));
    return json_reply(std::move(json));
}

Reply answer_reply(const Desk& desk, const Request& request, const Target& target)
{
    return of_job(desk, request, target, Drawn::no, [](const Answer& answer, Wishes& wishes) {
        wishes.json = JsonLayout::one_line;
        return json_reply(documents(answer, {Format::json}, wishes).front().bytes);
    });
}

Reply view_reply(const Desk& desk, const Request& request, const Target& target)
{
    return of_job(desk, request, target, Drawn::no, [](const Answer& answer, Wishes& wishes) {
        wishes.json = JsonLayout::one_line;
        return json_reply(view_json(answer, wishes));
    });
}

Reply machine_reply(const Desk& desk, const Request& request, const Target& target)
{
    auto wishes = wishes_of(desk, target, true);
    if (!wishes) return no_reply(NoReply::unknown_field, desk.w);
    wishes->json = JsonLayout::one_line;
    const MachineFramesAnswer answer = desk.engine.machine_frames({job_file, request.body}, *wishes);
    return answer.problems.empty() ? json_reply(machine_frames_json(answer, *wishes)) : unprocessable(answer.problems);
}

Reply choose_reply(const Desk& desk, const Request& request, const Target& target)
{
    const auto wishes = wishes_of(desk, target);
    if (!wishes) return no_reply(NoReply::unknown_field, desk.w);
    const ChooseAnswer answer = desk.engine.choose({job_file, request.body}, *wishes);
    return answer.choices ? json_reply(documents(answer, {Format::json}, *wishes).front().bytes) : unprocessable(answer.problems);
}

Reply after_cut_reply(const Desk& desk, const Request& request, const Target& target)
{
    const auto wishes = wishes_of(desk, target);
    const auto bytes = parse_whole(field(target, "job-bytes"), 0, static_cast<std::int64_t>(request.body.size()));
    const auto* of_job = std::get_if<std::int64_t>(&bytes);
    if (!wishes || !of_job) return no_reply(NoReply::unknown_field, desk.w);
    const auto at = static_cast<std::size_t>(*of_job);
    const AfterCutAnswer answer = desk.engine.after_cut({job_file, request.body.substr(0, at)}, {"measured", request.body.substr(at)}, *wishes);
    return answer.shaft ? json_reply(documents(answer, {Format::json}, *wishes).front().bytes) : unprocessable(answer.problems);
}

}  // namespace shaftcut

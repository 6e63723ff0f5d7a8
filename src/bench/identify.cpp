#include "answer_parts.hpp"

namespace shaftcut {
namespace {

constexpr const char* measures_file = "measures";

template <class Made>
Reply of_measures(const Desk& desk, const Request& request, const Target& target, Drawn drawn, const Made& made)
{
    const auto wishes = wishes_of(desk, target, drawn == Drawn::yes);
    if (!wishes) return no_reply(NoReply::unknown_field, desk.w);
    const IdentifyAnswer answer = desk.engine.identify({measures_file, request.body}, *wishes);
    return answer.shaft ? made(answer, *wishes) : unprocessable(answer.problems);
}

}  // namespace

Reply identify_reply(const Desk& desk, const Request& request, const Target& target)
{
    return of_measures(desk, request, target, Drawn::no, [](const IdentifyAnswer& answer, const Wishes& wishes) { return json_reply(documents(answer, {Format::json}, wishes).front().bytes); });
}

Reply identify_sheet_reply(const Desk& desk, const Request& request, const Target& target)
{
    return of_measures(desk, request, target, Drawn::yes, [](const IdentifyAnswer& answer, const Wishes& wishes) { return saved(documents(answer, {Format::pdf}, wishes).front(), Format::pdf); });
}

Reply identify_job_reply(const Desk& desk, const Request& request, const Target& target)
{
    return of_measures(desk, request, target, Drawn::no, [](const IdentifyAnswer& answer, const Wishes&) {
        Document job = job_of(answer);
        Reply reply{200, "application/xml", std::move(job.bytes)};
        reply.file_name = std::move(job.name);
        return reply;
    });
}

}  // namespace shaftcut

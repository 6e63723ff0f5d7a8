// What the replies made of the engine's answers share.
#pragma once

#include "answers.hpp"

namespace shaftcut {

// What faults call the job's file.
inline constexpr const char* job_file = "job";

enum class Drawn { no, yes };

// 422.
Reply unprocessable(const Problems& problems);
Reply unprocessable(const std::string& why);

// A PDF or a workbook, under its file's name.
Reply saved(Document document, Format format);

// The reply that `made` gives of the answer to the job in the body, by the wishes of the target; or why there is none.
template <class Made>
Reply of_job(const Desk& desk, const Request& request, const Target& target, Drawn drawn, const Made& made)
{
    auto wishes = wishes_of(desk, target, drawn == Drawn::yes);
    if (!wishes) return no_reply(NoReply::unknown_field, desk.w);
    const Answer answer = desk.engine.answer({job_file, request.body}, *wishes);
    return answer.work_order ? made(answer, *wishes) : unprocessable(answer.problems);
}

}  // namespace shaftcut

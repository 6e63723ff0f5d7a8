#include "routes.hpp"

#include <array>

#include "answers.hpp"

namespace shaftcut {
namespace {

// For the machine's own page: the code to type on a tablet, and who is paired.
Reply pairing_reply(const Desk& desk, House& house, const Request&)
{
    if (!house.pairing) return no_reply(NoReply::no_such_place, desk.w);
    const Pairing::Code code = house.pairing->code();
    std::string tablets;
    for (const Tablet& tablet : house.pairing->tablets())
        tablets += (tablets.empty() ? "{\"number\":" : ",{\"number\":") + std::to_string(tablet.number) + ",\"paired\":" + json_text(day_of(tablet.paired)) + ",\"client\":" + json_text(tablet.client) + "}";
    return json_reply("{\"address\":" + json_text(house.address) + ",\"code\":" + json_text(code.digits) + ",\"seconds\":" + std::to_string(code.seconds) + ",\"tablets\":[" + tablets + "]}");
}

Reply pair_reply(const Desk& desk, House& house, const Request& request)
{
    if (!house.pairing) return no_reply(NoReply::no_such_place, desk.w);
    auto paired = house.pairing->pair(code_in(request.body), request.client);
    if (const auto* why = std::get_if<Pairing::NotLetIn>(&paired)) return no_reply(*why == Pairing::NotLetIn::wrong_code ? NoReply::wrong_code : NoReply::fault, desk.w);
    Reply reply = json_reply("{\"paired\":true}");
    reply.cookie = std::move(std::get<std::string>(paired));
    return reply;
}

constexpr std::string_view of_words = "units", of_paper = "units,paper", of_quote = "units,paper,discount,service,quantity,alternatives";

constexpr Route asked(std::string_view path, std::string_view fields, Worked reply) { return {Method::post, path, Entry::paired, fields, reply}; }

constexpr std::array table{
    Route{Method::get, "/pairing", Entry::here, "", pairing_reply},
    Route{Method::post, "/pair", Entry::anyone, "", pair_reply},
    Route{Method::get, "/catalogue", Entry::paired, of_words, catalogue_reply},
    asked("/answer", of_words, answer_reply),
    asked("/view", of_words, view_reply),
    asked("/machine", of_words, machine_reply),
    asked("/choose", of_words, choose_reply),
    asked("/after-cut", "units,job-bytes", after_cut_reply),
    asked("/cut-sheet", of_paper, cut_sheet_reply),
    asked("/work-order", of_paper, work_order_reply),
    asked("/tag", of_paper, tag_reply),
    asked("/quote", of_quote, quote_reply),
    asked("/quote-sheet", of_quote, quote_sheet_reply),
    asked("/quote-book", of_quote, quote_book_reply),
    asked("/identify", of_words, identify_reply),
    asked("/identify-sheet", of_paper, identify_sheet_reply),
    asked("/identify-job", of_words, identify_job_reply),
    Route{Method::post, "/print", Entry::paired, "units,paper,what", print_reply, true},
};

}  // namespace

std::span<const Route> routes() { return table; }

}  // namespace shaftcut

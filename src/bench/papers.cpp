#include "answer_parts.hpp"

namespace shaftcut {
namespace {

Reply paper_of_job(const Desk& desk, const Request& request, const Target& target, Format format)
{
    return of_job(desk, request, target, Drawn::yes, [&](const Answer& answer, const Wishes& wishes) { return saved(documents(answer, {format}, wishes).front(), format); });
}

// The tag comes behind the sheet.
Document tag_of(const Answer& answer, Wishes wishes)
{
    wishes.tag = true;
    return documents(answer, {Format::pdf}, wishes).back();
}

QuoteWishes quote_wishes(const Target& target)
{
    QuoteWishes wishes;
    wishes.discount = field(target, "discount");
    wishes.services = fields(target, "service");
    wishes.quantities = fields(target, "quantity");
    wishes.alternatives = field(target, "alternatives") == "yes";
    return wishes;
}

template <class Made>
Reply of_quote(const Desk& desk, const Request& request, const Target& target, Drawn drawn, const Made& made)
{
    const auto wishes = wishes_of(desk, target, drawn == Drawn::yes);
    if (!wishes) return no_reply(NoReply::unknown_field, desk.w);
    const QuoteAnswer answer = desk.engine.quote({job_file, request.body}, *wishes, quote_wishes(target));
    if (!answer.why_not.empty()) return unprocessable(answer.why_not);
    // A list of orders is asked for by the command, which makes a file for each customer.
    return answer.papers.size() == 1 ? made(answer.papers.front(), *wishes) : unprocessable(answer.problems);
}

Reply paper_of_quote(const Desk& desk, const Request& request, const Target& target, Format format)
{
    return of_quote(desk, request, target, Drawn::yes, [&](const QuotePaper& paper, const Wishes& wishes) { return saved(documents(paper, {format}, wishes).front(), format); });
}

Reply printed(const Desk& desk, const Document& document)
{
    return desk.print(document) ? json_reply(says_json(sent_to_printer(desk.w))) : no_reply(NoReply::not_printed, desk.w);
}

}  // namespace

Reply saved(Document document, Format format)
{
    const bool is_pdf = format == Format::pdf;
    Reply reply{200, is_pdf ? "application/pdf" : "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", std::move(document.bytes)};
    reply.file_name = std::move(document.name);
    return reply;
}

Reply cut_sheet_reply(const Desk& desk, const Request& request, const Target& target) { return paper_of_job(desk, request, target, Format::pdf); }

Reply work_order_reply(const Desk& desk, const Request& request, const Target& target) { return paper_of_job(desk, request, target, Format::xlsx); }

Reply tag_reply(const Desk& desk, const Request& request, const Target& target)
{
    return of_job(desk, request, target, Drawn::yes, [](const Answer& answer, const Wishes& wishes) {
        const std::string why = why_no_tag(answer);
        return why.empty() ? saved(tag_of(answer, wishes), Format::pdf) : unprocessable(why);
    });
}

Reply quote_reply(const Desk& desk, const Request& request, const Target& target)
{
    return of_quote(desk, request, target, Drawn::no, [](const QuotePaper& paper, const Wishes& wishes) { return json_reply(documents(paper, {Format::json}, wishes).front().bytes); });
}

Reply quote_sheet_reply(const Desk& desk, const Request& request, const Target& target) { return paper_of_quote(desk, request, target, Format::pdf); }

Reply quote_book_reply(const Desk& desk, const Request& request, const Target& target) { return paper_of_quote(desk, request, target, Format::xlsx); }

Reply print_reply(const Desk& desk, const Request& request, const Target& target)
{
    if (!desk.print) return no_reply(NoReply::no_printer, desk.w);
    const std::string what = field(target, "what");
    if (what != "cut-sheet" && what != "tag") return no_reply(NoReply::not_to_print, desk.w);
    return of_job(desk, request, target, Drawn::yes, [&](const Answer& answer, const Wishes& wishes) {
        if (what == "cut-sheet") return printed(desk, documents(answer, {Format::pdf}, wishes).front());
        const std::string why = why_no_tag(answer);
        return why.empty() ? printed(desk, tag_of(answer, wishes)) : unprocessable(why);
    });
}

}  // namespace shaftcut

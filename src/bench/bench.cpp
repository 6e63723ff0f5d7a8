#include "bench.hpp"

#include <algorithm>
#include <memory>
#include <new>

#include "page_files.hpp"
#include "routes.hpp"

namespace shaftcut {
namespace {

const Route* find_route(const std::string& path)
{
    const auto found = std::find_if(routes().begin(), routes().end(), [&](const Route& route) { return route.path == path; });
    return found == routes().end() ? nullptr : &*found;
}

// A field that may not stand in this query. All but services and quantities stand once.
bool has_unknown_field(const Target& target, std::string_view known)
{
    const std::string among = "," + std::string(known) + ",";
    return std::any_of(target.query.begin(), target.query.end(), [&](const auto& one) {
        const bool again = one.first != "service" && one.first != "quantity" && fields(target, one.first).size() > 1;
        return again || one.first.find(',') != std::string::npos || among.find("," + one.first + ",") == std::string::npos;
    });
}

Reply wrong_method(Method right, const Wording& w)
{
    Reply reply = no_reply(NoReply::wrong_method, w);
    reply.allow = right == Method::get ? "GET" : "POST";
    return reply;
}

// With the words of the screen on which a tablet is paired.
Reply not_paired(const Wording& w)
{
    Reply reply = no_reply(NoReply::not_paired, w);
    std::string words;
    for (const auto& [key, text] : pairing_words(w)) words += (words.empty() ? "" : ",") + json_text(key) + ":" + json_text(text);
    reply.body = "{\"says\":" + json_text(say(NoReply::not_paired, w)) + ",\"words\":{" + words + "}}";
    return reply;
}

bool may_enter(const Route& route, const Request& request, const House& house)
{
    if (request.door == Door::here || route.entry == Entry::anyone) return true;
    return route.entry == Entry::paired && house.pairing && house.pairing->is_paired(request);
}

// What a document cannot be made for is a sentence.
Reply done(Worked reply, const Desk& desk, const Request& request, const Target& target)
{
    try {
        return reply(desk, request, target);
    } catch (const std::bad_alloc&) {
        return no_reply(NoReply::fault, desk.w);
    } catch (const std::logic_error&) {
        return no_reply(NoReply::fault, desk.w);
    } catch (const std::exception& why) {
        return json_reply(says_json(why.what()), 500);
    }
}

Reply page_reply(const PageFile& file, bool packed)
{
    Reply reply{200, std::string(type_of(file)), std::string(packed ? file.packed : file.bytes)};
    reply.packed = packed;
    return reply;
}

}  // namespace

std::variant<Reply, ReplyWork> Bench::admit(Request request)
{
    if (!house_.rate.allows(request.client, house_.seconds())) return refusal(NoReply::too_often);
    if (const auto why = refused_by_guard(request, house_.names)) return refusal(*why);
    return routed(std::move(request));
}

std::variant<Reply, ReplyWork> Bench::routed(Request request)
{
    auto target = parse_target(request.target);
    if (!target) return refusal(NoReply::broken);
    if (const PageFile* file = page_file(target->path))
        return request.method == Method::get ? page_reply(*file, takes_packed(request)) : wrong_method(Method::get, desk_.w);
    const Route* const route = find_route(target->path);
    if (!route || (route->entry == Entry::here && request.door != Door::here)) return refusal(NoReply::no_such_place);
    if (!may_enter(*route, request, house_)) return not_paired(desk_.w);
    if (request.method != route->method) return wrong_method(route->method, desk_.w);
    if (has_unknown_field(*target, route->fields)) return refusal(NoReply::unknown_field);
    if (const auto* at_once = std::get_if<AtOnce>(&route->reply)) return (*at_once)(desk_, house_, request);
    const auto asked = std::make_shared<const std::pair<Request, Target>>(std::move(request), std::move(*target));
    return ReplyWork{[reply = std::get<Worked>(route->reply), asked, this] { return done(reply, desk_, asked->first, asked->second); }, route->waits};
}

Reply Bench::respond(Request request)
{
    auto admitted = admit(std::move(request));
    if (auto* reply = std::get_if<Reply>(&admitted)) return std::move(*reply);
    return std::get<ReplyWork>(admitted).make();
}

}  // namespace shaftcut

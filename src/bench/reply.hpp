// What a request of the bench page is answered with, and the headers that every answer has.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "bench/reply_words.hpp"
#include "request.hpp"

namespace shaftcut {

// `type`: of the body. `file_name`: of a document that is to be saved; `cookie`: to be set; `allow`: the method that would be right. None of
// them is a client's text: headers_of() drops a file's name that holds anything but letters, digits, dots, hyphens and underscores.
struct Reply {
    int status = 200;
    std::string type;
    std::string body;
    std::string file_name = {}, cookie = {}, allow = {};
    bool packed = false;  // the body is, by gzip
};

// Every header of the reply but its length and whether the connection stays, in the order in which they are sent.
std::vector<Header> headers_of(const Reply& reply);

Reply json_reply(std::string json, int status = 200);

// {"says": "…"}, with the status that belongs to it.
Reply no_reply(NoReply why, const Wording& w);

// A text between quotes as JSON takes it; bytes that are not UTF-8 become U+FFFD.
std::string json_text(std::string_view text);
// {"says": text}
std::string says_json(std::string_view text);

}  // namespace shaftcut

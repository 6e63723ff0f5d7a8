// What the bench page's server says beside the answers: why a request is not answered, and how a tablet is let in.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "wording.hpp"

namespace shaftcut {

// Why there is no answer.
enum class NoReply {
    broken,            // 400: no request that could be read
    unknown_field,     // 400: of its query
    not_paired,        // 401
    other_name,        // 403: asked under a name that is not this server's
    other_page,        // 403: asked by another site's page
    not_xml,           // 403
    wrong_code,        // 403
    no_such_place,     // 404
    wrong_method,      // 405
    too_slow,          // 408
    no_length,         // 411
    too_long,          // 413
    too_often,         // 429
    long_header,       // 431
    fault,             // 500
    no_printer,        // 404
    not_printed,       // 500
    not_to_print,      // 400: what is to be printed is not said
    busy               // 503
};
std::string say(NoReply why, const Wording& w);

std::string sent_to_printer(const Wording& w);

// Texts of the screen on which a tablet is let in, by their keys.
std::vector<std::pair<std::string, std::string>> pairing_words(const Wording& w);

}  // namespace shaftcut

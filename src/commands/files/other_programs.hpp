// What the bench page's command has other programs do: print a document, open an address. Neither goes through a shell.
#pragma once

#include <string>

#include "shaftcut/engine/answer.hpp"

namespace shaftcut {

// Hands the document to CUPS' lp for this printer. False where it did not take it within 20 seconds.
bool print_document(const std::string& printer, const Document& document);
// A name that CUPS gives: letters, digits, dots, hyphens and underscores, 127 at most, no hyphen first, which would be an option.
bool is_printer_name(const std::string& name);

// Has the desktop open the address, and waits for nothing.
void open_address(const std::string& address);

// What the bench served on this machine at the port says to GET /pairing: a body of JSON; empty where nobody answers. `status`: 200, 404.
struct Called {
    int status = 0;  // 0: nobody answers
    std::string body;
};
Called call_bench(unsigned port);

}  // namespace shaftcut

// The engine's answers as replies: each takes the body of a request and what its target asks for.
//
// A file with faults is answered with 422 and {"faults": […]}; what cannot be asked of a sound one with 422, no fault and a sentence.
#pragma once

#include "desk.hpp"
#include "reply.hpp"

namespace shaftcut {

// By units= and paper= of the target; nothing where they are none of these. `fonts`: whether something is drawn.
std::optional<Wishes> wishes_of(const Desk& desk, const Target& target, bool fonts = false);

// What a form offers to choose from.
Reply catalogue_reply(const Desk& desk, const Request& request, const Target& target);

// JSON: what `shaftcut cut --formats json --output -` writes, what the screen shows of it beside that, the machine as it moves.
Reply answer_reply(const Desk& desk, const Request& request, const Target& target);
Reply view_reply(const Desk& desk, const Request& request, const Target& target);
Reply machine_reply(const Desk& desk, const Request& request, const Target& target);
// JSON as the commands write it into files.
Reply choose_reply(const Desk& desk, const Request& request, const Target& target);
Reply after_cut_reply(const Desk& desk, const Request& request, const Target& target);
Reply quote_reply(const Desk& desk, const Request& request, const Target& target);

// Of the measures of a shaft: JSON as the command writes it into a file, the sheet, and the job as far as they tell it.
Reply identify_reply(const Desk& desk, const Request& request, const Target& target);
Reply identify_sheet_reply(const Desk& desk, const Request& request, const Target& target);
Reply identify_job_reply(const Desk& desk, const Request& request, const Target& target);

// Documents, each under its file's name.
Reply cut_sheet_reply(const Desk& desk, const Request& request, const Target& target);
Reply work_order_reply(const Desk& desk, const Request& request, const Target& target);
Reply tag_reply(const Desk& desk, const Request& request, const Target& target);
Reply quote_sheet_reply(const Desk& desk, const Request& request, const Target& target);
Reply quote_book_reply(const Desk& desk, const Request& request, const Target& target);
// A cut sheet or a tag to the workshop's printer.
Reply print_reply(const Desk& desk, const Request& request, const Target& target);

}  // namespace shaftcut

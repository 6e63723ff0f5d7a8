// What every command that makes documents does with them.
#pragma once

#include <exception>
#include <ostream>
#include <string>
#include <vector>

#include "call/command.hpp"
#include "call/options.hpp"
#include "commands/call_words.hpp"
#include "commands/file_faults.hpp"

namespace shaftcut {

// Makes the folder of the documents where it is missing, or removes what calls that were killed left in it (remove_abandoned()); nothing is
// done for standard output. Answered, or unwritable with the reason said.
Outcome make_folder(const CommonOptions& options, Console& console);

// Unwritable, with the reason said, where documents of these names could not be written now (names_fault()); nothing is
// checked for standard output.
Outcome check_names(const std::vector<std::string>& names, const CommonOptions& options, Console& console);

// Writes one order's documents as write_documents() does, says `text` (for people), then the fault or each file written on a line as `wrote_line` says.
Outcome hand_out(const std::vector<Document>& documents, const std::string& text, const CommonOptions& options, Console& console, WroteLine wrote_line = WroteLine::below);

// Writes JSON to standard output.
Outcome hand_out_json(const std::string& json, Console& console);

// With --replace, the documents of these names that are not among those just made (by supersede.hpp), saying so of each: what an earlier call wrote
// would lie beside them as if it belonged to them, a cut sheet beside a refusal.
Outcome supersede_others(const std::vector<std::string>& names, const std::vector<Document>& made, const CommonOptions& options, Console& console);

// Says the fault. Unwritable.
Outcome report(const Unwritable& fault, Console& console);

// What an exception says, as a sentence for people where it is none itself.
std::string sentence_of(const std::exception& fault, const Wording& w);

// Where documents of `whose` cannot be made (no memory, no font, no room for temporary files) that is said, and others are still made.
template <class HandOut>
Outcome or_report(const std::string& whose, Console& console, const HandOut& hand_out)
{
    try {
        return hand_out();
    } catch (const std::exception& fault) {
        console.err << whose << ": " << sentence_of(fault, console.wording) << "\n";
        return Outcome::unwritable;
    }
}

}  // namespace shaftcut

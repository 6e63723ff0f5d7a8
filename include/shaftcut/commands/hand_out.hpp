// What every command that makes documents does with them.
#pragma once

#include "shaftcut/commands/command.hpp"
#include "shaftcut/commands/options.hpp"

namespace shaftcut {

// Makes the folder of the documents where it is missing, or removes what calls that were killed left in it (remove_abandoned()); nothing is
// done for standard output. Answered, or unwritable with the reason said.
Outcome make_folder(const CommonOptions& options, Console& console);

// Unwritable, with the reason said, where documents of these names could not be written now (names_fault()); nothing is
// checked for standard output.
Outcome check_names(const std::vector<std::string>& names, const CommonOptions& options, Console& console);

// Writes one order's documents as write_documents() does, says `text` (for people), then the fault or each file written.
Outcome hand_out(const std::vector<Document>& documents, const std::string& text, const CommonOptions& options, Console& console);

// Writes JSON to standard output.
Outcome hand_out_json(const std::string& json, Console& console);

// Removes those of these documents that exist in the options' folder and are plain files, and says so.
Outcome remove_documents(const std::vector<std::string>& names, const CommonOptions& options, Console& console);

// What an exception says, as a sentence for people where it is none itself.
std::string sentence_of(const std::exception& fault);

}  // namespace shaftcut

// Writing documents so that under a final name there is always the old file or the whole new one.
#pragma once

#include <string>
#include <vector>

#include "shaftcut/documents/documents.hpp"

namespace shaftcut {

enum class Existing { keep, replace };

// Writes every document of one order into `folder`: each to a temporary file beside its target, synced, then given its name;
// the folder is synced last. Nothing gets a name before all are written. Returns an empty string, or a sentence that says
// which file could not be written and why: a target exists and is to be kept, is no plain file, no space, no permission.
std::string write_documents(const std::string& folder, const std::vector<Document>& documents, Existing existing);

}  // namespace shaftcut

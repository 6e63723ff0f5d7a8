// The operating lengths of a machine as documents: one line each in a table, as documents.hpp has it for a cut.
#pragma once

#include <optional>

#include "shaftcut/documents/documents.hpp"
#include "shaftcut/documents/terminal.hpp"

namespace shaftcut {

// Named ORDER-lengths.pdf, ORDER-lengths.json, ORDER-lengths.png, ORDER-lengths.svg; pictures show the first machine. There
// is no workbook. `order` must hold a machine's geometry.
std::optional<Document> lengths_document_of(const WorkOrder& order, Format format, Paper paper);

// Whether lengths can be written in this format.
bool lengths_come_as(Format format);

// At most 80 columns.
std::string lengths_text(const WorkOrder& order, Colour colour);

}  // namespace shaftcut

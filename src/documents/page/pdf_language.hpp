// Says in a finished PDF which language it is in, which cairo 1.16 cannot: as an incremental update (ISO 32000-1, 7.5.6)
// that repeats the document's catalogue with a /Lang entry. Checked by pdfinfo and pdftotext reading the result.
#pragma once

#include <string>
#include <string_view>

namespace shaftcut {

// `pdf`: a PDF with a plain cross-reference table, as cairo writes PDF 1.4. `language`: BCP 47, such as "en".
// Throws std::invalid_argument where the catalogue or the table is not found.
std::string with_language(std::string pdf, std::string_view language);

}  // namespace shaftcut

// What the sheet of a machine's operating lengths says.
#pragma once

#include <string>

#include "wording.hpp"

namespace shaftcut::geometry_sheet {

std::string document_title(const std::string& order, const Wording& w);

}  // namespace shaftcut::geometry_sheet

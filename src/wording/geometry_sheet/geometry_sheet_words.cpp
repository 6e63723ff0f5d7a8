#include "geometry_sheet/geometry_sheet_words.hpp"

namespace shaftcut::geometry_sheet {

std::string document_title(const std::string& order, const Wording& w) { return w("Operating lengths {order}", {{"order", order}}); }

}  // namespace shaftcut::geometry_sheet

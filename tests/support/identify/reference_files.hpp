// Catalogues and measured shafts in the form of the files that the reference answers were made from. Only for files that are known to be right.
#pragma once

#include <string>

#include "shaftcut/trade/data/measures.hpp"

namespace shaftcut::test {

Catalogue read_reference_catalogue(const std::string& path);
Measures read_reference_measures(const std::string& path);

}  // namespace shaftcut::test

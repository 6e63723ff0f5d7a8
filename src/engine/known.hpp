// What the configuration says, shared by an engine and the runs that it has begun.
#pragma once

#include <string>

#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/firm.hpp"

namespace shaftcut {

struct Known {
    Catalogue catalogue;
    Workshop workshop;
    Firm firm;
};

// That of a list: its file's, without folder and last suffix.
std::string list_name(const std::string& file);

}  // namespace shaftcut

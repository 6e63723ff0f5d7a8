// What the configuration says, shared by an engine and the runs that it has begun.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lists/order_columns.hpp"
#include "shaftcut/documents/form/measuring_form.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "shaftcut/trade/data/firm.hpp"
#include "shaftcut/trade/data/prices.hpp"

namespace shaftcut {

struct Known {
    Catalogue catalogue;
    Workshop workshop;
    Firm firm;
    std::optional<Prices> prices = {};
    std::vector<ListMap> lists = {};
};

// A blank form of this workshop; `series`: null for one of any series.
MeasuringForm form_for(const Series* series, OnMachine machine, const Known& known, Units units);

// The map of this name; nothing where there is none.
const ListMap* find_list_map(const Known& known, const std::string& name);

// That of a list: its file's, without folder and last suffix.
std::string list_name(const std::string& file);

}  // namespace shaftcut

// What the engine says beside documents and faults of files.
#pragma once

#include <string>
#include <vector>

#include "reading/said.hpp"
#include "shaftcut/trade/data/catalogue.hpp"
#include "wording.hpp"

namespace shaftcut {

// Of a job that is asked for the lengths of a machine.
Said say_no_machine(const Wording& w);
// Of a refused job, and what was measured after its shaft was cut.
Said say_no_cut(const Wording& w);
// Of --list. `known`: the maps that there are.
std::string no_such_list_map(const std::string& name, const std::vector<std::string>& known, const Wording& w);
// Of a series that a form is asked for.
std::string no_such_series(const UnknownName& found, const Wording& w);

// Pieces on bars that are cut differently, and how many a sheet or workbook holds.
std::string too_many_for_a_sheet(std::size_t pieces, std::size_t most, const Wording& w);
std::string too_many_labels(std::size_t labels, std::size_t most, const Wording& w);

// Of a PDF that many orders share.
std::string batch_saw_title(const std::string& list, const Wording& w);
std::string batch_saw_subject(const Wording& w);
std::string labels_title(const std::string& list, const Wording& w);
std::string labels_subject(const Wording& w);

// The configuration in lines.
std::string connection_lines(const Connection& connection, const Wording& w);
std::string series_lines(const Series& series, const Wording& w);

}  // namespace shaftcut

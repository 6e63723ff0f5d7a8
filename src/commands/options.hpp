// The options that mean the same in every command, bound once to the fields of a plain struct.
#pragma once

#include <algorithm>
#include <boost/program_options.hpp>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/engine/wishes.hpp"

namespace shaftcut {

struct CommonOptions {
    std::string output = ".";             // a folder, or "-" for standard output
    std::string config;                   // the folder of series.xml and workshop.xml; empty: there is none
    std::vector<Format> formats;          // each once, in the order of Format
    std::optional<Units> units;           // of the documents; nothing: the job's own
    Paper paper = Paper::a4;
    bool replace = false;
    bool to_standard_output() const { return output == "-"; }
    bool asks_for(Format format) const { return std::find(formats.begin(), formats.end(), format) != formats.end(); }
};

// Those of a document that is a file.
std::vector<Format> file_formats();

// Describes the common options, storing what the command line says into `text`.
struct CommonOptionTexts {
    std::string output = ".", config, formats = "pdf,xlsx,json", units, paper = "a4";
    bool replace = false;
    std::string offered = "pdf, xlsx, json, png and svg";  // the formats that the command writes, for its help
    std::string default_units = "the job's own";           // for its help
    std::string no_standard_output = {};                      // what is said of --output -; empty: JSON goes there
    std::string units_of = "what is written";              // what --units is the unit of, for its help
};
boost::program_options::options_description common_options(CommonOptionTexts& texts);
// Those of a command that writes no documents.
boost::program_options::options_description listing_options(CommonOptionTexts& texts);

// What the command line says, or the fault in words.
template <class T>
struct Checked {
    T value{};
    std::string fault = {};
};

// Turns the texts into options.
Checked<CommonOptions> checked(const CommonOptionTexts& texts);

// Parses `arguments` by `options`; what is no option is a file.
Checked<std::vector<std::string>> parse_arguments(const std::vector<std::string>& arguments, const boost::program_options::options_description& options);

// The version of Boost that the program was built with: "1.74.0".
std::string boost_built_with();

}  // namespace shaftcut

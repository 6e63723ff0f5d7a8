// The options that mean the same in every command, bound once to the fields of a plain struct.
#pragma once

#include <algorithm>
#include <boost/program_options.hpp>
#include <optional>
#include <string>
#include <vector>

#include "shaftcut/documents/documents.hpp"

namespace shaftcut {

struct CommonOptions {
    std::string output = ".";             // a folder, or "-" for standard output
    std::string config;                   // the folder of series.xml and workshop.xml; empty: there is none
    std::vector<Format> formats;
    std::optional<Units> units;           // of the documents; nothing: the job's own
    Paper paper = Paper::a4;
    bool replace = false;
    bool to_standard_output() const { return output == "-"; }
};

// Describes the common options, storing what the command line says into `text`.
struct CommonOptionTexts {
    std::string output = ".", config, formats = "pdf,xlsx,json", units, paper = "a4";
    bool replace = false;
    std::string offered = "pdf, xlsx, json, png and svg";  // the formats that the command writes, for its help
    std::string default_units = "the job's own";           // for its help
    std::string units_of = "what is written";              // what --units is the unit of, for its help
};
boost::program_options::options_description common_options(CommonOptionTexts& texts);
// Those of a command that writes no documents.
boost::program_options::options_description listing_options(CommonOptionTexts& texts);

// Turns the texts into options: the options, or the fault in words.
struct CheckedOptions {
    CommonOptions options;
    std::string fault;
};
CheckedOptions checked(const CommonOptionTexts& texts);

// Parses `arguments` by `options`, what is no option into `files`. Empty, or the fault in words.
std::string parse_arguments(const std::vector<std::string>& arguments, const boost::program_options::options_description& options,
                            std::vector<std::string>& files);

// The version of Boost that the program was built with: "1.74.0".
std::string boost_built_with();

}  // namespace shaftcut

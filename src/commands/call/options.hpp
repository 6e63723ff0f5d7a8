// The options that mean the same in every command, bound once to the fields of a plain struct.
#pragma once

#include <algorithm>
#include <boost/program_options.hpp>
#include <optional>
#include <string>
#include <vector>

#include "commands/help_words.hpp"
#include "shaftcut/engine/answer.hpp"

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
// Those in which answers to the question come, as words.
std::vector<std::string> offered_formats(Question question);

// Describes the common options of a command, storing what the command line says.
struct CommonOptionTexts {
    CommandName command = CommandName::cut;
    UnitsText units_text = UnitsText::of_job;  // for its help
    std::vector<std::string> offered = {};     // the formats that it writes, for its help
    std::string output = ".", config = {}, formats = "pdf,xlsx,json", units = {}, paper = "a4";
    bool replace = false;
    bool json_to_standard_output = true;       // by --output -
    bool reads_prices = false;                 // prices.csv of the configuration, too
};
boost::program_options::options_description common_options(CommonOptionTexts& texts, const Wording& w);
// Those of a command that writes no documents.
boost::program_options::options_description listing_options(CommonOptionTexts& texts, const Wording& w);

// What the command line says, or the fault in words.
template <class T>
struct Checked {
    T value{};
    std::string fault = {};
};

// Those of a command that writes into the configuration, in the units of what stands there.
boost::program_options::options_description adding_options(CommonOptionTexts& texts, const Wording& w);

// Turns the texts into options.
Checked<CommonOptions> checked(const CommonOptionTexts& texts, const Wording& w);

// Parses `arguments` by `options`; what is no option is a file.
Checked<std::vector<std::string>> parse_arguments(const std::vector<std::string>& arguments, const boost::program_options::options_description& options, const Wording& w);

// Where the documents of a list of orders or pieces cannot be named after its file; else empty.
std::string list_name_fault(Question question, const std::string& path, const Wording& w);

// The version of Boost that the program was built with: "1.74.0".
std::string boost_built_with();

}  // namespace shaftcut

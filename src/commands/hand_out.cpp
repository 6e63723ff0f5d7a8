#include "hand_out.hpp"

#include <algorithm>
#include <filesystem>
#include <new>

#include "output.hpp"
#include "supersede.hpp"

namespace shaftcut {

Outcome make_folder(const CommonOptions& options, Console& console)
{
    if (options.to_standard_output()) return Outcome::answered;
    std::error_code error;
    std::filesystem::create_directories(options.output, error);
    if (!error) {
        remove_abandoned(options.output);
        return Outcome::answered;
    }
    console.err << options.output << " could not be made: " << error.message() << "\n";
    return Outcome::unwritable;
}

Outcome check_names(const std::vector<std::string>& names, const CommonOptions& options, Console& console)
{
    if (options.to_standard_output()) return Outcome::answered;
    const std::string fault = names_fault(options.output, names, options.replace ? Existing::replace : Existing::keep);
    if (fault.empty()) return Outcome::answered;
    console.err << fault << "\n";
    return Outcome::unwritable;
}

Outcome hand_out(const std::vector<Document>& documents, const std::string& text, const CommonOptions& options, Console& console, const char* wrote)
{
    const std::string fault = write_documents(options.output, documents, options.replace ? Existing::replace : Existing::keep);
    console.out << text;
    if (!fault.empty()) {
        console.out.flush();
        console.err << fault << "\n";
        return Outcome::unwritable;
    }
    for (const Document& document : documents) console.out << wrote << (std::filesystem::path(options.output) / document.name).string() << "\n";
    return Outcome::answered;
}

Outcome hand_out_json(const std::string& json, Console& console)
{
    console.out << json;
    return console.out ? Outcome::answered : Outcome::unwritable;
}

Outcome supersede_others(const std::vector<std::string>& names, const std::vector<Document>& made, const CommonOptions& options, Console& console)
{
    if (!options.replace || options.to_standard_output()) return Outcome::answered;
    Outcome outcome = Outcome::answered;
    for (const std::string& name : names) {
        if (std::any_of(made.begin(), made.end(), [&](const Document& document) { return document.name == name; })) continue;
        const Superseded superseded = supersede(options.output, name);
        if (!superseded.as.empty()) console.out << "  superseded  " << (std::filesystem::path(options.output) / name).string() << ": now " << superseded.as << "\n";
        if (superseded.fault.empty()) continue;
        console.err << superseded.fault << "\n";
        outcome = Outcome::unwritable;
    }
    return outcome;
}

std::string sentence_of(const std::exception& fault)
{
    const bool no_memory = dynamic_cast<const std::bad_alloc*>(&fault) != nullptr;
    return no_memory ? "there is not enough memory; free some, or divide the file" : fault.what();
}

}  // namespace shaftcut

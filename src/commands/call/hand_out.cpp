#include "call/hand_out.hpp"

#include <algorithm>
#include <filesystem>
#include <new>

#include "files/output.hpp"
#include "files/supersede.hpp"

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
    return report(Unwritable{options.output, Unwritable::Why::system_made, error}, console);
}

Outcome check_names(const std::vector<std::string>& names, const CommonOptions& options, Console& console)
{
    if (options.to_standard_output()) return Outcome::answered;
    const std::optional<Unwritable> fault = names_fault(options.output, names, options.replace ? Existing::replace : Existing::keep);
    return fault ? report(*fault, console) : Outcome::answered;
}

Outcome hand_out(const std::vector<Document>& documents, const std::string& text, const CommonOptions& options, Console& console, WroteLine wrote_line)
{
    const std::optional<Unwritable> fault = write_documents(options.output, documents, options.replace ? Existing::replace : Existing::keep);
    console.out << text;
    if (fault) {
        console.out.flush();
        return report(*fault, console);
    }
    for (const Document& document : documents) console.out << wrote(wrote_line, (std::filesystem::path(options.output) / document.name).string(), console.wording) << "\n";
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
        const Superseded renamed = supersede(options.output, name);
        if (!renamed.as.empty()) console.out << superseded((std::filesystem::path(options.output) / name).string(), renamed.as, console.wording) << "\n";
        if (renamed.fault) outcome = report(*renamed.fault, console);
    }
    return outcome;
}

Outcome report(const Unwritable& fault, Console& console)
{
    console.err << say(fault, console.wording) << "\n";
    return Outcome::unwritable;
}

std::string sentence_of(const std::exception& fault, const Wording& w)
{
    if (dynamic_cast<const std::bad_alloc*>(&fault)) return no_memory(w);
    const auto* missing = dynamic_cast<const LibraryMissing*>(&fault);
    return missing ? say(*missing, w) : fault.what();
}

}  // namespace shaftcut

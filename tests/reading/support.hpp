// The files of tests/reading and the reader that each of them is for.
#pragma once

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "catalogue_reader.hpp"
#include "job_reader.hpp"
#include "lists/lists_reader.hpp"
#include "files/load.hpp"
#include "measured_reader.hpp"
#include "measures_reader.hpp"
#include "lists/orders_reader.hpp"
#include "reading/said.hpp"
#include "support/catch.hpp"
#include "workshop_reader.hpp"

namespace reading_test {

inline const std::filesystem::path project = SHAFTCUT_SOURCE_DIR;
inline const std::filesystem::path folder = project / "tests/reading";

inline std::string bytes_of(const std::filesystem::path& path)
{
    const auto loaded = shaftcut::load(path.string());
    REQUIRE(std::holds_alternative<shaftcut::Source>(loaded));
    return std::get<shaftcut::Source>(loaded).bytes;
}

inline std::vector<std::filesystem::path> xml_files(const std::filesystem::path& in)
{
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(in))
        if (entry.path().extension() == ".xml") files.push_back(entry.path());
    std::sort(files.begin(), files.end());
    REQUIRE(!files.empty());
    return files;
}

// The catalogue that comes with the project.
inline const shaftcut::Catalogue& catalogue()
{
    static const auto read = shaftcut::read_catalogue({"series.xml", bytes_of(project / "config/series.xml")});
    REQUIRE(read.value);
    return *read.value;
}

// The job of what `measured` was measured of. K-1043's outer guard is not used again.
inline const shaftcut::Job& job_of(const std::string& measured)
{
    static const auto read = [](const std::string& order, const std::string& guard) {
        const std::string text = "<job order=\"" + order + "\" units=\"mm\"><shaft series=\"Alder 2\" role=\"primary\" inner-tube=\"implement\"><closed length=\"860\"/>"
                                 "<end side=\"tractor\" joint=\"standard\"/><end side=\"implement\" joint=\"standard\"/>"
                                 "<half tube=\"inner\" length=\"690\" guard=\"672\"/><half tube=\"outer\" length=\"668\" guard=\"" + guard + "\"/></shaft>"
                                 "<fit><shortest length=\"742\"/><longest when=\"turning\" length=\"850\"/></fit></job>";
        return shaftcut::read_job({"job.xml", text}, catalogue()).value.value();
    };
    static const shaftcut::Job plain = read("K-1042", "650"), without_guard = read("K-1043", "damaged");
    return measured.find("order=\"K-1043\"") == std::string::npos ? plain : without_guard;
}

// "workshop", "series", "lists", "orders", "measured", "measures", "choose" or "job": what a file seems to be meant for, by the first root of those that is in it;
// a job to choose a shaft for says so in its first line.
inline std::string kind_of(const std::string& bytes)
{
    if (bytes.substr(0, bytes.find('\n')).find("to choose a shaft for") != std::string::npos) return "choose";
    if (bytes.find("<workshop") != std::string::npos) return "workshop";
    if (bytes.find("<catalogue") != std::string::npos) return "series";
    if (bytes.find("<lists") != std::string::npos) return "lists";
    if (bytes.find("<measured ") != std::string::npos) return "measured";
    if (bytes.find("<measures") != std::string::npos && bytes.find("<job") == std::string::npos) return "measures";
    return bytes.find("<orders") != std::string::npos ? "orders" : "job";
}

// What the reader that a file is meant for finds wrong with it.
inline shaftcut::FaultList faults_of(const shaftcut::Source& source)
{
    const std::string kind = kind_of(source.bytes);
    if (kind == "workshop") return shaftcut::read_workshop(source).faults;
    if (kind == "series") return shaftcut::read_catalogue(source).faults;
    if (kind == "lists") return shaftcut::read_lists(source, catalogue()).faults;
    if (kind == "choose") return shaftcut::read_job_to_choose_for(source, catalogue()).faults;
    if (kind == "measures") return shaftcut::read_measures(source).faults;
    if (kind == "measured") return shaftcut::read_measured(source, &job_of(source.bytes)).faults;
    return kind == "orders" ? shaftcut::read_orders_xml(source, catalogue()).faults : shaftcut::read_job(source, catalogue()).faults;
}

inline shaftcut::FaultList faults_of(const std::filesystem::path& path)
{
    return faults_of({path.filename().string(), bytes_of(path)});
}

inline std::string line_of(const shaftcut::Fault& fault) { return to_string(problem_of(fault)); }

inline std::string lines_of(const shaftcut::FaultList& faults)
{
    std::string lines;
    for (const shaftcut::Fault& fault : faults) lines += line_of(fault) + "\n";
    return lines;
}

// A job about one shaft, with `inside` in its place between the tags.
inline shaftcut::Read<shaftcut::Job> read_job_text(const std::string& text)
{
    return shaftcut::read_job({"job.xml", text}, catalogue());
}

}  // namespace reading_test

// Runs the whole program in this process.
#pragma once

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "call/command.hpp"
#include "support/folder.hpp"

namespace shaftcut::test {

struct Run {
    int exit = 0;
    std::string out, err;
};

// `answers`: what stands on standard input.
inline Run run(const std::vector<std::string>& arguments, const std::string& answers = {})
{
    std::ostringstream out, err;
    std::istringstream in(answers);
    Console console{out, err};
    console.in = &in;
    const Outcome outcome = run_program(arguments, console);
    return {static_cast<int>(outcome), out.str(), err.str()};
}

inline std::string read_all(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

inline void write_all(const std::string& path, const std::string& bytes) { std::ofstream(path, std::ios::binary) << bytes; }

inline const std::string source_folder = SHAFTCUT_SOURCE_DIR;
inline const std::string config_folder = source_folder + "/config";
inline std::string sample(const std::string& name) { return source_folder + "/samples/" + name + ".xml"; }

}  // namespace shaftcut::test

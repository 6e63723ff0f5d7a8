// Runs the whole program in this process.
#pragma once

#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "shaftcut/commands/command.hpp"

namespace shaftcut::test {

struct Run {
    int exit = 0;
    std::string out, err;
};

inline Run run(const std::vector<std::string>& arguments)
{
    std::ostringstream out, err;
    Console console{out, err};
    const Outcome outcome = run_program(arguments, console);
    return {static_cast<int>(outcome), out.str(), err.str()};
}

// A folder of its own, removed at the end.
class Folder {
public:
    Folder()
    {
        std::string name = (std::filesystem::temp_directory_path() / "shaftcut-test-XXXXXX").string();
        path_ = ::mkdtemp(name.data());
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() { std::filesystem::remove_all(path_); }
    std::string path() const { return path_.string(); }
    std::string file(const std::string& name) const { return (path_ / name).string(); }
    std::size_t count() const
    {
        std::size_t entries = 0;
        for (const auto& entry : std::filesystem::directory_iterator(path_)) entries += entry.exists() ? 1 : 0;
        return entries;
    }

private:
    std::filesystem::path path_;
};

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

// A folder of a test's own, gone with all that is in it at the test's end.
#pragma once

#include <filesystem>
#include <stdexcept>
#include <string>

namespace shaftcut::test {

class Folder {
public:
    Folder()
    {
        std::string name = (std::filesystem::temp_directory_path() / "shaftcut-test-XXXXXX").string();
        if (!::mkdtemp(name.data())) throw std::runtime_error("no folder could be made for the test");
        path_ = name;
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

}  // namespace shaftcut::test

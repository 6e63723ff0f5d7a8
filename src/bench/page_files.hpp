// The files of the bench page, which are part of the program (src/bench/page, embedded by src/CMakeLists.txt).
#pragma once

#include <span>
#include <string_view>

namespace shaftcut {

struct PageFile {
    std::string_view name;   // "bench.css"
    std::string_view bytes;
    std::string_view packed;  // the same by gzip
};
std::span<const PageFile> page_files();

// What a path asks for: "/" is the page itself. Null where there is no such file.
const PageFile* page_file(std::string_view path);

// Of a body: "text/css". By the name's end.
std::string_view type_of(const PageFile& file);

}  // namespace shaftcut

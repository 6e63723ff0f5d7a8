#include "page_files.hpp"

#include <algorithm>

namespace shaftcut {

const PageFile* page_file(std::string_view path)
{
    if (path.empty()) return nullptr;
    const std::string_view name = path == "/" ? "bench.html" : path.substr(1);
    const auto files = page_files();
    const auto found = std::find_if(files.begin(), files.end(), [&](const PageFile& file) { return file.name == name; });
    return found == files.end() ? nullptr : &*found;
}

std::string_view type_of(const PageFile& file)
{
    if (file.name.ends_with(".html")) return "text/html;charset=utf-8";
    if (file.name.ends_with(".css")) return "text/css;charset=utf-8";
    if (file.name.ends_with(".svg")) return "image/svg+xml";
    return "text/javascript;charset=utf-8";
}

}  // namespace shaftcut

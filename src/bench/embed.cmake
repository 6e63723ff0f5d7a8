# Writes the bench page's files as a source. Called with FILES (their paths, commas between) and OUTPUT.
string(REPLACE "," ";" files "${FILES}")
set(arrays "")
set(rows "")
set(number 0)
foreach(file IN LISTS files)
  get_filename_component(name "${file}" NAME)
  file(READ "${file}" bytes HEX)
  file(SIZE "${file}" size)
  string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${bytes}")
  # One more byte, so that an empty file is an array too.
  string(APPEND arrays "constexpr unsigned char file_${number}[]{${bytes}0};\n")
  string(APPEND rows "        {\"${name}\", {reinterpret_cast<const char*>(file_${number}), ${size}}},\n")
  math(EXPR number "${number} + 1")
endforeach()
file(WRITE "${OUTPUT}" "// Made by src/bench/embed.cmake.\n#include \"page_files.hpp\"\n\n#include <array>\n\nnamespace shaftcut {\nnamespace {\n\n${arrays}\n}  // namespace\n\n"
  "std::span<const PageFile> page_files()\n{\n    static const std::array<PageFile, ${number}> files{{\n${rows}    }};\n    return files;\n}\n\n}  // namespace shaftcut\n")

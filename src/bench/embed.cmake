# Writes the bench page's files as a source, each as it is and packed by gzip. Called with FILES (their paths, commas between) and OUTPUT.
# One byte more, so that an empty file is an array too.
macro(embed name path)
  file(READ "${path}" bytes HEX)
  file(SIZE "${path}" ${name}_size)
  string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${bytes}")
  string(APPEND arrays "constexpr unsigned char ${name}[]{${bytes}0};\n")
endmacro()

string(REPLACE "," ";" files "${FILES}")
set(arrays "")
set(rows "")
set(number 0)
foreach(file IN LISTS files)
  get_filename_component(name "${file}" NAME)
  execute_process(COMMAND gzip -9nc "${file}" OUTPUT_FILE "${OUTPUT}.gz" COMMAND_ERROR_IS_FATAL ANY)
  embed(file_${number} "${file}")
  embed(packed_${number} "${OUTPUT}.gz")
  string(APPEND rows "        {\"${name}\", {reinterpret_cast<const char*>(file_${number}), ${file_${number}_size}}, {reinterpret_cast<const char*>(packed_${number}), ${packed_${number}_size}}},\n")
  math(EXPR number "${number} + 1")
endforeach()
file(WRITE "${OUTPUT}" "// Made by src/bench/embed.cmake.\n#include \"page_files.hpp\"\n\n#include <array>\n\nnamespace shaftcut {\nnamespace {\n\n${arrays}\n}  // namespace\n\n"
  "std::span<const PageFile> page_files()\n{\n    static const std::array<PageFile, ${number}> files{{\n${rows}    }};\n    return files;\n}\n\n}  // namespace shaftcut\n")

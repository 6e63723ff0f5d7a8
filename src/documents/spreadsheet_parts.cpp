#include "spreadsheet_parts.hpp"

#include <algorithm>
#include <cstdlib>
#include <stdexcept>

#include "shaftcut/words/text.hpp"

namespace shaftcut {
namespace {

bool is_letter(char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

}  // namespace

bool is_plain_name(const std::string& name)
{
    const auto is_plain = [](char c) { return is_letter(c) || is_digit(c) || c == '_'; };
    if (name.size() < 2 || !is_letter(name.front()) || !std::all_of(name.begin(), name.end(), is_plain)) return false;
    return name.find('_') != std::string::npos || std::none_of(name.begin(), name.end(), is_digit);
}

std::string fit_for_xml(const std::string& text, std::size_t most)
{
    std::string out;
    std::size_t count = 0;
    for (const char byte : text) {
        const auto value = static_cast<unsigned char>(byte);
        const bool starts_a_point = (value & 0xC0) != 0x80;
        if (starts_a_point && count++ == most) break;
        const bool control = value < 0x20 && value != '\n' && value != '\t';
        out += control ? ' ' : byte;
    }
    return is_utf8(out) ? out : "?";
}

TemporaryFolder::TemporaryFolder()
{
    std::string pattern = (std::filesystem::temp_directory_path() / "shaftcut-XXXXXX").string();
    if (!mkdtemp(pattern.data())) throw std::runtime_error("no temporary folder could be made for the workbook");
    path_ = pattern;
}

TemporaryFolder::~TemporaryFolder()
{
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

}  // namespace shaftcut

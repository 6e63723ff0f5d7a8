#include "page/font.hpp"

#include <ft2build.h>
#include FT_FREETYPE_H
#include FT_ADVANCES_H

#include <algorithm>
#include <array>
#include <unordered_map>
#include <utility>

#include "text.hpp"

namespace shaftcut {
namespace {

constexpr char32_t replacement = 0xFFFD;

// Scripts that run from right to left or join their letters: without a shaping engine they would come out wrong, which is
// worse than visibly missing.
bool needs_shaping(char32_t point)
{
    return (point >= 0x0590 && point <= 0x109F) || (point >= 0x1780 && point <= 0x18AF) || (point >= 0x200B && point <= 0x200F)
           || (point >= 0x202A && point <= 0x202E) || (point >= 0x2066 && point <= 0x2069) || (point >= 0xFB1D && point <= 0xFDFF)
           || (point >= 0xFE70 && point <= 0xFEFF);
}

bool is_space(char32_t point)
{
    return point == ' ' || (point >= 0x09 && point <= 0x0D) || point == 0x2028 || point == 0x2029;
}

// "mm", "in", "min⁻¹" and the like, whatever punctuation follows.
bool is_unit(std::string_view word)
{
    static constexpr std::array units{"mm", "in", "min⁻¹", "kg", "%"};
    return std::any_of(units.begin(), units.end(), [&](std::string_view unit) {
        return word.starts_with(unit) && (word.size() == unit.size() || std::string_view(".,;:)").find(word[unit.size()]) != std::string_view::npos);
    });
}

// What no line is broken between: a figure and its unit, a ± and its figure.
bool stay_together(std::string_view before, std::string_view word)
{
    if (before.empty()) return false;
    return before.ends_with("±") || (before.back() >= '0' && before.back() <= '9' && is_unit(word));
}

std::vector<std::string> words_of(std::string_view text)
{
    std::vector<std::string> words;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find(' ', at), text.size());
        const std::string word(text.substr(at, end - at));
        if (!words.empty() && stay_together(words.back(), word)) words.back() += " " + word;
        else words.push_back(word);
        at = end + 1;
    }
    return words;
}

}  // namespace

struct Fonts::Faces {
    const FontFiles files;  // the faces read from their bytes
    FT_Library library = nullptr;
    FT_Face face[2] = {nullptr, nullptr};

    explicit Faces(FontFiles from) : files(std::move(from))
    {
        if (FT_Init_FreeType(&library) != 0) throw FontFault("");
        for (const Weight weight : {Weight::regular, Weight::bold})
            if (!open(files.of(weight), face[static_cast<int>(weight)])) {
                FT_Done_FreeType(library);
                throw FontFault(files.of(weight).name);
            }
    }
    ~Faces() { FT_Done_FreeType(library); }  // with its faces
    Faces(const Faces&) = delete;
    Faces& operator=(const Faces&) = delete;

    // The font is asked once for each: text is measured over and over while it is fitted to its place.
    struct Glyph {
        FT_UInt index = 0;     // 0: the font lacks it
        FT_Fixed advance = 0;  // in the font's units
    };
    const Glyph& glyph(char32_t point, Weight weight)
    {
        const auto [known, is_new] = glyphs_[static_cast<int>(weight)].try_emplace(point);
        if (is_new) {
            FT_FaceRec* const of = face[static_cast<int>(weight)];
            known->second.index = FT_Get_Char_Index(of, point);
            if (FT_Get_Advance(of, known->second.index, FT_LOAD_NO_SCALE, &known->second.advance) != 0) known->second.advance = 0;
        }
        return known->second;
    }

    // In the font's units: those of a text are the sum of its parts'.
    FT_Fixed advance(std::string_view text, Weight weight)
    {
        FT_Fixed units = 0;
        for (const char32_t point : code_points(text)) units += glyph(point, weight).advance;
        return units;
    }

    double size(FT_Fixed units, double cap_height, Weight weight, double stretch) const
    {
        return static_cast<double>(units) / face[static_cast<int>(weight)]->units_per_EM * (cap_height / cap_height_of_em) * stretch;
    }

private:
    bool open(const FontFile& file, FT_Face& opened)
    {
        return file.bytes && FT_New_Memory_Face(library, reinterpret_cast<const FT_Byte*>(file.bytes->data()), static_cast<FT_Long>(file.bytes->size()), 0, &opened) == 0;
    }

    std::unordered_map<char32_t, Glyph> glyphs_[2];
};

Fonts::Fonts(const FontFiles& files) : faces_(std::make_unique<Faces>(files)) {}
Fonts::~Fonts() = default;

double Fonts::width(std::string_view text, double cap_height, Weight weight, double stretch) const
{
    return faces_->size(faces_->advance(text, weight), cap_height, weight, stretch);
}

bool Fonts::can_draw(char32_t point) const
{
    if (point < 0x20 || (point >= 0x7F && point <= 0x9F) || needs_shaping(point)) return false;
    return faces_->glyph(point, Weight::regular).index != 0 && faces_->glyph(point, Weight::bold).index != 0;
}

std::string Fonts::printable(std::string_view text) const
{
    std::string out;
    for (const char32_t point : code_points(text)) {
        if (!is_space(point)) out += utf8(can_draw(point) ? point : replacement);
        else if (!out.empty() && out.back() != ' ') out += ' ';
    }
    if (!out.empty() && out.back() == ' ') out.pop_back();
    return out;
}

std::vector<std::string> Fonts::wrap(std::string_view text, double cap_height, Weight weight, double width, double stretch) const
{
    std::vector<std::string> lines{""};
    FT_Fixed used = 0;  // by the last line
    const auto fits = [&](FT_Fixed more) { return faces_->size(used + more, cap_height, weight, stretch) <= width; };
    const auto add = [&](const std::string& part, FT_Fixed advance) {
        lines.back() += part;
        used += advance;
    };
    const auto new_line = [&] {
        if (lines.back().empty()) return;
        lines.emplace_back();
        used = 0;
    };
    for (const std::string& word : words_of(text)) {
        const std::string part = lines.back().empty() ? word : " " + word;
        if (const FT_Fixed advance = faces_->advance(part, weight); fits(advance)) {
            add(part, advance);
            continue;
        }
        new_line();
        for (const char32_t point : code_points(word)) {
            const FT_Fixed advance = faces_->glyph(point, weight).advance;
            if (!fits(advance)) new_line();
            add(utf8(point), advance);
        }
    }
    return lines;
}

std::string freetype_built_with()
{
    return std::to_string(FREETYPE_MAJOR) + "." + std::to_string(FREETYPE_MINOR) + "." + std::to_string(FREETYPE_PATCH);
}

}  // namespace shaftcut

// Looking at a finished file through other programs: pdftotext, pdfinfo, pdftoppm (poppler-utils) and zbarimg (zbar-tools).
#pragma once

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <memory>
#include <string>
#include <vector>

#include <fmt/format.h>

#include "support/catch.hpp"
#include "support/folder.hpp"

namespace shaftcut::test {

inline void write(const std::string& path, const std::string& bytes)
{
    std::ofstream(path, std::ios::binary) << bytes;
}

inline std::string output_of(const std::string& command)
{
    const std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen((command + " 2>&1").c_str(), "r"), pclose);
    REQUIRE(pipe);
    std::string out;
    for (int byte = std::fgetc(pipe.get()); byte != EOF; byte = std::fgetc(pipe.get())) out += static_cast<char>(byte);
    return out;
}

// A binary grey picture as pdftoppm writes it.
struct Picture {
    int width = 0, height = 0;
    std::vector<int> grey;

    int at(int x, int y) const { return grey[static_cast<std::size_t>(std::clamp(y, 0, height - 1) * width + std::clamp(x, 0, width - 1))]; }
};

inline Picture read_picture(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    std::string magic;
    int most = 0;
    Picture picture;
    file >> magic >> picture.width >> picture.height >> most;
    REQUIRE(magic == "P5");
    file.get();
    for (int i = 0; i < picture.width * picture.height; ++i) picture.grey.push_back(file.get());
    return picture;
}

// The part of a picture whose top left corner is at x, y.
inline Picture cropped(const Picture& in, int x, int y, int width, int height)
{
    Picture out{width, height, {}};
    for (int row = y; row < y + height; ++row)
        for (int column = x; column < x + width; ++column) out.grey.push_back(in.at(column, row));
    return out;
}

inline std::string pgm_of(const Picture& in)
{
    std::string out = fmt::format("P5\n{} {}\n255\n", in.width, in.height);
    for (const int grey : in.grey) out += static_cast<char>(grey);
    return out;
}

// As a bad photocopier does it: only black and white, then smeared over the neighbouring dots.
inline std::string photocopied(const Picture& in)
{
    std::string out = fmt::format("P5\n{} {}\n255\n", in.width, in.height);
    for (int y = 0; y < in.height; ++y)
        for (int x = 0; x < in.width; ++x) {
            int sum = 0;
            for (int dy = -1; dy <= 1; ++dy)
                for (int dx = -1; dx <= 1; ++dx) sum += in.at(x + dx, y + dy) >= 128 ? 255 : 0;
            out += static_cast<char>(sum / 9);
        }
    return out;
}

}  // namespace shaftcut::test

// Zip files made by hand, sound or not.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include <zlib.h>

namespace shaftcut::test {

inline std::string little_endian(std::uint32_t value, int count)
{
    std::string bytes;
    for (int i = 0; i < count; ++i) bytes += static_cast<char>(static_cast<unsigned char>(value >> (8 * i)));
    return bytes;
}

struct ZipPart {
    std::string name, content;
    std::uint32_t flags = 0, method = 0;
    std::optional<std::uint32_t> claimed_size = {}, checksum = {};
};

// A zip file whose parts are stored as they are.
inline std::string zipped(const std::vector<ZipPart>& parts)
{
    std::string bytes, directory;
    for (const ZipPart& part : parts) {
        const auto size = static_cast<std::uint32_t>(part.content.size());
        const auto crc = part.checksum.value_or(static_cast<std::uint32_t>(crc32(0, reinterpret_cast<const unsigned char*>(part.content.data()), size)));
        const std::string common = little_endian(20, 2) + little_endian(part.flags, 2) + little_endian(part.method, 2) + little_endian(0, 4) + little_endian(crc, 4) + little_endian(size, 4) +
                                   little_endian(part.claimed_size.value_or(size), 4) + little_endian(static_cast<std::uint32_t>(part.name.size()), 2) + little_endian(0, 2);
        directory += "PK\x01\x02" + little_endian(20, 2) + common + little_endian(0, 10) + little_endian(static_cast<std::uint32_t>(bytes.size()), 4) + part.name;
        bytes += "PK\x03\x04" + common + part.name + part.content;
    }
    const auto count = static_cast<std::uint32_t>(parts.size());
    return bytes + directory + "PK\x05\x06" + little_endian(0, 4) + little_endian(count, 2) + little_endian(count, 2) + little_endian(static_cast<std::uint32_t>(directory.size()), 4) +
           little_endian(static_cast<std::uint32_t>(bytes.size()), 4) + little_endian(0, 2);
}

}  // namespace shaftcut::test

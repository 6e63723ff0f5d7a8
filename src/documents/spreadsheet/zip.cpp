#include "spreadsheet/zip.hpp"

#include <zlib.h>

#include <cstdint>

namespace shaftcut {
namespace {

constexpr std::size_t end_record = 22, central_header = 46, local_header = 30;
constexpr std::uint32_t end_sign = 0x06054B50, central_sign = 0x02014B50, local_sign = 0x04034B50;
constexpr std::uint32_t stored = 0, deflated = 8;
constexpr std::size_t most_part_bytes = 1u << 30;

// Little-endian numbers at places that must lie inside.
class Bytes {
public:
    explicit Bytes(const std::string& bytes) : bytes_(bytes) {}
    std::uint32_t number(std::size_t at, std::size_t width) const
    {
        const std::string part = text(at, width);
        std::uint32_t value = 0;
        for (std::size_t i = width; i > 0; --i) value = value << 8 | static_cast<unsigned char>(part[i - 1]);
        return value;
    }
    std::string text(std::size_t at, std::size_t length) const
    {
        if (at > bytes_.size() || length > bytes_.size() - at) throw ZipFault();
        return bytes_.substr(at, length);
    }
    std::size_t size() const { return bytes_.size(); }

private:
    const std::string& bytes_;
};

std::string inflated(std::string packed, std::size_t size)
{
    if (size > most_part_bytes) throw ZipFault();
    // One byte more than expected, so that a longer part is seen; and the output is never empty.
    std::string out(size + 1, '\0');
    z_stream stream{};
    if (inflateInit2(&stream, -MAX_WBITS) != Z_OK) throw ZipFault();
    stream.next_in = reinterpret_cast<Bytef*>(packed.data());
    stream.avail_in = static_cast<uInt>(packed.size());
    stream.next_out = reinterpret_cast<Bytef*>(out.data());
    stream.avail_out = static_cast<uInt>(out.size());
    const int ended = inflate(&stream, Z_FINISH);
    inflateEnd(&stream);
    if (ended != Z_STREAM_END || stream.total_out != size) throw ZipFault();
    out.resize(size);
    return out;
}

// The part whose entry in the directory stands at `at`.
std::string part(const Bytes& zip, std::size_t at)
{
    const std::uint32_t method = zip.number(at + 10, 2), sum = zip.number(at + 16, 4);
    const std::size_t packed_size = zip.number(at + 20, 4), size = zip.number(at + 24, 4), local = zip.number(at + 42, 4);
    if (zip.number(local, 4) != local_sign) throw ZipFault();
    std::string bytes = zip.text(local + local_header + zip.number(local + 26, 2) + zip.number(local + 28, 2), packed_size);
    if (method == deflated) bytes = inflated(std::move(bytes), size);
    else if (method != stored || packed_size != size) throw ZipFault();
    if (crc32(0, reinterpret_cast<const Bytef*>(bytes.data()), static_cast<uInt>(bytes.size())) != sum)
        throw ZipFault();
    return bytes;
}

}  // namespace

std::map<std::string, std::string> parts_of(const std::string& bytes)
{
    const Bytes zip(bytes);
    if (zip.size() < end_record) throw ZipFault();
    const std::size_t end = zip.size() - end_record;
    if (zip.number(end, 4) != end_sign) throw ZipFault();
    std::map<std::string, std::string> parts;
    std::size_t at = zip.number(end + 16, 4);
    for (std::uint32_t left = zip.number(end + 10, 2); left > 0; --left) {
        if (zip.number(at, 4) != central_sign) throw ZipFault();
        const std::size_t name = zip.number(at + 28, 2);
        parts[zip.text(at + central_header, name)] = part(zip, at);
        at += central_header + name + zip.number(at + 30, 2) + zip.number(at + 32, 2);
    }
    return parts;
}

}  // namespace shaftcut

#include "xlsx/zip.hpp"

#include <zlib.h>

namespace shaftcut {
namespace {

constexpr std::string_view local_mark = "PK\x03\x04", directory_mark = "PK\x01\x02", end_mark = "PK\x05\x06";
constexpr std::size_t local_size = 30, directory_size = 46, end_size = 22;
constexpr std::size_t most_comment = 65'535;
constexpr std::uint32_t stored = 0, deflated = 8;
constexpr std::uint32_t needs_password = 1;

// Little-endian. The caller has seen that the bytes are there.
std::uint32_t number_at(std::string_view bytes, std::size_t at, int count)
{
    std::uint32_t value = 0;
    for (int i = count - 1; i >= 0; --i) value = value << 8 | static_cast<unsigned char>(bytes[at + static_cast<std::size_t>(i)]);
    return value;
}

std::uint32_t two(std::string_view bytes, std::size_t at) { return number_at(bytes, at, 2); }
std::uint32_t four(std::string_view bytes, std::size_t at) { return number_at(bytes, at, 4); }

const unsigned char* unsigned_bytes(std::string_view bytes) { return reinterpret_cast<const unsigned char*>(bytes.data()); }

// As long as it should be, or nothing: what would be longer is not unpacked.
std::optional<std::string> inflated(std::string_view packed, std::size_t size)
{
    std::string out(size + 1, '\0');
    z_stream stream{};
    stream.next_in = const_cast<unsigned char*>(unsigned_bytes(packed));
    stream.avail_in = static_cast<uInt>(packed.size());
    stream.next_out = reinterpret_cast<unsigned char*>(out.data());
    stream.avail_out = static_cast<uInt>(out.size());
    if (inflateInit2(&stream, -MAX_WBITS) != Z_OK) return std::nullopt;
    const int result = inflate(&stream, Z_FINISH);
    inflateEnd(&stream);
    if (result != Z_STREAM_END || stream.total_out != size) return std::nullopt;
    out.resize(size);
    return out;
}

}  // namespace

bool is_zip(std::string_view bytes) { return bytes.starts_with(local_mark); }

ZipFile::ZipFile(std::string_view bytes) : bytes_(bytes) { read_directory(); }

std::optional<std::string> ZipFile::failed(ZipFault fault)
{
    fault_ = fault;
    return std::nullopt;
}

// The last one: a comment of at most 65,535 bytes stands behind it.
std::optional<std::size_t> ZipFile::find_end() const
{
    if (bytes_.size() < end_size) return std::nullopt;
    const std::size_t at = bytes_.rfind(end_mark, bytes_.size() - end_size);
    return at == std::string_view::npos || bytes_.size() - at > end_size + most_comment ? std::nullopt : std::optional(at);
}

void ZipFile::read_directory()
{
    fault_ = ZipFault::damaged;
    const auto end = find_end();
    if (!end) return;
    const std::size_t count = two(bytes_, *end + 10);
    std::size_t at = four(bytes_, *end + 16);
    if (count > most_zip_parts) return;
    for (std::size_t i = 0; i < count; ++i) {
        if (at > *end || *end - at < directory_size || bytes_.substr(at, directory_mark.size()) != directory_mark) return;
        const std::size_t name = two(bytes_, at + 28), rest = two(bytes_, at + 30) + two(bytes_, at + 32);
        if (*end - at - directory_size < name + rest) return;
        const Part part{two(bytes_, at + 8), two(bytes_, at + 10), four(bytes_, at + 16), four(bytes_, at + 20), four(bytes_, at + 24), four(bytes_, at + 42)};
        if (!parts_.emplace(bytes_.substr(at + directory_size, name), part).second) return;
        at += directory_size + name + rest;
    }
    fault_ = ZipFault::none;
}

std::optional<std::string_view> ZipFile::packed_bytes(const Part& part) const
{
    if (part.at > bytes_.size() || bytes_.size() - part.at < local_size || bytes_.substr(part.at, local_mark.size()) != local_mark) return std::nullopt;
    const std::size_t start = part.at + local_size + two(bytes_, part.at + 26) + two(bytes_, part.at + 28);
    if (start > bytes_.size() || bytes_.size() - start < part.packed) return std::nullopt;
    return bytes_.substr(start, part.packed);
}

std::optional<std::string> ZipFile::part(const std::string& name)
{
    const auto found = parts_.find(name);
    if (fault_ != ZipFault::none) return std::nullopt;
    if (found == parts_.end()) return failed(ZipFault::damaged);
    const Part& part = found->second;
    if ((part.flags & needs_password) != 0) return failed(ZipFault::locked);
    if (part.size > most_unpacked - unpacked_) return failed(ZipFault::too_large);
    const auto packed = packed_bytes(part);
    if (!packed || (part.method != stored && part.method != deflated)) return failed(ZipFault::damaged);
    auto content = part.method == deflated ? inflated(*packed, part.size) : std::optional(std::string(*packed));
    if (!content || content->size() != part.size) return failed(ZipFault::damaged);
    if (crc32(0, unsigned_bytes(*content), static_cast<uInt>(content->size())) != part.checksum) return failed(ZipFault::damaged);
    unpacked_ += part.size;
    return content;
}

}  // namespace shaftcut

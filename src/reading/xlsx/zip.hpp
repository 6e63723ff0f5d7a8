// The parts of a zip file, each unpacked when it is asked for; what it would take is known, and bounded, before.
// Source: PKWARE's APPNOTE.TXT (.ZIP File Format Specification), from memory; RFC 1951 for what zlib unpacks.
// Checked by tests/reading/lists_test.cpp.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>

namespace shaftcut {

inline constexpr std::size_t most_unpacked = std::size_t{16} * 1024 * 1024;  // all parts that are asked for, together
inline constexpr std::size_t most_zip_parts = 10'000;

bool is_zip(std::string_view bytes);

enum class ZipFault { none, damaged, locked, too_large };

class ZipFile {
public:
    // `bytes` must outlive it. A fault where there is no directory, it runs out of the file, holds more than most_zip_parts, or one name twice.
    explicit ZipFile(std::string_view bytes);

    ZipFault fault() const { return fault_; }
    bool holds(const std::string& name) const { return parts_.count(name) == 1; }

    // The part, or nothing with a fault: it is not there, needs a password, is packed otherwise than stored or deflated, is not as long as the
    // directory says or has another checksum, or more than most_unpacked would be unpacked in all.
    std::optional<std::string> part(const std::string& name);

private:
    struct Part {
        std::uint32_t flags = 0, method = 0, checksum = 0, packed = 0, size = 0, at = 0;
    };

    std::optional<std::string> failed(ZipFault fault);
    void read_directory();
    std::optional<std::size_t> find_end() const;
    std::optional<std::string_view> packed_bytes(const Part& part) const;

    std::string_view bytes_;
    std::map<std::string, Part> parts_;
    std::size_t unpacked_ = 0;
    ZipFault fault_ = ZipFault::none;
};

}  // namespace shaftcut

// Unpacks gzip, or one file of a zip archive, piece by piece with zlib. Refuses what is damaged,
// cut off, or would fill the memory (limits.h).
#pragma once

#include "core/problem.h"

#include <cstdint>
#include <memory>
#include <optional>
#include <string_view>

namespace holdband {

/// Packed bytes in memory; whoever unpacks them keeps them there.
struct PackedBytes {
    enum class Form { gzip, deflated, stored };

    std::string_view bytes;
    Form form = Form::gzip;
    std::int64_t at = 0; ///< where they begin in the file, for the place of a Problem
    /// Of the unpacked bytes, as the archive's directory says; gzip checks its own.
    std::optional<std::int64_t> size = {};
    std::optional<std::uint32_t> crc = {};
};

class Unpacker {
public:
    explicit Unpacker(const PackedBytes& packed);
    ~Unpacker();
    Unpacker(const Unpacker&) = delete;
    Unpacker& operator=(const Unpacker&) = delete;

    /// Fills up to `most` bytes, fewer only at the end; 0 after it. Problem (data, place "byte N"):
    /// damaged, cut off, or unpacks to too much.
    Result<std::size_t> read(char* to, std::size_t most);

    /// Of all unpacked bytes, as the container says. Only an estimate: it can be wrong.
    std::int64_t expectedSize() const;

private:
    struct Stream;

    Done fill(char* to, std::size_t most, std::size_t& filled);
    Done copyStored(char* to, std::size_t most, std::size_t& filled);
    Done beginInflating();
    Done endMember();
    Done checkEnd() const;
    Done checkSize() const;
    std::int64_t consumed() const;
    tl::unexpected<Problem> damaged() const;
    tl::unexpected<Problem> cutOff() const;

    PackedBytes m_packed;
    std::unique_ptr<Stream> m_stream; ///< absent for stored bytes, and before the first read
    std::int64_t m_unpacked = 0;
    std::uint32_t m_crc = 0;
    bool m_ended = false;
};

} // namespace holdband

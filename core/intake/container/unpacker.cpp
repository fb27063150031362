#include "core/intake/container/unpacker.h"

#include "core/intake/container/limits.h"
#include "core/text/memory.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <cstring>
#include <zlib.h>

namespace holdband {

struct Unpacker::Stream {
    z_stream z{};
    bool begun = false;

    ~Stream()
    {
        if (begun)
            inflateEnd(&z);
    }
};

namespace {

/// zlib takes the bytes as not constant, and doesn't change them.
Bytef* forZlib(const char* bytes)
{
    return reinterpret_cast<Bytef*>(const_cast<char*>(bytes));
}

std::uint32_t littleEndian32(std::string_view bytes)
{
    std::uint32_t value = 0;
    for (std::size_t i = 4; i-- > 0;)
        value = value << 8 | static_cast<unsigned char>(bytes[i]);
    return value;
}

} // namespace

Unpacker::Unpacker(const PackedBytes& packed) : m_packed(packed) {}

Unpacker::~Unpacker() = default;

std::int64_t Unpacker::expectedSize() const
{
    constexpr std::int64_t greatestRatio = 1032; // of deflate
    const auto packed = static_cast<std::int64_t>(m_packed.bytes.size());
    std::int64_t size = m_packed.size.value_or(0);
    if (m_packed.form == PackedBytes::Form::gzip && packed >= 4)
        size = littleEndian32(m_packed.bytes.substr(m_packed.bytes.size() - 4));
    return std::clamp<std::int64_t>(size, 0, std::min(mostUnpacked, greatestRatio * packed));
}

std::int64_t Unpacker::consumed() const
{
    const auto size = static_cast<std::int64_t>(m_packed.bytes.size());
    return m_stream ? size - static_cast<std::int64_t>(m_stream->z.avail_in) : m_unpacked;
}

tl::unexpected<Problem> Unpacker::damaged() const
{
    return dataProblem(Phrase::tr("the packed file is damaged here"),
                       Phrase::tr("byte %1").with(std::to_string(m_packed.at + consumed())),
                       Phrase::tr("copy or download it again"));
}

tl::unexpected<Problem> Unpacker::cutOff() const
{
    return dataProblem(Phrase::tr("the packed file ends too early: its end is missing"),
                       Phrase::tr("byte %1").with(std::to_string(m_packed.at + consumed())),
                       Phrase::tr("copy or download it again"));
}

Done Unpacker::beginInflating()
{
    m_stream = std::make_unique<Stream>();
    z_stream& z = m_stream->z;
    z.next_in = forZlib(m_packed.bytes.data());
    z.avail_in = static_cast<uInt>(m_packed.bytes.size()); // at most mostPacked
    constexpr int withGzipHeader = MAX_WBITS + 16;
    const bool gzip = m_packed.form == PackedBytes::Form::gzip;
    if (inflateInit2(&z, gzip ? withGzipHeader : -MAX_WBITS) != Z_OK)
        return failure(notEnoughMemory());
    m_stream->begun = true;
    return {};
}

Done Unpacker::copyStored(char* to, std::size_t most, std::size_t& filled)
{
    const std::string_view rest = m_packed.bytes.substr(static_cast<std::size_t>(m_unpacked));
    filled = std::min(most, rest.size());
    std::memcpy(to, rest.data(), filled);
    m_ended = filled == rest.size();
    return {};
}

/// After the end of a gzip member another one may follow, or zeros that fill a block.
Done Unpacker::endMember()
{
    z_stream& z = m_stream->z;
    const std::string_view rest =
        m_packed.bytes.substr(m_packed.bytes.size() - static_cast<std::size_t>(z.avail_in));
    const bool gzip = m_packed.form == PackedBytes::Form::gzip;
    if (gzip && rest.starts_with("\x1F\x8B")) {
        inflateReset(&z);
        return {};
    }
    if (rest.find_first_not_of('\0') != rest.npos || (!gzip && !rest.empty()))
        return damaged();
    m_ended = true;
    return {};
}

Done Unpacker::fill(char* to, std::size_t most, std::size_t& filled)
{
    if (m_packed.form == PackedBytes::Form::stored)
        return copyStored(to, most, filled);
    if (!m_stream)
        HOLDBAND_TRY(beginInflating());
    z_stream& z = m_stream->z;
    z.next_out = reinterpret_cast<Bytef*>(to);
    z.avail_out = static_cast<uInt>(most);
    while (z.avail_out > 0 && !m_ended) {
        const int state = inflate(&z, Z_NO_FLUSH);
        filled = most - z.avail_out;
        if (state == Z_MEM_ERROR)
            return failure(notEnoughMemory());
        if (state == Z_STREAM_END)
            HOLDBAND_TRY(endMember());
        else if (state != Z_OK && state != Z_BUF_ERROR)
            return damaged();
        else if (z.avail_in == 0 && z.avail_out > 0)
            return cutOff();
    }
    return {};
}

Done Unpacker::checkSize() const
{
    const auto packed = static_cast<std::int64_t>(m_packed.bytes.size());
    if (m_unpacked > mostUnpacked)
        return dataProblem(Phrase::tr("it unpacks to more than 1 GiB"), {},
                           Phrase::tr("split the log into several files"));
    if (m_unpacked > suspiciousSize && m_unpacked / mostRatio > packed)
        return dataProblem(
            Phrase::tr("it unpacks to more than %1 times its size, which no log does")
                .with(std::to_string(mostRatio)),
            {}, Phrase::tr("if you trust it, unpack it first"));
    return {};
}

Done Unpacker::checkEnd() const
{
    const bool wrongSize = m_packed.size && *m_packed.size != m_unpacked;
    if (wrongSize || (m_packed.crc && *m_packed.crc != m_crc))
        return damaged();
    return {};
}

Result<std::size_t> Unpacker::read(char* to, std::size_t most)
{
    std::size_t filled = 0;
    if (m_ended)
        return filled;
    HOLDBAND_TRY(fill(to, most, filled));
    m_unpacked += static_cast<std::int64_t>(filled);
    if (m_packed.crc)
        m_crc = static_cast<std::uint32_t>(crc32_z(m_crc, forZlib(to), filled));
    HOLDBAND_TRY(checkSize());
    if (m_ended)
        HOLDBAND_TRY(checkEnd());
    return filled;
}

} // namespace holdband

#include "core/intake/container/log_bytes.h"

#include "core/intake/container/container_kind.h"
#include "core/intake/container/limits.h"
#include "core/intake/container/zip_archive.h"
#include "core/text/phrase.h"

#include <utility>

namespace holdband {

Result<LogBytes> LogBytes::open(const LogInput& input)
{
    auto source = input.text ? Result<SourceFile>(SourceFile::ofText(input.text))
                             : SourceFile::open(input.path);
    HOLDBAND_TRY(source);
    if (input.readUpTo)
        HOLDBAND_TRY(source->endAt(*input.readUpTo));
    LogBytes bytes(std::move(*source));
    const auto first = bytes.m_source.next();
    HOLDBAND_TRY(first);
    bytes.m_pending = *first;
    const auto kind = containerKindOf(*first);
    HOLDBAND_TRY(kind);
    if (*kind == ContainerKind::gzip)
        HOLDBAND_TRY(bytes.unpackGzip());
    if (*kind == ContainerKind::zip)
        HOLDBAND_TRY(bytes.unpackZip());
    return bytes;
}

/// Reads all bytes of the container into memory.
Done LogBytes::readPacked()
{
    m_packed = std::make_unique<std::string>();
    for (;;) {
        const auto piece = m_pending ? Result<std::string_view>(*m_pending) : m_source.next();
        m_pending.reset();
        HOLDBAND_TRY(piece);
        m_packed->append(*piece);
        if (static_cast<std::int64_t>(m_packed->size()) > mostPacked)
            return dataProblem(Phrase::tr("the packed file is larger than 256 MiB"), {},
                               Phrase::tr("unpack it first"));
        if (piece->size() < SourceFile::pieceSize)
            break;
    }
    m_sha256 = m_source.sha256();
    return {};
}

Done LogBytes::unpackGzip()
{
    HOLDBAND_TRY(readPacked());
    m_unpacker = std::make_unique<Unpacker>(PackedBytes{*m_packed, PackedBytes::Form::gzip});
    return beginUnpacked();
}

Done LogBytes::unpackZip()
{
    HOLDBAND_TRY(readPacked());
    const auto entries = zipEntries(*m_packed);
    HOLDBAND_TRY(entries);
    const auto entry = onlyFileOf(*entries);
    HOLDBAND_TRY(entry);
    auto unpacker = unpackEntry(*m_packed, *entry);
    HOLDBAND_TRY(unpacker);
    m_unpacker = std::move(*unpacker);
    m_entry = entry->name;
    return beginUnpacked();
}

/// Unpacks the first piece, to see whether it is text.
Done LogBytes::beginUnpacked()
{
    m_buffer.resize(SourceFile::pieceSize);
    const auto first = nextUnpacked();
    HOLDBAND_TRY(first);
    if (isContainerAgain(*first))
        return inContainer({ProblemKind::data,
                            Phrase::tr("this is an archive inside an archive"),
                            {},
                            Phrase::tr("unpack it first")});
    m_pending = *first;
    return {};
}

Result<std::string_view> LogBytes::nextUnpacked()
{
    const auto filled = m_unpacker->read(m_buffer.data(), m_buffer.size());
    if (!filled)
        return inContainer(filled.error());
    return std::string_view(m_buffer.data(), *filled);
}

tl::unexpected<Problem> LogBytes::inContainer(Problem problem) const
{
    return m_entry.empty() ? failure(std::move(problem))
                           : inEntry(std::move(problem), ZipEntry{m_entry});
}

Result<std::string_view> LogBytes::next()
{
    auto piece = m_pending    ? Result<std::string_view>(*m_pending)
                 : m_unpacker ? nextUnpacked()
                              : m_source.next();
    m_pending.reset();
    if (piece)
        m_read += static_cast<std::int64_t>(piece->size());
    return piece;
}

std::int64_t LogBytes::size() const
{
    return m_unpacker ? m_unpacker->expectedSize() : m_source.size();
}

std::string LogBytes::sha256()
{
    return m_unpacker ? m_sha256 : m_source.sha256();
}

} // namespace holdband

#include "core/intake/container/log_bytes.h"

#include "core/intake/container/json_lines.h"
#include "core/intake/container/limits.h"
#include "core/intake/container/workbook.h"
#include "core/intake/container/zip_archive.h"
#include "core/text/phrase.h"

#include <utility>

namespace holdband {

namespace {

tl::unexpected<Problem> noWorkbook(const std::string& sheet)
{
    return dataProblem(Phrase::tr("this file is no workbook: it has no sheet \"%1\"").with(sheet));
}

} // namespace

Result<LogBytes> LogBytes::begin(const LogInput& input)
{
    auto source = input.text ? Result<SourceFile>(SourceFile::ofText(input.text))
                             : SourceFile::open(input.path);
    HOLDBAND_TRY(source);
    if (input.readUpTo)
        HOLDBAND_TRY(source->endAt(*input.readUpTo));
    return LogBytes(std::move(*source));
}

/// Reads the first piece.
Result<ContainerKind> LogBytes::beginSource()
{
    const auto first = m_source.next();
    HOLDBAND_TRY(first);
    m_pending = *first;
    return containerKindOf(*first);
}

Result<LogBytes> LogBytes::open(const LogInput& input)
{
    auto bytes = begin(input);
    HOLDBAND_TRY(bytes);
    const auto kind = bytes->beginSource();
    HOLDBAND_TRY(kind);
    HOLDBAND_TRY(bytes->unpack(*kind, input));
    if (bytes->m_table)
        return bytes;
    const auto json = isJsonLines(*bytes->m_pending);
    HOLDBAND_TRY(json);
    if (*json)
        HOLDBAND_TRY(bytes->readJsonLines(input.beginningOnly));
    return bytes;
}

Result<std::vector<std::string>> LogBytes::sheetNames(const LogInput& input)
{
    auto bytes = begin(input);
    HOLDBAND_TRY(bytes);
    const auto kind = bytes->beginSource();
    HOLDBAND_TRY(kind);
    if (*kind != ContainerKind::zip)
        return std::vector<std::string>{};
    HOLDBAND_TRY(bytes->readPacked());
    const auto entries = zipEntries(*bytes->m_packed);
    HOLDBAND_TRY(entries);
    return isOfficeDocument(*entries) ? shownSheets(*bytes->m_packed, *entries)
                                      : std::vector<std::string>{};
}

Done LogBytes::unpack(ContainerKind kind, const LogInput& input)
{
    if (kind == ContainerKind::zip)
        return unpackZip(input);
    if (input.sheet)
        return noWorkbook(*input.sheet);
    return kind == ContainerKind::gzip ? unpackGzip() : Done();
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

Done LogBytes::unpackZip(const LogInput& input)
{
    constexpr auto beginning = static_cast<std::int64_t>(SourceFile::pieceSize);
    HOLDBAND_TRY(readPacked());
    const auto entries = zipEntries(*m_packed);
    HOLDBAND_TRY(entries);
    if (isOfficeDocument(*entries)) {
        auto table = sheetTable(*m_packed, *entries, input.sheet,
                                input.beginningOnly ? std::optional(beginning) : std::nullopt);
        HOLDBAND_TRY(table);
        useTable(std::move(*table));
        return {};
    }
    if (input.sheet)
        return noWorkbook(*input.sheet);
    const auto entry = onlyFileOf(*entries);
    HOLDBAND_TRY(entry);
    auto unpacker = unpackEntry(*m_packed, *entry);
    HOLDBAND_TRY(unpacker);
    m_unpacker = std::move(*unpacker);
    m_entry = entry->name;
    return beginUnpacked();
}

/// The table is read from now on, instead of the file.
void LogBytes::useTable(TableText table)
{
    m_notes = std::move(table.notes);
    m_pending.reset();
    m_unpacker.reset();
    m_packed.reset();
    m_table = std::make_unique<SourceFile>(
        SourceFile::ofText(std::make_shared<const std::string>(std::move(table.csv))));
}

Done LogBytes::readJsonLines(bool beginningOnly)
{
    std::string text;
    bool isAll = false;
    while (!isAll && !(beginningOnly && !text.empty())) {
        const auto piece = next();
        HOLDBAND_TRY(piece);
        isAll = piece->size() < SourceFile::pieceSize;
        text += *piece;
        if (static_cast<std::int64_t>(text.size()) > mostWhole)
            return dataProblem(Phrase::tr("the file is larger than 512 MiB"), {},
                               Phrase::tr("split the log into several files"));
    }
    if (!isAll) // the last line may be cut
        text.erase(text.find_last_of('\n') + 1);
    auto table = jsonLinesTable(text);
    HOLDBAND_TRY(table);
    m_read = 0;
    m_addedLines = 1;
    useTable(std::move(*table));
    return {};
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
                 : m_table    ? m_table->next()
                              : m_source.next();
    m_pending.reset();
    if (piece)
        m_read += static_cast<std::int64_t>(piece->size());
    return piece;
}

std::int64_t LogBytes::size() const
{
    if (m_unpacker)
        return m_unpacker->expectedSize();
    return m_table ? m_table->size() : m_source.size();
}

std::string LogBytes::sha256()
{
    return m_sha256.empty() ? m_source.sha256() : m_sha256;
}

} // namespace holdband

#include "core/intake/container/zip_archive.h"

#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <QString>
#include <algorithm>
#include <optional>

namespace holdband {

using namespace std::string_view_literals;

namespace {

constexpr std::string_view endMark = "PK\x05\x06"sv;   ///< of the end record
constexpr std::string_view entryMark = "PK\x01\x02"sv; ///< of an entry in the directory
constexpr std::string_view fileMark = "PK\x03\x04"sv;  ///< of the header before a file's bytes
constexpr std::size_t endSize = 22;
constexpr std::size_t entrySize = 46;
constexpr std::size_t fileSize = 30;

constexpr unsigned stored = 0;
constexpr unsigned deflated = 8;

/// Numbers of a record, little-endian; the caller knows that it is long enough.
class ZipRecord {
public:
    explicit ZipRecord(std::string_view bytes) : m_bytes(bytes) {}

    unsigned two(std::size_t at) const
    {
        return static_cast<unsigned char>(m_bytes[at]) |
               static_cast<unsigned>(static_cast<unsigned char>(m_bytes[at + 1])) << 8;
    }
    std::uint32_t four(std::size_t at) const
    {
        return static_cast<std::uint32_t>(two(at)) | static_cast<std::uint32_t>(two(at + 2)) << 16;
    }

private:
    std::string_view m_bytes;
};

tl::unexpected<Problem> damagedArchive(std::size_t at)
{
    return dataProblem(Phrase::tr("the archive is damaged here"),
                       Phrase::tr("byte %1").with(std::to_string(at)),
                       Phrase::tr("copy or download it again"));
}

/// Position of the end record: the last one, since a comment follows it.
std::optional<std::size_t> endRecordIn(std::string_view archive)
{
    constexpr std::size_t longestComment = 0xFFFF;
    if (archive.size() < endSize)
        return std::nullopt;
    const std::size_t last = archive.size() - endSize;
    const std::size_t first = last > longestComment ? last - longestComment : 0;
    const std::size_t found = archive.rfind(endMark, last);
    return found == archive.npos || found < first ? std::nullopt : std::optional(found);
}

/// A name is UTF-8, or in a code page that the archive doesn't say.
std::string utf8Name(std::string_view bytes)
{
    return QString::fromUtf8(bytes.data(), static_cast<qsizetype>(bytes.size())).toStdString();
}

/// Reads the entry at `at`, and moves `at` behind it.
Result<ZipEntry> takeEntry(std::string_view archive, std::size_t& at)
{
    if (archive.size() < entrySize || at > archive.size() - entrySize ||
        !archive.substr(at).starts_with(entryMark))
        return damagedArchive(at);
    const ZipRecord record(archive.substr(at, entrySize));
    const std::size_t nameSize = record.two(28);
    const std::size_t end = at + entrySize + nameSize + record.two(30) + record.two(32);
    if (end > archive.size())
        return damagedArchive(at);
    ZipEntry entry;
    entry.name = utf8Name(archive.substr(at + entrySize, nameSize));
    entry.encrypted = (record.two(8) & 1) != 0;
    entry.method = record.two(10);
    entry.crc = record.four(16);
    entry.packed = record.four(20);
    entry.size = record.four(24);
    entry.at = record.four(42);
    at = end;
    return entry;
}

/// Whether the file was added by a system for itself.
bool isHidden(const ZipEntry& entry)
{
    const std::size_t slash = entry.name.find_last_of('/');
    const std::string name = slash == entry.name.npos ? entry.name : entry.name.substr(slash + 1);
    return name.starts_with('.') || entry.name.starts_with("__MACOSX/");
}

} // namespace

Result<std::vector<ZipEntry>> zipEntries(std::string_view archive)
{
    const auto end = endRecordIn(archive);
    if (!end)
        return dataProblem(Phrase::tr("the archive ends too early: its list of files is missing"),
                           Phrase::tr("byte %1").with(std::to_string(archive.size())),
                           Phrase::tr("copy or download it again"));
    const ZipRecord record(archive.substr(*end, endSize));
    const std::size_t count = record.two(10), directory = record.four(16);
    if (count == 0xFFFF || directory == 0xFFFFFFFF)
        return dataProblem(Phrase::tr("this is an archive for very large files (ZIP64)"), {},
                           Phrase::tr("unpack it first"));
    if (record.two(4) != 0 || record.two(8) != count)
        return dataProblem(Phrase::tr("this is a part of an archive in several parts"), {},
                           Phrase::tr("unpack it first"));
    std::vector<ZipEntry> entries;
    std::size_t at = directory;
    for (std::size_t i = 0; i < count; ++i) {
        auto entry = takeEntry(archive.substr(0, *end), at);
        HOLDBAND_TRY(entry);
        entries.push_back(std::move(*entry));
    }
    return entries;
}

Result<ZipEntry> onlyFileOf(const std::vector<ZipEntry>& entries)
{
    std::vector<ZipEntry> files;
    std::copy_if(entries.begin(), entries.end(), std::back_inserter(files),
                 [](const ZipEntry& entry) { return !entry.isFolder() && !isHidden(entry); });
    if (files.size() == 1)
        return files.front();
    if (files.empty())
        return dataProblem(entries.empty() ? Phrase::tr("the archive is empty")
                                           : Phrase::tr("the archive holds only folders"));
    std::vector<std::string> names;
    for (const ZipEntry& file : files)
        names.push_back(file.name);
    return dataProblem(Phrase::tr("the archive holds %1 files: %2")
                           .with(std::to_string(files.size()), joined(names)),
                       {}, Phrase::tr("unpack it, and import the logs among them"));
}

Result<std::unique_ptr<Unpacker>> unpackEntry(std::string_view archive, const ZipEntry& entry)
{
    if (entry.encrypted)
        return inEntry({ProblemKind::data,
                        Phrase::tr("the file has a password"),
                        {},
                        Phrase::tr("unpack it first")},
                       entry);
    if (entry.method != stored && entry.method != deflated)
        return inEntry({ProblemKind::data,
                        Phrase::tr("the file is packed in a way that can't be read"),
                        {},
                        Phrase::tr("unpack it first, or pack it as gzip or zip")},
                       entry);
    const auto at = static_cast<std::size_t>(entry.at);
    if (archive.size() < fileSize || at > archive.size() - fileSize ||
        !archive.substr(at).starts_with(fileMark))
        return inEntry(damagedArchive(at).value(), entry);
    const ZipRecord record(archive.substr(at, fileSize));
    const std::size_t begin = at + fileSize + record.two(26) + record.two(28);
    const auto packed = static_cast<std::size_t>(entry.packed);
    if (begin > archive.size() || packed > archive.size() - begin)
        return inEntry(damagedArchive(at).value(), entry);
    return std::make_unique<Unpacker>(PackedBytes{
        archive.substr(begin, packed),
        entry.method == stored ? PackedBytes::Form::stored : PackedBytes::Form::deflated,
        static_cast<std::int64_t>(begin), entry.size, entry.crc});
}

Result<std::string> wholeEntry(std::string_view archive, const ZipEntry& entry, std::int64_t most)
{
    constexpr std::size_t step = std::size_t{64} << 10;
    auto unpacker = unpackEntry(archive, entry);
    HOLDBAND_TRY(unpacker);
    std::string text;
    for (;;) {
        const std::size_t before = text.size();
        text.resize(before + step);
        const auto filled = (*unpacker)->read(text.data() + before, step);
        if (!filled)
            return inEntry(filled.error(), entry);
        text.resize(before + *filled);
        if (static_cast<std::int64_t>(text.size()) > most)
            return inEntry({ProblemKind::data, Phrase::tr("the file is too large"), {}, {}}, entry);
        if (*filled < step)
            return text;
    }
}

tl::unexpected<Problem> inEntry(Problem problem, const ZipEntry& entry)
{
    if (problem.kind == ProblemKind::data)
        problem.place = problem.place.empty() ? entry.name : entry.name + ", " + problem.place;
    return failure(std::move(problem));
}

} // namespace holdband

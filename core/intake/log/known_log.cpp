#include "core/intake/log/known_log.h"

#include "core/digest.h"
#include "core/intake/csv/source_file.h"
#include "core/intake/log/log_places.h"
#include "core/intake/log/store_log.h"

#include <algorithm>
#include <memory>
#include <numeric>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <utility>

namespace holdband::intake {

namespace {

/// Increase it whenever the same bytes may give other readings than before.
constexpr int readingRules = 1;

/// As much of the known part is read again before the new rows, so that they are read as in the
/// whole file: which of a doubled hour a time means, where an interval begins.
constexpr std::int64_t contextBytes = std::int64_t{1} << 20;
/// A file that has grown by more than this is read whole.
constexpr std::int64_t mostGrowth = std::int64_t{64} << 20;

/// A text of all that is added, in which no two lists of values are the same.
class AskedText {
public:
    void add(std::string_view text)
    {
        m_text += std::to_string(text.size()) + ":";
        m_text += text;
    }
    void add(std::int64_t number) { add(std::string_view(std::to_string(number))); }
    template <typename Value>
    void addOptional(const std::optional<Value>& value)
    {
        if (!value)
            m_text += "-";
        else if constexpr (std::is_convertible_v<Value, std::string_view>)
            add(std::string_view(*value));
        else
            add(static_cast<std::int64_t>(*value));
    }
    void add(const ColumnRef& column)
    {
        add(column.header);
        addOptional(column.index);
    }
    std::string digest() const { return digestOf(m_text); }

private:
    std::string m_text;
};

void addLayout(AskedText& asked, const LogRequest& request)
{
    asked.addOptional(request.layoutRequest.delimiter);
    asked.addOptional(request.layoutRequest.headerLine);
    asked.add(std::int64_t{request.layout.has_value()});
    if (request.layout) {
        asked.add(request.layout->delimiter);
        asked.add(request.layout->headerLine);
        asked.add(static_cast<std::int64_t>(request.layout->timeColumn));
        asked.addOptional(request.layout->clockColumn);
        asked.add(request.layout->unitsLine);
    }
    asked.add(std::int64_t{request.longForm.has_value()});
    if (request.longForm) {
        asked.add(request.longForm->name);
        asked.add(request.longForm->value);
        asked.add(request.longForm->unit.value_or(ColumnRef{}));
    }
}

void addMeaning(AskedText& asked, const LogRequest& request)
{
    asked.addOptional(request.timeColumn);
    asked.add(request.zone.name());
    asked.add(std::int64_t{request.zoneSet});
    asked.addOptional(request.dateOrder);
    asked.addOptional(request.timePattern);
    asked.addOptional(request.timeUnit);
    asked.addOptional(request.start);
    asked.addOptional(request.decimalSign);
    asked.addOptional(request.temperatureUnit);
    asked.addOptional(request.energyUnit);
    asked.add(static_cast<std::int64_t>(request.fallbackUnit));
    asked.add(std::int64_t{request.fallbackSaid});
}

bool isComplete(const LogFile& file)
{
    return file.rejectedTotal == 0 && file.warnings.empty() && file.ignoredNames.empty() &&
           std::all_of(file.columns.begin(), file.columns.end(), [](const LogColumn& column) {
               return column.duplicates == 0 && column.conflicts.empty();
           });
}

/// A register's reading can be deleted or corrected alone, so such a file is always read whole.
bool hasMeter(const ImportReport& report, const LogRequest& request)
{
    return std::any_of(request.wanted.begin(), request.wanted.end(),
                       [&](const WantedColumn& wanted) {
                           return wanted.kind == SeriesKind::meter &&
                                  std::any_of(report.columns.begin(), report.columns.end(),
                                              [&](const ImportedColumn& read) {
                                                  return read.name == wanted.name;
                                              });
                       });
}

bool isReadAlike(const LogFile& some, const LogFile& other)
{
    const auto layout = [](const LogFile& file) {
        return std::tie(file.delimiter, file.decimalSign, file.headerLine, file.timeHeader,
                        file.zoneName, file.dateOrder, file.ignoredColumns);
    };
    return layout(some) == layout(other) &&
           std::equal(some.columns.begin(), some.columns.end(), other.columns.begin(),
                      other.columns.end(), [](const LogColumn& one, const LogColumn& two) {
                          return std::tie(one.name, one.header, one.kind, one.unit) ==
                                 std::tie(two.name, two.header, two.kind, two.unit);
                      });
}

/// Lines of a text, and the number of lines of the file that were left out before its first row.
struct Excerpt {
    std::string text;
    std::int64_t linesBefore = 0;
    std::int64_t knownRows = 0; ///< in `text`
};

/// Reads the bytes of a file whose beginning may be known.
class KnownBytes {
public:
    KnownBytes(SourceFile source, const ReadHook& hook) : m_source(std::move(source)), m_hook(hook)
    {
    }

    /// The file's first piece, at most 1 MiB. Empty if it can't be read.
    std::string_view begin()
    {
        const auto piece = m_source.next();
        m_piece = piece ? *piece : std::string_view();
        return m_piece;
    }
    std::int64_t size() const { return m_source.size(); }

    /// Reads to the end. False: the bytes are others than the stored ones, or can't be read.
    Result<bool> isFileOf(const store::StoredLog& stored)
    {
        m_known = stored.log.bytes;
        m_from = std::max<std::int64_t>(0, m_known - contextBytes);
        const auto known = static_cast<std::size_t>(m_known);
        m_beginning = m_piece.substr(0, known);
        m_beginning.resize(m_beginning.rfind('\n') + 1);
        while (!m_piece.empty()) {
            take();
            if (m_hook && !m_hook(m_read, std::max(m_read, size())))
                return failure(importCancelled());
            const auto piece = m_source.next();
            if (!piece)
                return false;
            m_piece = *piece;
        }
        m_sha256 = m_source.sha256();
        return (m_read > m_known ? m_prefix.hex() : m_sha256) == stored.sha256;
    }

    bool hasGrown() const { return m_read > m_known; }
    const std::string& sha256() const { return m_sha256; }
    const std::string& beginning() const { return m_beginning; }

    /// Of the whole file; absent: its last line has no end.
    std::optional<LogLines> lines(const store::ReadLog& known) const
    {
        if (m_rest.back() != '\n')
            return std::nullopt;
        const auto added = std::count(
            m_rest.begin() + static_cast<std::ptrdiff_t>(m_known - m_from), m_rest.end(), '\n');
        return LogLines{known.lines + added, m_read, known.head};
    }

    /// The header, the last known rows and all new ones.
    Excerpt rest(const store::StoredLog& stored) const
    {
        const std::int64_t headerLines = stored.log.lines - stored.rowsRead;
        if (m_from == 0)
            return {m_rest, 0, stored.rowsRead};
        const auto context = static_cast<std::size_t>(m_known - m_from);
        const std::size_t start = m_rest.find('\n') + 1;
        const std::int64_t rows =
            std::count(m_rest.begin() + static_cast<std::ptrdiff_t>(start),
                       m_rest.begin() + static_cast<std::ptrdiff_t>(context), '\n');
        return {header(headerLines) + m_rest.substr(start), stored.rowsRead - rows, rows};
    }

private:
    void take()
    {
        const std::int64_t end = m_read + static_cast<std::int64_t>(m_piece.size());
        if (size() > m_known && m_read < m_known)
            m_prefix.add(m_piece.substr(0, static_cast<std::size_t>(m_known - m_read)));
        if (end > m_from)
            m_rest += m_piece.substr(
                static_cast<std::size_t>(std::max<std::int64_t>(0, m_from - m_read)));
        m_read = end;
    }

    std::string header(std::int64_t lines) const
    {
        std::size_t end = 0;
        for (std::int64_t i = 0; i < lines; ++i)
            end = m_beginning.find('\n', end) + 1;
        return m_beginning.substr(0, end);
    }

    SourceFile m_source;
    const ReadHook& m_hook;
    std::string_view m_piece;
    std::int64_t m_read = 0;
    std::int64_t m_known = 0;
    std::int64_t m_from = 0; ///< where m_rest begins in the file
    std::string m_beginning; ///< complete lines
    std::string m_rest;
    Digest m_prefix; ///< of the known bytes, if others follow
    std::string m_sha256;
};

Result<LogFile> readExcerpt(LogRequest request, std::string text, std::int64_t linesBefore)
{
    request.path = fileName(request.path);
    request.text = std::make_shared<const std::string>(std::move(text));
    request.linesBefore = linesBefore;
    return readLog(request);
}

/// Reads the new rows; false: they can't be read alone.
bool readRest(const LogRequest& request, const KnownBytes& bytes, KnownLog& known)
{
    Excerpt excerpt = bytes.rest(known.stored);
    auto rest = readExcerpt(request, std::move(excerpt.text), excerpt.linesBefore);
    if (!rest || !isReadAlike(known.beginning, *rest))
        return false;
    const auto firstRejected = rest->rejected.empty() ? 0 : rest->rejected.front().line;
    if (rest->rejectedTotal > 0 && firstRejected <= known.stored.log.lines)
        return false;
    rest->rowsRead += known.stored.rowsRead - excerpt.knownRows;
    rest->sha256 = known.sha256;
    rest->lines = bytes.lines(known.stored.log);
    known.rest = std::move(*rest);
    return true;
}

std::vector<std::int64_t> knownReadings(const KnownLog& known)
{
    std::vector<std::int64_t> counts;
    for (const LogColumn& column : (known.rest ? *known.rest : known.beginning).columns)
        counts.push_back(
            std::count_if(column.line.begin(), column.line.end(),
                          [&](std::int64_t line) { return line <= known.stored.log.lines; }));
    return counts;
}

/// The first rows that were already there, column by column: those of the beginning, and behind
/// the known lines those that were read now.
std::vector<ReportedRow> firstThere(const ImportReport& report,
                                    const std::vector<ReportedRow>& beginning,
                                    std::int64_t knownLines)
{
    std::vector<ReportedRow> rows;
    for (std::size_t column = 0; column < report.columns.size(); ++column) {
        const std::size_t most = rows.size() + maxRowsListed;
        const auto add = [&](const std::vector<ReportedRow>& from, std::int64_t after) {
            for (const ReportedRow& row : from) {
                if (row.column == column && row.line > after && rows.size() < most)
                    rows.push_back(row);
            }
        };
        add(beginning, 0);
        add(report.rows.alreadyThere, knownLines);
    }
    return rows;
}

} // namespace

std::string askedOf(const LogRequest& request)
{
    AskedText asked;
    asked.add(readingRules);
    addLayout(asked, request);
    addMeaning(asked, request);
    for (const WantedColumn& column : request.wanted) {
        asked.add(column.name);
        asked.add(static_cast<std::int64_t>(column.kind));
        asked.addOptional(column.header);
        asked.addOptional(column.unit);
        asked.addOptional(column.index);
    }
    return asked.digest();
}

Result<std::optional<KnownLog>> findKnown(const store::LogbookFile& logbook,
                                          const LogRequest& request, const ReadHook& hook)
{
    if (request.text || request.readUpTo || request.sheet)
        return std::optional<KnownLog>();
    const std::string asked = askedOf(request);
    auto any = store::hasLogAskedAs(logbook, asked);
    HOLDBAND_TRY(any);
    if (!*any)
        return std::optional<KnownLog>();
    auto source = SourceFile::open(request.path);
    if (!source) // reading it whole says why
        return std::optional<KnownLog>();
    KnownBytes bytes(std::move(*source), hook);
    const std::string head = digestOf(bytes.begin().substr(0, LogLines::headBytes));
    auto stored = store::longestStoredLog(logbook, asked, head, bytes.size());
    HOLDBAND_TRY(stored);
    if (!*stored || bytes.size() - (*stored)->log.bytes > mostGrowth)
        return std::optional<KnownLog>();
    auto same = bytes.isFileOf(**stored);
    HOLDBAND_TRY(same);
    if (!*same)
        return std::optional<KnownLog>();
    auto beginning = readExcerpt(request, bytes.beginning(), 0);
    if (!beginning || !isComplete(*beginning))
        return std::optional<KnownLog>();
    beginning->sha256 = bytes.sha256();
    beginning->rowsRead = (*stored)->rowsRead;
    KnownLog known{std::move(**stored), std::move(*beginning), {}, bytes.sha256()};
    if (bytes.hasGrown() && !readRest(request, bytes, known))
        return std::optional<KnownLog>();
    known.readAgain = knownReadings(known);
    return std::optional(std::move(known));
}

void addKnown(ImportReport& report, const ImportReport& beginning, const KnownLog& known)
{
    for (std::size_t k = 0; k < report.columns.size(); ++k) {
        const auto stored = known.stored.readings.find(report.columns[k].name);
        const std::int64_t all = stored == known.stored.readings.end() ? 0 : stored->second;
        report.columns[k].alreadyThere += all - known.readAgain[k];
    }
    report.rows.alreadyThere =
        firstThere(report, beginning.rows.alreadyThere, known.stored.log.lines);
    report.firstRows = beginning.firstRows;
}

Done noteReadLog(const store::Change& change, const ImportReport& report, const LogRequest& request,
                 const KnownLog* known)
{
    const LogFile& file = report.file;
    const std::int64_t readAgain =
        known ? std::accumulate(known->readAgain.begin(), known->readAgain.end(), std::int64_t{0})
              : 0;
    const bool allStored = report.alreadyThere() == readAgain && report.conflicting() == 0;
    if (!report.import || !allStored || !file.lines || !isComplete(file) ||
        hasMeter(report, request))
        return {};
    const std::int64_t headerLines = file.lines->count - file.rowsRead;
    if (headerLines != file.headerLine && headerLines != file.headerLine + 1)
        return {}; // blank lines, or rows of several lines
    return store::addReadLog(
        change, *report.import, known ? std::optional(known->stored.import) : std::nullopt,
        {askedOf(request), file.lines->head, file.lines->bytes, file.lines->count});
}

} // namespace holdband::intake

#include "core/intake/log/log_reader.h"

#include "core/digest.h"
#include "core/intake/container/log_bytes.h"
#include "core/intake/csv/encoding.h"
#include "core/intake/csv/no_header.h"
#include "core/intake/log/elapsed_times.h"
#include "core/intake/log/log_places.h"
#include "core/intake/log/log_row_accumulator.h"
#include "core/text/name_suggestions.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <filesystem>
#include <memory>
#include <set>

namespace holdband {

namespace {

Result<std::size_t> placeOf(const ColumnRef& column, const Dialect& dialect)
{
    if (!column.index)
        return needColumn(dialect.header, column.header);
    if (*column.index >= dialect.header.size())
        return dataProblem(
            Phrase::tr("there is no column %1").with(std::to_string(*column.index + 1)), {},
            Phrase::tr("the file has %1", "columns").with(std::to_string(dialect.header.size())),
            Decision::columns);
    return *column.index;
}

Result<std::optional<std::size_t>> columnOf(const WantedColumn& wanted, const Dialect& dialect)
{
    if (wanted.index)
        return placeOf({{}, wanted.index}, dialect).map([](std::size_t index) {
            return std::optional{index};
        });
    if (!wanted.header)
        return findColumn(dialect.header, wanted.name);
    return needColumn(dialect.header, *wanted.header).map([](std::size_t index) {
        return std::optional{index};
    });
}

Result<ReadColumn> readColumn(const WantedColumn& wanted, const LogRequest& request,
                              const Dialect& dialect, std::size_t index)
{
    if (dialect.time.has(index))
        return dataProblem(
            Phrase::tr("the column \"%1\" holds the time").with(dialect.header[index]), {},
            Phrase::tr("choose another column for \"%1\"").with(wanted.name), Decision::columns);
    const auto unit = chooseUnit(wanted, request, dialect.header, index);
    if (!unit)
        return failure(unit.error());
    ReadColumn read{index, {}, *unit};
    read.column.name = wanted.name;
    read.column.header = dialect.header[index];
    read.column.kind = wanted.kind;
    read.column.unit = unit->unit;
    read.column.unitReason = unit->reason;
    return read;
}

/// "such as --column "Vessel 1 probe=Vessel 1 (F)"" where a name begins with a header; else empty.
std::string suggestedColumn(const LogRequest& request, const Dialect& dialect)
{
    std::vector<std::string> names;
    for (const WantedColumn& wanted : request.wanted)
        names.push_back(wanted.name);
    for (std::size_t i = 0; i < dialect.header.size(); ++i) {
        const auto found =
            dialect.time.has(i) ? std::nullopt : nameBegunBy(dialect.header[i], names);
        if (found)
            return Phrase::tr(", such as --column \"%1=%2\"")
                .with(names[*found], dialect.header[i]);
    }
    return {};
}

Result<std::vector<ReadColumn>> chooseColumns(const LogRequest& request, const Dialect& dialect)
{
    std::vector<ReadColumn> columns;
    for (const WantedColumn& wanted : request.wanted) {
        const auto index = columnOf(wanted, dialect);
        if (!index)
            return failure(index.error());
        if (!*index)
            continue;
        auto column = readColumn(wanted, request, dialect, **index);
        if (!column)
            return failure(column.error());
        columns.push_back(std::move(*column));
    }
    if (columns.empty())
        return dataProblem(
            Phrase::tr("no column is called like a sensor or meter"), {},
            Phrase::tr("say which is which with --column \"SENSOR=COLUMN\"%1; the columns are: %2")
                .with(suggestedColumn(request, dialect), joined(dialect.header)),
            Decision::columns, dialect.header);
    return columns;
}

/// Of a long log: each wanted name as a separate column. Its unit is the one in the name, else
/// the one in the header of the values if it suits the kind.
Result<std::vector<ReadColumn>> chooseNames(const LogRequest& request, const Dialect& dialect,
                                            std::size_t value)
{
    std::vector<ReadColumn> columns;
    for (const WantedColumn& wanted : request.wanted) {
        const std::string& name = wanted.header.value_or(wanted.name);
        Dialect own = dialect;
        own.time = {value + 1, std::nullopt}; // not the column of the values
        if (headerParts(name).inBrackets)
            own.header[value] = name;
        auto column = readColumn(wanted, request, own, value);
        if (!column) {
            own.header[value] = name;
            column = readColumn(wanted, request, own, value);
        }
        HOLDBAND_TRY(column);
        column->column.header = name;
        columns.push_back(std::move(*column));
    }
    return columns;
}

/// The columns of a long log with the name of each value, and its unit.
struct LongPlaces {
    std::optional<std::size_t> name;
    std::optional<std::size_t> unit;
};

void nameIgnored(const Dialect& dialect, const std::vector<ReadColumn>& columns,
                 const LongPlaces& places, LogFile& file)
{
    for (std::size_t i = 0; i < dialect.header.size(); ++i) {
        const bool used = dialect.time.has(i) ||
                          std::any_of(columns.begin(), columns.end(),
                                      [i](const ReadColumn& column) { return column.index == i; });
        if (places.name != i && places.unit != i && !used && !dialect.header[i].empty())
            file.ignoredColumns.push_back(dialect.header[i]);
    }
}

/// Counts the lines of the bytes that were read.
class LineCount {
public:
    void add(std::string_view bytes)
    {
        if (m_lines.bytes == 0)
            m_lines.head = digestOf(bytes.substr(0, LogLines::headBytes));
        m_lines.bytes += static_cast<std::int64_t>(bytes.size());
        m_lines.count += std::count(bytes.begin(), bytes.end(), '\n');
        if (!bytes.empty())
            m_ended = bytes.back() == '\n';
    }
    /// Absent: the last line has no end.
    std::optional<LogLines> lines() const
    {
        return m_ended ? std::optional(m_lines) : std::nullopt;
    }

private:
    LogLines m_lines;
    bool m_ended = false;
};

bool isUtf16(Encoding encoding)
{
    return encoding == Encoding::utf16le || encoding == Encoding::utf16be;
}

/// One pass over the file.
class LogPass {
public:
    LogPass(const LogRequest& request, const ReadHook& hook, std::optional<Encoding> forced)
        : m_request(request), m_hook(hook), m_decoder(forced)
    {
    }

    Done run(LogFile& file)
    {
        auto source =
            LogBytes::open({m_request.path, m_request.text, m_request.readUpTo, m_request.sheet});
        if (!source)
            return failure(source.error());
        m_request.linesBefore -= source->addedLines();
        for (;;) {
            const auto bytes = source->next();
            if (!bytes)
                return failure(bytes.error());
            const bool isLast = bytes->size() < SourceFile::pieceSize || m_request.beginningOnly;
            m_size = source->size();
            m_lines.add(*bytes);
            const Done done = take(m_decoder.decode(*bytes, isLast), isLast, file);
            if (!done || m_decoder.contradicted())
                return done;
            if (m_hook &&
                !m_hook(source->bytesRead(), std::max(source->size(), source->bytesRead())))
                return dataProblem(Phrase::tr("the reading was stopped"));
            if (isLast)
                break;
        }
        file.sha256 = source->sha256();
        if (source->isPlain() && !m_request.text && !isUtf16(m_decoder.encoding()))
            file.lines = m_lines.lines();
        HOLDBAND_TRY(finish(file));
        file.warnings.insert(file.warnings.begin(), source->notes().begin(), source->notes().end());
        return {};
    }

    /// See LogRowAccumulator: the pass gave no readings.
    std::optional<char> signToReadAgain() const { return m_signToReadAgain; }
    bool mustBeWindows() const { return m_decoder.contradicted() && !m_decoder.hadMark(); }
    bool brokeItsMark() const { return m_decoder.contradicted() && m_decoder.hadMark(); }

private:
    Done take(std::string_view text, bool isLast, LogFile& file)
    {
        if (m_decoder.contradicted())
            return {};
        if (!m_store) {
            const Done begun = begin(text, isLast, file);
            if (!begun)
                return begun;
        }
        return m_tokens->feed(text);
    }

    Done begin(std::string_view text, bool isWhole, LogFile& file)
    {
        auto dialect = findDialect(text, isWhole, m_request);
        if (!dialect)
            return m_request.linesBefore < 0 ? inTable(dialect.error()) : failure(dialect.error());
        std::optional<TimePattern> pattern;
        if (m_request.timePattern) {
            auto compiled = TimePattern::compile(*m_request.timePattern);
            HOLDBAND_TRY(compiled);
            pattern = std::move(*compiled);
        }
        LongPlaces places;
        auto columns = chooseAll(*dialect, places);
        if (!columns)
            return failure(columns.error());
        HOLDBAND_TRY(settleTimeNumbers(*dialect));
        HOLDBAND_TRY(checkDates(*dialect, *columns));
        file.delimiter = dialect->delimiter;
        file.headerLine = dialect->headerLine;
        nameIgnored(*dialect, *columns, places, file);
        m_store = std::make_unique<LogRowAccumulator>(m_request, std::move(*dialect),
                                                      std::move(*columns), std::move(pattern));
        if (places.name)
            m_store->setNameColumn(*places.name);
        if (places.unit)
            m_store->setUnitColumn(*places.unit);
        m_store->expect(rowsExpected(text));
        m_tokens = std::make_unique<CsvTokens>(file.delimiter, [this](const CsvRow& row) {
            m_store->take(row);
            return true;
        });
        return {};
    }

    /// Decides what times that are numbers count, or asks.
    Done settleTimeNumbers(Dialect& dialect) const
    {
        if (m_request.timePattern)
            dialect.timeNumbers.reset();
        const std::string header = timeHeader(dialect);
        if (!dialect.timeNumbers)
            return refuseStart(header);
        if (m_request.timeUnit)
            dialect.timeNumbers->unit = m_request.timeUnit;
        HOLDBAND_TRY(needTimeUnit(*dialect.timeNumbers, header));
        if (dialect.timeNumbers->unit == TimeUnit::days)
            return refuseStart(header);
        return needStart(m_request, *dialect.timeNumbers->unit, header);
    }

    /// Only the energy of a day has a date without a time of day.
    Done checkDates(const Dialect& dialect, const std::vector<ReadColumn>& columns) const
    {
        const bool fit = !dialect.dateAlone || m_request.timePattern ||
                         std::all_of(columns.begin(), columns.end(), [](const ReadColumn& read) {
                             return read.column.kind == SeriesKind::intervalEnergy;
                         });
        if (fit)
            return {};
        return failure(dateAloneProblem(dialect.dateAlone->text, dialect.dateAlone->line,
                                        dialect.header[dialect.time.first]));
    }

    Done refuseStart(const std::string& header) const
    {
        if (!m_request.start)
            return {};
        return dataProblem(Phrase::tr("the times don't count from a start"), columnPlace(header),
                           Phrase::tr("leave out --start"));
    }

    Result<std::vector<ReadColumn>> chooseAll(const Dialect& dialect, LongPlaces& places) const
    {
        if (!m_request.longForm)
            return chooseColumns(m_request, dialect);
        const auto name = placeOf(m_request.longForm->name, dialect);
        HOLDBAND_TRY(name);
        const auto value = placeOf(m_request.longForm->value, dialect);
        HOLDBAND_TRY(value);
        places.name = *name;
        if (m_request.longForm->unit) {
            const auto unit = placeOf(*m_request.longForm->unit, dialect);
            HOLDBAND_TRY(unit);
            places.unit = *unit;
        }
        return chooseNames(m_request, dialect, *value);
    }

    /// Estimated from the length of the first lines. Reserved memory that isn't used costs nothing.
    std::size_t rowsExpected(std::string_view text) const
    {
        constexpr std::size_t most = 20'000'000;
        text = text.substr(0, std::size_t{64} << 10);
        const auto lines = static_cast<std::size_t>(std::count(text.begin(), text.end(), '\n'));
        const std::size_t length = text.size() / (lines + 1) + 1;
        return std::min(most, static_cast<std::size_t>(m_size) / length * 102 / 100);
    }

    Done finish(LogFile& file)
    {
        const Done done = m_tokens->finish();
        if (!done)
            return done;
        file.fileName = fileName(m_request.path);
        file.encoding = encodingName(m_decoder.encoding());
        if (m_store->rowsRead() == 0)
            return dataProblem(Phrase::tr("there are no rows below the header"),
                               linePlace(file.headerLine));
        m_signToReadAgain = m_store->signToReadAgain();
        return m_signToReadAgain ? Done() : m_store->finishInto(file);
    }

    LogRequest m_request;
    const ReadHook& m_hook;
    Decoder m_decoder;
    LineCount m_lines;
    std::int64_t m_size = 0;
    std::optional<char> m_signToReadAgain;
    std::unique_ptr<LogRowAccumulator> m_store;
    std::unique_ptr<CsvTokens> m_tokens;
};

} // namespace

Result<LogFile> readLog(const LogRequest& request, const ReadHook& hook)
{
    std::optional<Encoding> forced;
    LogRequest asked = request;
    for (;;) {
        LogFile file;
        LogPass pass(asked, hook, forced);
        const Done done = pass.run(file);
        if (!done && forced) {
            Problem problem = done.error();
            problem.what = Phrase::tr("read as Windows-1252, since not all of it is UTF-8: %1")
                               .with(problem.what);
            return inFile(problem, request.path);
        }
        if (!done)
            return inFile(done.error(), request.path);
        if (pass.brokeItsMark())
            return inFile({ProblemKind::data,
                           Phrase::tr("the byte-order mark says UTF-8, but the text isn't"),
                           {},
                           Phrase::tr("save the file again as UTF-8")},
                          request.path);
        if (pass.mustBeWindows())
            forced = Encoding::windows1252;
        else if (pass.signToReadAgain())
            asked.decimalSign = pass.signToReadAgain();
        else
            return file;
    }
}

} // namespace holdband

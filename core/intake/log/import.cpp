#include "core/intake/log/import.h"

#include "core/intake/csv/source_file.h"
#include "core/intake/log/known_log.h"
#include "core/intake/log/map_request.h"
#include "core/intake/log/store_log.h"
#include "core/intake/log/values.h"
#include "core/intake/time/header_zone.h"
#include "core/store/records/equipment.h"
#include "core/text/csv_cell.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <numeric>

namespace holdband::intake {

namespace {

template <typename Field>
std::int64_t sumOf(const std::vector<ImportedColumn>& columns, Field field)
{
    return std::accumulate(
        columns.begin(), columns.end(), std::int64_t{0},
        [&](std::int64_t sum, const ImportedColumn& column) { return sum + column.*field; });
}

/// The share of the total work that reading the file counts as.
constexpr double readingShare = 0.5;

ReadHook hookFor(const Progress& progress)
{
    if (!progress)
        return {};
    return [progress](std::int64_t done, std::int64_t total) {
        const double share =
            total > 0 ? static_cast<double>(done) / static_cast<double>(total) : 1.0;
        return progress(readingShare * share);
    };
}

} // namespace

std::int64_t ImportReport::added() const
{
    return sumOf(columns, &ImportedColumn::added);
}

std::int64_t ImportReport::alreadyThere() const
{
    return sumOf(columns, &ImportedColumn::alreadyThere);
}

std::int64_t ImportReport::conflicting() const
{
    return sumOf(columns, &ImportedColumn::conflicting);
}

std::string zoneSentence(const ImportReport& report)
{
    const LogFile& file = report.file;
    if (file.zoneName.empty())
        return file.someOwnOffset
                   ? Phrase::tr("times need no zone: each says its offset or is Unix time").text()
                   : std::string();
    const auto zone = Zone::named(file.zoneName);
    const std::string name = zone ? zoneText(*zone) : file.zoneName;
    const std::string read = file.zoneReason.empty()
                                 ? Phrase::tr("times read as %1").with(name)
                                 : Phrase::tr("times read as %1 (%2)").with(name, file.zoneReason);
    return file.someOwnOffset ? Phrase::tr("%1, but for those that say their own offset").with(read)
                              : read;
}

namespace {

/// A cell of a file that may be opened in a spreadsheet. Numbers remain numbers.
std::string rejectedCell(const std::string& text)
{
    return csvQuoted(isNumber(text) ? text : withoutFormula(text));
}

} // namespace

std::string rejectsCsv(const ImportReport& report)
{
    std::string text = "line,column,text,reason\n";
    for (const RejectedRow& row : report.file.rejected)
        text += std::to_string(row.line) + "," + rejectedCell(row.column) + "," +
                rejectedCell(row.text) + "," + rejectedCell(row.reason) + "\n";
    return text;
}

namespace {

/// Whether the bytes differ from those that were previewed. False if they can't be read: the import
/// then reports why.
bool hasChanged(const ImportOptions& options)
{
    auto source = SourceFile::open(options.path);
    if (!options.lookedAt || options.text || !source)
        return false;
    for (;;) {
        const auto piece = source->next();
        if (!piece)
            return false;
        if (piece->size() < SourceFile::pieceSize)
            return source->sha256() != *options.lookedAt;
    }
}

ImportReport changedReport()
{
    ImportReport report;
    report.fileChanged = true;
    return report;
}

/// How one file is imported.
struct Import {
    const store::LogbookFile& logbook;
    const LogRequest& request;
    const StoreOptions& keep;
    const Progress& progress;
    bool dryRun = false;
};

/// Runs inside its own change. `known`: the part of the file that was not read again.
Result<ImportReport> storeLog(const Import& import, LogFile file, const KnownLog* known)
{
    auto change =
        store::Change::begin(import.logbook, {store::HistoryVerb::importMade, {file.fileName}});
    HOLDBAND_TRY(change);
    auto report = storeLog(import.logbook, *change, std::move(file), import.keep);
    HOLDBAND_TRY(report);
    if (report->added() == 0)
        return report;
    HOLDBAND_TRY(noteReadLog(*change, *report, import.request, known));
    if (import.progress && !import.progress(1.0)) // the last chance to cancel
        return failure(importCancelled());
    HOLDBAND_TRY(change->commit());
    return report;
}

Result<ImportReport> report(const Import& import, LogFile file, const KnownLog* known = nullptr)
{
    return import.dryRun ? compareLog(import.logbook, std::move(file), import.keep)
                         : storeLog(import, std::move(file), known);
}

/// Of a file of which only the new rows were read.
Result<ImportReport> reportKnown(const Import& import, KnownLog known)
{
    auto beginning = compareLog(import.logbook, std::move(known.beginning), import.keep);
    HOLDBAND_TRY(beginning);
    if (!known.rest) {
        ImportReport all = *beginning;
        addKnown(all, *beginning, known);
        return all;
    }
    auto rest = report(import, std::move(*known.rest), &known);
    HOLDBAND_TRY(rest);
    addKnown(*rest, *beginning, known);
    return rest;
}

} // namespace

Result<ImportReport> importLog(const store::LogbookFile& logbook, const ImportOptions& options,
                               const Progress& progress)
{
    auto request = requestFor(logbook, options);
    HOLDBAND_TRY(request);
    StoreOptions keep;
    keep.registerDrop = options.registerDrop;
    if (progress)
        keep.progress = [&](double share) {
            return progress(readingShare + (1.0 - readingShare) * share);
        };
    const Import import{logbook, *request, keep, progress, options.dryRun};
    auto known = findKnown(logbook, *request, hookFor(progress));
    HOLDBAND_TRY(known);
    if (*known && (!options.lookedAt || *options.lookedAt == (*known)->sha256))
        return reportKnown(import, std::move(**known));
    auto file = readLog(*request, hookFor(progress));
    if (!file && hasChanged(options))
        return changedReport();
    HOLDBAND_TRY(file);
    if (options.lookedAt && *options.lookedAt != file->sha256)
        return changedReport();
    return report(import, std::move(*file));
}

Result<std::optional<Instant>> firstReading(const store::LogbookFile& logbook,
                                            const ImportOptions& options)
{
    auto request = requestFor(logbook, options);
    HOLDBAND_TRY(request);
    request->beginningOnly = true;
    auto file = readLog(*request);
    if (!file) {
        request->beginningOnly = false;
        file = readLog(*request);
    }
    HOLDBAND_TRY(file);
    std::optional<Instant> first;
    for (const LogColumn& column : file->columns) {
        if (!column.at.empty())
            first = std::min(first.value_or(column.at.front()), column.at.front());
    }
    return first;
}

} // namespace holdband::intake

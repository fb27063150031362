#include "core/exchange/export.h"

#include "core/assign_result.h"
#include "core/disk.h"
#include "core/exchange/description.h"
#include "core/exchange/file_writer.h"
#include "core/model/names.h"
#include "core/store/records/batches.h"
#include "core/store/records/causes.h"
#include "core/store/records/equipment.h"
#include "core/store/records/journal.h"
#include "core/store/records/watches.h"
#include "core/store/records/weighing.h"
#include "core/text/csv_cell.h"
#include "core/text/numbers.h"
#include "core/text/phrase.h"
#include "core/text/times.h"

#include <algorithm>
#include <filesystem>
#include <set>

namespace holdband::exchange {

namespace fs = std::filesystem;

namespace {

constexpr const char* timeHeader = "Time (UTC)";

std::string headerOf(const store::RawColumn& column)
{
    return column.sensor + " (" + std::string(nameOf(column.unit)) + ")";
}

/// One row for each instant at which any column has a reading.
std::string csvOf(const std::vector<store::RawColumn>& columns)
{
    std::string text = csvInQuotes(timeHeader);
    std::set<Instant> instants;
    for (const store::RawColumn& column : columns) {
        text += "," + csvInQuotes(headerOf(column));
        instants.insert(column.at.begin(), column.at.end());
    }
    text += "\n";
    std::vector<std::size_t> next(columns.size(), 0);
    for (const Instant at : instants) {
        text += rfc3339Utc(at);
        for (std::size_t i = 0; i < columns.size(); ++i) {
            text += ",";
            if (next[i] < columns[i].at.size() && columns[i].at[next[i]] == at)
                text += shortestText(columns[i].raw[next[i]++]);
        }
        text += "\n";
    }
    return text;
}

std::string numbered(std::size_t index)
{
    std::string digits = std::to_string(index + 1);
    return std::string(digits.size() < 4 ? 4 - digits.size() : 0, '0') + digits;
}

/// `file` is empty where the import brought only registers.
FileEntry entryFor(const store::RawImport& import, const std::string& file)
{
    FileEntry entry;
    entry.file = file;
    if (!file.empty()) {
        entry.time = timeHeader;
        entry.zone = "UTC";
    }
    FileOrigin origin{import.file.file, import.file.sha256, import.file.rowsRead, {}, {}};
    for (const store::RawColumn& column : import.columns) {
        entry.columns[column.sensor] = headerOf(column);
        origin.headers[column.sensor] = column.header;
        origin.lines[column.sensor] = column.lines;
    }
    entry.origin = std::move(origin);
    entry.withdrawn = import.withdrawnAt;
    return entry;
}

Done exportImports(const store::LogbookFile& logbook, const fs::path& folder,
                   std::vector<store::RawImport>& imports, Description& description)
{
    const bool logs = std::any_of(imports.begin(), imports.end(), [](const store::RawImport& each) {
        return !each.columns.empty();
    });
    if (logs)
        HOLDBAND_TRY(makeFolder((folder / "readings").string()));
    for (std::size_t i = 0; i < imports.size(); ++i) {
        store::RawImport& import = imports[i];
        std::string file;
        if (!import.columns.empty()) {
            HOLDBAND_TRY(store::readRawColumns(logbook, import));
            file = "readings/" + numbered(i) + ".csv";
            HOLDBAND_TRY(writeNewFile((folder / file).string(), csvOf(import.columns)));
        }
        description.files.push_back(entryFor(import, file));
        import.columns.clear();
    }
    return {};
}

/// The index of the id in the list; absent if it is not there.
template <typename Id>
std::optional<std::size_t> indexOf(const std::vector<Id>& ids, const Id& id)
{
    const auto found = std::find(ids.begin(), ids.end(), id);
    return found == ids.end() ? std::nullopt
                              : std::optional(static_cast<std::size_t>(found - ids.begin()));
}

DescribedReading describedFrom(const std::string& meter, store::RecordedRegister recorded,
                               const std::vector<store::ImportId>& imports,
                               const std::vector<store::HistoryEntryId>& entries)
{
    DescribedReading reading{
        meter, std::move(recorded.inForce), std::move(recorded.before), {}, false, {}};
    if (recorded.source) {
        if (const auto file = indexOf(imports, recorded.source->import))
            reading.source = DescribedSource{*file, recorded.source->line};
    }
    reading.leftOut = recorded.leftOutBy.has_value();
    if (recorded.leftOutBy)
        reading.leftOutBy = indexOf(entries, *recorded.leftOutBy);
    return reading;
}

Done collectMeterReadings(const store::LogbookFile& logbook,
                          const std::vector<store::ImportId>& imports, Description& description)
{
    auto entries = store::readHistoryEntryIds(logbook);
    HOLDBAND_TRY(entries);
    for (const Meter& meter : description.meters) {
        auto record = store::readRegisterRecord(logbook, meter.name);
        HOLDBAND_TRY(record);
        for (store::RecordedRegister& recorded : *record)
            description.meterReadings.push_back(
                describedFrom(meter.name, std::move(recorded), imports, *entries));
    }
    return {};
}

Done collectHandReadings(const store::LogbookFile& logbook, const store::HandOwner& owner,
                         Description& description)
{
    auto stored = store::readHandRecord(logbook, owner);
    HOLDBAND_TRY(stored);
    for (store::StoredHandReading& reading : *stored)
        description.handReadings.push_back(
            {owner, std::move(reading.inForce), std::move(reading.before), reading.leftOut});
    return {};
}

Done collectCauses(const store::LogbookFile& logbook, Description& description)
{
    for (const Batch& batch : description.batches) {
        auto stored = store::readCauses(logbook, batch.name);
        HOLDBAND_TRY(stored);
        for (store::StoredCause& cause : *stored)
            description.causes.push_back({batch.name, std::move(cause.cause)});
    }
    return {};
}

Done collectTyped(const store::LogbookFile& logbook, const std::vector<store::RawImport>& imports,
                  Description& description)
{
    using Kind = store::HandOwner::Kind;
    std::vector<store::ImportId> ids;
    for (const store::RawImport& import : imports)
        ids.push_back(import.id);
    HOLDBAND_TRY(collectMeterReadings(logbook, ids, description));
    for (const Sensor& sensor : description.sensors)
        HOLDBAND_TRY(collectHandReadings(logbook, {Kind::sensor, sensor.name}, description));
    for (const Batch& batch : description.batches)
        HOLDBAND_TRY(collectHandReadings(logbook, {Kind::batch, batch.name}, description));
    HOLDBAND_TRY(collectCauses(logbook, description));
    return assignResult(store::readValueCorrections(logbook), description.corrections);
}

Result<Description> collect(const store::LogbookFile& logbook,
                            const std::vector<store::RawImport>& imports)
{
    Description description;
    HOLDBAND_TRY(assignResult(store::readSettings(logbook), description.settings));
    HOLDBAND_TRY(assignResult(store::readSetups(logbook), description.setups));
    HOLDBAND_TRY(assignResult(store::readSensors(logbook), description.sensors));
    HOLDBAND_TRY(assignResult(store::readMeters(logbook), description.meters));
    HOLDBAND_TRY(assignResult(store::readBatches(logbook), description.batches));
    HOLDBAND_TRY(assignResult(store::readExclusions(logbook), description.exclusions));
    HOLDBAND_TRY(assignResult(store::readJournal(logbook), description.journal));
    HOLDBAND_TRY(assignResult(store::readPlans(logbook), description.plans));
    HOLDBAND_TRY(assignResult(store::readWeighing(logbook), description.weighing));
    HOLDBAND_TRY(assignResult(store::readLogMaps(logbook), description.logMaps));
    HOLDBAND_TRY(assignResult(store::readHistoryEntries(logbook), description.history));
    auto watches = store::readWatches(logbook);
    HOLDBAND_TRY(watches);
    for (store::Watch& watch : *watches)
        description.watches.push_back({std::move(watch.path), std::move(watch.spec)});
    HOLDBAND_TRY(collectTyped(logbook, imports, description));
    return description;
}

/// The description comes last, so that a folder without one is known to be incomplete.
Done writeInto(const std::string& folder, const store::LogbookFile& logbook,
               std::vector<store::RawImport>& imports, Description& description)
{
    HOLDBAND_TRY(makeFolder(folder));
    HOLDBAND_TRY(exportImports(logbook, folder, imports, description));
    return writeNewFile((fs::path(folder) / "logbook.json").string(),
                        writeDescription(description));
}

/// The folder was empty or missing. False: something could not be removed.
bool restoreFolder(const std::string& folder, bool stood)
{
    // The description comes last: where it has its name all is written, and only the sync of that
    // name failed. To remove it now could leave it, after a power loss, without what it names.
    std::error_code unknown;
    if (fs::exists(fs::path(folder) / "logbook.json", unknown))
        return true;
    return stood ? removeWhole((fs::path(folder) / "readings").string()) : removeWhole(folder);
}

} // namespace

Done exportLogbook(const store::LogbookFile& logbook, const std::string& folder)
{
    auto steady = store::Transaction::beginReading(logbook.database());
    HOLDBAND_TRY(steady);
    auto imports = store::readImports(logbook);
    HOLDBAND_TRY(imports);
    auto description = collect(logbook, *imports);
    HOLDBAND_TRY(description);
    std::error_code unknown;
    const bool stood = fs::is_directory(folder, unknown);
    // Before anything is written: what already holds something must not be restored.
    HOLDBAND_TRY(mayMakeFolder(folder));
    Done written = writeInto(folder, logbook, *imports, *description);
    if (!written && !restoreFolder(folder, stood))
        written.error().remedy =
            Phrase::tr("what was written of it could not be removed: delete it yourself");
    return written;
}

} // namespace holdband::exchange

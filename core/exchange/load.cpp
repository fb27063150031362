#include "core/exchange/load.h"

#include "core/assign_result.h"
#include "core/exchange/description.h"
#include "core/exchange/file_writer.h"
#include "core/exchange/load_place.h"
#include "core/exchange/load_problem.h"
#include "core/exchange/load_readings.h"
#include "core/intake/log/log_reader.h"
#include "core/intake/log/store_log.h"
#include "core/intake/log/units.h"
#include "core/store/history/history.h"
#include "core/store/readings/imports.h"
#include "core/store/readings/origins.h"
#include "core/store/records/batches.h"
#include "core/store/records/causes.h"
#include "core/store/records/equipment.h"
#include "core/store/records/journal.h"
#include "core/store/records/log_maps.h"
#include "core/store/records/watches.h"
#include "core/store/records/weighing.h"
#include "core/store/safety/new_file.h"
#include "core/store/safety/writer_lock.h"
#include "core/text/phrase.h"

#include <algorithm>
#include <filesystem>

namespace holdband::exchange {

namespace fs = std::filesystem;

namespace {

/// Puts one description into one logbook, inside one change.
class Loader {
public:
    Loader(const store::LogbookFile& logbook, const store::Change& change,
           const Description& description, fs::path descriptionPath,
           std::vector<store::HistoryEntryId> pastEntries)
        : m_logbook(logbook), m_change(change), m_description(description),
          m_path(std::move(descriptionPath)), m_name(m_path.filename().string()),
          m_readings(logbook, change, description, m_name, std::move(pastEntries))
    {
    }

    Result<LoadReport> run()
    {
        HOLDBAND_TRY(m_readings.check());
        HOLDBAND_TRY(addEquipment());
        HOLDBAND_TRY(addBatches());
        for (std::size_t i = 0; i < m_description.files.size(); ++i)
            HOLDBAND_TRY(addFile(i));
        HOLDBAND_TRY(assignResult(m_readings.addRegisters(), m_report.meterReadings));
        HOLDBAND_TRY(addRemarks());
        return m_report;
    }

private:
    std::string at(const std::string& key) const { return m_name + ", " + key; }

    Done addEquipment()
    {
        for (std::size_t i = 0; i < m_description.setups.size(); ++i)
            HOLDBAND_TRY(placed(store::addSetup(m_change, m_description.setups[i]),
                                at(indexed("setups", i))));
        for (std::size_t i = 0; i < m_description.sensors.size(); ++i)
            HOLDBAND_TRY(placed(store::addSensor(m_change, m_description.sensors[i]),
                                at(indexed("sensors", i))));
        for (std::size_t i = 0; i < m_description.meters.size(); ++i)
            HOLDBAND_TRY(placed(store::addMeter(m_change, m_description.meters[i]),
                                at(indexed("meters", i))));
        m_report.setups = m_description.setups.size();
        m_report.sensors = m_description.sensors.size();
        m_report.meters = m_description.meters.size();
        return {};
    }

    Done addBatches()
    {
        for (const std::size_t i : batchOrder())
            HOLDBAND_TRY(placed(store::addBatch(m_change, m_description.batches[i]),
                                at(indexed("batches", i))));
        m_report.batches = m_description.batches.size();
        return {};
    }

    /// Order of loading: a batch that was split from another comes after it.
    std::vector<std::size_t> batchOrder() const
    {
        std::vector<std::size_t> order;
        for (const bool split : {false, true}) {
            for (std::size_t i = 0; i < m_description.batches.size(); ++i) {
                if (m_description.batches[i].splitFrom.has_value() == split)
                    order.push_back(i);
            }
        }
        return order;
    }

    Result<LogRequest> requestFor(const FileEntry& entry, const std::string& place) const
    {
        std::vector<std::pair<std::string, std::string>> mapped(entry.columns.begin(),
                                                                entry.columns.end());
        auto wanted = placed(intake::wantedColumns(m_logbook, mapped), at(place + ".columns"));
        HOLDBAND_TRY(wanted);
        std::erase_if(*wanted, [](const WantedColumn& column) { return !column.header; });
        auto zone = placed(Zone::named(entry.zone.value_or(m_description.settings.zone)),
                           at(place + ".zone"));
        HOLDBAND_TRY(zone);
        LogRequest request;
        request.path = (m_path.parent_path() / entry.file).string();
        request.wanted = std::move(*wanted);
        request.timeColumn = entry.time;
        request.zone = *zone;
        request.zoneSet = entry.zone.has_value();
        request.zoneReason = entry.zone ? Phrase::tr("as the description says for this file")
                                        : Phrase::tr("the description's zone");
        request.isExportedCopy = entry.origin.has_value();
        request.fallbackSaid = entry.unit.has_value();
        request.dateOrder = entry.dateOrder;
        request.fallbackUnit = entry.unit.value_or(m_description.settings.temperatureUnit());
        return request;
    }

    /// Returns the file's import; absent if all of its readings already exist.
    Result<std::optional<store::ImportId>> addLog(const FileEntry& entry, const std::string& place)
    {
        auto request = requestFor(entry, place);
        HOLDBAND_TRY(request);
        auto file = readLog(*request);
        if (!file)
            return failure(solvedInDescription(file.error(), at(place)));
        if (entry.origin) {
            file->fileName = entry.origin->file;
            file->sha256 = entry.origin->sha256;
            file->rowsRead = entry.origin->rowsRead;
        }
        auto stored = intake::storeLog(m_logbook, m_change, std::move(*file));
        if (!stored)
            return failure(solvedInDescription(stored.error(), at(place)));
        if (entry.origin && stored->import)
            HOLDBAND_TRY(store::setOrigin(m_change, *stored->import,
                                          {entry.origin->headers, entry.origin->lines}));
        m_report.files.push_back(std::move(*stored));
        return m_report.files.back().import;
    }

    Result<std::optional<store::ImportId>> addRegisterImport(const FileOrigin& origin)
    {
        auto import = store::addImport(m_change, {origin.file, origin.sha256, origin.rowsRead});
        HOLDBAND_TRY(import);
        return std::optional(*import);
    }

    Done addFile(std::size_t index)
    {
        const FileEntry& entry = m_description.files[index];
        auto import = entry.file.empty() ? addRegisterImport(entry.origin.value_or(FileOrigin{}))
                                         : addLog(entry, indexed("files", index));
        HOLDBAND_TRY(import);
        if (!*import && entry.origin && m_readings.referTo(index))
            import = addRegisterImport(*entry.origin); // everything else in it already exists
        HOLDBAND_TRY(import);
        if (!*import)
            return {};
        m_readings.brought(index, **import);
        if (!entry.withdrawn)
            return {};
        HOLDBAND_TRY(m_readings.addWithdrawn(index));
        return store::withdrawAt(m_change, **import, *entry.withdrawn);
    }

    Done addRemarks()
    {
        for (std::size_t i = 0; i < m_description.exclusions.size(); ++i)
            HOLDBAND_TRY(placed(store::addExclusion(m_change, m_description.exclusions[i]),
                                at(indexed("exclusions", i))));
        for (std::size_t i = 0; i < m_description.journal.size(); ++i)
            HOLDBAND_TRY(placed(store::addNote(m_change, m_description.journal[i]),
                                at(indexed("journal", i))));
        for (const DescribedCause& described : m_description.causes)
            HOLDBAND_TRY(placed(store::addCause(m_change, described.batch, described.cause),
                                at(Phrase::tr("batches, causes of \"%1\"").with(described.batch))));
        for (std::size_t i = 0; i < m_description.plans.size(); ++i)
            HOLDBAND_TRY(
                placed(store::savePlan(m_change, m_description.plans[i]), at(indexed("plans", i))));
        for (std::size_t i = 0; i < m_description.corrections.size(); ++i)
            HOLDBAND_TRY(placed(store::addValueCorrection(m_change, m_description.corrections[i]),
                                at(indexed("corrections", i))));
        HOLDBAND_TRY(m_readings.addHandReadings());
        return addLookingAround();
    }

    /// Adds the layouts of logs and the watched files.
    Done addLookingAround()
    {
        for (const store::LogMap& map : m_description.logMaps)
            HOLDBAND_TRY(store::addLogMap(m_change, map));
        for (std::size_t i = 0; i < m_description.watches.size(); ++i) {
            const DescribedWatch& watch = m_description.watches[i];
            HOLDBAND_TRY(placed(store::addWatch(m_change, watch.path, watch.spec),
                                at(indexed("watches", i))));
        }
        return {};
    }

    const store::LogbookFile& m_logbook;
    const store::Change& m_change;
    const Description& m_description;
    fs::path m_path;
    std::string m_name;
    LoadReport m_report;
    ReadingsLoader m_readings;
};

/// Adds the description's settings to a logbook already in use, only where it has none. Problem
/// (data): another currency than its own.
Done settle(const store::LogbookFile& logbook, const store::Change& change,
            const Description& description, bool isNew)
{
    if (isNew)
        return {};
    auto existing = store::readSettings(logbook);
    HOLDBAND_TRY(existing);
    const LogbookSettings& wanted = description.settings;
    if (description.namesCurrency && !existing->currency.empty() &&
        wanted.currency != existing->currency)
        return dataProblem(Phrase::tr("the logbook counts in %1, the description in %2")
                               .with(existing->currency, wanted.currency),
                           logbook.path(), Phrase::tr("load it into another logbook"));
    LogbookSettings merged = *existing;
    if (description.namesCurrency)
        merged.currency = wanted.currency;
    if (description.namesPrice && existing->tariff == Tariff{} && existing->tariffChanges.empty()) {
        merged.tariff = wanted.tariff;
        merged.tariffChanges = wanted.tariffChanges;
    }
    return store::writeSettings(change, merged);
}

/// Adds the weights if the logbook has none.
Done settleWeighing(const store::LogbookFile& logbook, const store::Change& change,
                    const Description& description)
{
    if (description.weighing == Weighing{})
        return {};
    auto existing = store::readWeighing(logbook);
    HOLDBAND_TRY(existing);
    return *existing == Weighing{} ? store::writeWeighing(change, description.weighing) : Done{};
}

Result<LoadReport> loadInto(const store::LogbookFile& logbook, const Description& description,
                            const std::string& path, bool isNew)
{
    const std::string name = fs::path(path).filename().string();
    auto change = store::Change::begin(logbook, {store::HistoryVerb::descriptionLoaded, {name}});
    HOLDBAND_TRY(change);
    HOLDBAND_TRY(settle(logbook, *change, description, isNew));
    HOLDBAND_TRY(settleWeighing(logbook, *change, description));
    std::vector<store::HistoryEntryId> pastEntries;
    if (isNew) // a logbook in use has its own history
        HOLDBAND_TRY(
            assignResult(store::addPastEntries(*change, description.history), pastEntries));
    auto report = Loader(logbook, *change, description, path, std::move(pastEntries)).run();
    HOLDBAND_TRY(report);
    HOLDBAND_TRY(change->commit());
    return report;
}

/// Loads into a file under a temporary name and renames it only after success.
Result<LoadReport> loadIntoNew(const std::string& logbookPath, const Description& description,
                               const std::string& path, store::Clock clock)
{
    auto lock = store::lockForWriting(logbookPath);
    HOLDBAND_TRY(lock);
    store::clearAbandoned(logbookPath);
    LoadReport report;
    const Done written = store::writeBeside(
        logbookPath,
        [&](const std::string& unfinished) -> Done {
            auto logbook = store::LogbookFile::create(unfinished, description.settings, clock);
            HOLDBAND_TRY(logbook);
            return assignResult(loadInto(**logbook, description, path, true), report);
        },
        store::nameNewFile);
    HOLDBAND_TRY(written);
    return report;
}

} // namespace

Result<LoadReport> loadDescription(const std::string& logbookPath,
                                   const std::string& descriptionPath, store::Clock clock,
                                   std::optional<store::BackupOptions> backups)
{
    auto text = readWholeFile(descriptionPath, largestDescription);
    HOLDBAND_TRY(text);
    const std::string name = fs::path(descriptionPath).filename().string();
    std::error_code error;
    if (!fs::exists(fs::symlink_status(logbookPath, error))) {
        auto description = parseDescription(*text, name);
        HOLDBAND_TRY(description);
        return loadIntoNew(logbookPath, *description, descriptionPath, std::move(clock));
    }
    auto logbook = store::LogbookFile::open(logbookPath, store::Access::write, std::move(clock));
    HOLDBAND_TRY(logbook);
    auto settings = store::readSettings(**logbook);
    HOLDBAND_TRY(settings);
    auto description = parseDescription(*text, name, {settings->zone, settings->units});
    HOLDBAND_TRY(description);
    if (backups)
        (*logbook)->useBackups(std::move(*backups));
    return loadInto(**logbook, *description, descriptionPath, false);
}

} // namespace holdband::exchange

#include "core/intake/import.h"

#include "core/intake/keep_log.h"
#include "core/store/equipment.h"

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

/// Reading the file is taken as this share of the whole work.
constexpr double readingShare = 0.5;

Result<LogRequest> requestFor(const store::LogbookFile& logbook, const ImportOptions& options)
{
    auto settings = store::readSettings(logbook);
    HOLDBAND_TRY(settings);
    auto zone = Zone::named(options.zone.value_or(settings->zone));
    HOLDBAND_TRY(zone);
    auto wanted = wantedColumns(logbook, options.columns);
    HOLDBAND_TRY(wanted);
    LogRequest request;
    request.path = options.path;
    request.wanted = std::move(*wanted);
    request.timeColumn = options.timeColumn;
    request.zone = *zone;
    request.dateOrder = options.dateOrder;
    if (options.unit)
        request.temperatureUnit = *options.unit == TemperatureUnit::celsius
                                      ? ReadingUnit::celsius
                                      : ReadingUnit::fahrenheit;
    request.fallbackUnit = settings->temperatureUnit();
    return request;
}

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

Result<ImportReport> importLog(const store::LogbookFile& logbook, const ImportOptions& options,
                               const Progress& progress)
{
    auto request = requestFor(logbook, options);
    HOLDBAND_TRY(request);
    auto file = readLog(*request, hookFor(progress));
    HOLDBAND_TRY(file);
    auto change = store::Change::begin(logbook, "imported " + file->fileName);
    HOLDBAND_TRY(change);
    auto report = keepLog(logbook, *change, std::move(*file));
    HOLDBAND_TRY(report);
    if (progress && !progress(1.0))
        return dataProblem("the import was cancelled; nothing was kept");
    if (!options.dryRun && report->added() > 0)
        HOLDBAND_TRY(change->commit());
    return report;
}

} // namespace holdband::intake

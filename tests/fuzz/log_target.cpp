// Any bytes as a log: preview and reader end with a result or a sentence, the preview shows
// what an import would read, and a dry run counts what an import stores. The first byte chooses
// settings.
#include "core/intake/csv/header.h"
#include "core/intake/csv/preview.h"
#include "core/intake/log/map_request.h"
#include "core/intake/log/store_log.h"
#include "core/store/records/equipment.h"
#include "core/text/numbers.h"
#include "core/text/trimmed.h"
#include "tests/fuzz/fuzz_one.h"

#include <QTemporaryDir>
#include <algorithm>
#include <array>
#include <cmath>

namespace holdband::fuzz {

namespace {

using intake::ImportOptions;
using intake::ImportReport;
using intake::LogPreview;

Sensor sensorNamed(const char* name, SensorKind reads)
{
    Sensor sensor;
    sensor.name = name;
    sensor.reads = reads;
    return sensor;
}

/// A logbook without readings, made once; nothing is ever committed to it.
class Target {
public:
    Target()
    {
        const auto path = m_folder.filePath(QStringLiteral("f.holdband")).toStdString();
        auto made = store::LogbookFile::create(path, {});
        expect(made.has_value(), "a logbook can be made");
        m_logbook = std::move(*made);
        auto change = store::Change::begin(*m_logbook, {store::HistoryVerb::other, {"equipment"}});
        Setup setup;
        setup.name = "Loop";
        Meter meter;
        meter.name = "Meter";
        meter.setup = setup.name;
        meter.rollsOverAt = Energy::kilowattHours(10'000.0);
        expect(store::addSetup(*change, setup) &&
                   store::addSensor(*change, sensorNamed("Beer", SensorKind::beer)) &&
                   store::addSensor(*change, sensorNamed("Room", SensorKind::ambient)) &&
                   store::addSensor(*change, sensorNamed("Power", SensorKind::power)) &&
                   store::addMeter(*change, meter) && change->commit(),
               "equipment can be added");
    }

    const store::LogbookFile& logbook() const { return *m_logbook; }

private:
    QTemporaryDir m_folder;
    std::unique_ptr<store::LogbookFile> m_logbook;
};

const store::LogbookFile& logbook()
{
    static const Target target;
    return target.logbook();
}

/// Years that a log may have, and a day for the zones.
void expectPlausible(Instant at)
{
    constexpr std::int64_t day = 86'400'000;
    const std::int64_t ms = toMs(at);
    expect(ms >= 631'152'000'000 - day && ms <= 4'133'980'800'000 + day,
           "a time is of 1990 to 2100", std::to_string(ms));
}

void expectWhole(const LogColumn& column)
{
    const std::size_t count = column.at.size();
    expect(column.raw.size() == count && column.line.size() == count, "as many values as times");
    expect(column.kind != SeriesKind::meter || column.decimals.size() == count,
           "as many decimals as register readings");
    for (std::size_t i = 0; i < count; ++i) {
        expect(i == 0 || column.at[i - 1] < column.at[i], "times only rise");
        expect(std::isfinite(column.raw[i]), "values are finite");
        expect(column.line[i] >= 1, "a line has a number");
        expectPlausible(column.at[i]);
    }
}

/// A plain number that the preview shows in that row for that sensor or meter.
std::optional<double> shownNumber(const LogPreview& preview, const std::string& name,
                                  const intake::PreviewRow& row, char decimalSign)
{
    for (std::size_t c = 0; c < preview.columns.size() && c < row.cells.size(); ++c) {
        const intake::ColumnChoice& choice = preview.columns[c].choice;
        if (choice.meaning != intake::Meaning::reading || choice.of != name)
            continue;
        if (headerParts(preview.columns[c].header).kelvin)
            return std::nullopt; // converted
        const auto number = scanDecimal(trimmed(row.cells[c]), decimalSign);
        return number ? std::optional(number->value) : std::nullopt;
    }
    return std::nullopt;
}

void expectPreviewed(const LogPreview& preview, const ImportReport& report)
{
    for (const intake::ResultRow& result : report.firstRows) {
        const std::int64_t line = result.line + preview.addedLines;
        if (preview.rows.empty() || line > preview.rows.back().line)
            continue;
        const auto row =
            std::find_if(preview.rows.begin(), preview.rows.end(),
                         [&](const intake::PreviewRow& each) { return each.line == line; });
        expect(row != preview.rows.end(), "the preview has the row of each value",
               "line " + std::to_string(result.line));
        for (std::size_t k = 0; k < report.columns.size(); ++k) {
            const auto shown =
                shownNumber(preview, report.columns[k].name, *row, report.file.decimalSign);
            expect(!shown || !result.values[k] || *shown == *result.values[k],
                   "the preview shows the value that is read",
                   "line " + std::to_string(result.line));
        }
    }
}

ImportOptions optionsFor(const LogPreview& preview, std::shared_ptr<const std::string> text,
                         std::uint8_t chosen)
{
    ImportOptions options;
    options.path = "log.csv";
    options.text = std::move(text);
    options.map = preview.map();
    options.layout = preview.layout;
    if (chosen & 8)
        options.map->zone = chosen & 16 ? "America/New_York" : "+05:30";
    if ((chosen & 32) && !options.map->dateOrder)
        options.map->dateOrder = chosen & 16 ? DateOrder::monthDayYear : DateOrder::dayMonthYear;
    if (chosen & 64)
        options.registerDrop = MeterEvent::reset;
    return options;
}

LayoutRequest layoutFrom(std::uint8_t chosen)
{
    constexpr std::array delimiters{',', ';', '\t', '|'};
    LayoutRequest request;
    if (chosen & 1)
        request.delimiter = delimiters[chosen >> 1 & 3];
    if (chosen & 128)
        request.headerLine = chosen >> 1 & 3;
    return request;
}

/// A dry run, and an import that is rolled back.
void expectSameCounts(const LogPreview& preview, const LogFile& file, const ImportOptions& options)
{
    intake::StoreOptions storing;
    storing.registerDrop = options.registerDrop;
    const auto compared = intake::compareLog(logbook(), file, storing);
    auto change = store::Change::begin(logbook(), {store::HistoryVerb::other, {"import"}});
    expect(change.has_value(), "a change can begin");
    const auto stored = intake::storeLog(logbook(), *change, file, storing);
    expect(compared.has_value() == stored.has_value(), "a dry run is refused like an import");
    if (!stored)
        return;
    expect(compared->added() == stored->added() &&
               compared->alreadyThere() == stored->alreadyThere() &&
               compared->conflicting() == stored->conflicting(),
           "a dry run counts like an import");
    expectPreviewed(preview, *compared);
}

} // namespace

void fuzzOne(std::span<const std::uint8_t> input)
{
    Bytes bytes(input);
    const std::uint8_t chosen = bytes.byte();
    const auto text = std::make_shared<const std::string>(bytes.rest());
    const auto preview = intake::previewLog(logbook(), {"log.csv", text}, layoutFrom(chosen));
    if (!preview) {
        expect(!preview.error().what.empty(), "a problem has a sentence");
        return;
    }
    const ImportOptions options = optionsFor(*preview, text, chosen);
    const auto request = intake::requestFor(logbook(), options);
    if (!request)
        return;
    const auto file = readLog(*request);
    if (!file) {
        expect(!file.error().what.empty(), "a problem has a sentence");
        return;
    }
    for (const LogColumn& column : file->columns)
        expectWhole(column);
    for (const RejectedRow& row : file->rejected)
        expect(row.line >= 1 && !row.reason.empty(), "a rejected row has a line and a reason");
    expectSameCounts(*preview, *file, options);
}

} // namespace holdband::fuzz

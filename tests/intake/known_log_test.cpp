// A file that was imported before: only its new rows are read, and everything that is stored and
// reported is what reading the whole file gives.
#include "core/intake/log/import.h"
#include "core/intake/log/known_log.h"
#include "core/intake/log/map_request.h"
#include "core/store/history/undo.h"
#include "core/store/readings/imports.h"
#include "core/text/times.h"
#include "tests/store/logbooks.h"
#include "tests/store/saying.h"

#include <fstream>
#include <gmock/gmock.h>
#include <memory>

namespace holdband::test {
namespace {

using intake::ImportReport;
using testing::IsEmpty;
using testing::SizeIs;

class KnownLogs : public LogbookTest {
protected:
    void SetUp() override
    {
        LogbookSettings settings;
        settings.zone = "America/Denver";
        m_quick = create("quick.holdband", settings);
        m_whole = create("whole.holdband", settings);
        for (const auto* logbook : {m_quick.get(), m_whole.get()}) {
            addEquipment(*logbook);
            addSensors(*logbook);
        }
    }

    static void addSensors(const store::LogbookFile& logbook)
    {
        auto change = store::Change::begin(logbook, saying("equipment"));
        Sensor room;
        room.name = "Room";
        Sensor plug;
        plug.name = "Plug";
        plug.reads = SensorKind::intervalEnergy;
        plug.setup = "Loop";
        ASSERT_TRUE(store::addSensor(*change, room));
        ASSERT_TRUE(store::addSensor(*change, plug));
        ASSERT_TRUE(change->commit());
    }

    intake::ImportOptions fileOf(const std::string& text) const
    {
        intake::ImportOptions options = m_options;
        options.path = path("w.csv");
        std::ofstream(options.path, std::ios::binary) << text;
        return options;
    }

    /// Whether the next import of the text reads new rows only.
    bool isKnown(const std::string& text) const
    {
        const auto request = intake::requestFor(*m_quick, fileOf(text));
        const auto known = intake::findKnown(*m_quick, *request, {});
        EXPECT_TRUE(known) << known.error().sentence();
        return known && known->has_value();
    }

    Result<ImportReport> quickly(const std::string& text) const
    {
        return intake::importLog(*m_quick, fileOf(text));
    }

    /// A text in memory is always read whole.
    Result<ImportReport> wholly(const std::string& text) const
    {
        intake::ImportOptions options = m_options;
        options.path = "w.csv";
        options.text = std::make_shared<const std::string>(text);
        return intake::importLog(*m_whole, options);
    }

    /// Both ways give the same report and the same readings.
    void importBoth(const std::string& text) const
    {
        const auto quick = quickly(text);
        const auto whole = wholly(text);
        ASSERT_EQ(quick.has_value(), whole.has_value());
        if (!quick) {
            EXPECT_EQ(quick.error().sentence(), whole.error().sentence());
            return;
        }
        EXPECT_EQ(described(*quick), described(*whole));
        EXPECT_EQ(stored(*m_quick), stored(*m_whole));
    }

    static std::string described(const ImportReport& report)
    {
        std::ostringstream text;
        const LogFile& file = report.file;
        text << file.sha256 << " " << file.rowsRead << " rows, " << file.rejectedTotal
             << " rejected, line " << file.headerLine << ", " << file.timeHeader << ", "
             << file.zoneName << "\n";
        for (const RejectedRow& row : file.rejected)
            text << row.line << " " << row.text << ": " << row.reason << "\n";
        for (const std::string& warning : file.warnings)
            text << warning << "\n";
        for (const auto& column : report.columns)
            text << column.name << " " << column.header << " " << column.unitReason << ": "
                 << column.added << " + " << column.alreadyThere << " + " << column.conflicting
                 << "\n";
        for (const auto& row : report.firstRows)
            text << row.line << " " << rfc3339Utc(row.at) << "\n";
        describeRows(text << "new ", report.rows.added);
        describeRows(text << "there ", report.rows.alreadyThere);
        return text.str();
    }

    static void describeRows(std::ostream& text, const std::vector<intake::ReportedRow>& rows)
    {
        for (const auto& row : rows)
            text << row.line << "/" << row.column << " " << rfc3339Utc(row.at) << " " << row.value
                 << "; ";
        text << "\n";
    }

    /// The readings of all imports, with the lines they came from.
    static std::string stored(const store::LogbookFile& logbook)
    {
        std::ostringstream text;
        const auto imports = store::readImports(logbook);
        for (const auto& import : *imports) {
            text << import.id.value << ": " << import.file.rowsRead << " rows\n";
            for (const auto& column : import.columns) {
                for (const auto& [at, line] : column.lines)
                    text << column.sensor << " from line " << line << " " << rfc3339Utc(at) << "\n";
                for (std::size_t i = 0; i < column.at.size(); ++i)
                    text << toMs(column.at[i]) << " " << column.raw[i] << "\n";
            }
        }
        return text.str();
    }

    static std::string rowsEveryMinute(int first, int count, const std::string& remark = {})
    {
        std::string text;
        for (int i = first; i < first + count; ++i) {
            const Instant at = someday + std::chrono::minutes{i};
            text += rfc3339Utc(at).substr(0, 16) + "Z," + std::to_string(60 + i % 9) + "." +
                    std::to_string(i % 10) + ",70" + remark + "\n";
        }
        return text;
    }

    std::unique_ptr<store::LogbookFile> m_quick;
    std::unique_ptr<store::LogbookFile> m_whole;
    intake::ImportOptions m_options;
};

/// More than the head whose digest must stay the same.
constexpr int manyRows = 300;

TEST_F(KnownLogs, TheSameFileAddsNothing)
{
    const std::string text = "Time,Beer °F,Room °F\n" + rowsEveryMinute(0, manyRows);
    EXPECT_FALSE(isKnown(text));
    importBoth(text);
    EXPECT_TRUE(isKnown(text));
    importBoth(text);
    const auto again = quickly(text);
    EXPECT_EQ(again->added(), 0);
    EXPECT_EQ(again->alreadyThere(), 2 * manyRows);
}

TEST_F(KnownLogs, AGrownFileAddsItsNewRows)
{
    const std::string header = "Time,Beer °F,Room °F\n";
    for (const int rows : {manyRows, manyRows + 1, manyRows + 50, 2 * manyRows}) {
        const std::string text = header + rowsEveryMinute(0, rows);
        EXPECT_EQ(isKnown(text), rows > manyRows);
        importBoth(text);
    }
    EXPECT_TRUE(isKnown(header + rowsEveryMinute(0, 2 * manyRows)));
    EXPECT_THAT(*store::listImports(*m_quick), SizeIs(4));
}

TEST_F(KnownLogs, ALongFileIsReadFromWhereItGrew)
{
    const std::string header = "made on a Friday\nTime,Beer °F,Room °F,Remark\n";
    const std::string remark = "," + std::string(200, 'x');
    constexpr int rows = 7'000; // 1.6 MB
    importBoth(header + rowsEveryMinute(0, rows, remark));
    const std::string grown = header + rowsEveryMinute(0, rows + 700, remark);
    EXPECT_TRUE(isKnown(grown));
    importBoth(grown);
    const std::string more =
        grown + "2027-01-01 00:00Z,abc,70,\n" + rowsEveryMinute(rows + 700, 9, remark);
    EXPECT_TRUE(isKnown(more));
    importBoth(more);
    importBoth(more); // the rejected row is reported again
}

/// In a doubled hour the order of rows says which of both a time is.
TEST_F(KnownLogs, TheDoubledHourIsReadAsInTheWholeFile)
{
    std::string text = "Time,Beer °F\n";
    std::vector<std::size_t> ends;
    const auto addHour = [&](const char* hour) {
        for (int minute = 0; minute < 60; minute += 5) {
            text += std::string("2026-") + hour + (minute < 10 ? ":0" : ":") +
                    std::to_string(minute) + ",66." + std::to_string(minute / 6) + "\n";
            ends.push_back(text.size());
        }
    };
    for (int day = 10; day < 31; ++day) {
        for (const char* hour : {" 00", " 11", " 23"})
            addHour(("10-" + std::to_string(day) + hour).c_str());
    }
    for (const char* hour : {"11-01 00", "11-01 01", "11-01 01", "11-01 02"})
        addHour(hour);
    for (std::size_t i = ends.size() - 45; i < ends.size(); i += 4)
        importBoth(text.substr(0, ends[i]));
    importBoth(text);
    EXPECT_TRUE(isKnown(text));
}

TEST_F(KnownLogs, IntervalsOfEnergyGoOnWhereTheyEnded)
{
    m_options.energyUnit = ReadingUnit::kilowattHour;
    std::string text = "Time,Plug\n";
    std::vector<std::size_t> ends;
    for (int i = 0; i < 2 * manyRows; ++i) {
        text += rfc3339Utc(someday + std::chrono::minutes{10 * i}).substr(0, 16) + "Z,0.0" +
                std::to_string(1 + i % 7) + "\n";
        ends.push_back(text.size());
    }
    for (const int rows : {manyRows, manyRows + 1, manyRows + 7, 2 * manyRows})
        importBoth(text.substr(0, ends[static_cast<std::size_t>(rows) - 1]));
}

TEST_F(KnownLogs, AnUnfinishedLastLineIsNotKnown)
{
    const std::string text = "Time,Beer °F,Room °F\n" + rowsEveryMinute(0, manyRows);
    const std::string cut = text.substr(0, text.size() - 1);
    importBoth(cut);
    EXPECT_FALSE(isKnown(cut));
    importBoth(text);
}

TEST_F(KnownLogs, AChangedByteIsFound)
{
    std::string text = "Time,Beer °F,Room °F\n" + rowsEveryMinute(0, manyRows);
    importBoth(text);
    text[text.find("66.6")] = '7';
    EXPECT_FALSE(isKnown(text));
    const auto report = quickly(text);
    EXPECT_EQ(report->conflicting(), 1);
    text += rowsEveryMinute(manyRows, 5);
    EXPECT_FALSE(isKnown(text));
    EXPECT_EQ(quickly(text)->added(), 10);
}

TEST_F(KnownLogs, AnotherWayOfReadingIsAnotherFile)
{
    const std::string text = "Time,Beer,Room\n" + rowsEveryMinute(0, manyRows);
    m_options.unit = TemperatureUnit::fahrenheit;
    importBoth(text);
    ASSERT_TRUE(isKnown(text));
    m_options.zone = "Europe/Berlin";
    EXPECT_FALSE(isKnown(text));
    m_options.zone.reset();
    m_options.columns = {{"Beer", "Room"}};
    EXPECT_FALSE(isKnown(text));
    m_options.columns.clear();
    m_options.unit = TemperatureUnit::celsius;
    EXPECT_FALSE(isKnown(text));
}

TEST_F(KnownLogs, WithdrawnAndUndoneReadingsAreAddedAgain)
{
    const std::string text = "Time,Beer °F,Room °F\n" + rowsEveryMinute(0, manyRows);
    const std::string grown = text + rowsEveryMinute(manyRows, 20);
    ASSERT_TRUE(quickly(text));
    ASSERT_TRUE(quickly(grown));
    ASSERT_TRUE(store::undoLast(*m_quick));
    EXPECT_TRUE(isKnown(grown));
    ASSERT_TRUE(store::redoLast(*m_quick));
    const auto first = store::listImports(*m_quick)->back().id;
    auto change = store::Change::begin(*m_quick, saying("withdraw"));
    ASSERT_TRUE(store::withdraw(*change, first));
    ASSERT_TRUE(change->commit());
    EXPECT_FALSE(isKnown(grown));
    EXPECT_FALSE(isKnown(text));
    EXPECT_EQ(quickly(grown)->added(), 2 * manyRows);
}

TEST_F(KnownLogs, AFileWithARejectedRowIsReadWhole)
{
    const std::string text =
        "Time,Beer °F,Room °F\n" + rowsEveryMinute(0, manyRows) + "tomorrow,66,70\n";
    importBoth(text);
    EXPECT_FALSE(isKnown(text));
    importBoth(text);
}

TEST_F(KnownLogs, AFileWithARegisterIsReadWhole)
{
    std::string text = "Time,Beer °F,Meter kWh\n";
    for (int i = 0; i < manyRows; ++i)
        text += rfc3339Utc(someday + std::chrono::minutes{i}).substr(0, 16) + "Z,66," +
                std::to_string(100 + i) + "\n";
    importBoth(text);
    EXPECT_FALSE(isKnown(text));
}

TEST_F(KnownLogs, ADryRunSaysWhatTheImportWouldDo)
{
    const std::string text = "Time,Beer °F,Room °F\n" + rowsEveryMinute(0, manyRows);
    const std::string grown = text + rowsEveryMinute(manyRows, 20);
    ASSERT_TRUE(quickly(text));
    intake::ImportOptions options = fileOf(grown);
    options.dryRun = true;
    const auto dry = intake::importLog(*m_quick, options);
    ASSERT_TRUE(dry);
    EXPECT_EQ(described(*dry), described(*quickly(grown)));
}

TEST_F(KnownLogs, AFileChangedSinceItsPreviewIsNotStored)
{
    const std::string text = "Time,Beer °F,Room °F\n" + rowsEveryMinute(0, manyRows);
    const auto first = quickly(text);
    intake::ImportOptions options = fileOf(text + rowsEveryMinute(manyRows, 20));
    options.lookedAt = first->file.sha256;
    const auto changed = intake::importLog(*m_quick, options);
    ASSERT_TRUE(changed);
    EXPECT_TRUE(changed->fileChanged);
    EXPECT_THAT(changed->columns, IsEmpty());
}

TEST_F(KnownLogs, AStoppedReadingStoresNothing)
{
    const std::string text = "Time,Beer °F,Room °F\n" + rowsEveryMinute(0, manyRows);
    ASSERT_TRUE(quickly(text));
    const auto stopped = intake::importLog(*m_quick, fileOf(text), [](double) { return false; });
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().sentence(), "the import was cancelled; nothing was stored.");
}

} // namespace
} // namespace holdband::test

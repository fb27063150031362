// A file to which a logger appends: only complete lines, nothing twice, and a replaced file is
// reported.
#include "core/disk.h"
#include "core/intake/log/remembered.h"
#include "core/store/history/undo.h"
#include "core/store/safety/soundness.h"
#include "core/text/times.h"
#include "tests/intake/watched_file.h"

#include <QStringEncoder>
#include <fstream>
#include <functional>
#include <gmock/gmock.h>

namespace holdband::test {
namespace {

TEST_F(WatchedFile, watchingIsUndoneAndRedoneEvenAfterItsFileWasRead)
{
    append("2026-11-10 08:00,20\n");
    EXPECT_EQ(poll().added, 1);
    ASSERT_TRUE(store::undoLast(*m_logbook));
    EXPECT_TRUE(store::readWatches(*m_logbook)->empty());
    EXPECT_EQ(readings(), 1u) << "what was read stays";
    ASSERT_TRUE(store::redoLast(*m_logbook));
    append("2026-11-10 09:00,21\n");
    EXPECT_EQ(poll().added, 1) << "the first reading is there already";
    EXPECT_EQ(readings(), 2u);
}

TEST_F(WatchedFile, newRowsHaveTheUnitsOfTheSecondHeaderLine)
{
    write("Time,Beer\n,°F\n2026-11-10 08:00,68\n");
    EXPECT_EQ(poll().added, 1);
    append("2026-11-10 09:00,66.2\n2026-11-10 10:00,warm\n");
    const intake::WatchReport report = poll();
    EXPECT_EQ(report.added, 1);
    EXPECT_THAT(report.remarks, testing::ElementsAre(testing::HasSubstr("line 5")));
    const auto series =
        store::readSeries(*m_logbook, "Beer", {instantFromMs(0), instantFromMs(1LL << 42)});
    ASSERT_EQ(series->value.size(), 2u);
    EXPECT_NEAR(series->value[1], 19.0, 1e-9);
}

TEST_F(WatchedFile, aRestoredWatchContinuesWhereItStopped)
{
    append("2026-11-10 08:00,20\n");
    EXPECT_EQ(poll().added, 1);
    const auto watches = store::readWatches(*m_logbook);
    ASSERT_EQ(watches->size(), 1u);
    auto change = store::Change::begin(*m_logbook, saying("watched no longer"));
    ASSERT_TRUE(change);
    ASSERT_TRUE(store::removeWatch(*change, watches->front().id));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(store::historyText(*store::undoLast(*m_logbook)), "undid: watched no longer");
    const auto back = store::readWatches(*m_logbook);
    ASSERT_EQ(back->size(), 1u);
    EXPECT_EQ(back->front().state, watches->front().state);
    append("2026-11-10 09:00,21\n");
    EXPECT_EQ(poll().added, 1);
}

TEST_F(WatchedFile, ambiguousDatesAreReadAsInTheLastFileOfTheSameFormat)
{
    const std::string header = "Time,Beer\n";
    const std::string open = header + "10.11.2026 08:00,20\n";
    write(open);
    EXPECT_NE(poll().problems, std::vector<std::string>{}) << "the date order is still unknown";
    EXPECT_EQ(readings(), 0u);
    const auto looked = intake::openPreview(*m_logbook, {file()});
    ASSERT_TRUE(looked) << looked.error().sentence();
    intake::ColumnMap map = looked->map;
    map.dateOrderFound = DateOrder::dayMonthYear;
    intake::rememberMap(*m_logbook, looked->preview, map);
    append("10.11.2026 09:00,20\n");
    const intake::WatchReport report = poll();
    EXPECT_EQ(report.problems, std::vector<std::string>{});
    EXPECT_EQ(report.added, 2);
    ASSERT_FALSE(report.remarks.empty());
    EXPECT_NE(report.remarks.front().find("day first"), std::string::npos);
    EXPECT_EQ(store::lastReadingAt(*m_logbook, "Beer")->value(),
              *parseRfc3339("2026-11-10T09:00:00Z"));
}

/// Other bytes of the same length, with the same modification time: only reading the file reveals
/// it.
void rewriteUnseen(const std::string& file, const std::string& text)
{
    const auto time = std::filesystem::last_write_time(file);
    ASSERT_EQ(std::filesystem::file_size(file), text.size());
    std::ofstream(file, std::ios::binary | std::ios::in | std::ios::out) << text;
    std::filesystem::last_write_time(file, time);
}

TEST_F(WatchedFile, aFileThatNeedsAPersonIsReadAgainOnlyWhenItChanged)
{
    write("Time,Beer\n03.04.2026 08:00,20\n");
    const auto first = poll().problems;
    ASSERT_EQ(first.size(), 1u);
    rewriteUnseen(file(), "Time,Beer\n2026-04-03 08:00,20\n");
    EXPECT_EQ(poll().problems, first) << "it is said as long as it holds";
    EXPECT_EQ(poll().problems, first);
    EXPECT_EQ(readings(), 0u) << "it was not read";
    append("2026-04-03 09:00,20\n");
    EXPECT_EQ(poll().added, 2);
    EXPECT_TRUE(poll().problems.empty());
}

TEST_F(WatchedFile, aFileThatNeedsAPersonIsReadAgainAfterTheUsersChange)
{
    write("Time,Beer\n03.04.2026 08:00,20\n");
    ASSERT_EQ(poll().problems.size(), 1u);
    rewriteUnseen(file(), "Time,Beer\n2026-04-03 08:00,20\n");
    ASSERT_EQ(poll().problems.size(), 1u);
    auto change = store::Change::begin(*m_logbook, saying("a new sensor"));
    ASSERT_TRUE(change);
    Sensor sensor;
    sensor.name = "Room";
    ASSERT_TRUE(store::addSensor(*change, sensor));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(poll().added, 1);
}

TEST_F(WatchedFile, aFileThatNeedsAPersonIsReadAgainAfterTheUsersChangeThoughTheClockWentBack)
{
    const auto remember = [this](std::optional<DateOrder> order) {
        const auto looked = intake::openPreview(*m_logbook, {file()});
        ASSERT_TRUE(looked) << looked.error().sentence();
        intake::ColumnMap map = looked->map;
        map.dateOrderFound = order;
        intake::rememberMap(*m_logbook, looked->preview, map);
    };
    write("Time,Beer\n10.11.2026 08:00,20\n");
    remember(std::nullopt);
    intake::LogPreview other; // of another kind, used later than the last one will be
    other.shape = intake::shapeOf(',', true, {"Zeit", "Bier"});
    intake::rememberMap(*m_logbook, other, {});
    ASSERT_EQ(poll().problems.size(), 1u);
    m_now -= std::chrono::days{400};
    remember(DateOrder::dayMonthYear);
    EXPECT_EQ(poll().added, 1);
}

TEST_F(WatchedFile, aClockThatGoesBackAndForthLosesNothing)
{
    append("2026-03-07 00:00,20\n");
    EXPECT_EQ(poll().added, 1);
    m_now -= std::chrono::days{366};
    append("2026-03-07 01:00,20\n");
    EXPECT_EQ(poll().added, 1);
    m_now += std::chrono::days{800};
    append("2026-03-07 02:00,20\n");
    EXPECT_EQ(poll().added, 1);
    m_now = someday;
    append("2026-03-07 03:00,20\n");
    EXPECT_EQ(poll().added, 1);
    EXPECT_EQ(readings(), 4u);
    EXPECT_EQ(poll().added, 0);
}

TEST_F(WatchedFile, theRowsOfOtherWatchedFilesAreNotAUsersChange)
{
    const std::string other = path("other.csv");
    std::ofstream(other) << "Time,Beer\n2026-03-07 00:00,20\n";
    watch(other);
    write("Time,Beer\n03.04.2026 08:00,20\n");
    ASSERT_EQ(poll().problems.size(), 1u);
    EXPECT_EQ(readings(), 1u);
    rewriteUnseen(file(), "Time,Beer\n2026-04-03 08:00,20\n");
    std::ofstream(other, std::ios::app) << "2026-03-07 01:00,20\n";
    EXPECT_EQ(poll().problems.size(), 1u);
    EXPECT_EQ(readings(), 2u) << "of the other file";
    EXPECT_EQ(poll().problems.size(), 1u);
    EXPECT_EQ(readings(), 2u);
}

TEST_F(WatchedFile, newRowsAreAddedToOneImportAutomatically)
{
    append("2026-03-07 00:00,20\n");
    EXPECT_EQ(poll().added, 1);
    append("2026-03-07 01:00,20.5\n2026-03-07 02:00,21\n");
    EXPECT_EQ(poll().added, 2);
    EXPECT_EQ(poll().added, 0);
    EXPECT_EQ(readings(), 3u);
    ASSERT_EQ(imports(), 1u);
    EXPECT_EQ(store::listImports(*m_logbook)->front().readings, 3);
    EXPECT_EQ(store::listImports(*m_logbook)->front().rowsRead, 3);
}

TEST_F(WatchedFile, aHalfWrittenLastLineWaitsForItsEnd)
{
    append("2026-03-07 00:00,20\n2026-03-07 01:00,2");
    EXPECT_EQ(poll().added, 1);
    append("1.5\n");
    EXPECT_EQ(poll().added, 1);
    const auto series =
        store::readSeries(*m_logbook, "Beer", {instantFromMs(0), instantFromMs(1LL << 42)});
    EXPECT_EQ(series->value, (std::vector<double>{20, 21.5}));
}

/// The line feed's byte is also half of other characters of UTF-16, here of U+010A.
TEST_F(WatchedFile, aHalfWrittenLineInUtf16WaitsForItsEnd)
{
    for (const bool little : {true, false}) {
        SCOPED_TRACE(little);
        const std::string day = little ? "2026-03-07" : "2026-03-08";
        const auto coded = [little](const QString& text) {
            QStringEncoder encoder(little ? QStringEncoder::Utf16LE : QStringEncoder::Utf16BE,
                                   QStringEncoder::Flag::WriteBom);
            return QByteArray(encoder.encode(text)).toStdString();
        };
        const std::string all =
            coded(QStringLiteral("Time,Note,Beer\n%1 00:00,b,20\n%1 01:00,\u010A\u0A0A,21.5\n")
                      .arg(QString::fromStdString(day)));
        write("");
        const std::size_t before = readings();
        std::int64_t added = 0;
        for (const char byte : all) {
            append(std::string(1, byte));
            const auto report = poll();
            added += report.added;
            EXPECT_THAT(report.remarks,
                        testing::Not(testing::Contains(testing::HasSubstr("rejected"))));
        }
        EXPECT_EQ(poll().problems, std::vector<std::string>{});
        EXPECT_EQ(added, 2);
        EXPECT_EQ(readings(), before + 2);
    }
}

/// What happens once a file was opened and closed for the given time, counted from 1.
class AfterClose {
public:
    AfterClose(int number, std::function<void()> act)
    {
        left() = number;
        event() = std::move(act);
        static DiskCalls calls = systemDisk();
        calls.close = [](int descriptor) {
            const int closed = systemDisk().close(descriptor);
            if (--left() == 0)
                event()();
            return closed;
        };
        replaceDisk(&calls);
    }
    ~AfterClose() { replaceDisk(nullptr); }
    AfterClose(const AfterClose&) = delete;
    AfterClose& operator=(const AfterClose&) = delete;

private:
    static int& left()
    {
        static int count = 0;
        return count;
    }
    static std::function<void()>& event()
    {
        static std::function<void()> act;
        return act;
    }
};

TEST_F(WatchedFile, aFileThatIsReplacedWhileItIsReadIsNotReadByHalves)
{
    // The other file is cut where the first one's rows end: in "22.5" or "23.5".
    const std::string first = "Time,Beer\n2026-03-07 00:00,20\n2026-03-07 01:00,21\n";
    const std::string other =
        "Time,Beer\n2026-03-08 00:00,22.5\n2026-03-08 01:00,23.5\n2026-03-08 02:00,24\n";
    for (int close = 1; close <= 3; ++close) {
        SCOPED_TRACE(close);
        const std::string name = path(("log" + std::to_string(close) + ".csv").c_str());
        const auto put = [&](const std::string& text, int day) {
            std::string dated = text;
            for (std::size_t at = 0; (at = dated.find("-03-", at)) != dated.npos; ++at)
                dated.replace(at + 1, 2,
                              day < 10 ? "0" + std::to_string(day) : std::to_string(day));
            std::ofstream(name + ".new", std::ios::binary) << dated;
            std::filesystem::rename(name + ".new", name);
        };
        for (const bool grown : {false, true}) {
            SCOPED_TRACE(grown ? "grown" : "first");
            const int month = 2 * close + (grown ? 1 : 0);
            put(grown ? "Time,Beer\n2026-03-07 00:00,20\n" : "", month);
            if (!grown)
                watch(name);
            ASSERT_TRUE(intake::pollWatches(*m_logbook, m_memory));
            const std::size_t before = readings();
            put(first, month);
            {
                const AfterClose swap(close, [&] { put(other, month); });
                ASSERT_TRUE(intake::pollWatches(*m_logbook, m_memory));
            }
            ASSERT_TRUE(intake::pollWatches(*m_logbook, m_memory));
            const auto series =
                store::readSeries(*m_logbook, "Beer", {instantFromMs(0), instantFromMs(1LL << 42)});
            ASSERT_TRUE(series);
            for (const double value : series->value)
                EXPECT_THAT((std::vector{20.0, 21.0, 22.5, 23.5, 24.0}), testing::Contains(value));
            EXPECT_GE(readings(), before + 3) << "the other file's rows";
        }
    }
}

TEST_F(WatchedFile, aReplacedFileIsReportedAndNotImportedTwice)
{
    append("2026-03-07 00:00,20\n2026-03-07 01:00,20.5\n");
    poll();
    write("Time,Beer\n2026-03-07 01:00,20.5\n2026-03-07 02:00,21\n2026-03-07 03:00,21\n");
    const auto report = poll();
    EXPECT_EQ(report.added, 2);
    ASSERT_EQ(report.remarks.size(), 1u);
    EXPECT_NE(report.remarks.front().find("a different file now"), std::string::npos);
    EXPECT_EQ(readings(), 4u);
}

TEST_F(WatchedFile, aShrunkFileIsReportedAndNotImportedTwice)
{
    append("2026-03-07 00:00,20\n2026-03-07 01:00,20.5\n2026-03-07 02:00,20.5\n");
    poll();
    write("Time,Beer\n2026-03-07 00:00,20\n");
    const auto report = poll();
    EXPECT_EQ(report.added, 0);
    ASSERT_EQ(report.remarks.size(), 1u);
    EXPECT_NE(report.remarks.front().find("shorter"), std::string::npos);
    EXPECT_EQ(readings(), 3u);
}

TEST_F(WatchedFile, aRejectedRowIsReportedWithItsLineInTheWholeFile)
{
    append("2026-03-07 00:00,20\n2026-03-07 01:00,20\n");
    poll();
    append("2026-03-07 02:00,warm\n");
    const auto report = poll();
    ASSERT_EQ(report.remarks.size(), 1u);
    EXPECT_NE(report.remarks.front().find("line 4"), std::string::npos) << report.remarks.front();
}

TEST_F(WatchedFile, aWithdrawnImportIsNotExtended)
{
    append("2026-03-07 00:00,20\n");
    poll();
    auto change = store::Change::begin(*m_logbook, saying("take back"));
    ASSERT_TRUE(change);
    ASSERT_TRUE(store::withdraw(*change, store::listImports(*m_logbook)->front().id));
    ASSERT_TRUE(change->commit());
    EXPECT_EQ(readings(), 0u);
    append("2026-03-07 01:00,20\n");
    EXPECT_EQ(poll().added, 1);
    EXPECT_EQ(readings(), 1u);
    EXPECT_EQ(imports(), 2u);
}

TEST_F(WatchedFile, aMissingFileIsAProblemUntilItReturns)
{
    append("2026-03-07 00:00,20\n");
    poll();
    std::remove(file().c_str());
    EXPECT_EQ(poll().problems.size(), 1u);
    write("Time,Beer\n2026-03-07 00:00,20\n2026-03-07 01:00,20\n");
    EXPECT_EQ(poll().added, 1);
}

TEST_F(WatchedFile, theExtendedImportHasAValidChecksum)
{
    for (int hour = 0; hour < 9; ++hour) {
        append("2026-03-07 0" + std::to_string(hour) + ":00,20\n");
        EXPECT_EQ(poll().added, 1);
    }
    m_logbook.reset();
    const auto checked =
        store::LogbookFile::open(path(), store::Access::read, [] { return someday; });
    ASSERT_TRUE(checked);
    const auto findings = store::findDamage(**checked);
    ASSERT_TRUE(findings) << findings.error().sentence();
    EXPECT_TRUE(findings->empty());
}

TEST_F(WatchedFile, aFolderWithTooManyLogsSaysSo)
{
    std::filesystem::create_directory(path("many"));
    for (std::size_t i = 0; i <= intake::mostWatchedFiles; ++i)
        std::ofstream(path("many") + "/" + std::to_string(10'000 + i) + ".csv");
    watch(path("many"));
    const auto reports = intake::pollWatches(*m_logbook, m_memory);
    ASSERT_TRUE(reports);
    ASSERT_FALSE(reports->back().problems.empty());
    EXPECT_NE(reports->back().problems.front().find(
                  "holds 1001 logs: only the first 1000 by name are read"),
              std::string::npos)
        << reports->back().problems.front();
}

TEST_F(WatchedFile, aFolderIsReadFileByFile)
{
    const std::string folder = path("logs");
    std::filesystem::create_directory(folder);
    std::ofstream(folder + "/a.csv") << "Time,Beer\n2026-03-08 00:00,20\n";
    std::ofstream(folder + "/b.csv") << "Time,Beer\n2026-03-09 00:00,20\n";
    std::ofstream(folder + "/notes.md") << "no log\n";
    watch(folder);
    const auto reports = intake::pollWatches(*m_logbook, m_memory);
    ASSERT_TRUE(reports);
    ASSERT_EQ(reports->size(), 2u);
    EXPECT_EQ(reports->back().added, 2);
    EXPECT_TRUE(reports->back().problems.empty());
}

TEST_F(WatchedFile, choicesForTheFormatApplyHereToo)
{
    write("Stamp;Probe 1\n2026-03-07 00:00;20\n");
    EXPECT_EQ(poll().problems.size(), 1u); // the sensor of the values is unknown
    intake::ColumnMap map;
    map.columns = {{intake::Meaning::time, {}}, {intake::Meaning::reading, "Beer"}};
    intake::LogPreview seen;
    seen.shape = intake::shapeOf(';', true, {"Stamp", "Probe 1"});
    intake::rememberMap(*m_logbook, seen, map);
    EXPECT_EQ(poll().added, 1);
}

} // namespace
} // namespace holdband::test

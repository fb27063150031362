// Logs by the Imports page: looked at, saved, withdrawn, watched.
#include "tests/ui/import_test.h"

#include "ui/imports/column_heads.h"
#include "ui/imports/past_imports.h"
#include "ui/imports/rows_panel.h"
#include "ui/imports/watch_card.h"

#include <QClipboard>
#include <QFile>
#include <QGuiApplication>
#include <QTabBar>
#include <QTableView>
#include <QTest>
#include <QThread>

namespace holdband::ui::test {

TEST_F(ImportTest, RawRowsAreLeftAndThePreviewIsRight)
{
    look("more.csv", goodLog);
    EXPECT_EQ(m_window->pages()->page(), PageId::imports);
    EXPECT_EQ(raw(1, 0), "2");
    EXPECT_EQ(raw(1, 2), "66.2");
    EXPECT_EQ(result(0, 0), "the header");
    EXPECT_EQ(result(1, 0), "12 Mar 2026 13:00"); // Denver, UTC−6
    EXPECT_EQ(result(1, 1), "66.2");
    EXPECT_EQ(result(3, 1), "left out");
    EXPECT_EQ(view().result()->index(3, 1).data(Qt::ToolTipRole), "is not a number");
    EXPECT_EQ(view().result()->headerData(1, Qt::Horizontal, Qt::DisplayRole), "Cabinet beer, °F");
}

TEST_F(ImportTest, EachGuessHasItsReason)
{
    look("more.csv", goodLog);
    EXPECT_EQ(view().heads()->box(0)->currentText(), "time");
    EXPECT_EQ(view().heads()->box(1)->currentText(), "Cabinet beer");
    EXPECT_EQ(view().heads()->box(2)->currentText(), "ignored");
    EXPECT_EQ(view().heads()->reason(1), "the header says °F; its header is the sensor’s name");
    EXPECT_EQ(view().heads()->reason(2), "there are no numbers in it");
    look("dated.csv", "time,Room (F)\n13.03.2026 10:00,62\n");
    EXPECT_EQ(view().heads()->reason(0), "day first: 13.03.2026 10:00 occurs in line 2");
}

TEST_F(ImportTest, IsPreviewedFirstAndStoredOnRequest)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_TRUE(page().message().contains("3 rows read, 2 readings new, 0 already there"))
        << said();
    EXPECT_EQ(lastOf("Cabinet beer"), before);
    page().importButton()->click();
    wait();
    EXPECT_TRUE(page().message().startsWith("Saved.")) << said();
    EXPECT_GT(lastOf("Cabinet beer"), before);
}

TEST_F(ImportTest, CountsOpenTheirRows)
{
    look("more.csv", goodLog);
    EXPECT_EQ(count(RowOutcome::added), "2 new");
    EXPECT_EQ(count(RowOutcome::rejected), "1 rejected");
    EXPECT_FALSE(view().countButton(RowOutcome::conflicting)->isEnabled());
    view().countButton(RowOutcome::rejected)->click();
    EXPECT_TRUE(view().rows()->isVisible());
    EXPECT_EQ(view().rows()->model()->index(0, 0).data(), "4");
    EXPECT_EQ(view().rows()->model()->index(0, 2).data(), "?");
    EXPECT_TRUE(view().rows()->saveButton()->isVisible());
    view().countButton(RowOutcome::added)->click();
    EXPECT_EQ(view().rows()->model()->rowCount(), 2);
    EXPECT_EQ(view().rows()->model()->index(1, 3).data(), "66.4 °F");
    EXPECT_FALSE(view().rows()->saveButton()->isVisible());
}

TEST_F(ImportTest, ConflictsShowTheStoredReadings)
{
    look("first.csv", goodLog);
    page().importButton()->click();
    wait();
    look("second.csv", "time,Cabinet beer (F)\n2026-03-12T19:00:00Z,70\n2026-03-12T19:30:00Z,66.4\n"
                       "2026-03-12T21:00:00Z,66\n");
    EXPECT_EQ(count(RowOutcome::alreadyThere), "1 already there");
    view().countButton(RowOutcome::conflicting)->click();
    EXPECT_EQ(view().rows()->model()->index(0, 3).data(), "70 °F");
    EXPECT_EQ(view().rows()->model()->index(0, 4).data(), "66.2 °F");
}

TEST_F(ImportTest, ASecondTimeThereIsNothingNew)
{
    look("more.csv", goodLog);
    page().importButton()->click();
    wait();
    look("more.csv", goodLog);
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(page().message().contains("nothing new to save")) << said();
}

TEST_F(ImportTest, CancelStoresNothing)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    page().cancel();
    wait();
    EXPECT_FALSE(page().canImport());
    EXPECT_EQ(page().message(), "Nothing was saved.");
    EXPECT_EQ(lastOf("Cabinet beer"), before);
}

TEST_F(ImportTest, CancelWhileStoringLeavesNothing)
{
    std::string text = "time,Room (F)\n";
    for (int i = 0; i < 200'000; ++i)
        text += std::to_string(1'500'000'000 + 60 * i) + ",62\n";
    look("long.csv", text);
    QTRY_VERIFY_WITH_TIMEOUT(page().canImport(), 20'000);
    page().importButton()->click();
    page().cancel();
    wait();
    EXPECT_TRUE(page().message().contains("Nothing was saved") ||
                page().message().contains("nothing of it was stored"))
        << said();
    const auto series =
        store::readSeries(*file(), "Room", {instantFromMs(0), instantFromMs(1'600'000'000'000)});
    EXPECT_TRUE(series && series->at.size() <= 1);
}

TEST_F(ImportTest, APreviewMakesNoCopyAndLeavesTheFileUnchanged)
{
    const auto bytes = [this] {
        QFile opened(m_logbook);
        return opened.open(QIODevice::ReadOnly) ? opened.readAll() : QByteArray();
    };
    const QByteArray before = bytes();
    look("more.csv", goodLog);
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_TRUE(bytes() == before);
    EXPECT_FALSE(QFile::exists(path("small backups")));
    page().importButton()->click();
    wait();
    EXPECT_TRUE(QFile::exists(path("small backups"))) << "storing is a change";
}

TEST_F(ImportTest, AFileThatChangedAfterItsPreviewIsShownAgainAndNotStored)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    ASSERT_TRUE(page().canImport()) << said();
    write("more.csv", goodLog + "2026-03-12T20:30:00Z,66.6,open\n");
    page().importButton()->click();
    wait();
    EXPECT_EQ(lastOf("Cabinet beer"), before);
    EXPECT_TRUE(page().message().contains("changed after it was looked at")) << said();
    EXPECT_TRUE(page().message().contains("4 rows read, 3 readings new")) << said();
    EXPECT_EQ(raw(4, 2), "66.6");
    ASSERT_TRUE(page().canImport());
    page().importButton()->click();
    wait();
    EXPECT_TRUE(page().message().startsWith("Saved.")) << said();
    EXPECT_FALSE(page().message().contains("changed after")) << said();
    EXPECT_EQ(toMs(lastOf("Cabinet beer")), 1773347400000); // 2026-03-12T20:30:00Z
}

TEST_F(ImportTest, AFileReplacedAfterItsPreviewIsPreviewedAgain)
{
    look("more.csv", "time,Probe 1 (F)\n2026-03-12T19:00:00Z,66.2\n");
    choose(view().heads()->box(1), "Cabinet beer");
    ASSERT_TRUE(page().canImport()) << said();
    write("more.csv", "time,Probe 1 (F)\n2026-03-12T19:30:00Z,66.2\n");
    page().importButton()->click();
    wait();
    EXPECT_EQ(view().heads()->box(1)->currentText(), "Cabinet beer") << "the same columns";
    EXPECT_TRUE(page().canImport()) << said();
    write("more.csv", "Lid;time;Room (F)\n1;2026-03-12T19:30:00Z;62\n");
    page().importButton()->click();
    wait();
    EXPECT_EQ(view().heads()->box(2)->currentText(), "Room");
    EXPECT_TRUE(page().canImport()) << said();
    EXPECT_TRUE(page().message().contains("changed after it was looked at")) << said();
}

TEST_F(ImportTest, ReadingsStoredBeforeCancelTookEffectAreReported)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    page().importButton()->click();
    // The window's thread gets no event, but the worker has finished.
    for (int i = 0; i < 500 && lastOf("Cabinet beer") == before; ++i)
        QThread::msleep(20);
    ASSERT_GT(lastOf("Cabinet beer"), before);
    page().cancel();
    wait();
    EXPECT_TRUE(page().message().startsWith("Saved.")) << said();
    EXPECT_TRUE(page().message().contains("stored before Cancel took effect")) << said();
    page().cancel(); // closes it
    wait();
    EXPECT_EQ(page().past()->lines().size(), 2u);
}

TEST_F(ImportTest, SeveralFilesWaitSideBySideAndAreStoredTogether)
{
    write("a.csv", "time,Room (F)\n2026-03-12T19:00:00Z,62\n");
    write("b.csv", "time,Room (F)\n2026-03-12T20:00:00Z,62\n");
    write("c.csv", "nothing\n");
    m_window->importFiles({path("a.csv"), path("b.csv"), path("c.csv")});
    wait();
    ASSERT_EQ(page().tabs()->count(), 3);
    EXPECT_EQ(page().tabs()->tabText(0), "a.csv · ready");
    EXPECT_EQ(page().tabs()->tabText(2), "c.csv · asks");
    EXPECT_EQ(page().importAllButton()->text(), "Save &all 2 that are ready");
    page().importAllButton()->click();
    wait();
    EXPECT_EQ(page().tabs()->tabText(1), "b.csv · saved");
    EXPECT_EQ(toMs(lastOf("Room")), 1773345600000); // 2026-03-12T20:00:00Z
}

TEST_F(ImportTest, RowsArePastedFromASpreadsheet)
{
    m_window->setPage(PageId::imports);
    QGuiApplication::clipboard()->setText("2026-03-12 19:00\t62,5\n2026-03-12 20:00\t62\n");
    page().setFocus();
    page().paste();
    wait();
    EXPECT_EQ(raw(0, 1), "2026-03-12 19:00");
    choose(view().heads()->box(1), "Room");
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(result(0, 1), "62.5");
}

TEST_F(ImportTest, AnImportIsWithdrawnAndRestored)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    page().importButton()->click();
    wait();
    page().cancel(); // closes it
    wait();
    ASSERT_EQ(page().past()->lines().size(), 2u);
    EXPECT_EQ(page().past()->button()->text(), "W&ithdraw more.csv");
    page().past()->button()->click();
    wait();
    EXPECT_EQ(lastOf("Cabinet beer"), before);
    EXPECT_EQ(page().past()->button()->text(), "&Restore more.csv");
    page().past()->button()->click();
    wait();
    EXPECT_GT(lastOf("Cabinet beer"), before);
}

TEST_F(ImportTest, NewRowsOfAWatchedFileAreImportedAutomatically)
{
    write("live.csv", "time,Room (F)\n2026-03-12T19:00:00Z,62\n");
    page().watches()->watch(path("live.csv"));
    wait();
    ASSERT_EQ(page().watches()->watches().size(), 1u);
    page().watches()->poll();
    wait();
    EXPECT_EQ(toMs(lastOf("Room")), 1773342000000); // 2026-03-12T19:00:00Z
    QFile live(path("live.csv"));
    ASSERT_TRUE(live.open(QIODevice::Append));
    live.write("2026-03-12T20:00:00Z,62\n2026-03-12T2");
    live.close();
    page().watches()->poll();
    wait();
    EXPECT_EQ(toMs(lastOf("Room")), 1773345600000);
    EXPECT_EQ(page().watches()->model()->index(0, 1).data(), "1 new readings stored");
    page().watches()->removeButton()->click();
    wait();
    EXPECT_TRUE(page().watches()->watches().empty());
}

TEST_F(ImportTest, AFileThatIsNoLogIsRefusedInASentence)
{
    look("empty.csv", "");
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(page().message().contains("empty")) << said();
    m_window->importFile(path("missing.csv"));
    wait();
    EXPECT_TRUE(page().message().contains("no such file")) << said();
    EXPECT_FALSE(page().canImport());
}

} // namespace holdband::ui::test

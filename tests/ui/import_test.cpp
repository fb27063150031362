// Logs by the Imports page: looked at, decided, kept, taken back, watched.
#include "tests/ui/sample_window.h"

#include "core/store/readings/readings.h"
#include "core/store/records/equipment.h"
#include "ui/imports/column_heads.h"
#include "ui/imports/imports_page.h"
#include "ui/imports/layout_choices.h"
#include "ui/imports/log_choices.h"
#include "ui/imports/log_view.h"
#include "ui/imports/name_choices.h"
#include "ui/imports/new_target_dialog.h"
#include "ui/imports/past_imports.h"
#include "ui/imports/rows_panel.h"
#include "ui/imports/watch_card.h"
#include "ui/window/pages.h"

#include <QClipboard>
#include <QComboBox>
#include <QFile>
#include <QGuiApplication>
#include <QLineEdit>
#include <QPushButton>
#include <QTabBar>
#include <QTableView>
#include <QTest>
#include <QThread>

namespace holdband::ui::test {

namespace {

class ImportTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = makeLogbook();
        m_window = openWindow(m_logbook);
    }

    ImportsPage& page() { return *m_window->pages()->imports(); }
    LogView& view() { return *page().view(); }
    void wait()
    {
        for (int i = 0; i < 4; ++i)
            settle(*m_window);
    }
    void look(const QString& name, const std::string& text)
    {
        write(name, text);
        m_window->importFile(path(name));
        wait();
    }
    std::unique_ptr<store::LogbookFile> file() const
    {
        return std::move(
            *store::LogbookFile::open(m_logbook.toStdString(), store::Access::read, now));
    }
    Instant lastOf(const char* sensor) const { return **store::lastReadingAt(*file(), sensor); }
    void choose(QComboBox* box, const QString& words)
    {
        const int index = box->findText(words);
        ASSERT_GE(index, 0) << words.toStdString();
        box->setCurrentIndex(index);
        Q_EMIT box->activated(index);
        wait();
    }
    QString raw(int row, int column) { return view().raw()->index(row, column).data().toString(); }
    QString result(int row, int column)
    {
        return view().result()->index(row, column).data().toString();
    }
    QString count(Fate fate) { return view().countButton(fate)->text(); }
    std::string said() { return page().message().toStdString(); }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

const std::string goodLog = "time,Cabinet beer (F),Lid\n"
                            "2026-03-12T19:00:00Z,66.2,shut\n"
                            "2026-03-12T19:30:00Z,66.4,shut\n"
                            "2026-03-12T20:00:00Z,?,shut\n";

} // namespace

TEST_F(ImportTest, RawRowsStandLeftAndWhatTheyBecomeRight)
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

TEST_F(ImportTest, IsLookedAtFirstAndKeptOnAWord)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    ASSERT_TRUE(page().canKeep()) << said();
    EXPECT_TRUE(page().message().contains("3 rows read, 2 readings new, 0 already there"))
        << said();
    EXPECT_EQ(lastOf("Cabinet beer"), before);
    page().keepButton()->click();
    wait();
    EXPECT_TRUE(page().message().startsWith("Saved.")) << said();
    EXPECT_GT(lastOf("Cabinet beer"), before);
}

TEST_F(ImportTest, CountsOpenTheirRows)
{
    look("more.csv", goodLog);
    EXPECT_EQ(count(Fate::added), "2 new");
    EXPECT_EQ(count(Fate::rejected), "1 rejected");
    EXPECT_FALSE(view().countButton(Fate::conflicting)->isEnabled());
    view().countButton(Fate::rejected)->click();
    EXPECT_TRUE(view().rows()->isVisible());
    EXPECT_EQ(view().rows()->model()->index(0, 0).data(), "4");
    EXPECT_EQ(view().rows()->model()->index(0, 2).data(), "?");
    EXPECT_TRUE(view().rows()->saveButton()->isVisible());
    view().countButton(Fate::added)->click();
    EXPECT_EQ(view().rows()->model()->rowCount(), 2);
    EXPECT_EQ(view().rows()->model()->index(1, 3).data(), "66.4 °F");
    EXPECT_FALSE(view().rows()->saveButton()->isVisible());
}

TEST_F(ImportTest, ConflictsShowWhatStands)
{
    look("first.csv", goodLog);
    page().keepButton()->click();
    wait();
    look("second.csv", "time,Cabinet beer (F)\n2026-03-12T19:00:00Z,70\n2026-03-12T19:30:00Z,66.4\n"
                       "2026-03-12T21:00:00Z,66\n");
    EXPECT_EQ(count(Fate::alreadyThere), "1 already there");
    view().countButton(Fate::conflicting)->click();
    EXPECT_EQ(view().rows()->model()->index(0, 3).data(), "70 °F");
    EXPECT_EQ(view().rows()->model()->index(0, 4).data(), "66.2 °F");
}

TEST_F(ImportTest, ASecondTimeThereIsNothingNew)
{
    look("more.csv", goodLog);
    page().keepButton()->click();
    wait();
    look("more.csv", goodLog);
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(page().message().contains("nothing new to save")) << said();
}

TEST_F(ImportTest, CancelKeepsNothing)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    page().cancel();
    wait();
    EXPECT_FALSE(page().canKeep());
    EXPECT_EQ(page().message(), "Nothing was saved.");
    EXPECT_EQ(lastOf("Cabinet beer"), before);
}

TEST_F(ImportTest, CancelWhileKeepingLeavesNothing)
{
    std::string text = "time,Room (F)\n";
    for (int i = 0; i < 200'000; ++i)
        text += std::to_string(1'500'000'000 + 60 * i) + ",62\n";
    look("long.csv", text);
    QTRY_VERIFY_WITH_TIMEOUT(page().canKeep(), 20'000);
    page().keepButton()->click();
    page().cancel();
    wait();
    EXPECT_TRUE(page().message().contains("Nothing was saved") ||
                page().message().contains("nothing of it was stored"))
        << said();
    const auto series =
        store::readSeries(*file(), "Room", {instantFromMs(0), instantFromMs(1'600'000'000'000)});
    EXPECT_TRUE(series && series->at.size() <= 1);
}

TEST_F(ImportTest, LookingMakesNoCopyAndLeavesTheFileAsItIs)
{
    const auto bytes = [this] {
        QFile opened(m_logbook);
        return opened.open(QIODevice::ReadOnly) ? opened.readAll() : QByteArray();
    };
    const QByteArray before = bytes();
    look("more.csv", goodLog);
    ASSERT_TRUE(page().canKeep()) << said();
    EXPECT_TRUE(bytes() == before);
    EXPECT_FALSE(QFile::exists(path("small backups")));
    page().keepButton()->click();
    wait();
    EXPECT_TRUE(QFile::exists(path("small backups"))) << "storing is a change";
}

TEST_F(ImportTest, AFileThatChangedAfterItsPreviewIsShownAgainAndNotStored)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    ASSERT_TRUE(page().canKeep()) << said();
    write("more.csv", goodLog + "2026-03-12T20:30:00Z,66.6,open\n");
    page().keepButton()->click();
    wait();
    EXPECT_EQ(lastOf("Cabinet beer"), before);
    EXPECT_TRUE(page().message().contains("changed after it was looked at")) << said();
    EXPECT_TRUE(page().message().contains("4 rows read, 3 readings new")) << said();
    EXPECT_EQ(raw(4, 2), "66.6");
    ASSERT_TRUE(page().canKeep());
    page().keepButton()->click();
    wait();
    EXPECT_TRUE(page().message().startsWith("Saved.")) << said();
    EXPECT_FALSE(page().message().contains("changed after")) << said();
    EXPECT_EQ(toMs(lastOf("Cabinet beer")), 1773347400000); // 2026-03-12T20:30:00Z
}

TEST_F(ImportTest, AFileThatBecameAnotherAfterItsPreviewIsLookedAtAnew)
{
    look("more.csv", "time,Probe 1 (F)\n2026-03-12T19:00:00Z,66.2\n");
    choose(view().heads()->box(1), "Cabinet beer");
    ASSERT_TRUE(page().canKeep()) << said();
    write("more.csv", "time,Probe 1 (F)\n2026-03-12T19:30:00Z,66.2\n");
    page().keepButton()->click();
    wait();
    EXPECT_EQ(view().heads()->box(1)->currentText(), "Cabinet beer") << "the same columns";
    EXPECT_TRUE(page().canKeep()) << said();
    write("more.csv", "Lid;time;Room (F)\n1;2026-03-12T19:30:00Z;62\n");
    page().keepButton()->click();
    wait();
    EXPECT_EQ(view().heads()->box(2)->currentText(), "Room");
    EXPECT_TRUE(page().canKeep()) << said();
    EXPECT_TRUE(page().message().contains("changed after it was looked at")) << said();
}

TEST_F(ImportTest, WhatWasStoredBeforeCancelTookEffectIsSaidToBeStored)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    page().keepButton()->click();
    // The window's thread hears nothing of it, but the worker is through.
    for (int i = 0; i < 500 && lastOf("Cabinet beer") == before; ++i)
        QThread::msleep(20);
    ASSERT_GT(lastOf("Cabinet beer"), before);
    page().cancel();
    wait();
    EXPECT_TRUE(page().message().startsWith("Saved.")) << said();
    EXPECT_TRUE(page().message().contains("stored before Cancel took effect")) << said();
    page().cancel(); // puts it away
    wait();
    EXPECT_EQ(page().past()->lines().size(), 2u);
}

TEST_F(ImportTest, AnOpenDateOrderIsAskedForAndTheFocusLeadsThere)
{
    look("open.csv", "time,Cabinet beer (F)\n03/04/2026 10:00,66.2\n03/05/2026 10:00,66.4\n");
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(page().message().contains("choose the order of the date")) << said();
    EXPECT_TRUE(view().choices()->dateOrder()->hasFocus());
    choose(view().choices()->dateOrder(), "month, day, year");
    EXPECT_TRUE(page().canKeep()) << said();
}

TEST_F(ImportTest, AnAmbiguousCommaIsAskedAbout)
{
    look("comma.csv", "time;Loop meter (kWh)\n2026-03-12 10:00;1,234\n2026-03-12 11:00;1,301\n");
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(view().choices()->decimalSign()->isVisible()) << said();
    EXPECT_TRUE(view().choices()->decimalSign()->hasFocus());
    choose(view().choices()->decimalSign(), "1,234 is over a thousand");
    EXPECT_TRUE(page().canKeep()) << said();
    EXPECT_EQ(result(1, 1), "1234");
}

TEST_F(ImportTest, AFallenRegisterIsAskedAbout)
{
    look("register.csv", "time,Loop meter (kWh)\n2026-03-12 10:00,20.5\n2026-03-12 11:00,0.5\n");
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(view().choices()->registerDrop()->hasFocus()) << said();
    choose(view().choices()->registerDrop(), "it restarted at 0 (reset)");
    EXPECT_TRUE(page().canKeep()) << said();
}

TEST_F(ImportTest, APatternIsCheckedWhileItIsTypedAndKeepsItsFocus)
{
    look("odd.csv", "when,Room (F)\n12/3/26 15h00,62\n12/3/26 16h00,62\n");
    EXPECT_FALSE(page().canKeep());
    choose(view().heads()->box(0), "time");
    choose(view().choices()->dateOrder(), "a pattern of your own…");
    QLineEdit* pattern = view().choices()->pattern();
    EXPECT_TRUE(pattern->isVisible());
    pattern->setFocus();
    QTest::keyClicks(pattern, "dd/M/yy HH:mm");
    EXPECT_TRUE(view().choices()->patternWords().contains("line 2"))
        << view().choices()->patternWords().toStdString();
    QTest::keyClick(pattern, Qt::Key_Return);
    wait();
    EXPECT_EQ(pattern->text(), "dd/M/yy HH:mm");
    pattern->selectAll();
    QTest::keyClicks(pattern, "dd/M/yy HH'h'mm");
    EXPECT_TRUE(view().choices()->patternWords().startsWith(QStringLiteral("✓")))
        << view().choices()->patternWords().toStdString();
    QTest::keyClick(pattern, Qt::Key_Return);
    wait();
    EXPECT_TRUE(page().canKeep()) << said();
    EXPECT_EQ(result(1, 0), "12 Mar 2026 15:00");
}

TEST_F(ImportTest, AZoneThatDoesNotExistIsRefusedAndStaysTyped)
{
    look("zoned.csv", "time,Room (F)\n2026-03-12 10:00,62\n");
    QComboBox* zone = view().choices()->zone();
    zone->setFocus();
    zone->lineEdit()->selectAll();
    QTest::keyClicks(zone->lineEdit(), "Mars/Base");
    QTest::keyClick(zone->lineEdit(), Qt::Key_Return);
    wait();
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(page().message().contains("Mars/Base")) << said();
    EXPECT_EQ(zone->currentText(), "Mars/Base");
    EXPECT_TRUE(zone->hasFocus());
}

TEST_F(ImportTest, AnAbbreviatedZoneInTheHeaderIsAskedAboutAndTheZoneIsNamed)
{
    look("zoned.csv", "time (EST),Room (F)\n2026-03-12 12:07,62\n");
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(page().message().contains("choose the zone")) << said();
    QComboBox* zone = view().choices()->zone();
    EXPECT_TRUE(zone->hasFocus());
    zone->lineEdit()->selectAll();
    QTest::keyClicks(zone->lineEdit(), "-05:00");
    QTest::keyClick(zone->lineEdit(), Qt::Key_Return);
    wait();
    ASSERT_TRUE(page().canKeep()) << said();
    EXPECT_TRUE(page().message().contains("Times read as UTC−05:00 (as set)")) << said();
    EXPECT_EQ(result(1, 0), "12 Mar 2026 11:07"); // Denver, UTC−6
    page().keepButton()->click();
    wait();
    EXPECT_TRUE(page().message().contains("Times read as UTC−05:00 (as set)")) << said();
}

TEST_F(ImportTest, AnOffsetInTheHeaderIsTheZoneThatIsOffered)
{
    look("zoned.csv", "\"Date Time, GMT-05:00\",Room (F)\n2026-03-12 12:07,62\n");
    ASSERT_TRUE(page().canKeep()) << said();
    EXPECT_EQ(view().choices()->zone()->currentText(), "as the header says");
    EXPECT_EQ(result(1, 0), "12 Mar 2026 11:07");
    EXPECT_TRUE(page().message().contains("from the header")) << said();
    look("plain.csv", "time,Room (F)\n2026-03-12 11:00,62\n");
    EXPECT_EQ(view().choices()->zone()->currentText(), "the logbook’s");
}

TEST_F(ImportTest, AColumnIsGivenItsMeaningAndUnit)
{
    look("other.csv", "time,Probe 1\n2026-03-12T19:00:00Z,19\n2026-03-12T19:30:00Z,19.5\n");
    EXPECT_FALSE(page().canKeep());
    choose(view().heads()->box(1), "Cabinet beer");
    EXPECT_FALSE(page().canKeep()) << said(); // 19 °F are odd for a beer
    choose(view().heads()->unitBox(1), "always °C");
    ASSERT_TRUE(page().canKeep()) << said();
    EXPECT_EQ(view().result()->headerData(1, Qt::Horizontal, Qt::DisplayRole), "Cabinet beer, °C");
}

TEST_F(ImportTest, WhatWasChosenIsUsedForTheNextFileOfTheShape)
{
    look("a.csv", "time,Probe 1 (F)\n2026-03-12T19:00:00Z,66.2\n");
    choose(view().heads()->box(1), "Cabinet beer");
    page().keepButton()->click();
    wait();
    look("b.csv", "time,Probe 1 (F)\n2026-03-12T22:00:00Z,66.2\n");
    ASSERT_TRUE(page().canKeep()) << said();
    EXPECT_EQ(view().heads()->box(1)->currentText(), "Cabinet beer");
    EXPECT_TRUE(view().heads()->reason(1).contains("as chosen before"))
        << view().heads()->reason(1).toStdString();
}

TEST_F(ImportTest, ASensorIsMadeOnTheSpot)
{
    look("new.csv", "time,Cellar (F)\n2026-03-12T19:00:00Z,55\n");
    TargetBox* box = view().heads()->box(1);
    const int index = box->findText("a new sensor…");
    box->setCurrentIndex(index);
    Q_EMIT box->activated(index);
    wait();
    auto* dialog = page().findChild<NewTargetDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->name()->text(), "Cellar");
    dialog->name()->setText("Room"); // taken
    dialog->accept();
    wait();
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_EQ(dialog->name()->text(), "Room");
    EXPECT_FALSE(dialog->message().isEmpty());
    dialog->name()->setText("Cellar");
    dialog->reads()->setCurrentIndex(1); // the room around it
    dialog->accept();
    wait();
    EXPECT_EQ(store::readSensors(*file())->back().name, "Cellar");
    EXPECT_EQ(view().heads()->box(1)->currentText(), "Cellar");
    EXPECT_TRUE(page().canKeep()) << said();
}

TEST_F(ImportTest, ALongLogGoesToSensorsByItsNames)
{
    look("long.csv", "time,probe,reading\n2026-03-12T19:00:00Z,Room,62\n"
                     "2026-03-12T19:00:00Z,p7,66\n2026-03-12T20:00:00Z,Room,62\n"
                     "2026-03-12T20:00:00Z,p7,66\n");
    EXPECT_EQ(count(Fate::added), "2 new");
    ASSERT_TRUE(view().names()->box("p7"));
    choose(view().names()->box("p7"), "Cabinet beer");
    EXPECT_EQ(count(Fate::added), "4 new") << said();
}

TEST_F(ImportTest, RowsThatSayTheirUnitAreReadInIt)
{
    look("long.csv", "time,probe,reading,unit\n2026-03-12T19:00:00Z,Room,62.6,°F\n"
                     "2026-03-12T19:00:00Z,Loop meter,15.2,kWh\n"
                     "2026-03-12T20:00:00Z,Room,17,°C\n"
                     "2026-03-12T20:00:00Z,Loop meter,15300,Wh\n"
                     "2026-03-12T21:00:00Z,Room,290,K\n");
    EXPECT_EQ(view().heads()->box(3)->currentText(), "units of the values");
    EXPECT_EQ(view().heads()->reason(3), "its rows are units");
    EXPECT_EQ(count(Fate::added), "4 new") << said();
    EXPECT_EQ(view().result()->headerData(2, Qt::Horizontal, Qt::DisplayRole), "Room, °F");
    EXPECT_EQ(result(1, 2), "62.6");
    EXPECT_EQ(result(3, 2), "62.6"); // 17 °C
    view().countButton(Fate::rejected)->click();
    EXPECT_EQ(view().rows()->model()->index(0, 0).data(), "6");
    EXPECT_EQ(view().rows()->model()->index(0, 3).data(), "its unit \"K\" is not known here");
}

TEST_F(ImportTest, AColumnIsCalledTheUnitsByHandAndTakesThatFromTheOneBefore)
{
    look("long.csv", "time,probe,reading,unit,was\n2026-03-12T19:00:00Z,Room,62.6,°F,°C\n"
                     "2026-03-12T20:00:00Z,Room,62.6,°F,°C\n");
    choose(view().heads()->box(4), "units of the values");
    EXPECT_EQ(view().heads()->box(3)->currentText(), "ignored");
    EXPECT_FALSE(page().canKeep()) << "62.6 °C are odd: " << said();
    choose(view().heads()->box(3), "units of the values");
    EXPECT_EQ(view().heads()->box(4)->currentText(), "ignored");
    EXPECT_TRUE(page().canKeep()) << said();
}

TEST_F(ImportTest, TheLayoutIsToldAsFoundAndChangedByHand)
{
    look("two.csv", "Logger,Serial,Site\ntime,Room (F),Lid\nWhen,Upper,Lower\n"
                    "2026-03-12T19:00:00Z,62,1\n2026-03-12T20:00:00Z,62,1\n");
    const LayoutChoices& layout = *view().choices()->layoutChoices();
    EXPECT_EQ(layout.delimiter()->currentText(), "as found: comma , — it gives times and numbers");
    EXPECT_EQ(layout.header()->currentText(), "as found: line 3 — times and numbers follow");
    EXPECT_FALSE(page().canKeep());
    choose(layout.header(), "line 2: time · Room (F) · Lid");
    EXPECT_EQ(view().heads()->box(1)->currentText(), "Room") << said();
    EXPECT_TRUE(page().canKeep()) << said();
    EXPECT_EQ(result(1, 0), "the header");
    EXPECT_EQ(count(Fate::added), "2 new");
    choose(layout.header(), "as found: line 3 — times and numbers follow");
    EXPECT_EQ(view().heads()->box(1)->currentText(), "ignored");
}

TEST_F(ImportTest, ALayoutThatCannotBeIsRefusedAndAnotherCanBeChosen)
{
    look("more.csv", goodLog);
    const LayoutChoices& layout = *view().choices()->layoutChoices();
    choose(layout.delimiter(), "bar |");
    EXPECT_FALSE(page().canKeep());
    EXPECT_EQ(layout.delimiter()->currentText(), "bar |") << "what was chosen stays";
    EXPECT_FALSE(page().message().isEmpty());
    choose(layout.delimiter(), "comma ,");
    EXPECT_TRUE(page().canKeep()) << said();
    choose(layout.header(), "line 2: 2026-03-12T19:00:00Z · 66.2 · shut");
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(page().message().contains("it has a time in it")) << said();
    EXPECT_TRUE(layout.header()->hasFocus());
    choose(layout.header(), layout.header()->itemText(0));
    EXPECT_TRUE(page().canKeep()) << said();
}

TEST_F(ImportTest, AChosenZoneOutlastsAnotherLayout)
{
    look("zoned.csv", "Site,Den,A\ntime,Room (F),Lid\n2026-03-12 10:00,62,1\n");
    view().choices()->zone()->setCurrentText("UTC");
    Q_EMIT view().choices()->zone()->activated(1);
    wait();
    choose(view().choices()->layoutChoices()->header(), "none: the columns are numbered");
    EXPECT_EQ(view().choices()->zone()->currentText(), "UTC");
    EXPECT_EQ(view().raw()->headerData(2, Qt::Horizontal, Qt::DisplayRole), "column 2");
}

TEST_F(ImportTest, AChosenLayoutIsUsedForTheNextFileThatLooksAlike)
{
    const std::string head = "Logger,Serial,Site\ntime,Room (F),Lid\nWhen,Upper,Lower\n";
    look("a.csv", head + "2026-03-12T19:00:00Z,62,1\n2026-03-12T20:00:00Z,62,1\n");
    choose(view().choices()->layoutChoices()->header(), "line 2: time · Room (F) · Lid");
    ASSERT_TRUE(page().canKeep()) << said();
    page().keepButton()->click();
    wait();
    look("b.csv", head + "2026-03-12T21:00:00Z,62,1\n2026-03-12T22:00:00Z,62,1\n");
    EXPECT_EQ(view().choices()->layoutChoices()->header()->currentText(),
              "line 2: time · Room (F) · Lid");
    EXPECT_TRUE(page().canKeep()) << said();
    EXPECT_EQ(count(Fate::added), "2 new");
}

TEST_F(ImportTest, SeveralFilesWaitSideBySideAndAreKeptTogether)
{
    write("a.csv", "time,Room (F)\n2026-03-12T19:00:00Z,62\n");
    write("b.csv", "time,Room (F)\n2026-03-12T20:00:00Z,62\n");
    write("c.csv", "nothing\n");
    m_window->importFiles({path("a.csv"), path("b.csv"), path("c.csv")});
    wait();
    ASSERT_EQ(page().tabs()->count(), 3);
    EXPECT_EQ(page().tabs()->tabText(0), "a.csv · ready");
    EXPECT_EQ(page().tabs()->tabText(2), "c.csv · asks");
    EXPECT_EQ(page().keepAllButton()->text(), "Save &all 2 that are ready");
    page().keepAllButton()->click();
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
    ASSERT_TRUE(page().canKeep()) << said();
    EXPECT_EQ(result(0, 1), "62.5");
}

TEST_F(ImportTest, AnImportIsTakenBackAndPutBack)
{
    const Instant before = lastOf("Cabinet beer");
    look("more.csv", goodLog);
    page().keepButton()->click();
    wait();
    page().cancel(); // puts it away
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

TEST_F(ImportTest, AWatchedFileBringsItsNewRowsByItself)
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

TEST_F(ImportTest, AValueThatCannotBeReadIsNamedAndNoTimeIsAskedFor)
{
    look("units.csv", "time,Room\n2026-03-12T19:00:00Z,62 °F\n2026-03-12T20:00:00Z,62 °F\n");
    EXPECT_FALSE(page().canKeep());
    EXPECT_EQ(view().heads()->box(0)->currentText(), "time");
    EXPECT_TRUE(page().message().contains(
        "No value could be read. The first: line 2, column Room: 62 °F is not a number."))
        << said();
    EXPECT_FALSE(page().message().contains("nothing new")) << said();
}

TEST_F(ImportTest, AFileThatIsNoLogIsRefusedInASentence)
{
    look("empty.csv", "");
    EXPECT_FALSE(page().canKeep());
    EXPECT_TRUE(page().message().contains("empty")) << said();
    m_window->importFile(path("missing.csv"));
    wait();
    EXPECT_TRUE(page().message().contains("no such file")) << said();
    EXPECT_FALSE(page().canKeep());
}

} // namespace holdband::ui::test

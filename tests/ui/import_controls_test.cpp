// Controls of the Imports page that are shown only for some logs: times that count from a start,
// the sheets of a workbook, and ignored columns that look like temperatures.
#include "core/text/times.h"
#include "tests/intake/workbook_maker.h"
#include "tests/ui/import_test.h"
#include "tests/ui/underlined.h"
#include "ui/forms/instant_field.h"
#include "ui/imports/column_heads.h"
#include "ui/imports/elapsed_choices.h"
#include "ui/imports/ignored_line.h"
#include "ui/imports/layout_choices.h"
#include "ui/imports/log_choices.h"
#include "ui/imports/sheet_choice.h"
#include "ui/imports/watch_card.h"

#include <QApplication>
#include <QLineEdit>
#include <QSignalSpy>
#include <QTabBar>
#include <QTest>

namespace holdband::ui::test {

namespace {

using holdband::test::numberCell;
using holdband::test::rowOf;
using holdband::test::textCell;

const std::string elapsedLog = "Elapsed (s),Room (F)\n0,62\n1800,62.4\n";
/// Between the half hours at which the logbook has readings.
const std::string lateLog = "Elapsed (s),Room (F)\n60,62\n1860,62.4\n";
const std::string countingLog = "x,Room (F)\n0,62\n30,62.4\n";

std::string beerSheet(const std::string& day)
{
    return rowOf(textCell("time") + textCell("Cabinet beer (F)")) +
           rowOf(textCell(day + " 19:00:00Z") + numberCell("66.2")) +
           rowOf(textCell(day + " 19:30:00Z") + numberCell("66.4"));
}

class ImportControlsTest : public ImportTest {
protected:
    ElapsedChoices& elapsed() { return *view().choices()->elapsed(); }
    QLineEdit* began() { return elapsed().began()->edit(); }
    QComboBox* sheet() { return view().sheet()->box(); }
    IgnoredLine& ignored() { return *view().ignored(); }
    void press(Qt::Key key)
    {
        QTest::keyClick(QApplication::focusWidget(), key);
        wait();
    }
    void type(const char* text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    void lookAtBook(const std::vector<holdband::test::MadeSheet>& sheets)
    {
        look("book.xlsx", holdband::test::workbookBytes({sheets}));
    }
    void save()
    {
        ASSERT_TRUE(page().canImport()) << said();
        QTest::mouseClick(page().importButton(), Qt::LeftButton);
        wait();
        ASSERT_TRUE(page().message().startsWith("Saved.")) << said();
    }
};

} // namespace

TEST_F(ImportControlsTest, TheStartOfCountedTimesIsAskedForAndTypedByKeyboard)
{
    look("a.csv", elapsedLog);
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(page().message().contains("the times are seconds since a start")) << said();
    EXPECT_TRUE(page().message().endsWith("say above when they began.")) << said();
    EXPECT_TRUE(began()->hasFocus());
    EXPECT_EQ(elapsed().unit()->currentText(), "as the header says: seconds");
    type("2026-03-12 13:00");
    press(Qt::Key_Return);
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(result(1, 0), "12 Mar 2026 13:00");
    EXPECT_EQ(result(2, 0), "12 Mar 2026 13:30");
    EXPECT_EQ(view().heads()->reason(0), "seconds since 2026-03-12 13:00");
    EXPECT_EQ(began()->text(), "2026-03-12 13:00");
    save();
    EXPECT_EQ(lastOf("Room"), *parseTime("2026-03-12T19:30:00Z", Zone::utc()));
}

TEST_F(ImportControlsTest, WhatNumbersCountIsAskedForFirst)
{
    look("x.csv", countingLog);
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(page().message().contains("choose above what the times count")) << said();
    EXPECT_TRUE(elapsed().unit()->hasFocus());
    EXPECT_EQ(elapsed().unit()->currentText(), "not set yet");
    EXPECT_FALSE(began()->isVisible());
    choose(elapsed().unit(), "minutes");
    EXPECT_TRUE(began()->hasFocus()) << said();
    type("2026-03-12 13:00");
    press(Qt::Key_Tab); // leaving the field is enough
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(result(2, 0), "12 Mar 2026 13:30");
    choose(elapsed().unit(), "hours");
    EXPECT_EQ(result(2, 0), "13 Mar 2026 19:00") << "the start is still the same";
}

TEST_F(ImportControlsTest, DaysOfACalendarNeedNoStart)
{
    look("x.csv", "x,Room (F)\n46093.5,62\n46093.75,62.4\n");
    EXPECT_TRUE(elapsed().unit()->hasFocus()) << said();
    choose(elapsed().unit(), "seconds");
    EXPECT_TRUE(began()->isVisible());
    choose(elapsed().unit(), "days of a spreadsheet’s calendar");
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_FALSE(began()->isVisible());
    EXPECT_EQ(result(1, 0), "12 Mar 2026 12:00");
}

TEST_F(ImportControlsTest, AStartThatIsNoTimeIsRefusedInPlace)
{
    look("a.csv", lateLog);
    type("soon");
    press(Qt::Key_Return);
    EXPECT_FALSE(page().canImport());
    EXPECT_FALSE(elapsed().began()->problem().isEmpty());
    EXPECT_EQ(began()->text(), "soon");
    began()->selectAll();
    type("2026-03-08 02:30"); // skipped in Denver
    press(Qt::Key_Return);
    EXPECT_FALSE(page().canImport());
    ASSERT_TRUE(elapsed().began()->secondReading()->isVisible());
    look("b.csv", lateLog);
    EXPECT_EQ(began()->text(), "") << "another log, another start";
    EXPECT_FALSE(elapsed().began()->secondReading()->isVisible());
    type("2026-03-08 02:30");
    QTest::mouseClick(elapsed().began()->secondReading(), Qt::LeftButton);
    wait();
    EXPECT_TRUE(page().canImport()) << said();
}

TEST_F(ImportControlsTest, TheStartIsReadInTheZoneOfTheLog)
{
    look("a.csv", lateLog);
    view().choices()->zone()->setCurrentText("UTC");
    Q_EMIT view().choices()->zone()->activated(1);
    wait();
    EXPECT_TRUE(began()->hasFocus());
    type("2026-03-08 02:30"); // exists in UTC
    press(Qt::Key_Return);
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(result(1, 0), "7 Mar 2026 19:31");
}

TEST_F(ImportControlsTest, UnitAndStartOutlastAnotherLayoutWithTheSameTimes)
{
    look("x.csv", countingLog);
    choose(elapsed().unit(), "minutes");
    type("2026-03-12 13:00");
    press(Qt::Key_Return);
    choose(view().choices()->layoutChoices()->delimiter(), "comma ,");
    EXPECT_TRUE(page().canImport()) << said();
    EXPECT_EQ(began()->text(), "2026-03-12 13:00");
    choose(view().choices()->layoutChoices()->header(), "none: the columns are numbered");
    EXPECT_EQ(began()->text(), "") << "the column of times is another one";
}

TEST_F(ImportControlsTest, EachFileHasAStartOfItsOwnAndTheUnitIsRemembered)
{
    look("x.csv", countingLog);
    choose(elapsed().unit(), "minutes");
    type("2026-03-12 13:00");
    press(Qt::Key_Return);
    save();
    write("y.csv", countingLog);
    write("z.csv", countingLog);
    page().look(QStringList{path("y.csv"), path("z.csv")});
    wait();
    EXPECT_EQ(elapsed().unit()->currentText(), "minutes");
    EXPECT_EQ(began()->text(), "");
    EXPECT_TRUE(began()->hasFocus()) << said();
    type("2026-03-12 15:00");
    press(Qt::Key_Return);
    EXPECT_TRUE(page().canImport()) << said();
    page().tabs()->setCurrentIndex(1);
    wait();
    EXPECT_FALSE(page().canImport()) << "it began at another time: " << said();
    EXPECT_EQ(began()->text(), "");
    page().tabs()->setCurrentIndex(0);
    EXPECT_EQ(began()->text(), "2026-03-12 15:00");
}

TEST_F(ImportControlsTest, ALogWithTimesHasNoFieldsForCountedOnes)
{
    look("more.csv", goodLog);
    EXPECT_FALSE(elapsed().isVisible());
    EXPECT_FALSE(view().sheet()->isVisible());
    EXPECT_FALSE(ignored().isVisible());
}

TEST_F(ImportControlsTest, AnotherColumnOfTimesNeedsNoStart)
{
    look("a.csv", "Elapsed (s),Room (F),Note\n0,62,12/3/26 15h00\n60,62,12/3/26 16h00\n");
    ASSERT_TRUE(began()->hasFocus()) << said();
    type("2026-03-12 13:00");
    press(Qt::Key_Return);
    ASSERT_TRUE(page().canImport()) << said();
    choose(view().heads()->box(2), "time");
    EXPECT_FALSE(elapsed().isVisible()) << said();
    choose(view().choices()->dateOrder(), "a pattern of your own…");
    type("dd/M/yy HH'h'mm");
    press(Qt::Key_Return);
    EXPECT_TRUE(page().canImport()) << said();
    EXPECT_EQ(result(1, 0), "12 Mar 2026 15:00");
}

TEST_F(ImportControlsTest, AnotherSheetIsChosenByKeyboard)
{
    lookAtBook({{"March", beerSheet("2026-03-12")},
                {"Hidden", beerSheet("2026-03-12"), "hidden"},
                {"April", beerSheet("2026-04-12")}});
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(sheet()->count(), 2) << "what is hidden is left out";
    EXPECT_EQ(sheet()->currentText(), "March");
    EXPECT_EQ(result(1, 0), "12 Mar 2026 13:00");
    sheet()->setFocus();
    press(Qt::Key_Down);
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(sheet()->currentText(), "April");
    EXPECT_EQ(result(1, 0), "12 Apr 2026 13:00");
    save();
    EXPECT_EQ(lastOf("Cabinet beer"), *parseTime("2026-04-12T19:30:00Z", Zone::utc()));
    choose(sheet(), "March"); // the file is still open
    EXPECT_TRUE(page().canImport()) << said();
    lookAtBook({{"One", beerSheet("2026-03-13")}, {"Two", beerSheet("2026-03-14")}});
    EXPECT_EQ(sheet()->currentText(), "One") << "not remembered for the next file";
}

TEST_F(ImportControlsTest, AWorkbookWhoseFirstSheetIsNoLogLetsChooseAnother)
{
    lookAtBook({{"Cover", rowOf(textCell("Cellar log"))}, {"Log", beerSheet("2026-03-12")}});
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(page().message().endsWith("; choose another sheet above.")) << said();
    EXPECT_TRUE(sheet()->hasFocus());
    choose(sheet(), "Log");
    EXPECT_TRUE(page().canImport()) << said();
    choose(sheet(), "Cover");
    EXPECT_FALSE(page().canImport());
    EXPECT_EQ(view().raw()->rowCount(), 0) << "the other sheet's rows are gone";
    EXPECT_TRUE(sheet()->hasFocus());
}

TEST_F(ImportControlsTest, AWorkbookWithOneSheetHasNothingToChoose)
{
    lookAtBook({{"Log", beerSheet("2026-03-12")}});
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_FALSE(view().sheet()->isVisible());
}

TEST_F(ImportControlsTest, IgnoredTemperaturesAreNamedAndTheirChoiceGetsTheFocus)
{
    look("a.csv", "time,Room (F),Lid,Probe 2,Cellar (F)\n2026-03-12T19:00:00Z,62,1,60.2,55\n"
                  "2026-03-12T19:30:00Z,62,0,60.4,55\n");
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(ignored().text(), "Ignored, but they look like temperatures: Probe 2, Cellar (F). "
                                "Choose above each column what it is.");
    EXPECT_TRUE(ignored().isVisible());
    EXPECT_EQ(ignored().height(), ignored().sizeHint().height()) << "one line";
    EXPECT_LT(ignored().mapTo(&page(), QPoint()).y(), view().heads()->mapTo(&page(), QPoint()).y());
    EXPECT_EQ(underlinedTwice(*m_window), QStringList());
    QTest::mouseClick(ignored().button(), Qt::LeftButton);
    EXPECT_TRUE(view().heads()->box(3)->hasFocus());
    choose(view().heads()->box(3), "Cabinet beer");
    EXPECT_EQ(ignored().text(), "Ignored, but it looks like a temperature: Cellar (F). Choose "
                                "above the column what it is.");
    ignored().button()->setFocus();
    press(Qt::Key_Space);
    EXPECT_TRUE(view().heads()->box(4)->hasFocus());
    choose(view().heads()->box(4), "Loop beer");
    EXPECT_FALSE(ignored().isVisible());
}

TEST_F(ImportControlsTest, AtMostThreeIgnoredColumnsAreNamed)
{
    look("a.csv", "time,Room (F),T1,T2,T3,T4,T5\n2026-03-12T19:00:00Z,62,60,60,60,60,60\n");
    EXPECT_TRUE(ignored().text().contains("temperatures: T1, T2, T3 and 2 more."))
        << ignored().text().toStdString();
}

TEST_F(ImportControlsTest, WhatWasIgnoredInTheLastFileIsNotPointedOutAgain)
{
    look("a.csv", "time,Room (F),T1\n2026-03-12T19:00:00Z,62,60\n");
    EXPECT_TRUE(ignored().isVisible());
    save();
    look("b.csv", "time,Room (F),T1\n2026-03-12T20:00:00Z,62,60\n");
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_FALSE(ignored().isVisible());
    EXPECT_EQ(view().heads()->reason(2), "as chosen before");
}

TEST_F(ImportControlsTest, ASecondFileOfTheSameShapeAsksNothing)
{
    const std::string header = "time;Probe 9;Loop meter (kWh)\n";
    look("a.csv", header + "03/04/2026 10:00;19;1,234\n03/05/2026 10:00;19,5;1,301\n");
    choose(view().heads()->box(1), "Cabinet beer");
    choose(view().heads()->unitBox(1), "always °C");
    ASSERT_TRUE(view().choices()->dateOrder()->hasFocus()) << said();
    choose(view().choices()->dateOrder(), "month, day, year");
    save();
    look("b.csv", header + "03/06/2026 10:00;19;1,456\n03/07/2026 10:00;19,5;1,501\n");
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(result(1, 0), "6 Mar 2026 10:00");
    EXPECT_EQ(view().choices()->dateOrder()->currentText(), "month, day, year");
    EXPECT_EQ(view().heads()->box(1)->currentText(), "Cabinet beer");
    save();
}

TEST_F(ImportControlsTest, TheLetterOfWatchWorksWhileALogIsShownToo)
{
    WatchCard* watches = page().watches();
    watches->disconnect(&page()); // without the question for a file
    QSignalSpy wanted(watches, &WatchCard::fileWanted);
    m_window->setPage(PageId::imports);
    m_window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    QTest::keyClick(m_window.get(), Qt::Key_W, Qt::AltModifier);
    EXPECT_TRUE(QTest::qWaitFor([&] { return wanted.count() == 1; }))
        << "a button is pressed for a while";
    look("more.csv", goodLog);
    ASSERT_FALSE(watches->isVisible());
    QTest::keyClick(m_window.get(), Qt::Key_W, Qt::AltModifier);
    EXPECT_TRUE(QTest::qWaitFor([&] { return wanted.count() == 2; }));
    page().save();
    wait();
    QTest::keyClick(m_window.get(), Qt::Key_W, Qt::AltModifier);
    EXPECT_TRUE(QTest::qWaitFor([&] { return wanted.count() == 3; }))
        << "the saved log is still shown";
}

} // namespace holdband::ui::test

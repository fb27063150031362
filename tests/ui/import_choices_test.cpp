// What the Imports page asks about a log, and what a person chooses for it.
#include "tests/ui/import_test.h"

#include "core/store/records/equipment.h"
#include "ui/imports/column_heads.h"
#include "ui/imports/layout_choices.h"
#include "ui/imports/log_choices.h"
#include "ui/imports/name_choices.h"
#include "ui/imports/new_target_dialog.h"
#include "ui/imports/rows_panel.h"

#include <QLineEdit>
#include <QTableView>
#include <QTest>

namespace holdband::ui::test {

TEST_F(ImportTest, AnOpenDateOrderIsAskedForAndGetsTheFocus)
{
    look("open.csv", "time,Cabinet beer (F)\n03/04/2026 10:00,66.2\n03/05/2026 10:00,66.4\n");
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(page().message().contains("choose the order of the date")) << said();
    EXPECT_TRUE(view().choices()->dateOrder()->hasFocus());
    choose(view().choices()->dateOrder(), "month, day, year");
    EXPECT_TRUE(page().canImport()) << said();
}

TEST_F(ImportTest, AnAmbiguousCommaIsAskedAbout)
{
    look("comma.csv", "time;Loop meter (kWh)\n2026-03-12 10:00;1,234\n2026-03-12 11:00;1,301\n");
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(view().choices()->decimalSign()->isVisible()) << said();
    EXPECT_TRUE(view().choices()->decimalSign()->hasFocus());
    choose(view().choices()->decimalSign(), "1,234 is over a thousand");
    EXPECT_TRUE(page().canImport()) << said();
    EXPECT_EQ(result(1, 1), "1234");
}

TEST_F(ImportTest, AFallenRegisterIsAskedAbout)
{
    look("register.csv", "time,Loop meter (kWh)\n2026-03-12 10:00,20.5\n2026-03-12 11:00,0.5\n");
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(view().choices()->registerDrop()->hasFocus()) << said();
    choose(view().choices()->registerDrop(), "it restarted at 0 (reset)");
    EXPECT_TRUE(page().canImport()) << said();
}

TEST_F(ImportTest, APatternIsCheckedWhileItIsTypedAndTheFocusStays)
{
    look("odd.csv", "when,Room (F)\n12/3/26 15h00,62\n12/3/26 16h00,62\n");
    EXPECT_FALSE(page().canImport());
    choose(view().heads()->box(0), "time");
    choose(view().choices()->dateOrder(), "a pattern of your own…");
    QLineEdit* pattern = view().choices()->pattern();
    EXPECT_TRUE(pattern->isVisible());
    pattern->setFocus();
    QTest::keyClicks(pattern, "dd/M/yy HH:mm");
    EXPECT_TRUE(view().choices()->patternText().contains("line 2"))
        << view().choices()->patternText().toStdString();
    QTest::keyClick(pattern, Qt::Key_Return);
    wait();
    EXPECT_EQ(pattern->text(), "dd/M/yy HH:mm");
    pattern->selectAll();
    QTest::keyClicks(pattern, "dd/M/yy HH'h'mm");
    EXPECT_TRUE(view().choices()->patternText().startsWith(QStringLiteral("✓")))
        << view().choices()->patternText().toStdString();
    QTest::keyClick(pattern, Qt::Key_Return);
    wait();
    EXPECT_TRUE(page().canImport()) << said();
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
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(page().message().contains("Mars/Base")) << said();
    EXPECT_EQ(zone->currentText(), "Mars/Base");
    EXPECT_TRUE(zone->hasFocus());
}

TEST_F(ImportTest, AnAbbreviatedZoneInTheHeaderIsAskedAboutAndTheZoneIsNamed)
{
    look("zoned.csv", "time (EST),Room (F)\n2026-03-12 12:07,62\n");
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(page().message().contains("choose the zone")) << said();
    QComboBox* zone = view().choices()->zone();
    EXPECT_TRUE(zone->hasFocus());
    zone->lineEdit()->selectAll();
    QTest::keyClicks(zone->lineEdit(), "-05:00");
    QTest::keyClick(zone->lineEdit(), Qt::Key_Return);
    wait();
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_TRUE(page().message().contains("Times read as UTC−05:00 (as set)")) << said();
    EXPECT_EQ(result(1, 0), "12 Mar 2026 11:07"); // Denver, UTC−6
    page().importButton()->click();
    wait();
    EXPECT_TRUE(page().message().contains("Times read as UTC−05:00 (as set)")) << said();
}

TEST_F(ImportTest, AnOffsetInTheHeaderIsTheZoneThatIsOffered)
{
    look("zoned.csv", "\"Date Time, GMT-05:00\",Room (F)\n2026-03-12 12:07,62\n");
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(view().choices()->zone()->currentText(), "as the header says");
    EXPECT_EQ(result(1, 0), "12 Mar 2026 11:07");
    EXPECT_TRUE(page().message().contains("from the header")) << said();
    look("plain.csv", "time,Room (F)\n2026-03-12 11:00,62\n");
    EXPECT_EQ(view().choices()->zone()->currentText(), "the logbook’s");
}

TEST_F(ImportTest, AColumnIsGivenItsMeaningAndUnit)
{
    look("other.csv", "time,Probe 1\n2026-03-12T19:00:00Z,19\n2026-03-12T19:30:00Z,19.5\n");
    EXPECT_FALSE(page().canImport());
    choose(view().heads()->box(1), "Cabinet beer");
    EXPECT_FALSE(page().canImport()) << said(); // 19 °F are odd for a beer
    choose(view().heads()->unitBox(1), "always °C");
    ASSERT_TRUE(page().canImport()) << said();
    EXPECT_EQ(view().result()->headerData(1, Qt::Horizontal, Qt::DisplayRole), "Cabinet beer, °C");
}

TEST_F(ImportTest, ChoicesAreUsedForTheNextFileOfTheSameFormat)
{
    look("a.csv", "time,Probe 1 (F)\n2026-03-12T19:00:00Z,66.2\n");
    choose(view().heads()->box(1), "Cabinet beer");
    page().importButton()->click();
    wait();
    look("b.csv", "time,Probe 1 (F)\n2026-03-12T22:00:00Z,66.2\n");
    ASSERT_TRUE(page().canImport()) << said();
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
    EXPECT_TRUE(page().canImport()) << said();
}

TEST_F(ImportTest, ALongLogGoesToSensorsByItsNames)
{
    look("long.csv", "time,probe,reading\n2026-03-12T19:00:00Z,Room,62\n"
                     "2026-03-12T19:00:00Z,p7,66\n2026-03-12T20:00:00Z,Room,62\n"
                     "2026-03-12T20:00:00Z,p7,66\n");
    EXPECT_EQ(count(RowOutcome::added), "2 new");
    ASSERT_TRUE(view().names()->box("p7"));
    choose(view().names()->box("p7"), "Cabinet beer");
    EXPECT_EQ(count(RowOutcome::added), "4 new") << said();
}

TEST_F(ImportTest, RowsThatNameTheirUnitAreReadInIt)
{
    look("long.csv", "time,probe,reading,unit\n2026-03-12T19:00:00Z,Room,62.6,°F\n"
                     "2026-03-12T19:00:00Z,Loop meter,15.2,kWh\n"
                     "2026-03-12T20:00:00Z,Room,17,°C\n"
                     "2026-03-12T20:00:00Z,Loop meter,15300,Wh\n"
                     "2026-03-12T21:00:00Z,Room,522,°R\n");
    EXPECT_EQ(view().heads()->box(3)->currentText(), "units of the values");
    EXPECT_EQ(view().heads()->reason(3), "its rows are units");
    EXPECT_EQ(count(RowOutcome::added), "4 new") << said();
    EXPECT_EQ(view().result()->headerData(2, Qt::Horizontal, Qt::DisplayRole), "Room, °F");
    EXPECT_EQ(result(1, 2), "62.6");
    EXPECT_EQ(result(3, 2), "62.6"); // 17 °C
    view().countButton(RowOutcome::rejected)->click();
    EXPECT_EQ(view().rows()->model()->index(0, 0).data(), "6");
    EXPECT_EQ(view().rows()->model()->index(0, 3).data(), "its unit \"°R\" is not known here");
}

TEST_F(ImportTest, AColumnIsSetAsTheUnitsAndReplacesTheOneBefore)
{
    look("long.csv", "time,probe,reading,unit,was\n2026-03-12T19:00:00Z,Room,62.6,°F,°C\n"
                     "2026-03-12T20:00:00Z,Room,62.6,°F,°C\n");
    choose(view().heads()->box(4), "units of the values");
    EXPECT_EQ(view().heads()->box(3)->currentText(), "ignored");
    EXPECT_FALSE(page().canImport()) << "62.6 °C are odd: " << said();
    choose(view().heads()->box(3), "units of the values");
    EXPECT_EQ(view().heads()->box(4)->currentText(), "ignored");
    EXPECT_TRUE(page().canImport()) << said();
}

TEST_F(ImportTest, TheDetectedLayoutIsShownAndChangedByHand)
{
    look("two.csv", "Logger,Serial,Site\ntime,Room (F),Lid\nWhen,Upper,Lower\n"
                    "2026-03-12T19:00:00Z,62,1\n2026-03-12T20:00:00Z,62,1\n");
    const LayoutChoices& layout = *view().choices()->layoutChoices();
    EXPECT_EQ(layout.delimiter()->currentText(), "as found: comma , — it gives times and numbers");
    EXPECT_EQ(layout.header()->currentText(), "as found: line 3 — times and numbers follow");
    EXPECT_FALSE(page().canImport());
    choose(layout.header(), "line 2: time · Room (F) · Lid");
    EXPECT_EQ(view().heads()->box(1)->currentText(), "Room") << said();
    EXPECT_TRUE(page().canImport()) << said();
    EXPECT_EQ(result(1, 0), "the header");
    EXPECT_EQ(count(RowOutcome::added), "2 new");
    choose(layout.header(), "as found: line 3 — times and numbers follow");
    EXPECT_EQ(view().heads()->box(1)->currentText(), "ignored");
}

TEST_F(ImportTest, AnImpossibleLayoutIsRefusedAndAnotherCanBeChosen)
{
    look("more.csv", goodLog);
    const LayoutChoices& layout = *view().choices()->layoutChoices();
    choose(layout.delimiter(), "bar |");
    EXPECT_FALSE(page().canImport());
    EXPECT_EQ(layout.delimiter()->currentText(), "bar |") << "what was chosen stays";
    EXPECT_FALSE(page().message().isEmpty());
    choose(layout.delimiter(), "comma ,");
    EXPECT_TRUE(page().canImport()) << said();
    choose(layout.header(), "line 2: 2026-03-12T19:00:00Z · 66.2 · shut");
    EXPECT_FALSE(page().canImport());
    EXPECT_TRUE(page().message().contains("it has a time in it")) << said();
    EXPECT_TRUE(layout.header()->hasFocus());
    choose(layout.header(), layout.header()->itemText(0));
    EXPECT_TRUE(page().canImport()) << said();
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

TEST_F(ImportTest, AChosenLayoutIsUsedForTheNextSimilarFile)
{
    const std::string head = "Logger,Serial,Site\ntime,Room (F),Lid\nWhen,Upper,Lower\n";
    look("a.csv", head + "2026-03-12T19:00:00Z,62,1\n2026-03-12T20:00:00Z,62,1\n");
    choose(view().choices()->layoutChoices()->header(), "line 2: time · Room (F) · Lid");
    ASSERT_TRUE(page().canImport()) << said();
    page().importButton()->click();
    wait();
    look("b.csv", head + "2026-03-12T21:00:00Z,62,1\n2026-03-12T22:00:00Z,62,1\n");
    EXPECT_EQ(view().choices()->layoutChoices()->header()->currentText(),
              "line 2: time · Room (F) · Lid");
    EXPECT_TRUE(page().canImport()) << said();
    EXPECT_EQ(count(RowOutcome::added), "2 new");
}

TEST_F(ImportTest, AValueThatCannotBeReadIsNamedAndNoTimeIsAskedFor)
{
    look("units.csv", "time,Room\n2026-03-12T19:00:00Z,62 warm\n2026-03-12T20:00:00Z,62 warm\n");
    EXPECT_FALSE(page().canImport());
    EXPECT_EQ(view().heads()->box(0)->currentText(), "time");
    EXPECT_TRUE(page().message().contains(
        "No value could be read. The first: line 2, column Room: 62 warm is not a number."))
        << said();
    EXPECT_FALSE(page().message().contains("nothing new")) << said();
}

} // namespace holdband::ui::test

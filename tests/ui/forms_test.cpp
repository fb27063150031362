// Text typed into the small fields of the dialogs.
#include "core/text/times.h"
#include "tests/ui/form_samples.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/quantity_field.h"
#include "ui/forms/save_row.h"
#include "ui/words/words.h"

#include <QAbstractItemModelTester>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace holdband::ui {

namespace {

UnitFormat metric()
{
    return {UnitSystem::metric, "EUR", *Zone::named("Europe/Berlin"), ','};
}

double typed(Quantity quantity, const char* text, const UnitFormat& format)
{
    const auto read = readTyped(quantity, QString::fromUtf8(text), format);
    EXPECT_TRUE(read) << (read ? "" : read.error().sentence());
    return read ? *read : -1e9;
}

std::string refusal(Quantity quantity, const char* text, const UnitFormat& format)
{
    const auto read = readTyped(quantity, QString::fromUtf8(text), format);
    EXPECT_FALSE(read) << text;
    return read ? std::string() : read.error().sentence();
}

std::vector<EditColumn> twoColumns()
{
    std::vector<EditColumn> columns{{"Part"}, {"Price", "1", {}, true}};
    columns[1].refusal = [](const QStringList& row) {
        bool number = false;
        row[1].toDouble(&number);
        return number ? QString() : QString("this is not a number");
    };
    return columns;
}

} // namespace

TEST(TypedQuantity, AcceptsTheLogbooksUnitsAndThoseWrittenAfterTheNumber)
{
    EXPECT_DOUBLE_EQ(typed(Quantity::temperature, "68", us()), 20.0);
    EXPECT_DOUBLE_EQ(typed(Quantity::temperature, "20 C", us()), 20.0);
    EXPECT_DOUBLE_EQ(typed(Quantity::temperature, "18,5", metric()), 18.5);
    EXPECT_DOUBLE_EQ(typed(Quantity::temperature, "50 °F", metric()), 10.0);
    EXPECT_DOUBLE_EQ(typed(Quantity::difference, "1.8", us()), 1.0);
    EXPECT_DOUBLE_EQ(typed(Quantity::difference, "1 K", us()), 1.0);
    EXPECT_DOUBLE_EQ(typed(Quantity::hours, "36", us()), 36.0);
    EXPECT_DOUBLE_EQ(typed(Quantity::hours, "2.5 d", us()), 60.0);
    EXPECT_DOUBLE_EQ(typed(Quantity::hours, "90 min", us()), 1.5);
    // 1 US gal = 3.785411784 L exactly (NIST Handbook 44).
    EXPECT_DOUBLE_EQ(typed(Quantity::volume, "5", us()), 18.92705892);
    EXPECT_DOUBLE_EQ(typed(Quantity::volume, "19 L", us()), 19.0);
    EXPECT_DOUBLE_EQ(typed(Quantity::power, "1.5 kW", us()), 1500.0);
    EXPECT_DOUBLE_EQ(typed(Quantity::money, "$21.50", us()), 21.5);
    EXPECT_DOUBLE_EQ(typed(Quantity::percent, "2", us()), 0.02);
    EXPECT_DOUBLE_EQ(typed(Quantity::temperature, "\u22124", us()), -20.0);
}

TEST(TypedQuantity, RefusesTextsThatAreNoQuantity)
{
    EXPECT_EQ(refusal(Quantity::temperature, "warm", us()), "\"warm\" is not a number.");
    EXPECT_EQ(refusal(Quantity::hours, "5 gal", us()),
              "\"gal\" is not a unit for this; write it in h.");
    EXPECT_NE(refusal(Quantity::power, "1,234", us()).find("two ways"), std::string::npos);
    refusal(Quantity::temperature, "nan", us());
    refusal(Quantity::temperature, "inf", us());
    refusal(Quantity::temperature, "1e400", us());
    refusal(Quantity::number, "3 m", us());
}

TEST(TypedQuantity, WritesAsAPersonWould)
{
    EXPECT_EQ(typedText(Quantity::temperature, 20.0, us()), "68");
    EXPECT_EQ(typedText(Quantity::temperature, 18.5, metric()), "18,5");
    EXPECT_EQ(typedText(Quantity::difference, 3.0 / 1.8, us()), "3");
    EXPECT_EQ(typedText(Quantity::hours, 36.0, us()), "36 h");
    EXPECT_EQ(typedText(Quantity::hours, 240.0, us()), "10 d");
    EXPECT_EQ(typedText(Quantity::volume, 18.92705892, us()), "5");
    EXPECT_EQ(typedText(Quantity::gravity, 1.05, metric()), "1,050");
    EXPECT_EQ(typedText(Quantity::money, 21.5, us()), "21.50");
    EXPECT_EQ(typedText(Quantity::money, 0.1234, us()), "0.1234");
    EXPECT_EQ(typedText(Quantity::percent, 0.02, us()), "2");
}

TEST(QuantityField, LeavesTheTypedTextAndNamesWhatIsWrong)
{
    QuantityField field(Quantity::hours, "Hours");
    field.setFormat(us());
    field.setRule(aboveZero);
    field.show();
    QTest::keyClicks(field.edit(), "-3");
    EXPECT_FALSE(field.number());
    EXPECT_EQ(field.edit()->text(), "-3");
    EXPECT_EQ(field.problem(), "It must be above 0.");
    QTest::keyClick(field.edit(), Qt::Key_Backspace);
    EXPECT_TRUE(field.problem().isEmpty());
    field.edit()->clear();
    EXPECT_FALSE(field.number());
    field.setOptional(true);
    const auto empty = field.number();
    ASSERT_TRUE(empty);
    EXPECT_FALSE(empty->has_value());
}

TEST(QuantityField, AnUntouchedValueStaysTheSameToTheBit)
{
    QuantityField field(Quantity::temperature, "Target");
    field.setFormat(us());
    const Temperature odd = Temperature::celsius(18.123456789);
    field.set(std::optional(odd));
    EXPECT_EQ(field.edit()->text(), "64.62");
    EXPECT_EQ(*field.value<Temperature>(), odd);
    field.edit()->setText("64.6");
    EXPECT_EQ(*field.value<Temperature>(), Temperature::fahrenheit(64.6));
}

TEST(InstantField, AcceptsLocalTimesAndNow)
{
    InstantField field("Pitched");
    field.setZone(us().zone);
    const Instant now = *parseRfc3339("2026-03-13T00:12:34.5Z");
    field.setClock([&] { return now; });
    field.nowButton()->click();
    EXPECT_EQ(field.edit()->text(), "2026-03-12 18:12");
    EXPECT_EQ(*field.instant(), now);
    field.edit()->setText("2026-03-12 17:00");
    EXPECT_EQ(*field.instant(), *parseRfc3339("2026-03-12T23:00:00Z"));
    field.edit()->setText("yesterday");
    EXPECT_FALSE(field.instant());
    EXPECT_TRUE(field.problem().contains("\"yesterday\" is not a time"));
}

TEST(InstantField, AsksWhichOfADoubledHour)
{
    InstantField field("Pitched");
    field.setZone(us().zone);
    field.show();
    // Clocks went back on 1 November 2026 at 02:00 (tz database, America/Denver).
    QTest::keyClicks(field.edit(), "2026-11-01 01:30");
    EXPECT_FALSE(field.instant());
    ASSERT_TRUE(field.firstReading()->isVisible());
    EXPECT_EQ(field.secondReading()->text(), "It is 2026-11-01 01:30:00-07:00");
    field.secondReading()->click();
    EXPECT_EQ(*field.instant(), *parseRfc3339("2026-11-01T08:30:00Z"));
    EXPECT_FALSE(field.firstReading()->isVisible());
    // The text shown for such an instant is read back as the same instant.
    EXPECT_EQ(typedTime(*parseRfc3339("2026-11-01T08:30:00Z"), us().zone),
              "2026-11-01 01:30:00-07:00");
}

TEST(InstantField, AsksAboutAMissingHour)
{
    InstantField field("Pitched");
    field.setZone(us().zone);
    field.show();
    QTest::keyClicks(field.edit(), "2026-03-08 02:30");
    EXPECT_FALSE(field.instant());
    EXPECT_TRUE(field.firstReading()->isVisible());
    EXPECT_TRUE(field.problem().contains("clocks went forward"));
}

TEST(EditTableModel, PassesTheTesterThroughAllItsChanges)
{
    EditTableModel model(twoColumns());
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows({{{"pump", "21.5"}, 0}, {{"hose", "4"}, 1}, {{"clamp", "2"}, 2}});
    model.moveTo(0, 2);
    EXPECT_EQ(model.rows()[2].cells[0], "pump");
    EXPECT_EQ(model.rows()[2].origin, 0);
    model.moveTo(2, 0);
    EXPECT_EQ(model.rows()[0].cells[0], "pump");
    model.moveTo(0, 5);
    EXPECT_EQ(model.rows()[0].cells[0], "pump");
    model.insertBlank(1);
    EXPECT_EQ(model.rows()[1].cells, (QStringList{"", "1"}));
    EXPECT_EQ(model.rows()[1].origin, -1);
    EXPECT_TRUE(model.setData(model.index(1, 1), "dear", Qt::EditRole));
    EXPECT_EQ(model.firstRefused(), model.index(1, 1));
    EXPECT_EQ(model.rows()[1].cells[1], "dear") << "what was typed stays";
    model.removeAt(1);
    EXPECT_FALSE(model.firstRefused().isValid());
    model.setRows({});
    EXPECT_EQ(model.rowCount(), 0);
}

TEST(EditTable, WorksByKeyboard)
{
    EditTable table("part", twoColumns(), 0);
    table.show();
    table.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&table));
    QTableView* view = table.view();
    view->setFocus();
    QTest::keyClick(view, Qt::Key_Insert);
    const auto type = [&](const char* text) {
        QTest::keyClick(view, text[0]);
        auto* line = view->findChild<QLineEdit*>();
        ASSERT_TRUE(line);
        QTest::keyClicks(line, text + 1);
        QTest::keyClick(line, Qt::Key_Return);
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete); // the line is gone
    };
    type("pump");
    EXPECT_EQ(view->currentIndex(), table.model()->index(0, 1)) << "Enter moves on by one cell";
    type("x1");
    EXPECT_EQ(table.model()->rows()[0].cells, (QStringList{"pump", "x1"}));
    EXPECT_FALSE(table.check());
    EXPECT_EQ(table.problem(), "Row 1, Price: this is not a number.");
    EXPECT_EQ(view->currentIndex(), table.model()->index(0, 1));
    type("21.5");
    EXPECT_TRUE(table.check());
    QTest::keyClick(view, Qt::Key_Insert);
    type("hose");
    QTest::keyClick(view, Qt::Key_Up, Qt::AltModifier);
    EXPECT_EQ(table.model()->rows()[0].cells[0], "hose");
    QTest::keyClick(view, Qt::Key_Delete, Qt::ControlModifier);
    ASSERT_EQ(table.model()->rowCount(), 1);
    EXPECT_EQ(table.model()->rows()[0].cells[0], "pump");
}

TEST(EditTable, ANewRowHasRoomToTypeATime)
{
    std::vector<EditColumn> columns{{"From"}, {"What"}};
    columns[0].sample = "2026-03-07 18:12";
    EditTable table("move", columns, 1);
    table.resize(500, 200);
    table.show();
    table.addRow();
    QCoreApplication::processEvents();
    EXPECT_GE(table.view()->columnWidth(0),
              table.fontMetrics().horizontalAdvance("2026-03-07 18:12") + 10);
}

TEST(SaveRow, AsksOnceAndTreatsTheSecondPressAsYes)
{
    SaveRow row("Save");
    EXPECT_TRUE(row.agreed({}));
    EXPECT_FALSE(row.agreed({"Is 20 °F meant?"}));
    EXPECT_EQ(row.words(), "Is 20 °F meant?");
    EXPECT_EQ(row.saveButton()->text(), "Yes, save");
    EXPECT_TRUE(row.agreed({"Is 20 °F meant?"}));
    EXPECT_FALSE(row.agreed({"Is 20 °F meant?"}));
    EXPECT_FALSE(row.agreed({"Is 10 °F meant?"})) << "another question";
    EXPECT_FALSE(row.leaveAgreed());
    EXPECT_TRUE(row.leaveAgreed());
}

TEST(NonBreakingUnits, NumbersAndTheirUnitsStayOnOneLine)
{
    const QString nb(QChar(0xa0));
    EXPECT_EQ(withNoBreakSpaces("Settling, 13 h 49 min + 5 min, is not judged."),
              "Settling, 13" + nb + "h" + nb + "49" + nb + "min + 5" + nb + "min, is not judged.");
    EXPECT_EQ(withNoBreakSpaces("24.3 days held (0.6 %), 3 °F past"),
              "24.3" + nb + "days held (0.6" + nb + "%), 3" + nb + "°F past");
    EXPECT_EQ(withNoBreakSpaces("15.0 kWh (13.4 – 16.7) – late"),
              "15.0\u00a0kWh (13.4\u00a0–\u00a016.7) – late");
    EXPECT_EQ(withNoBreakSpaces("2 stages, 3 hops"), "2 stages, 3 hops");
}

} // namespace holdband::ui

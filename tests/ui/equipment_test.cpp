// The equipment dialogs: setups, meters, sensors, prices; retired rather than deleted.
#include "tests/ui/dialog_test.h"
#include "tests/ui/form_samples.h"

#include "core/store/records/equipment.h"
#include "core/text/times.h"
#include "ui/equipment/equipment_actions.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/equipment_reading.h"
#include "ui/equipment/ice_panel.h"
#include "ui/equipment/list_card.h"
#include "ui/equipment/meter_dialog.h"
#include "ui/equipment/move_rows.h"
#include "ui/equipment/offset_rows.h"
#include "ui/equipment/part_rows.h"
#include "ui/equipment/prices_dialog.h"
#include "ui/equipment/sensor_dialog.h"
#include "ui/equipment/setup_card.h"
#include "ui/equipment/setup_dialog.h"
#include "ui/equipment/tariff_page.h"
#include "ui/equipment/window_rows.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/instant_field.h"
#include "ui/forms/quantity_field.h"
#include "ui/forms/save_row.h"

#include <QAbstractItemModelTester>
#include <QCheckBox>
#include <QComboBox>
#include <QPushButton>
#include <QRadioButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTabWidget>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

} // namespace

class EquipmentTest : public DialogTest {
protected:
    Equipment equipment() const
    {
        const auto file = store::LogbookFile::open(logbook.toStdString(), store::Access::read);
        EXPECT_TRUE(file);
        const auto read = readEquipment(**file);
        EXPECT_TRUE(read) << (read ? "" : read.error().sentence());
        return *read;
    }
    template <typename Dialog>
    std::unique_ptr<Dialog> opened(Dialog* dialog)
    {
        dialog->setAttribute(Qt::WA_DeleteOnClose, false);
        dialog->open();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(dialog));
        return std::unique_ptr<Dialog>(dialog);
    }
    void press(FormDialog& dialog)
    {
        dialog.foot()->saveButton()->click();
        settle();
    }
    static void fillRow(EditTable* table, int row, const QStringList& cells)
    {
        for (int column = 0; column < cells.size(); ++column)
            table->model()->setCell(row, column, cells[column]);
    }
};

TEST_F(EquipmentTest, ASetupIsAddedWithPartsAndTheirSum)
{
    const auto dialog = opened(new SetupDialog(session, us(), {}));
    dialog->name()->setText("Chest");
    dialog->kind()->setText("cabinet");
    dialog->vessels()->setValue(2);
    dialog->power()->edit()->setText("0.11 kW");
    dialog->parts()->addRow();
    fillRow(dialog->parts(), 0, {"freezer", "1", "$189.99"});
    dialog->parts()->addRow();
    fillRow(dialog->parts(), 1, {"controller", "2", "35"});
    EXPECT_EQ(dialog->sumText(), "All parts: $259.99");
    EXPECT_EQ(dialog->ratings()->model()->rows()[0].cells[0], "build effort");
    dialog->ratings()->model()->setCell(3, 1, "6");
    press(*dialog);
    EXPECT_EQ(dialog->foot()->words(), "A rating must be from 1 to 5.");
    EXPECT_EQ(dialog->ratings()->model()->rows()[3].cells[1], "6");
    dialog->ratings()->model()->setCell(3, 1, "4");
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible()) << dialog->foot()->words().toStdString();
    const holdband::Setup made = equipment().setups.back();
    EXPECT_EQ(made.name, "Chest");
    EXPECT_EQ(made.vessels, 2);
    EXPECT_EQ(made.ratedPower, Power::watts(110));
    EXPECT_THAT(made.parts,
                testing::ElementsAre(Part{"freezer", 1, 189.99}, Part{"controller", 2, 35}));
    EXPECT_EQ(made.ratings, (std::map<std::string, double>{{"noise", 4}}));
}

TEST_F(EquipmentTest, UntouchedFieldsOfASetupAreUnchanged)
{
    holdband::Setup odd = equipment().setups[0];
    odd.parts = {{"hose, metre", 2.0 / 3.0, 1.0 / 3.0}};
    odd.ratedPower = Power::watts(259.87654321);
    const auto dialog = opened(new SetupDialog(session, us(), odd));
    dialog->name()->setText("Long loop");
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible()) << dialog->foot()->words().toStdString();
    odd.name = "Long loop";
    EXPECT_EQ(equipment().setups[0], odd);
    EXPECT_EQ(batch("Pale 1").setup, "Long loop");
}

TEST_F(EquipmentTest, NamesThatDifferOnlyInCaseAreRefusedAndStay)
{
    const auto dialog = opened(new SetupDialog(session, us(), {}));
    dialog->name()->setText("LOOP");
    press(*dialog);
    EXPECT_TRUE(dialog->foot()->words().contains("differ only in case"));
    EXPECT_EQ(dialog->name()->text(), "LOOP");
    EXPECT_EQ(equipment().setups.size(), 2u);
}

TEST_F(EquipmentTest, AMeterMoves)
{
    const auto dialog = opened(new MeterDialog(session, equipment(), equipment().meters[0]));
    dialog->accuracy()->edit()->setText("1");
    dialog->top()->edit()->setText("10000");
    dialog->moves()->addRow();
    fillRow(dialog->moves(), 0, {"2026-03-10 12:00", "Cabinet"});
    dialog->moves()->addRow();
    fillRow(dialog->moves(), 1, {"2026-03-09 19:00", "not in use"});
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible()) << dialog->foot()->words().toStdString();
    const Meter meter = equipment().meters[0];
    EXPECT_DOUBLE_EQ(meter.accuracy.value(), 0.01);
    EXPECT_EQ(meter.rollsOverAt, Energy::kilowattHours(10000));
    EXPECT_THAT(meter.moves,
                testing::ElementsAre(MeterMove{denverTime("2026-03-09 19:00"), std::nullopt},
                                     MeterMove{denverTime("2026-03-10 12:00"), "Cabinet"}));
    EXPECT_EQ(metersTable(equipment()).rows[0][1].text, "Loop → not in use → Cabinet");
}

TEST_F(EquipmentTest, AnIcePointBecomesAnOffsetWithItsUncertainty)
{
    const auto dialog = opened(new SensorDialog(session, equipment(), equipment().sensors[0]));
    dialog->placement()->setEditText("taped to the wall");
    QTest::keyClicks(dialog->ice()->readings(), "32.4 32.5");
    EXPECT_TRUE(dialog->ice()->words().contains("at least three readings"));
    QTest::keyClicks(dialog->ice()->readings(), " 32.6");
    EXPECT_TRUE(dialog->ice()->words().contains("the offset is -0.5 °F"))
        << dialog->ice()->words().toStdString();
    dialog->ice()->useButton()->click();
    ASSERT_EQ(dialog->offsets()->model()->rowCount(), 1);
    EXPECT_EQ(dialog->offsets()->model()->rows()[0].cells[offsetAdd], "-0.5");
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible()) << dialog->foot()->words().toStdString();
    const Sensor sensor = equipment().sensors[0];
    EXPECT_EQ(sensor.placement, "taped to the wall");
    ASSERT_EQ(sensor.offsets.size(), 1u);
    EXPECT_NEAR(sensor.offsets[0].add.fahrenheitDegrees(), -0.5, 1e-9);
    // t(0.975; 2) = 4.303 · 0.1 °F / √3 = 0.2484; 2 · 0.1 / √12 = 0.0577; 2 · 0.18 / √3 = 0.2078
    EXPECT_NEAR(sensor.offsets[0].doubt->fahrenheitDegrees(), 0.33, 0.005);
    EXPECT_EQ(sensor.offsets[0].why, "ice point, 3 readings");
    EXPECT_EQ(std::chrono::floor<std::chrono::minutes>(now()), sensor.offsets[0].from);
}

TEST_F(EquipmentTest, AnIcePointHoldsForEarlierReadingsTooIfChosen)
{
    auto dialog = opened(new SensorDialog(session, equipment(), equipment().sensors[0]));
    settle();
    ASSERT_TRUE(dialog->ice()->alsoEarlier()->isVisible());
    EXPECT_TRUE(dialog->ice()->fromNow()->isChecked());
    EXPECT_EQ(dialog->ice()->alsoEarlier()->text(),
              "Also for all &earlier readings, since 7 Mar 2026");
    dialog->ice()->alsoEarlier()->click();
    QTest::keyClicks(dialog->ice()->readings(), "32.4 32.5 32.6");
    dialog->ice()->useButton()->click();
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible()) << dialog->foot()->words().toStdString();
    ASSERT_EQ(equipment().sensors[0].offsets.size(), 1u);
    EXPECT_EQ(equipment().sensors[0].offsets[0].from, denverTime("2026-03-07 18:00"));
}

TEST_F(EquipmentTest, AnIcePointHoldsSinceTheLastCheckIfChosen)
{
    const Instant check = denverTime("2026-03-09 12:00"); // a reading is at this time
    Sensor sensor = equipment().sensors[0];
    sensor.offsets = {{check, TemperatureDifference::kelvins(0.1), {}, "ice point"}};
    auto dialog = opened(new SensorDialog(session, equipment(), sensor));
    settle();
    EXPECT_EQ(dialog->ice()->alsoEarlier()->text(),
              "Also for &earlier readings, since the last check on 9 Mar 2026");
    dialog->ice()->alsoEarlier()->click();
    QTest::keyClicks(dialog->ice()->readings(), "32.4 32.5 32.6");
    dialog->ice()->useButton()->click();
    press(*dialog);
    const std::vector<Offset> offsets = equipment().sensors[0].offsets;
    ASSERT_EQ(offsets.size(), 2u) << "the last check stays on record";
    EXPECT_EQ(offsets[0].from, check);
    EXPECT_EQ(offsets[1].from, denverTime("2026-03-09 12:30")) << "the first reading after it";
}

TEST_F(EquipmentTest, ANewSensorHasNoEarlierReadingsToChoose)
{
    const auto dialog = opened(new SensorDialog(session, equipment(), Sensor{}));
    settle();
    EXPECT_FALSE(dialog->ice()->alsoEarlier()->isVisible());
    EXPECT_FALSE(dialog->ice()->fromNow()->isVisible());
}

TEST_F(EquipmentTest, ASensorReadByEyeIsAdded)
{
    const auto dialog = opened(new SensorDialog(session, equipment(), {}));
    dialog->name()->setText("Glass thermometer");
    dialog->byHand()->setChecked(true);
    dialog->accuracy()->edit()->setText("0");
    press(*dialog);
    EXPECT_EQ(dialog->foot()->words(), "Accuracy: it must be above 0.");
    dialog->accuracy()->edit()->setText("0.9");
    press(*dialog);
    const Sensor sensor = equipment().sensors.back();
    EXPECT_TRUE(sensor.readByHand);
    EXPECT_EQ(sensor.accuracy, TemperatureDifference::fahrenheitDegrees(0.9));
}

TEST_F(EquipmentTest, AHydrometerIsNotReadByEyeInTheRounds)
{
    const auto dialog = opened(new SensorDialog(session, equipment(), {}));
    dialog->byHand()->setChecked(true);
    dialog->reads()->setCurrentText("gravity");
    EXPECT_FALSE(dialog->byHand()->isEnabled());
    dialog->name()->setText("Hydrometer");
    press(*dialog);
    EXPECT_FALSE(equipment().sensors.back().readByHand);
}

TEST_F(EquipmentTest, PricesHaveWindowsAndDates)
{
    const auto dialog = opened(new PricesDialog(session, equipment()));
    dialog->page(0)->windows()->addRow();
    fillRow(dialog->page(0)->windows(), 0, {"mon - fri", "16:00", "21:00", "0.31"});
    dialog->addButton()->click();
    ASSERT_EQ(dialog->tabs()->count(), 2);
    dialog->page(1)->fromField()->edit()->setText("2026-04-01 00:00");
    dialog->page(1)->price()->edit()->setText("0.17");
    dialog->page(1)->windows()->model()->setRows({});
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible()) << dialog->foot()->words().toStdString();
    const LogbookSettings settings = equipment().settings;
    ASSERT_EQ(settings.tariff.windows.size(), 1u);
    EXPECT_EQ(settings.tariff.windows[0],
              (TariffWindow{{true, true, true, true, true, false, false}, 960, 1260, 0.31}));
    EXPECT_THAT(settings.tariffChanges,
                testing::ElementsAre(TariffChange{denverTime("2026-04-01 00:00"), {0.17, {}}}));
    EXPECT_EQ(settings.rounds, usualRounds()) << "nothing else changed";
    const TableText table = pricesTable(equipment());
    EXPECT_EQ(table.rows[0][2].text, "mon – fri 16:00 – 21:00: 0.31");
    EXPECT_EQ(table.rows[1][0].text, "from 1 Apr 2026 00:00");
}

TEST_F(EquipmentTest, APriceThatCannotBeReadIsRefusedAtItsPlace)
{
    const auto dialog = opened(new PricesDialog(session, equipment()));
    dialog->page(0)->price()->edit()->setText("cheap");
    press(*dialog);
    EXPECT_TRUE(dialog->foot()->words().contains("\"cheap\" is not a number"));
    EXPECT_EQ(dialog->page(0)->price()->edit()->text(), "cheap");
    dialog->page(0)->price()->edit()->clear();
    dialog->page(0)->windows()->addRow();
    fillRow(dialog->page(0)->windows(), 0, {"sat sun", "00:00", "24:00", "0.10"});
    press(*dialog);
    EXPECT_TRUE(dialog->foot()->words().startsWith("Outside all windows there is no price"));
}

TEST_F(EquipmentTest, WhatIsInUseIsRetiredAndNotRemoved)
{
    EquipmentPage page(session);
    const QSignalSpy failed(&page, &EquipmentPage::failed);
    QObject::connect(&session, &Session::changed, &page, &EquipmentPage::refresh);
    page.refresh();
    settle();
    ASSERT_EQ(page.setupCards().size(), 2u);
    page.setupCards()[0]->removeButton()->click();
    settle();
    ASSERT_EQ(failed.size(), 1);
    EXPECT_TRUE(failed[0][0].toString().contains("retire it instead"))
        << failed[0][0].toString().toStdString();
    page.setupCards()[0]->retireButton()->click();
    settle();
    EXPECT_EQ(equipment().setups[0].retired, now());
    EXPECT_EQ(page.setupCards()[0]->retireButton()->text(), "Restore");
    page.setupCards()[0]->retireButton()->click();
    settle();
    EXPECT_EQ(equipment().setups[0].retired, std::nullopt);
    page.meters()->table()->setCurrentIndex(page.meters()->model()->index(0, 0));
    page.meters()->removeButton()->click();
    settle();
    EXPECT_EQ(failed.size(), 2);
    page.meters()->retireButton()->click();
    settle();
    EXPECT_EQ(equipment().meters[0].retired, now());
    EXPECT_EQ(page.meters()->model()->index(0, 0).data(), "Loop meter · retired 12 Mar 2026");
}

TEST_F(EquipmentTest, WhatIsNotInUseIsRemoved)
{
    const auto dialog = opened(new SetupDialog(session, us(), {}));
    dialog->name()->setText("Chest");
    press(*dialog);
    EquipmentPage page(session);
    page.refresh();
    settle();
    ASSERT_EQ(page.setupCards().size(), 3u);
    page.setupCards()[2]->removeButton()->click();
    settle();
    EXPECT_EQ(equipment().setups.size(), 2u);
}

TEST_F(EquipmentTest, EnterOnARowEditsIt)
{
    EquipmentPage page(session);
    page.refresh();
    settle();
    page.sensors()->table()->setCurrentIndex(page.sensors()->model()->index(1, 0));
    QTest::keyClick(page.sensors()->table(), Qt::Key_Return);
    auto* dialog = page.findChild<SensorDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->name()->text(), "Cabinet beer");
}

TEST_F(EquipmentTest, LongNamesDoNotWidenThePage)
{
    EquipmentPage page(session);
    page.refresh();
    settle();
    const int before = page.findChild<QWidget*>("inner")->minimumSizeHint().width();
    const QString longName(180, 'W');
    for (const bool ofSensor : {false, true}) {
        FormDialog* dialog = nullptr;
        if (ofSensor)
            dialog = new SensorDialog(session, equipment(), equipment().sensors[0]);
        else
            dialog = new SetupDialog(session, us(), equipment().setups[0]);
        dialog->findChild<QLineEdit*>()->setText(longName);
        press(*dialog);
    }
    EXPECT_EQ(equipment().setups[0].name, longName.toStdString());
    page.refresh();
    settle();
    EXPECT_EQ(page.setupCards()[0]->accessibleName(), longName);
    EXPECT_LE(page.findChild<QWidget*>("inner")->minimumSizeHint().width(), before + 500);
    EXPECT_EQ(page.sensors()->model()->index(0, 0).data(Qt::ToolTipRole), longName);
    EXPECT_EQ(page.sensors()->model()->index(0, 0).data().toString().size(), 26);
}

TEST_F(EquipmentTest, ReadOnlyOffersNothing)
{
    Session second([] { return now(); });
    ASSERT_TRUE(second.open(logbook));
    ASSERT_TRUE(second.readOnly());
    EquipmentPage page(second);
    page.refresh();
    EXPECT_TRUE(QTest::qWaitFor([&] { return second.idle(); }, 20'000));
    ASSERT_EQ(page.setupCards().size(), 2u);
    EXPECT_FALSE(page.setupCards()[0]->editButton()->isEnabled());
    EXPECT_FALSE(page.addSetupButton()->isEnabled());
    EXPECT_FALSE(page.meters()->addButton()->isEnabled());
    EXPECT_FALSE(page.meters()->editButton()->isEnabled());
    EXPECT_FALSE(page.pricesButton()->isEnabled());
}

TEST(WindowRows, ReadsDaysAndTimes)
{
    const std::array<bool, 7> working{true, true, true, true, true, false, false};
    const std::array<bool, 7> weekend{false, false, false, false, false, true, true};
    EXPECT_EQ(typedDays("Mon – Fri"), working);
    EXPECT_EQ(typedDays("sat, sun"), weekend);
    EXPECT_EQ(typedDays("saturday sunday"), weekend);
    EXPECT_EQ(typedDays("sat-mon"),
              (std::array<bool, 7>{true, false, false, false, false, true, true}));
    EXPECT_EQ(daysText(*typedDays("every day")), "every day");
    EXPECT_EQ(daysText(weekend), "sat sun");
    EXPECT_EQ(typedDays("someday"), std::nullopt);
    EXPECT_EQ(typedDays(""), std::nullopt);
    EXPECT_EQ(typedDays("mon-tue-wed"), std::nullopt);
    EXPECT_EQ(typedMinute("6:30"), 390);
    EXPECT_EQ(typedMinute("24:00"), 1440);
    EXPECT_EQ(typedMinute("24:01"), std::nullopt);
    EXPECT_EQ(typedMinute("12:60"), std::nullopt);
    EXPECT_EQ(typedMinute("noon"), std::nullopt);
}

TEST(OffsetRows, ReadsReadingsInThePersonsFormat)
{
    const UnitFormat german{UnitSystem::metric, "EUR", *Zone::named("Europe/Berlin"), ','};
    const auto three = typedReadings("0,1 0,2; 0,3", german);
    ASSERT_TRUE(three);
    EXPECT_THAT(*three, testing::ElementsAre(Temperature::celsius(0.1), Temperature::celsius(0.2),
                                             Temperature::celsius(0.3)));
    const auto listed = typedReadings("32.1, 32.2", us());
    ASSERT_TRUE(listed);
    EXPECT_EQ(listed->size(), 2u);
    EXPECT_FALSE(typedReadings("32.1 cold", us()));
}

TEST(EditLists, PassTheModelTester)
{
    using Tester = QAbstractItemModelTester;
    for (const auto& columns : {partColumns(us()), ratingColumns(us()), offsetColumns(us()),
                                windowColumns(us()), moveColumns({}, us())}) {
        EditTableModel model(columns);
        const Tester tester(&model, Tester::FailureReportingMode::Fatal);
        model.insertBlank(0);
        model.insertBlank(1);
        model.setCell(0, 0, "x");
        model.moveTo(0, 1);
        model.removeAt(0);
        EXPECT_EQ(model.rowCount(), 1);
    }
}

} // namespace holdband::ui::test

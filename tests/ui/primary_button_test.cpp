// One primary button a page and a dialog, by what is painted: the only filled one.
#include "tests/ui/dialog_test.h"
#include "tests/ui/form_samples.h"
#include "ui/equipment/equipment_reading.h"
#include "ui/equipment/meter_dialog.h"
#include "ui/equipment/prices_dialog.h"
#include "ui/equipment/round_windows_dialog.h"
#include "ui/equipment/sensor_dialog.h"
#include "ui/equipment/setup_dialog.h"
#include "ui/equipment/units_dialog.h"
#include "ui/forecast/drawn_plan_dialog.h"
#include "ui/imports/new_target_dialog.h"
#include "ui/plans/batch_dialog.h"
#include "ui/plans/new_batch_dialog.h"
#include "ui/plans/plan_dialog.h"
#include "ui/plans/step_dialog.h"
#include "ui/record/backups_dialog.h"
#include "ui/record/history_dialog.h"
#include "ui/record/journal_dialog.h"
#include "ui/record/note_dialog.h"
#include "ui/record/readings_dialog.h"
#include "ui/report/report_dialog.h"
#include "ui/theme/theme.h"
#include "ui/window/help_dialog.h"
#include "ui/window/page_row.h"
#include "ui/window/pages.h"

#include <QAbstractButton>
#include <QPushButton>

namespace holdband::ui::test {

namespace {

/// Visible buttons filled with the colour of the primary one.
QStringList filledButtons(const QWidget& within)
{
    QStringList filled;
    for (auto* button : within.findChildren<QPushButton*>()) {
        if (!button->isVisible() || button->width() < 12)
            continue;
        const QImage image = button->grab().toImage();
        const QPoint inside(static_cast<int>(5 * image.devicePixelRatio()), image.height() / 2);
        if (image.pixelColor(inside) == coloursOf(*button).strong)
            filled << button->text();
    }
    return filled;
}

class PrimaryButtons : public DialogTest {
protected:
    void expectOneAtMost(QDialog* dialog, int least = 0)
    {
        dialog->setAttribute(Qt::WA_DeleteOnClose, false);
        const std::unique_ptr<QDialog> owned(dialog);
        SCOPED_TRACE(dialog->windowTitle().toStdString());
        dialog->show();
        settle();
        const QStringList filled = filledButtons(*dialog);
        EXPECT_LE(filled.size(), 1) << filled.join(u'|').toStdString();
        EXPECT_GE(filled.size(), least);
    }

    Equipment equipment() const
    {
        const auto file = store::LogbookFile::open(logbook.toStdString(), store::Access::read);
        EXPECT_TRUE(file);
        const auto read = readEquipment(**file);
        EXPECT_TRUE(read);
        return *read;
    }
};

TEST_F(PrimaryButtons, AreOneInEachFormOfEquipment)
{
    const Equipment all = equipment();
    expectOneAtMost(new SetupDialog(session, us(), all.setups.at(0)), 1);
    expectOneAtMost(new MeterDialog(session, all, all.meters.at(0)), 1);
    expectOneAtMost(new SensorDialog(session, all, all.sensors.at(0)), 1);
    expectOneAtMost(new PricesDialog(session, all), 1);
    expectOneAtMost(new RoundWindowsDialog(session, all.settings), 1);
    expectOneAtMost(new UnitsDialog(session, all.settings), 1);
}

TEST_F(PrimaryButtons, AreOneInEachFormOfABatch)
{
    const BatchFormData all = world();
    expectOneAtMost(new BatchDialog(session, all, all.batches.at(0)), 1);
    expectOneAtMost(new NewBatchDialog(session, all, {}), 1);
    expectOneAtMost(new PlanDialog(session, all, {}), 1);
    expectOneAtMost(
        new StepDialog(session, {}, {}, us(), {}, [](Instant) -> Result<Step> { return Step{}; }),
        1);
    expectOneAtMost(new DrawnPlanDialog({}, us(), nullptr), 1);
    expectOneAtMost(new ReportDialog(session, {}), 1);
}

TEST_F(PrimaryButtons, AreOneAtMostInEachDialogOfTheRecord)
{
    expectOneAtMost(new HelpDialog);
    expectOneAtMost(new HistoryDialog(session));
    expectOneAtMost(new JournalDialog(session, {}));
    expectOneAtMost(new NoteDialog(session, {}), 1);
    expectOneAtMost(new ReadingsDialog(session));
    expectOneAtMost(new BackupsDialog(logbook, {}));
    expectOneAtMost(new NewTargetDialog(session, NewTargetDialog::Kind::sensor, {}), 1);
    expectOneAtMost(new NewTargetDialog(session, NewTargetDialog::Kind::meter, {}), 1);
}

TEST_F(PrimaryButtons, AreOneAtMostOnEachPage)
{
    const auto window = openWindow(makeLogbook(QStringLiteral("pages.holdband")));
    for (int i = 0; i < 3; ++i)
        WindowTest::settle(*window);
    for (const PageId page : {PageId::rounds, PageId::run, PageId::sideBySide, PageId::nextBatch,
                              PageId::equipment, PageId::imports}) {
        window->setPage(page);
        WindowTest::settle(*window);
        const QStringList filled = filledButtons(*window);
        EXPECT_LE(filled.size(), 1) << filled.join(u'|').toStdString();
    }
}

TEST_F(PrimaryButtons, LoseTheirFillWhereDisabled)
{
    QWidget page;
    QPushButton button(QStringLiteral("Save"), &page);
    setRole(&button, "main");
    button.resize(120, 30);
    page.resize(200, 60);
    page.show();
    EXPECT_EQ(filledButtons(page), QStringList(QStringLiteral("Save")));
    button.setEnabled(false);
    EXPECT_EQ(filledButtons(page), QStringList());
    setRole(&button, "field");
    EXPECT_LT(button.font().weight(), QFont::DemiBold) << "no longer the main one";
}

TEST_F(PrimaryButtons, AreNoneThatIsMerelyPressedIn)
{
    QWidget page;
    QPushButton button(QStringLiteral("Details"), &page);
    button.setCheckable(true);
    button.setChecked(true);
    button.resize(120, 30);
    page.show();
    EXPECT_EQ(filledButtons(page), QStringList());
}

} // namespace

} // namespace holdband::ui::test

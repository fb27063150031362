// The round windows as the user types them.
#include "tests/ui/dialog_test.h"

#include "core/store/records/equipment.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/round_rows.h"
#include "ui/equipment/round_windows_dialog.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/save_row.h"
#include "ui/tables/table_card.h"
#include "ui/window/new_settings.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QPushButton>
#include <QSpinBox>
#include <QTableView>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

std::vector<EditRow> rows(std::initializer_list<QStringList> cells)
{
    std::vector<EditRow> made;
    for (const QStringList& row : cells)
        made.push_back({row, -1});
    return made;
}

std::string problem(std::initializer_list<QStringList> cells)
{
    const auto rounds = roundsOf(rows(cells));
    return rounds ? std::string() : rounds.error().sentence();
}

} // namespace

class RoundWindowsTest : public DialogTest {
protected:
    std::unique_ptr<RoundWindowsDialog> openRounds()
    {
        auto dialog = std::make_unique<RoundWindowsDialog>(session, world().settings);
        dialog->setAttribute(Qt::WA_DeleteOnClose, false);
        dialog->open();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(dialog.get()));
        dialog->activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(dialog.get()));
        return dialog;
    }
    void press(FormDialog& dialog)
    {
        dialog.foot()->saveButton()->click();
        settle();
    }
    static void set(EditTable* table, int row, const QStringList& cells)
    {
        for (int column = 0; column < cells.size(); ++column)
            table->model()->setCell(row, column, cells[column]);
    }
};

TEST(RoundRows, AreInTheOrderOfTheDay)
{
    const auto rounds = roundsOf(rows({{"Night", "22:00", "24:00"}, {" Noon ", "12:00", "13:30"}}));
    ASSERT_TRUE(rounds) << rounds.error().sentence();
    EXPECT_THAT(*rounds, testing::ElementsAre(RoundWindow{"Noon", 720, 810},
                                              RoundWindow{"Night", 1320, 1440}));
    EXPECT_EQ(*roundsOf(roundRows(usualRounds())), usualRounds());
    EXPECT_TRUE(roundsOf(rows({{"A", "06:00", "07:00"}, {"B", "07:00", "08:00"}})))
        << "one may begin as the other ends";
}

TEST(RoundRows, RefuseImpossibleWindows)
{
    EXPECT_EQ(problem({}), "rounds: a day needs at least one round; add one.");
    EXPECT_EQ(problem({{"A", "06:00", "08:00"}, {"B", "07:59", "09:00"}}),
              "rounds: B begins before A is over; give each its own time.");
    EXPECT_EQ(problem({{"A", "06:00", "08:00"}, {"a", "09:00", "10:00"}}),
              "rounds: two rounds are called a; call one of them something else.");
    EXPECT_EQ(problem({{"Night", "22:00", "02:00"}}),
              "round 1: a round ends after it begins, on the same day.");
    EXPECT_EQ(problem({{"", "06:00", "08:00"}}), "round 1: the round needs a name.");
    EXPECT_EQ(problem({{"A", "early", "08:00"}}), "round 1: write a time of day, such as 06:30.");
    EXPECT_EQ(problem({{"A", "01:00", "02:00"},
                       {"B", "03:00", "04:00"},
                       {"C", "05:00", "06:00"},
                       {"D", "07:00", "08:00"},
                       {"E", "09:00", "10:00"},
                       {"F", "11:00", "12:00"},
                       {"G", "13:00", "14:00"}}),
              "rounds: a day can have at most 6 rounds; take one out.");
}

TEST(RoundRows, PassTheModelTester)
{
    EditTableModel model(roundColumns());
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    model.setRows(roundRows(usualRounds()));
    model.insertBlank(2);
    model.setCell(2, 0, "Noon");
    EXPECT_FALSE(model.refusalAt(2, 1).isEmpty());
    model.removeAt(0);
    EXPECT_EQ(model.rowCount(), 2);
}

TEST_F(RoundWindowsTest, AThirdRoundIsTypedByKeyboard)
{
    const auto dialog = openRounds();
    QTableView* view = dialog->rounds()->view();
    EXPECT_EQ(QApplication::focusWidget(), view);
    EXPECT_EQ(dialog->rounds()->model()->rows()[0].cells,
              (QStringList{"Morning", "05:00", "09:00"}));
    QTest::keyClick(view, Qt::Key_Insert);
    const int row = dialog->rounds()->currentRow();
    const auto type = [&](const QString& text) {
        QTest::keyClick(view, text[0].toLatin1());
        QTest::keyClicks(QApplication::focusWidget(), text.mid(1));
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Return);
        QCoreApplication::processEvents();
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    };
    view->setCurrentIndex(dialog->rounds()->model()->index(row, 0));
    type("Noon");
    type("12:00");
    type("13:00");
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible()) << dialog->foot()->words().toStdString();
    EXPECT_THAT(world().settings.rounds, testing::ElementsAre(RoundWindow{"Morning", 300, 540},
                                                              RoundWindow{"Noon", 720, 780},
                                                              RoundWindow{"Evening", 960, 1200}));
    EXPECT_EQ(world().settings.tariff.pricePerKwh, 0.15) << "nothing else changed";
}

TEST_F(RoundWindowsTest, ARefusalLeavesTheTypedTextAndAtMostSixAreAdded)
{
    const auto dialog = openRounds();
    set(dialog->rounds(), 1, {"Evening", "16:00", "15:00"});
    press(*dialog);
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_EQ(dialog->foot()->words(), "round 2: a round ends after it begins, on the same day.");
    EXPECT_EQ(dialog->rounds()->model()->rows()[1].cells[2], "15:00");
    EXPECT_EQ(world().settings.rounds, usualRounds());
    for (int i = 0; i < 4; ++i)
        dialog->rounds()->addRow();
    EXPECT_FALSE(dialog->rounds()->addButton()->isEnabled());
    dialog->rounds()->removeRow();
    EXPECT_TRUE(dialog->rounds()->addButton()->isEnabled());
}

TEST_F(RoundWindowsTest, HowGoodTypedTimesAreIsSavedWithThem)
{
    EXPECT_EQ(world().settings.timeDoubt, Milliseconds{0}) << "in a loaded logbook";
    const auto dialog = openRounds();
    EXPECT_EQ(dialog->timeDoubt()->text(), "exact");
    dialog->timeDoubt()->setValue(20);
    press(*dialog);
    EXPECT_FALSE(dialog->isVisible());
    EXPECT_EQ(world().settings.timeDoubt, Milliseconds(std::chrono::minutes{20}));
    EXPECT_EQ(world().settings.rounds, usualRounds());
    EXPECT_EQ(usualSettings().timeDoubt, Milliseconds(std::chrono::minutes{10}))
        << "in a logbook newly made in the window";
}

TEST_F(RoundWindowsTest, ThePageShowsThemAndOpensTheDialog)
{
    EquipmentPage page(session);
    page.refresh();
    settle();
    EXPECT_EQ(page.rounds()->model()->index(1, 0).data(), "Evening");
    EXPECT_EQ(page.rounds()->model()->index(1, 1).data(), "16:00");
    page.roundsButton()->click();
    EXPECT_TRUE(page.findChild<RoundWindowsDialog*>());
}

} // namespace holdband::ui::test

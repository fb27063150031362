// The readings dialog for a meter: view, filter, correct, leave out with a reason, restore.
#include "tests/ui/dialog_test.h"

#include "core/store/history/history_text.h"
#include "core/store/history/undo.h"
#include "core/store/readings/meter_readings.h"
#include "tests/ui/spoken.h"
#include "ui/record/readings_dialog.h"
#include "ui/tables/table_model.h"
#include "ui/words/words.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QPushButton>
#include <QTableView>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

class MeterReadings : public DialogTest {
protected:
    void SetUp() override
    {
        DialogTest::SetUp();
        m_dialog = std::make_unique<ReadingsDialog>(session);
        m_dialog->show();
        settle();
        choose("Loop meter");
    }

    void choose(const QString& name)
    {
        QComboBox& box = *m_dialog->subject();
        const int index = box.findText(name);
        ASSERT_GE(index, 0) << name.toStdString();
        box.setCurrentIndex(index);
        Q_EMIT box.activated(index);
        settle();
    }

    QString cell(int row, int column) const
    {
        return m_dialog->readings()->index(row, column).data().toString();
    }

    QStringList column(int index) const
    {
        QStringList cells;
        for (int row = 0; row < m_dialog->readings()->rowCount(); ++row)
            cells << cell(row, index);
        return cells;
    }

    void leaveOut(int row, const QString& why)
    {
        m_dialog->table()->selectRow(row);
        m_dialog->why()->setText(why);
        m_dialog->leaveOutButton()->click();
        settle();
    }

    std::unique_ptr<ReadingsDialog> m_dialog;
};

const QString none;

} // namespace

TEST_F(MeterReadings, AreListedWithWhatTheMeterCounted)
{
    QAbstractItemModelTester tester(m_dialog->readings(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal);
    choose("Loop beer");
    choose("Loop meter");
    EXPECT_EQ(column(0),
              (QStringList{"2026-03-07 18:05:00", "2026-03-08 18:05:00", "2026-03-09 18:05:00"}));
    EXPECT_EQ(column(1), (QStringList{"12.4", "13.6", "14.8"}));
    EXPECT_EQ(column(2), (QStringList{dash, "1.2", "1.2"}));
    EXPECT_EQ(column(4), (QStringList{"by hand", "by hand", "by hand"}));
    EXPECT_EQ(m_dialog->readings()->index(0, 2).data(Qt::ToolTipRole).toString(),
              "It is the first reading.");
    EXPECT_EQ(m_dialog->message(), "3 readings in this stretch.");
}

TEST_F(MeterReadings, AreFilteredByTimeAndStillCountedFromTheOneBefore)
{
    m_dialog->from()->setText("2026-03-09 00:00");
    QTest::keyClick(m_dialog->from(), Qt::Key_Return);
    settle();
    EXPECT_EQ(column(1), (QStringList{"14.8"}));
    EXPECT_EQ(column(2), (QStringList{"1.2"}));
}

TEST_F(MeterReadings, LeavingOneOutNeedsAReasonThatStaysWithIt)
{
    leaveOut(1, none);
    EXPECT_TRUE(m_dialog->message().startsWith("Say why")) << m_dialog->message().toStdString();
    EXPECT_TRUE(m_dialog->why()->hasFocus());
    leaveOut(1, "read the wrong meter");
    EXPECT_EQ(kwhOf(logbook, "Loop meter"), (std::vector<double>{12.4, 14.8}));
    EXPECT_EQ(column(1), (QStringList{"12.4", "13.6", "14.8"}));
    EXPECT_EQ(column(2), (QStringList{dash, dash, "2.4"}));
    EXPECT_EQ(cell(1, 5), "left out: read the wrong meter");
}

TEST_F(MeterReadings, AreRestoredByTheButtonAndByUndo)
{
    leaveOut(1, "doubtful");
    m_dialog->table()->selectRow(1);
    m_dialog->restoreButton()->click();
    settle();
    EXPECT_EQ(kwhOf(logbook, "Loop meter").size(), 3u);
    EXPECT_EQ(cell(1, 5), none);
    leaveOut(1, "doubtful after all");
    session.change<store::HistoryEntry>(
        this->m_dialog.get(), store::undoLast, [](const auto& undone) {
            ASSERT_TRUE(undone);
            EXPECT_EQ(store::historyText(*undone), "undid: deleted a reading of Loop meter");
        });
    settle();
    EXPECT_EQ(kwhOf(logbook, "Loop meter").size(), 3u);
}

TEST_F(MeterReadings, SeveralAreLeftOutAndRestoredInOneChange)
{
    m_dialog->table()->selectAll();
    m_dialog->why()->setText("other house's meter");
    m_dialog->leaveOutButton()->click();
    settle();
    EXPECT_TRUE(kwhOf(logbook, "Loop meter").empty());
    m_dialog->from()->setText("2026-03-01 00:00"); // no reading that counts gives a default span
    m_dialog->table()->selectAll();
    m_dialog->restoreButton()->click();
    settle();
    EXPECT_EQ(kwhOf(logbook, "Loop meter").size(), 3u);
}

TEST_F(MeterReadings, OneIsCorrectedAndTheOldValueIsPreserved)
{
    m_dialog->table()->selectRow(1);
    m_dialog->value()->setText("13.16");
    m_dialog->why()->setText("digits swapped");
    m_dialog->correctButton()->click();
    settle();
    EXPECT_EQ(kwhOf(logbook, "Loop meter"), (std::vector<double>{12.4, 13.16, 14.8}));
    EXPECT_EQ(cell(1, 1), "13.16");
    EXPECT_EQ(cell(1, 2), "0.76");
    EXPECT_EQ(cell(1, 5), "was 13.6, corrected 12 Mar 18:12: digits swapped");
}

TEST_F(MeterReadings, ARefusalHasTheReadersDecimalSign)
{
    const German german;
    ASSERT_TRUE(german.loaded());
    m_dialog->table()->selectRow(1);
    m_dialog->value()->setText("11,5");
    m_dialog->why()->setText("Tippfehler");
    m_dialog->correctButton()->click();
    settle();
    EXPECT_THAT(m_dialog->message().toStdString(), testing::HasSubstr("12,4 kWh"));
    EXPECT_THAT(m_dialog->message().toStdString(), testing::HasSubstr("11,5 kWh"));
}

TEST_F(MeterReadings, AnImpossibleCorrectionIsRefusedAndNothingTypedIsLost)
{
    m_dialog->table()->selectRow(1);
    m_dialog->value()->setText("11");
    m_dialog->why()->setText("slip");
    m_dialog->correctButton()->click();
    settle();
    EXPECT_THAT(m_dialog->message().toStdString(), testing::HasSubstr("is below 12.4 kWh"));
    EXPECT_EQ(m_dialog->value()->text(), "11");
    EXPECT_EQ(m_dialog->why()->text(), "slip");
    EXPECT_EQ(kwhOf(logbook, "Loop meter"), (std::vector<double>{12.4, 13.6, 14.8}));
}

} // namespace holdband::ui::test

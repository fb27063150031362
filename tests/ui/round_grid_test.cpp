// The grid of the last rounds: typing along a row, its decimals and its legend.
#include "tests/ui/sample_window.h"

#include "ui/rounds/correction_bar.h"
#include "ui/rounds/rounds_grid.h"
#include "ui/rounds/rounds_page.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

class RoundGridTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = makeLogbook();
        m_window = openWindow(m_logbook);
        m_window->activateWindow();
        m_window->setPage(PageId::rounds);
        settle(*m_window);
    }

    RoundsGrid& grid() { return *m_window->pages()->rounds()->grid(); }
    QModelIndex current() { return grid().table()->currentIndex(); }
    /// The last column is the evening of 12 March.
    void goTo(int row, int back)
    {
        grid().table()->setFocus();
        grid().table()->setCurrentIndex(
            grid().model()->index(row, grid().model()->columnCount() - 1 - back));
    }
    /// The first character may move the focus.
    void type(const char* text)
    {
        for (; *text; ++text)
            QTest::keyClick(QApplication::focusWidget(), *text);
    }
    void press(Qt::Key key)
    {
        QTest::keyClick(QApplication::focusWidget(), key);
        settle(*m_window);
        settle(*m_window);
    }
    QString textAt(int row, int back)
    {
        return grid()
            .model()
            ->index(row, grid().model()->columnCount() - 1 - back)
            .data()
            .toString();
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

constexpr int loopRow = 0;
constexpr int cabinetRow = 1;

} // namespace

TEST_F(RoundGridTest, AMissedRoundIsTypedAndEnterGoesToTheNextOne)
{
    goTo(cabinetRow, 3); // 11 March in the morning
    EXPECT_EQ(textAt(cabinetRow, 3), "");
    type("40.3"); // the first digit opens the round
    ASSERT_TRUE(grid().correction()->isVisible());
    EXPECT_EQ(grid().correction()->value()->text(), "40.3");
    press(Qt::Key_Return);
    EXPECT_FALSE(grid().correction()->isVisible()) << core(grid().correction()->message());
    EXPECT_THAT(kwhOf(m_logbook, "Cabinet meter"), ::testing::ElementsAre(40.1, 40.3, 40.6, 40.9));
    EXPECT_EQ(textAt(cabinetRow, 3), "40.30");
    EXPECT_EQ(current().row(), cabinetRow);
    EXPECT_EQ(current().column(), grid().model()->columnCount() - 1 - 2);
    EXPECT_EQ(QApplication::focusWidget(), grid().table());
}

TEST_F(RoundGridTest, ACorrectionAsksWhyAndGoesOnToo)
{
    goTo(cabinetRow, 1);
    press(Qt::Key_Return);
    type("40.95");
    press(Qt::Key_Return);
    EXPECT_EQ(QApplication::focusWidget(), grid().correction()->why());
    type("last digit");
    press(Qt::Key_Return);
    EXPECT_THAT(kwhOf(m_logbook, "Cabinet meter"), ::testing::ElementsAre(40.1, 40.6, 40.95));
    EXPECT_EQ(current().column(), grid().model()->columnCount() - 1);
}

TEST_F(RoundGridTest, FromTheEndOfARowEnterGoesToTheFirstEmptyRoundBelow)
{
    goTo(loopRow, 0);
    type("15.1");
    press(Qt::Key_Return);
    EXPECT_EQ(current().row(), cabinetRow);
    EXPECT_EQ(current().column(), 0) << "nothing was read there";
    EXPECT_EQ(textAt(loopRow, 0), "15.10");
}

TEST_F(RoundGridTest, ADeletedReadingStaysChosen)
{
    goTo(loopRow, 6); // 9 March in the evening
    ASSERT_EQ(textAt(loopRow, 6), "14.80");
    const QRect cell = grid().table()->visualRect(current());
    QTest::mouseClick(grid().table()->viewport(), Qt::LeftButton, {}, cell.center());
    QTest::mouseDClick(grid().table()->viewport(), Qt::LeftButton, {}, cell.center());
    ASSERT_TRUE(grid().correction()->isVisible());
    for (QPushButton* button : grid().correction()->findChildren<QPushButton*>()) {
        if (button->text() == "&Delete")
            QTest::mouseClick(button, Qt::LeftButton);
    }
    settle(*m_window);
    settle(*m_window);
    EXPECT_THAT(kwhOf(m_logbook, "Loop meter"), ::testing::ElementsAre(12.4, 13.6));
    EXPECT_EQ(current().column(), grid().model()->columnCount() - 1 - 6);
}

TEST_F(RoundGridTest, ACellOpensWithTheStoredDecimals)
{
    goTo(loopRow, 0);
    type("15");
    press(Qt::Key_Return);
    EXPECT_EQ(textAt(loopRow, 0), "15.00");
    goTo(loopRow, 0);
    press(Qt::Key_Return);
    EXPECT_EQ(grid().correction()->value()->text(), "15");
}

TEST_F(RoundGridTest, TheHeadingsOfTheRoundsAreNeverClipped)
{
    for (const double factor : {1.0, 2.0}) {
        QFont font = grid().font();
        font.setPointSizeF(font.pointSizeF() * factor);
        grid().setFont(font);
        m_window->pages()->rounds()->refresh();
        settle(*m_window);
        const int widest = QFontMetrics(font).horizontalAdvance(QStringLiteral("morning"));
        for (int column = 0; column < grid().model()->columnCount(); ++column)
            EXPECT_GT(grid().table()->columnWidth(column), widest) << factor;
    }
    EXPECT_TRUE(grid().table()->visualRect(current()).isValid());
    EXPECT_TRUE(
        grid().table()->viewport()->rect().contains(grid().table()->visualRect(current()).center()))
        << "the newest round is in view";
}

TEST_F(RoundGridTest, TheLegendNamesOnlySignsThatOccur)
{
    EXPECT_TRUE(grid().legend()->text().contains("Open circle: missed"));
    EXPECT_FALSE(grid().legend()->text().contains("Underlined"));
    goTo(loopRow, 6);
    press(Qt::Key_Return);
    type("14.7");
    press(Qt::Key_Return);
    press(Qt::Key_Return);
    EXPECT_TRUE(grid().legend()->text().contains("Underlined: corrected"));
    grid().clear();
    EXPECT_FALSE(grid().legend()->text().contains("Open circle"));
}

} // namespace holdband::ui::test

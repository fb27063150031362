// A span marked on the charts of a run: by a drag, by the button, by keys, and what it is for.
#include "core/store/records/exclusions.h"
#include "tests/ui/sample_window.h"
#include "ui/charts/energy_panel.h"
#include "ui/charts/run_charts.h"
#include "ui/charts/temperature_panel.h"
#include "ui/record/readings_dialog.h"
#include "ui/record/undo_actions.h"
#include "ui/run/run_page.h"
#include "ui/tables/table_model.h"
#include "ui/window/pages.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QImage>
#include <QItemSelectionModel>
#include <QLineEdit>
#include <QMenu>
#include <QMouseEvent>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gtest/gtest.h>

namespace holdband::ui::test {

namespace {

class MarkSpanTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = makeLogbook();
        m_window = openWindow(m_logbook);
        m_window->openRun(QStringLiteral("Pale 1"));
        settle(*m_window);
    }

    RunCharts& charts() { return *m_window->pages()->run()->charts(); }
    TimeView& time() { return charts().time(); }
    Instant hour(double hours)
    {
        return time().window().all().start + toMilliseconds(Hours{hours});
    }
    QPoint placeOf(ChartPanel& panel, double hours)
    {
        return {static_cast<int>(std::lround(panel.map().x(hour(hours)))),
                static_cast<int>(panel.map().plot.center().y())};
    }
    void drag(ChartPanel& panel, double from, double to, Qt::KeyboardModifiers keys = {})
    {
        const QPoint end = placeOf(panel, to);
        QTest::mousePress(&panel, Qt::LeftButton, keys, placeOf(panel, from));
        QMouseEvent move(QEvent::MouseMove, end, panel.mapToGlobal(end), Qt::NoButton,
                         Qt::LeftButton, keys);
        QApplication::sendEvent(&panel, &move);
        QTest::mouseRelease(&panel, Qt::LeftButton, keys, end);
    }
    /// The menu that is open, and its entry that begins with the text.
    static QMenu* menu() { return qobject_cast<QMenu*>(QApplication::activePopupWidget()); }
    static void choose(const char* text)
    {
        ASSERT_TRUE(menu());
        for (QAction* action : menu()->actions()) {
            if (!action->text().remove(u'&').startsWith(QLatin1String(text)))
                continue;
            menu()->setActiveAction(action);
            QTest::keyClick(menu(), Qt::Key_Return);
            return;
        }
        FAIL() << "no entry " << text;
    }
    std::vector<store::Exclusion> exclusions() const
    {
        const auto file =
            store::LogbookFile::open(m_logbook.toStdString(), store::Access::read, now);
        EXPECT_TRUE(file);
        return *store::readExclusions(**file);
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace

TEST_F(MarkSpanTest, ShiftAndDragMarkAndLeaveOutAndUndo)
{
    const Span before = time().shown();
    drag(*charts().temperature(), 5.8, 9.2, Qt::ShiftModifier);
    EXPECT_EQ(time().shown(), before) << "it marks instead of moving";
    const std::optional<Span> marked = time().mark().span();
    ASSERT_TRUE(marked);
    EXPECT_NEAR(hoursBetween(hour(5.8), marked->start), 0.0, 0.1);
    EXPECT_NEAR(hoursBetween(hour(9.2), marked->end), 0.0, 0.1);
    choose("Leave out");
    settle(*m_window);
    EXPECT_FALSE(time().mark().span());
    auto* dialog = m_window->findChild<ReadingsDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->subject()->currentText(), "Loop beer");
    EXPECT_EQ(dialog->readings()->rowCount(), 7) << "half-hourly";
    EXPECT_EQ(dialog->table()->selectionModel()->selectedRows().size(), 7);
    EXPECT_TRUE(dialog->why()->hasFocus());
    EXPECT_TRUE(exclusions().empty()) << "a reason is wanted first";
    QTest::keyClicks(dialog->why(), "lid opened");
    dialog->leaveOutButton()->click();
    settle(*m_window);
    ASSERT_EQ(exclusions().size(), 1u);
    EXPECT_EQ(exclusions()[0].sensor, "Loop beer");
    EXPECT_EQ(exclusions()[0].why, "lid opened");
    EXPECT_EQ(exclusions()[0].span, (Span{hour(6.0), hour(9.0)}));
    m_window->undoActions()->undo()->trigger();
    settle(*m_window);
    EXPECT_TRUE(exclusions().empty());
}

TEST_F(MarkSpanTest, TheButtonMakesTheNextDragMark)
{
    time().show({hour(4.0), hour(20.0)}, 0.0);
    charts().markButton()->click();
    EXPECT_TRUE(charts().temperature()->hasFocus());
    drag(*charts().energy(), 12.0, 8.0); // backwards, on another panel
    ASSERT_TRUE(time().mark().span());
    EXPECT_FALSE(charts().markButton()->isChecked()) << "for one span";
    choose("Zoom");
    EXPECT_NEAR(hoursBetween(hour(8.0), time().shown().start), 0.0, 0.1);
    EXPECT_NEAR(hoursBetween(hour(12.0), time().shown().end), 0.0, 0.1);
    EXPECT_FALSE(time().mark().span());
    const Span zoomed = time().shown();
    drag(*charts().energy(), 9.0, 10.0);
    EXPECT_NE(time().shown(), zoomed) << "the next one moves again";
}

TEST_F(MarkSpanTest, WorksByKeyboard)
{
    TemperaturePanel* panel = charts().temperature();
    panel->setFocus();
    time().setPointer(hour(6.0));
    QTest::keyClick(panel, Qt::Key_M);
    for (int i = 0; i < 4; ++i)
        QTest::keyClick(panel, Qt::Key_Right, Qt::ControlModifier); // four readings on
    EXPECT_EQ(time().mark().span(), (Span{hour(6.0), hour(8.0)}));
    EXPECT_FALSE(menu());
    QTest::keyClick(panel, Qt::Key_M);
    ASSERT_TRUE(menu());
    QTest::keyClick(menu(), Qt::Key_Escape);
    EXPECT_FALSE(time().mark().span());
    QTest::keyClick(panel, Qt::Key_M);
    QTest::keyClick(panel, Qt::Key_Right, Qt::ControlModifier);
    QTest::keyClick(panel, Qt::Key_Escape);
    EXPECT_FALSE(time().mark().span());
    EXPECT_FALSE(menu());
}

TEST_F(MarkSpanTest, AClickMarksNothing)
{
    QTest::mouseClick(charts().temperature(), Qt::LeftButton, Qt::ShiftModifier,
                      placeOf(*charts().temperature(), 6.0));
    EXPECT_FALSE(time().mark().span());
    EXPECT_FALSE(menu());
}

TEST_F(MarkSpanTest, IsDrawnAsABandThroughAllPanels)
{
    for (ChartPanel* panel : {static_cast<ChartPanel*>(charts().temperature()),
                              static_cast<ChartPanel*>(charts().energy())}) {
        const QImage before = panel->grab().toImage();
        time().mark().begin(hour(6.0));
        time().mark().follow(hour(9.0));
        const QImage marked = panel->grab().toImage();
        const QPoint inside = placeOf(*panel, 7.0) + QPoint(2, 0);
        const QPoint outside = placeOf(*panel, 12.0) + QPoint(2, 0);
        EXPECT_LT(marked.pixelColor(inside).lightness(), before.pixelColor(inside).lightness());
        EXPECT_EQ(marked.pixelColor(outside), before.pixelColor(outside));
        time().mark().clear();
    }
}

} // namespace holdband::ui::test

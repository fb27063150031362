// Mouse, wheel and keyboard input of the lanes as a separate widget.
#include "core/text/times.h"
#include "tests/ui/lane_days.h"
#include "ui/lanes/lanes_area.h"
#include "ui/lanes/lanes_text.h"
#include "ui/lanes/lanes_view.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QMenu>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>
#include <gmock/gmock.h>

namespace holdband::ui {

namespace {

using ::testing::HasSubstr;

results::LaneBar stayedBar(const std::string& name, int from, int to, int row = 0)
{
    results::LaneBar bar;
    bar.batch = name;
    bar.span = {day(from), day(to)};
    bar.row = row;
    bar.verdict = analysis::Verdict::stayed;
    bar.mark = "✓";
    bar.headline = "Stayed in the band";
    return bar;
}

results::LanesReview someLanes(int now = 31)
{
    results::LanesReview lanes;
    lanes.lanes = {
        {"Loop",
         {stayedBar("Ale 1", 0, 10), stayedBar("Saison 1", 5, 12, 1), stayedBar("Ale 2", 15, 24)},
         2},
        {"Cabinet", {stayedBar("Lager 1", 14, now)}, 1}};
    lanes.lanes[1].bars[0].open = true;
    lanes.lanes[1].bars[0].mark = "…";
    lanes.now = day(now);
    lanes.shown = {day(0), day(now)};
    return lanes;
}

/// Two years of batches of two days each, so that they are drawn in groups.
results::LanesReview crowdedLanes()
{
    results::LanesReview lanes;
    lanes.lanes = {{"Loop", {}, 1}};
    for (int i = 0; i < 300; ++i)
        lanes.lanes[0].bars.push_back(stayedBar("B " + std::to_string(i), 3 * i, 3 * i + 2));
    lanes.now = day(900);
    lanes.shown = {day(0), day(899)};
    return lanes;
}

class LanesViewTest : public ::testing::Test {
protected:
    void SetUp() override { show(someLanes()); }

    void show(results::LanesReview lanes)
    {
        m_view.resize(900, 160);
        m_view.setReview(std::move(lanes), Zone::utc());
        m_view.show();
        m_view.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&m_view));
    }

    void wheel(QPointF at, QPoint delta, Qt::KeyboardModifiers modifiers = {})
    {
        QWheelEvent event(at, m_view.mapToGlobal(at), {}, delta, Qt::NoButton, modifiers,
                          Qt::NoScrollPhase, false);
        QApplication::sendEvent(&m_view, &event);
    }

    double length() const { return m_view.shownSpan().hours(); }

    QStringList menuTexts(const QString& batch)
    {
        QStringList texts;
        const auto menu = m_view.menuFor(batch);
        for (const QAction* action : menu->actions())
            texts << action->text() + (action->isEnabled() ? "" : " (off)");
        texts.removeAll(" (off)");
        texts.removeAll("");
        return texts;
    }

    void choose(const QString& batch, const QString& text)
    {
        const auto menu = m_view.menuFor(batch);
        for (QAction* action : menu->actions()) {
            if (action->text() == text)
                return action->trigger();
        }
        FAIL() << "no " << text.toStdString();
    }

    LanesView m_view;
};

} // namespace

TEST_F(LanesViewTest, TheWheelZoomsAboutThePointer)
{
    const QPointF at(*m_view.placeOf("Ale 2"));
    const double before = length();
    wheel(at, {0, 360});
    EXPECT_NEAR(length(), before * 0.8 * 0.8 * 0.8, before * 0.01);
    EXPECT_NEAR(m_view.placeOf("Ale 2")->x(), at.x(), 1.5);
    wheel(at, {0, -3600});
    EXPECT_NEAR(length(), before, 1e-6);
}

TEST_F(LanesViewTest, KeysZoomAndShowAllAgain)
{
    const double before = length();
    QTest::keyClick(&m_view, Qt::Key_Plus);
    EXPECT_NEAR(length(), 0.7 * before, 0.01);
    QTest::keyClick(&m_view, Qt::Key_Plus);
    QTest::keyClick(&m_view, Qt::Key_Minus);
    EXPECT_NEAR(length(), 0.7 * before, 0.01);
    EXPECT_FALSE(m_view.showAllBox().isEmpty());
    QTest::keyClick(&m_view, Qt::Key_0);
    EXPECT_NEAR(length(), before, 1e-6);
    EXPECT_TRUE(m_view.showAllBox().isEmpty()) << "all is shown: no way back is needed";
}

TEST_F(LanesViewTest, DragAndShiftWheelMove)
{
    wheel({500.0, 30.0}, {0, 720});
    const Span before = m_view.shownSpan();
    const QPoint from(700, 150);
    QTest::mousePress(&m_view, Qt::LeftButton, {}, from);
    QTest::mouseMove(&m_view, from - QPoint(50, 0));
    QTest::mouseMove(&m_view, from - QPoint(100, 0));
    QTest::mouseRelease(&m_view, Qt::LeftButton, {}, from - QPoint(100, 0));
    EXPECT_GT(m_view.shownSpan().start, before.start);
    EXPECT_NEAR(length(), before.hours(), 1e-3);
    const Span dragged = m_view.shownSpan();
    wheel({500.0, 30.0}, {0, 120}, Qt::ShiftModifier);
    EXPECT_LT(m_view.shownSpan().start, dragged.start);
}

TEST_F(LanesViewTest, ADoubleClickBesideTheBarsAndShowAllReset)
{
    const double all = length();
    wheel(QPointF(*m_view.placeOf("Ale 1")), {0, 720});
    const QPoint empty(500, static_cast<int>(m_view.placed().labelsY) + 4);
    QTest::mouseDClick(&m_view, Qt::LeftButton, {}, empty);
    EXPECT_NEAR(length(), all, 1e-6);
    wheel(QPointF(*m_view.placeOf("Ale 1")), {0, 720});
    QTest::mouseClick(&m_view, Qt::LeftButton, {}, m_view.showAllBox().center().toPoint());
    EXPECT_NEAR(length(), all, 1e-6);
}

TEST_F(LanesViewTest, ClickAndEnterOpenAndWithControlCompare)
{
    QSignalSpy opened(&m_view, &LanesView::batchOpened);
    QSignalSpy second(&m_view, &LanesView::secondChosen);
    QTest::mouseClick(&m_view, Qt::LeftButton, {}, *m_view.placeOf("Saison 1"));
    QTest::mouseClick(&m_view, Qt::LeftButton, Qt::ControlModifier, *m_view.placeOf("Lager 1"));
    EXPECT_EQ(opened.takeFirst().at(0).toString(), "Saison 1");
    EXPECT_EQ(second.takeFirst().at(0).toString(), "Lager 1");
    QTest::keyClick(&m_view, Qt::Key_Up);
    EXPECT_EQ(m_view.current(), "Saison 1") << "the row above is that of the second vessel";
    QTest::keyClick(&m_view, Qt::Key_Return);
    QTest::keyClick(&m_view, Qt::Key_Left);
    QTest::keyClick(&m_view, Qt::Key_Enter, Qt::ControlModifier | Qt::KeypadModifier);
    ASSERT_EQ(opened.size(), 1);
    ASSERT_EQ(second.size(), 1);
    EXPECT_EQ(opened.takeFirst().at(0).toString(), "Saison 1");
    EXPECT_EQ(second.takeFirst().at(0).toString(), "Ale 1");
}

TEST_F(LanesViewTest, NewDataDoNotMoveTheView)
{
    m_view.setFocus();
    wheel(QPointF(*m_view.placeOf("Ale 2")), {0, 720});
    QTest::keyClick(&m_view, Qt::Key_Right);
    const Span before = m_view.shownSpan();
    const QString current = m_view.current();
    results::LanesReview more = someLanes(33);
    more.lanes[0].bars.insert(more.lanes[0].bars.begin(), stayedBar("Early", -9, -2));
    more.shown.start = day(-9);
    m_view.setReview(more, Zone::utc());
    EXPECT_EQ(m_view.shownSpan(), before);
    EXPECT_EQ(m_view.current(), current) << "by its name, not its number";
    m_view.setNow(day(34));
    EXPECT_EQ(m_view.shownSpan(), before);
}

TEST_F(LanesViewTest, ARunningBatchGrowsWithTheTime)
{
    const auto before = m_view.barOf(3)->span.end;
    m_view.setNow(day(32));
    EXPECT_EQ(m_view.barOf(3)->span.end, before + std::chrono::days{1});
    EXPECT_EQ(m_view.barOf(2)->span.end, day(24)) << "Ale 2 is over";
    EXPECT_EQ(m_view.review().now, day(32));
    m_view.setNow(day(30));
    EXPECT_EQ(m_view.review().now, day(32)) << "time does not run back";
}

TEST_F(LanesViewTest, AnotherLogbookShowsAllOfItsTime)
{
    wheel(QPointF(*m_view.placeOf("Ale 2")), {0, 720});
    m_view.clear();
    m_view.setReview(crowdedLanes(), Zone::utc());
    EXPECT_GT(length(), 899 * 24.0);
}

TEST_F(LanesViewTest, AClickOnManyZoomsUntilTheyAreSeparate)
{
    show(crowdedLanes());
    ASSERT_FALSE(m_view.placed().groups.empty());
    const PlacedGroup group = m_view.placed().groups.front();
    QSignalSpy opened(&m_view, &LanesView::batchOpened);
    const QRectF seen = group.box.intersected(m_view.placed().plot);
    QTest::mouseClick(&m_view, Qt::LeftButton, {}, seen.center().toPoint());
    EXPECT_TRUE(opened.isEmpty());
    EXPECT_LE(m_view.shownSpan().start, group.span.start);
    EXPECT_GE(m_view.shownSpan().end, group.span.end);
    while (!m_view.placed().groups.empty())
        wheel(m_view.placed().plot.center(), {0, 120});
    EXPECT_GT(length(), 24.0);
}

TEST_F(LanesViewTest, ArrowsReachEveryBatchAlsoAmongMany)
{
    show(crowdedLanes());
    m_view.setCurrent(0);
    for (int i = 1; i < 300; ++i)
        QTest::keyClick(&m_view, Qt::Key_Right);
    EXPECT_EQ(m_view.current(), "B 299");
}

TEST_F(LanesViewTest, TheCurrentBarIsBroughtIntoView)
{
    m_view.setCurrent(0);
    for (int i = 0; i < 6; ++i)
        wheel(QPointF(*m_view.placeOf("Ale 1")), {0, 240});
    QTest::keyClick(&m_view, Qt::Key_Right);
    EXPECT_EQ(m_view.current(), "Ale 2");
    const QRectF box = m_view.placed().bars[m_view.currentIndex()].box;
    EXPECT_TRUE(box.intersects(m_view.placed().plot));
}

TEST_F(LanesViewTest, TheMenuNamesWhatCanBeDone)
{
    EXPECT_EQ(menuTexts("Ale 1"), (QStringList{"&Open the run of Ale 1", "Set &side by side (off)",
                                               "&Change this batch…", "Add a journal &note…",
                                               "Show only its &time", "Show &all (off)"}));
    m_view.setChosen({"Lager 1"});
    m_view.setMayChange(false);
    EXPECT_EQ(menuTexts("Ale 1"),
              (QStringList{"&Open the run of Ale 1", "Set &side by side with Lager 1",
                           "&Change this batch… (off)", "Add a journal &note… (off)",
                           "Show only its &time", "Show &all (off)"}));
}

TEST_F(LanesViewTest, TheMenuEntriesWork)
{
    QSignalSpy change(&m_view, &LanesView::changeWanted);
    QSignalSpy note(&m_view, &LanesView::noteWanted);
    QSignalSpy opened(&m_view, &LanesView::batchOpened);
    choose("Ale 2", "&Change this batch…");
    choose("Ale 2", "Add a journal &note…");
    choose("Ale 2", "&Open the run of Ale 2");
    EXPECT_EQ(change.at(0).at(0).toString(), "Ale 2");
    EXPECT_EQ(note.at(0).at(0).toString(), "Ale 2");
    EXPECT_EQ(opened.at(0).at(0).toString(), "Ale 2");
    choose("Ale 2", "Show only its &time");
    EXPECT_LT(m_view.shownSpan().start, day(15));
    EXPECT_GT(m_view.shownSpan().start, day(14));
    EXPECT_LT(m_view.shownSpan().end, day(25));
    choose("Ale 2", "Show &all");
    EXPECT_LT(m_view.shownSpan().start, day(0));
}

TEST_F(LanesViewTest, TheMenuOpensByKeyAndByMouse)
{
    m_view.setCurrent(2);
    QContextMenuEvent byKey(QContextMenuEvent::Keyboard, {}, {});
    QApplication::sendEvent(&m_view, &byKey);
    auto* menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    EXPECT_EQ(menu->actions().front()->text(), "&Open the run of Ale 2");
    menu->close();
    const QPoint at = *m_view.placeOf("Saison 1");
    QContextMenuEvent byMouse(QContextMenuEvent::Mouse, at, m_view.mapToGlobal(at));
    QApplication::sendEvent(&m_view, &byMouse);
    menu = qobject_cast<QMenu*>(QApplication::activePopupWidget());
    ASSERT_NE(menu, nullptr);
    EXPECT_EQ(menu->actions().front()->text(), "&Open the run of Saison 1");
    menu->close();
}

TEST_F(LanesViewTest, RowsBeyondTheHeightScrollAndKeysBringThemIntoView)
{
    results::LanesReview many;
    for (int i = 0; i < 12; ++i)
        many.lanes.push_back({"Setup", {stayedBar("B " + std::to_string(i), i, i + 9)}, 1});
    many.shown = {day(0), day(30)};
    many.now = day(31);
    auto* view = new LanesView;
    LanesArea area(view);
    view->setReview(many, Zone::utc());
    area.resize(900, area.sizeHint().height());
    area.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&area));
    EXPECT_LE(area.sizeHint().height(), 200);
    EXPECT_TRUE(area.bar()->isVisible());
    EXPECT_LT(view->placed().labelsY, view->height()) << "the months stay in view";
    view->setCurrent(0);
    for (int i = 0; i < 11; ++i)
        QTest::keyClick(view, Qt::Key_Down);
    EXPECT_EQ(view->current(), "B 11");
    EXPECT_GT(area.bar()->value(), 0);
    EXPECT_TRUE(
        view->placed().plot.adjusted(-1, -1, 1, 1).contains(view->placed().bars[11].box.center()));
    area.bar()->setValue(0);
    EXPECT_EQ(view->scrolled(), 0.0);
    view->setChosen({"B 11"});
    EXPECT_GT(area.bar()->value(), 0) << "what the pages show is in view";
}

TEST(LanesText, GivesNameTimeVerdictAndTheMeaningOfTheMark)
{
    results::LaneBar one = stayedBar("Ale 1", 0, 10);
    one.verdict = analysis::Verdict::missed;
    one.mark = "↛";
    one.headline = "Missed the target of Crash";
    EXPECT_EQ(barText(one, Zone::utc()), "Ale 1\n1 Mar 2026 07:00 – 11 Mar 2026 07:00 (10.0 days)\n"
                                         "Missed the target of Crash\n↛ a target was missed");
    one.open = true;
    one.mark = "…";
    one.verdict = analysis::Verdict::stayed;
    EXPECT_EQ(markMeaning(one), "… still open: it stayed in its band so far");
    EXPECT_EQ(spanText(one, Zone::utc()), "1 Mar 2026 07:00 – still open (10.0 days so far)");
    one.verdict = analysis::Verdict::left;
    one.mark = "2";
    EXPECT_EQ(markMeaning(one), "it left its band 2 times, and it is still open");
    one.open = false;
    one.mark = "1";
    EXPECT_EQ(markMeaning(one), "it left its band once");
    one.verdict = analysis::Verdict::notEnoughData;
    one.mark = "?";
    EXPECT_EQ(markMeaning(one), "? not enough data to say");
}

TEST(LanesText, CountsTheVerdictsOfMany)
{
    const results::LaneBar a = stayedBar("A", 0, 2);
    results::LaneBar b = stayedBar("B", 3, 5);
    b.verdict = analysis::Verdict::left;
    results::LaneBar c = stayedBar("C", 6, 8);
    c.open = true;
    EXPECT_EQ(groupText({&a, &b, &c}, Zone::utc()),
              "3 batches, 1 Mar 2026 – 9 Mar 2026\n"
              "1 stayed in the band, 1 left it, 1 still open\nClick to zoom to them.");
}

TEST(LanesText, NamesTheMissedRounds)
{
    const Span span{day(0), day(6)};
    EXPECT_EQ(roundsText({0.0, 1, 1, span}, Zone::utc()), "Missed: the round of 1 Mar 2026 07:00");
    EXPECT_EQ(roundsText({0.0, 1, 0, span}, Zone::utc()), "Read: 1 Mar 2026 07:00");
    EXPECT_EQ(roundsText({0.0, 12, 2, span}, Zone::utc()),
              "12 rounds, 2 of them missed\n1 Mar 2026 – 7 Mar 2026");
    EXPECT_EQ(roundsText({0.0, 12, 0, span}, Zone::utc()),
              "12 rounds, all read\n1 Mar 2026 – 7 Mar 2026");
}

} // namespace holdband::ui

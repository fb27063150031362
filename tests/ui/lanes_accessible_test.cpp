// The lanes for assistive technology.
#include "core/text/times.h"
#include "ui/lanes/lanes_view.h"
#include "ui/words/words.h"

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>
#include <gtest/gtest.h>

namespace holdband::ui {

namespace {

results::LaneBar markedBar(const char* name, int from, int to, analysis::Verdict verdict,
                           const char* mark, const char* headline)
{
    const Instant start = *parseRfc3339("2026-03-01T07:00:00Z");
    results::LaneBar bar;
    bar.batch = name;
    bar.span = {start + std::chrono::days{from}, start + std::chrono::days{to}};
    bar.verdict = verdict;
    bar.mark = mark;
    bar.headline = headline;
    return bar;
}

results::LanesReview spokenLanes()
{
    results::LanesReview lanes;
    lanes.lanes = {
        {"Loop",
         {markedBar("Ale 1", 0, 10, analysis::Verdict::stayed, "✓", "Stayed in the band")},
         1},
        {"Cabinet",
         {markedBar("Lager 1", 14, 30, analysis::Verdict::left, "2", "Left the band twice")},
         1}};
    lanes.now = lanes.lanes[1].bars[0].span.end;
    lanes.shown = {lanes.lanes[0].bars[0].span.start, lanes.now};
    return lanes;
}

class LanesAccessible : public ::testing::Test {
protected:
    void SetUp() override
    {
        m_view.resize(900, 160);
        m_view.setReview(spokenLanes(), Zone::utc());
        m_view.show();
        m_view.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(&m_view));
        m_lanes = QAccessible::queryAccessibleInterface(&m_view);
        ASSERT_NE(m_lanes, nullptr);
    }

    LanesView m_view;
    QAccessibleInterface* m_lanes = nullptr;
};

} // namespace

TEST_F(LanesAccessible, AreAListWithAnItemForEachBar)
{
    EXPECT_EQ(m_lanes->role(), QAccessible::List);
    EXPECT_EQ(m_lanes->text(QAccessible::Name), "Lanes");
    ASSERT_EQ(m_lanes->childCount(), 2);
    EXPECT_EQ(m_lanes->child(2), nullptr);
    EXPECT_EQ(m_lanes->child(-1), nullptr);
    QAccessibleInterface* item = m_lanes->child(1);
    EXPECT_EQ(item->role(), QAccessible::ListItem);
    EXPECT_EQ(item->text(QAccessible::Name), "Lager 1, Cabinet");
    EXPECT_EQ(item->text(QAccessible::Description), "Left the band twice");
    EXPECT_EQ(item->text(QAccessible::Value), "it left its band 2 times");
    EXPECT_EQ(item->parent()->object(), &m_view);
    EXPECT_EQ(m_lanes->indexOfChild(item), 1);
    EXPECT_EQ(m_lanes->child(1), item) << "the same each time";
}

TEST_F(LanesAccessible, ItemsAreWhereTheirBarsAre)
{
    const QPoint at = m_view.mapToGlobal(*m_view.placeOf("Lager 1"));
    EXPECT_TRUE(m_lanes->child(1)->rect().contains(at));
    EXPECT_EQ(m_lanes->childAt(at.x(), at.y()), m_lanes->child(1));
    EXPECT_EQ(m_lanes->childAt(at.x(), at.y() + 500), nullptr);
}

TEST_F(LanesAccessible, NameTheFocusedAndTheSelectedBar)
{
    m_view.setFocus();
    ASSERT_TRUE(QTest::qWaitFor([&] { return m_view.hasFocus(); }));
    m_view.setCurrent(0);
    EXPECT_TRUE(m_lanes->child(0)->state().focused);
    EXPECT_EQ(m_lanes->focusChild(), m_lanes->child(0));
    QTest::keyClick(&m_view, Qt::Key_Down);
    EXPECT_FALSE(m_lanes->child(0)->state().focused);
    EXPECT_TRUE(m_lanes->child(1)->state().focused);
    EXPECT_FALSE(m_lanes->child(1)->state().selected);
    m_view.setChosen({"Lager 1"});
    EXPECT_TRUE(m_lanes->child(1)->state().selected);
}

TEST_F(LanesAccessible, PressingAnItemOpensItsRun)
{
    QSignalSpy opened(&m_view, &LanesView::batchOpened);
    auto* action = m_lanes->child(1)->actionInterface();
    ASSERT_NE(action, nullptr);
    action->doAction(QAccessibleActionInterface::pressAction());
    ASSERT_EQ(opened.size(), 1);
    EXPECT_EQ(opened.at(0).at(0).toString(), "Lager 1");
}

TEST_F(LanesAccessible, AnItemOfARemovedBarReportsIt)
{
    QAccessibleInterface* item = m_lanes->child(1);
    results::LanesReview fewer = spokenLanes();
    fewer.lanes.pop_back();
    m_view.setReview(fewer, Zone::utc());
    EXPECT_EQ(m_lanes->childCount(), 1);
    EXPECT_FALSE(item->isValid());
    EXPECT_TRUE(item->state().invalid);
    EXPECT_TRUE(item->text(QAccessible::Name).isEmpty());
    EXPECT_TRUE(item->rect().isEmpty());
}

} // namespace holdband::ui

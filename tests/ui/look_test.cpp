// What the look promises: notices that go by themselves, cards that fold, pages that go to one
// column.
#include "tests/ui/sample_window.h"
#include "ui/charts/run_charts.h"
#include "ui/forms/edit_table.h"
#include "ui/run/explained_label.h"
#include "ui/run/figure_tile.h"
#include "ui/run/limits_card.h"
#include "ui/run/run_page.h"
#include "ui/run/verdict_header.h"
#include "ui/tables/table_card.h"
#include "ui/theme/card.h"
#include "ui/theme/flow_layout.h"
#include "ui/window/notice_bar.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QAccessible>
#include <QLabel>
#include <QPushButton>
#include <QSlider>
#include <QTableView>
#include <QTest>
#include <QTimer>
#include <gtest/gtest.h>

namespace holdband::ui::test {

namespace {

TEST(Notices, GoByThemselvesOnlyInPassing)
{
    QWidget page;
    page.resize(600, 400);
    NoticeBar bar(&page);
    page.show();
    bar.timer()->setInterval(20);
    bar.sayInPassing(QStringLiteral("Saved."));
    EXPECT_TRUE(bar.isVisible());
    EXPECT_TRUE(page.rect().contains(bar.geometry()));
    EXPECT_TRUE(QTest::qWaitFor([&] { return bar.isHidden(); }, 5'000));
    EXPECT_EQ(bar.sentence(), "");
    bar.sayInPassing(QStringLiteral("Saved."));
    bar.say(QStringLiteral("The disk is full."));
    QTest::qWait(60);
    EXPECT_TRUE(bar.isVisible()) << "what the user should know stays";
    page.resize(300, 200);
    EXPECT_TRUE(page.rect().contains(bar.geometry()));
}

TEST(Notices, AreAlertsForAssistiveTechnology)
{
    QWidget page;
    NoticeBar bar(&page);
    page.show();
    bar.sayInPassing(QStringLiteral("Saved."));
    const QAccessibleInterface* notice = QAccessible::queryAccessibleInterface(&bar);
    EXPECT_EQ(notice->role(), QAccessible::AlertMessage);
    EXPECT_EQ(notice->text(QAccessible::Name), "Saved.");
}

TEST(Folds, TellWhetherTheyAreExpanded)
{
    Card card(QStringLiteral("Journal"));
    card.makeFoldable(true);
    QAccessibleInterface* fold = QAccessible::queryAccessibleInterface(card.foldButton());
    ASSERT_TRUE(fold);
    EXPECT_EQ(fold->text(QAccessible::Name), "Journal");
    EXPECT_TRUE(fold->state().expandable);
    EXPECT_TRUE(fold->state().collapsed);
    EXPECT_FALSE(fold->state().expanded);
    fold->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    EXPECT_FALSE(card.isFolded());
    EXPECT_TRUE(fold->state().expanded);
    EXPECT_FALSE(fold->state().collapsed);
}

TEST(FlowLayout, GoesOnInTheNextLine)
{
    QWidget box;
    auto* flow = new FlowLayout(10, 4);
    box.setLayout(flow);
    QList<QWidget*> parts;
    for (int i = 0; i < 3; ++i) {
        parts << new QWidget;
        parts.back()->setMinimumSize(100, 20);
        flow->addWidget(parts.back());
    }
    EXPECT_EQ(flow->sizeHint().width(), 320);
    EXPECT_EQ(flow->heightForWidth(320), 20);
    EXPECT_EQ(flow->heightForWidth(250), 44) << "two lines with 4 between them";
    flow->setGeometry({0, 0, 250, 44});
    EXPECT_EQ(parts[2]->geometry().topLeft(), QPoint(0, 24));
}

class RunLook : public WindowTest {};

TEST_F(RunLook, TheShareOnTargetStandsFirstAndSaysHowItCameAbout)
{
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 1"));
    settle(*window);
    const VerdictHeader* header = window->pages()->run()->verdict();
    ASSERT_TRUE(header->lead()->isVisible());
    EXPECT_TRUE(header->lead()->value()->text().endsWith(QStringLiteral("%")));
    EXPECT_FALSE(header->lead()->value()->toolTip().isEmpty());
    EXPECT_GT(header->lead()->value()->height(), 2 * header->lead()->caption()->height() - 8);
    EXPECT_GE(header->others().size(), 4) << "outside, worst, covered, energy";
    for (const FigureTile* tile : header->others())
        EXPECT_EQ(tile->value()->focusPolicy(), Qt::StrongFocus) << "F1 explains it";
}

TEST_F(RunLook, RarelyNeededCardsFoldByKeyboard)
{
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 1"));
    settle(*window);
    LimitsCard* limits = window->pages()->run()->limits();
    ASSERT_TRUE(limits->isFolded());
    EXPECT_FALSE(limits->tolerance()->isVisible());
    limits->foldButton()->setFocus();
    QTest::keyClick(limits->foldButton(), Qt::Key_Space);
    EXPECT_TRUE(limits->tolerance()->isVisible());
    EXPECT_EQ(limits->foldButton()->accessibleName(), "Try other limits");
    QTest::keyClick(limits->foldButton(), Qt::Key_Space);
    EXPECT_FALSE(limits->tolerance()->isVisible());
}

TEST_F(RunLook, GoesToOneColumnWhereItIsNarrow)
{
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 1"));
    window->resize(1280, 860);
    settle(*window);
    const RunPage* page = window->pages()->run();
    const auto leftOf = [&](const QWidget* widget) { return widget->mapTo(page, QPoint()).x(); };
    const QWidget* stages = page->stages();
    EXPECT_GT(leftOf(stages), leftOf(page->charts()) + page->charts()->width() / 2);
    window->resize(760, 860);
    settle(*window);
    EXPECT_LE(leftOf(stages), 4);
    const int lines = page->fontMetrics().height();
    EXPECT_GE(page->charts()->height(), 24 * lines) << "no panel is squeezed";
}

TEST(EditTables, CtrlEnterOnAddAddsNothing)
{
    EditTable table(QStringLiteral("part"), {{QStringLiteral("Item")}}, 0);
    table.show();
    table.addButton()->setFocus();
    QTest::keyClick(table.addButton(), Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(table.model()->rowCount(), 0);
    QTest::keyClick(table.addButton(), Qt::Key_Return);
    EXPECT_EQ(table.model()->rowCount(), 1);
    table.model()->removeBlankAtEnd();
    EXPECT_EQ(table.model()->rowCount(), 0) << "nothing was typed in it";
    table.addRow();
    table.model()->setCell(0, 0, QStringLiteral("pump"));
    table.addRow();
    table.model()->removeBlankAtEnd();
    EXPECT_EQ(table.model()->rowCount(), 1);
}

} // namespace

} // namespace holdband::ui::test

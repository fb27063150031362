// The help: F1 opens the page for the current subject, and every link works.
#include "tests/ui/sample_window.h"
#include "ui/run/run_page.h"
#include "ui/tables/table_card.h"
#include "ui/window/help_dialog.h"
#include "ui/window/pages.h"

#include <QAction>
#include <QDir>
#include <QFile>
#include <QRegularExpression>
#include <QTest>
#include <QTextBrowser>
#include <QToolTip>

namespace holdband::ui::test {

namespace {

QString textOf(const QString& page)
{
    QFile file(":/help/" + page);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << page.toStdString();
    return QString::fromUtf8(file.readAll());
}

QAction* f1(const MainWindow& window)
{
    for (QAction* action : window.findChildren<QAction*>()) {
        if (action->shortcut() == QKeySequence(Qt::Key_F1))
            return action;
    }
    return nullptr;
}

} // namespace

TEST(Help, EveryLinkLeadsToAPageAndEveryPageIsLinked)
{
    const QStringList pages = QDir(":/help").entryList(QDir::Files);
    ASSERT_GE(pages.size(), 10);
    EXPECT_EQ(QDir(":/help/de").entryList(QDir::Files), pages);
    static const QRegularExpression link("\\]\\(([^)]+)\\)");
    for (const QString& folder : {QString(), QStringLiteral("de/")}) {
        QStringList linked{"contents.md"};
        for (const QString& page : pages) {
            auto matches = link.globalMatch(textOf(folder + page));
            while (matches.hasNext()) {
                const QString to = matches.next().captured(1);
                EXPECT_TRUE(pages.contains(to)) << page.toStdString() << ": " << to.toStdString();
                linked << to;
            }
            EXPECT_TRUE(textOf(folder + page).startsWith("# ")) << page.toStdString();
        }
        for (const QString& page : pages)
            EXPECT_TRUE(linked.contains(page)) << page.toStdString() << " is linked from nowhere";
    }
}

class HelpTest : public WindowTest {};

TEST_F(HelpTest, ThePageOfLimitsHasThoseOfTheCode)
{
    HelpDialog help;
    help.showPage("limits.md");
    const QString text = help.text()->toPlainText();
    EXPECT_FALSE(text.contains("%limits%"));
    EXPECT_TRUE(text.contains("a note, a reason, a remark\n20,000 bytes")) << text.toStdString();
    EXPECT_TRUE(text.contains("one field of a log\n1 MiB")) << text.toStdString();
    EXPECT_TRUE(text.contains("logs of a watched folder\n1,000")) << text.toStdString();
}

TEST_F(HelpTest, F1ShowsThePageOfTheCurrentView)
{
    const auto window = openWindow(makeLogbook());
    window->activateWindow();
    for (const auto& [page, wanted] : {std::pair{PageId::rounds, "rounds.md"},
                                       {PageId::sideBySide, "side-by-side.md"},
                                       {PageId::nextBatch, "next-batch.md"},
                                       {PageId::imports, "imports.md"}}) {
        window->setPage(page);
        settle(*window);
        if (page == PageId::rounds)
            QTest::keyClick(window.get(), Qt::Key_F1);
        else
            f1(*window)->trigger(); // the help window has the focus
        const auto* help = window->findChild<HelpDialog*>();
        ASSERT_TRUE(help);
        EXPECT_TRUE(help->isVisible());
        EXPECT_EQ(help->page(), wanted);
        EXPECT_FALSE(help->text()->toPlainText().isEmpty());
    }
    EXPECT_EQ(window->findChildren<HelpDialog*>().size(), 1) << "one help, not three";
}

TEST_F(HelpTest, F1OnAFigureExplainsItInstead)
{
    const auto window = openWindow(makeLogbook());
    window->activateWindow();
    window->openRun(QStringLiteral("Pale 1"));
    settle(*window);
    PlainTable* table = window->pages()->run()->energy()->table();
    table->setFocus();
    table->setCurrentIndex(table->model()->index(0, 1));
    QTest::keyClick(table, Qt::Key_F1);
    EXPECT_FALSE(window->findChild<HelpDialog*>());
    EXPECT_TRUE(QToolTip::isVisible());
}

} // namespace holdband::ui::test

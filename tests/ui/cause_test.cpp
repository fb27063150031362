// An excursion gets a cause, which is saved.
#include "ui/run/cause_dialog.h"

#include "tests/ui/sample_window.h"
#include "ui/run/run_page.h"
#include "ui/tables/table_card.h"
#include "ui/window/pages.h"

#include <QComboBox>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

namespace holdband::ui::test {

class CauseTest : public WindowTest {};

TEST_F(CauseTest, AnExcursionIsGivenACauseByKeyboardAndTheTableShowsIt)
{
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 1"));
    settle(*window);
    RunPage* run = window->pages()->run();
    const auto last = [&] { return run->excursions()->model()->index(0, 3).data().toString(); };
    ASSERT_FALSE(last().contains(QStringLiteral("power cut")));
    run->causeButton()->click();
    auto* dialog = window->findChild<CauseDialog*>();
    ASSERT_NE(dialog, nullptr);
    dialog->cause()->setCurrentText(QStringLiteral("power cut"));
    dialog->note()->setText(QStringLiteral("street dark"));
    QTest::keyClick(dialog, Qt::Key_Return, Qt::ControlModifier);
    settle(*window);
    settle(*window);
    EXPECT_TRUE(last().contains(QStringLiteral("power cut"))) << last().toStdString();
    EXPECT_TRUE(last().contains(QStringLiteral("street dark"))) << last().toStdString();
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QTest::keyClick(window.get(), Qt::Key_Z, Qt::ControlModifier);
    settle(*window);
    settle(*window);
    EXPECT_FALSE(last().contains(QStringLiteral("power cut"))) << last().toStdString();
}

} // namespace holdband::ui::test

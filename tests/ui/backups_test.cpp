// Copies of the logbook in the window: the text in the status line, the offer, restoring, the
// folder.
#include "ui/record/backups_dialog.h"

#include "core/preferences/preferences.h"
#include "core/store/records/journal.h"
#include "core/text/times.h"
#include "tests/ui/sample_window.h"
#include "ui/forms/save_change.h"
#include "ui/record/backup_text.h"
#include "ui/tables/table_model.h"
#include "ui/window/notice_bar.h"

#include <QDir>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {
namespace {

using ::testing::HasSubstr;

LocalTime local(const char* text)
{
    return LocalTime(parseRfc3339(text)->time_since_epoch());
}

class BackupsTest : public WindowTest {
protected:
    void TearDown() override
    {
        WindowTest::TearDown();
        preferences::storeBackupPlace({});
    }

    void note(MainWindow& window)
    {
        bool stored = false;
        saveChange(
            window.session(), &window, {store::HistoryVerb::noteAdded},
            [](const store::Change& change) {
                return store::addNote(change, {now(), {}, "lid opened"});
            },
            [&](Done done) { stored = done.has_value(); });
        settle(window);
        settle(window);
        EXPECT_TRUE(stored);
    }

    static BackupsDialog* offered(MainWindow& window)
    {
        BackupsDialog* found = nullptr;
        EXPECT_TRUE(QTest::qWaitFor(
            [&] {
                found = window.findChild<BackupsDialog*>();
                return found && found->isVisible();
            },
            10'000));
        return found;
    }

    /// A logbook with a copy of 12 March, whose header is then overwritten.
    QString makeBroken()
    {
        const QString logbook = makeLogbook();
        note(*openWindow(logbook));
        QFile file(logbook);
        EXPECT_TRUE(file.open(QIODevice::ReadWrite));
        EXPECT_EQ(file.write("broken"), 6);
        return logbook;
    }
};

TEST(BackupText, NamesTheTimeOfTheLastCopy)
{
    const Date today(std::chrono::year{2026}, std::chrono::month{3}, std::chrono::day{7});
    EXPECT_EQ(lastBackupText({}, today), "never backed up");
    EXPECT_EQ(lastBackupText(local("2026-03-07T07:06:00Z"), today), "backed up today 07:06");
    EXPECT_EQ(lastBackupText(local("2026-03-06T23:59:00Z"), today), "backed up yesterday 23:59");
    EXPECT_EQ(lastBackupText(local("2026-02-01T07:06:00Z"), today), "backed up 1 Feb 2026 07:06");
    EXPECT_EQ(withLastBackup("Next round due 18:00", "never backed up"),
              "Next round due 18:00 · never backed up");
    EXPECT_EQ(withLastBackup("No round is due.", "never backed up"),
              "No round is due. Never backed up.");
}

TEST_F(BackupsTest, TheStatusLineNamesTheTimeOfTheLastCopy)
{
    const auto window = openWindow(makeLogbook());
    EXPECT_TRUE(window->status().endsWith("never backed up")) << window->status().toStdString();
    note(*window); // at 18:12 in Denver
    EXPECT_TRUE(window->status().endsWith("backed up today 18:12"))
        << window->status().toStdString();
    EXPECT_EQ(QDir(path("small backups")).entryList(QDir::Files),
              QStringList{"2026-03-12 18.12 small.holdband"});
}

TEST_F(BackupsTest, ACopyIsMadeAtOnceOnRequest)
{
    const auto window = openWindow(makeLogbook());
    for (QAction* action : window->findChildren<QAction*>()) {
        if (action->text() == QStringLiteral("&Backups…"))
            action->trigger();
    }
    auto* dialog = window->findChild<BackupsDialog*>();
    ASSERT_TRUE(dialog);
    QTest::mouseClick(dialog->copyButton(), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return dialog->copies().size() == 1; }, 10'000));
    EXPECT_EQ(dialog->table()->model()->index(0, 0).data().toString(), "12 Mar 2026 18:12");
    dialog->reject();
    settle(*window);
    EXPECT_TRUE(window->status().endsWith("backed up today 18:12"))
        << window->status().toStdString();
}

TEST_F(BackupsTest, ACopyThatFailsIsReportedAndTheChangeIsSaved)
{
    const auto window = openWindow(makeLogbook());
    write("small backups", "a file where the folder should be");
    note(*window);
    EXPECT_TRUE(window->notice()->sentence().startsWith("No copy today: "))
        << window->notice()->sentence().toStdString();
    EXPECT_TRUE(window->status().endsWith("never backed up"));
}

TEST_F(BackupsTest, AreOfferedForADamagedLogbookAndRestoredUnderANewName)
{
    const QString logbook = makeBroken();
    MainWindow window(now, QString());
    window.openLogbook(logbook);
    window.show();
    BackupsDialog* dialog = offered(window);
    ASSERT_TRUE(dialog);
    ASSERT_EQ(dialog->copies().size(), 1u);
    EXPECT_EQ(dialog->table()->model()->index(0, 0).data().toString(), "12 Mar 2026 18:12");
    QTest::mouseClick(dialog->restoreButton(), Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.session().isOpen(); }, 10'000));
    settle(window);
    EXPECT_EQ(window.session().path(), path("small restored.holdband"));
    EXPECT_FALSE(window.session().readOnly());
    QFile broken(logbook);
    ASSERT_TRUE(broken.open(QIODevice::ReadOnly));
    EXPECT_EQ(broken.read(6), "broken");
}

TEST_F(BackupsTest, AreOfferedIfTheSealIsBroken)
{
    const QString logbook = makeLogbook();
    note(*openWindow(logbook));
    {
        const auto database =
            store::Database::open(logbook.toStdString(), store::Access::write, false);
        ASSERT_TRUE((*database)->execute("UPDATE sensors SET placement = 'changed'"));
    }
    const auto window = openWindow(logbook);
    EXPECT_THAT(window->notice()->sentence().toStdString(), HasSubstr("no longer fits its seal"));
    ASSERT_TRUE(offered(*window));
}

TEST_F(BackupsTest, NothingIsOfferedIfThereIsNoCopy)
{
    MainWindow window(now, QString());
    window.openLogbook(path("nowhere.holdband"));
    window.show();
    EXPECT_THAT(window.notice()->sentence().toStdString(), HasSubstr("There is no logbook at"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return !window.findChild<BackupsDialog*>(); }, 10'000));
}

TEST_F(BackupsTest, GoToTheFolderThatIsChosen)
{
    const auto window = openWindow(makeLogbook());
    ASSERT_TRUE(QDir(path(".")).mkdir("all copies"));
    BackupsDialog dialog(window->session().path(), {});
    EXPECT_EQ(dialog.placeSentence(),
              QStringLiteral("Copies of this logbook go to %1.").arg(path("small backups")));
    dialog.setPlace(path("all copies"));
    EXPECT_THAT(dialog.placeSentence().toStdString(), HasSubstr("/all copies/small backups "));
    note(*window);
    EXPECT_FALSE(QDir(path("small backups")).exists());
    EXPECT_EQ(QDir(path("all copies")).entryList(QDir::Dirs | QDir::NoDotAndDotDot).size(), 1);
    EXPECT_TRUE(window->status().endsWith("backed up today 18:12"));
}

TEST_F(BackupsTest, TheMenuNamesTheLogbooksOpenedLast)
{
    const QString first = makeLogbook("first.holdband");
    const QString second = makeLogbook("second & last.holdband");
    openWindow(first);
    const auto window = openWindow(second);
    QMenu* logbook = window->menuBar()->actions().first()->menu();
    Q_EMIT logbook->aboutToShow();
    QMenu* recent = nullptr;
    for (QAction* action : logbook->actions()) {
        if (action->text() == "Open &recent")
            recent = action->menu();
    }
    ASSERT_TRUE(recent);
    ASSERT_GE(recent->actions().size(), 2);
    ASSERT_LE(recent->actions().size(), 5);
    EXPECT_TRUE(recent->actions()[0]->text().endsWith("/second && last.holdband"));
    recent->actions()[1]->trigger();
    settle(*window);
    EXPECT_EQ(window->session().path(), first);
}

TEST_F(BackupsTest, TheWindowOpensInItsLastSize)
{
    {
        const auto window = openWindow(makeLogbook());
        window->resize(1111, 777);
        window->close();
    }
    const MainWindow again(now, QString());
    EXPECT_EQ(again.size(), QSize(1111, 777));
    preferences::storeWindowGeometry({});
}

} // namespace
} // namespace holdband::ui::test

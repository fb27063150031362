// The notice of an older logbook whose verdicts the present rules change: said once, with a link to
// the help.
#include "tests/ui/sample_window.h"

#include "core/store/records/judging_notice.h"
#include "core/store/safety/seal.h"
#include "core/text/times.h"
#include "ui/window/help_dialog.h"
#include "ui/window/notice_bar.h"

#include <QLabel>
#include <QTest>

namespace holdband::ui::test {

namespace {

/// Half-hourly. The Loop's beer starts at 71 °F, is at 66 after half an hour, at 71 after an hour
/// and at 66 from then on: it comes into 66 ± 3 °F for 36 min first, and then for good.
std::string bouncingLog()
{
    const Instant start = *parseRfc3339("2026-03-08T01:00:00Z");
    std::string text = "time,Loop beer (F),Cabinet beer (F),Room (F)\n";
    for (int i = 0; i <= 226; ++i)
        text += rfc3339Utc(start + std::chrono::minutes{30 * i}) +
                (i == 0 || i == 2 ? ",71" : ",66") + ",66.5,62\n";
    return text;
}

/// As the schema step leaves a logbook whose batches are older.
void makeOlder(const QString& logbook)
{
    const auto file = store::LogbookFile::open(logbook.toStdString(), store::Access::write);
    ASSERT_TRUE(file);
    const store::Database& database = (*file)->database();
    ASSERT_TRUE(database.execute("INSERT INTO settings SELECT 'judged_as_before_to', "
                                 "CAST(max(id) AS TEXT) FROM batches"));
    ASSERT_TRUE(store::renewSeal(database));
}

bool isTold(const QString& logbook)
{
    const auto file = store::LogbookFile::open(logbook.toStdString(), store::Access::read);
    EXPECT_TRUE(file);
    return !store::batchesJudgedBefore(**file)->has_value();
}

class JudgingNotice : public WindowTest {};

} // namespace

TEST_F(JudgingNotice, IsSaidOnceWithALinkToTheHelp)
{
    write("first.csv", bouncingLog());
    const QString logbook = makeLogbook();
    makeOlder(logbook);
    {
        const auto window = openWindow(logbook);
        EXPECT_TRUE(window->notice()->sentence().endsWith("of Pale 1 (was: left, now: stayed)."))
            << window->notice()->sentence().toStdString();
        ASSERT_TRUE(window->notice()->helpLink()->isVisible());
        Q_EMIT window->notice()->helpLink()->linkActivated(QStringLiteral("figures.md"));
        const auto* help = window->findChild<HelpDialog*>();
        ASSERT_TRUE(help);
        EXPECT_EQ(help->page(), "figures.md");
    }
    EXPECT_TRUE(isTold(logbook));
    const auto again = openWindow(logbook);
    EXPECT_EQ(again->notice()->sentence(), "");
}

TEST_F(JudgingNotice, IsNotSaidWhereNoVerdictChanged)
{
    const QString logbook = makeLogbook();
    makeOlder(logbook);
    {
        const auto window = openWindow(logbook);
        EXPECT_EQ(window->notice()->sentence(), "");
        EXPECT_FALSE(window->notice()->helpLink()->isVisible());
    }
    EXPECT_TRUE(isTold(logbook));
}

} // namespace holdband::ui::test

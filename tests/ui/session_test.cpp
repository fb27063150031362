// Opening a logbook runs in the background, and closing it does not wait for an import.
#include "core/store/readings/imports.h"
#include "core/text/times.h"
#include "tests/ui/sample_window.h"
#include "ui/imports/imports_page.h"
#include "ui/window/notice_bar.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

class SessionTest : public WindowTest {
protected:
    std::size_t importsOf(const QString& logbook) const
    {
        const auto file = store::LogbookFile::open(core(logbook), store::Access::read, now);
        EXPECT_TRUE(file) << file.error().sentence();
        const auto lines = store::listImports(**file);
        EXPECT_TRUE(lines);
        return lines->size();
    }

    QString writeLongLog() const
    {
        std::string text = "Time,Loop beer (F)\n";
        const Instant start = *parseRfc3339("2026-03-02T00:00:00Z");
        for (int i = 0; i < 250'000; ++i)
            text += rfc3339Utc(start + std::chrono::seconds{2 * i}) + ",66.5\n";
        write(QStringLiteral("long.csv"), text);
        return path(QStringLiteral("long.csv"));
    }
};

} // namespace

TEST_F(SessionTest, OpeningContinuesInTheBackground)
{
    const QString logbook = makeLogbook();
    MainWindow window(now, QString());
    window.show();
    window.openLogbook(logbook);
    EXPECT_FALSE(window.session().isOpen()) << "the call does not wait";
    EXPECT_TRUE(window.session().opening());
    EXPECT_FALSE(window.session().idle());
    settle(window);
    EXPECT_TRUE(window.session().isOpen());
    EXPECT_FALSE(window.session().readOnly());
}

TEST_F(SessionTest, OfTwoThatAreOpenedTheLastIsUsed)
{
    const QString first = makeLogbook(QStringLiteral("first.holdband"));
    const QString second = makeLogbook(QStringLiteral("second.holdband"));
    MainWindow window(now, QString());
    window.show();
    window.openLogbook(first);
    window.openLogbook(second);
    settle(window);
    EXPECT_EQ(window.session().path(), second);
    window.openLogbook(first);
    settle(window);
    EXPECT_EQ(window.session().path(), first);
    EXPECT_FALSE(window.session().readOnly()) << "no other program holds it";
}

TEST_F(SessionTest, AFileThatCannotBeOpenedIsReportedAndTheOtherStays)
{
    const QString logbook = makeLogbook();
    const auto window = openWindow(logbook);
    write(QStringLiteral("list.holdband"), "a shopping list, long enough to be read as a header");
    window->openLogbook(path(QStringLiteral("list.holdband")));
    settle(*window);
    EXPECT_TRUE(window->notice()->sentence().contains(QStringLiteral("no logbook")))
        << core(window->notice()->sentence());
    EXPECT_EQ(window->session().path(), logbook);
}

TEST_F(SessionTest, TooLittleMemoryIsAProblemAndTheNextRequestIsAnswered)
{
    MainWindow window(now, QString());
    window.openLogbook(makeLogbook());
    settle(window);
    std::string said;
    int answer = 0;
    window.session().ask<int>(
        &window, [](const store::LogbookFile&) -> Result<int> { throw std::bad_alloc(); },
        [&](const Result<int>& result) { said = result ? "" : result.error().sentence(); });
    window.session().ask<int>(
        &window, [](const store::LogbookFile&) -> Result<int> { return 7; },
        [&](const Result<int>& result) { answer = result.value_or(0); });
    settle(window);
    EXPECT_THAT(said, ::testing::HasSubstr("not enough memory"));
    EXPECT_EQ(answer, 7);
}

TEST_F(SessionTest, ClosingDuringAnImportStoresNothing)
{
    const QString logbook = makeLogbook();
    auto window = openWindow(logbook);
    const std::size_t before = importsOf(logbook);
    window->setPage(PageId::imports);
    ImportsPage& page = *window->pages()->imports();
    page.look(writeLongLog());
    settle(*window);
    ASSERT_TRUE(page.canImport()) << core(page.message());
    page.save();
    QTest::qWait(20);
    ASSERT_FALSE(window->session().idle()) << "it is at work";
    EXPECT_TRUE(window->close());
    window.reset();
    EXPECT_EQ(importsOf(logbook), before);
    EXPECT_TRUE(store::LogbookFile::open(core(logbook), store::Access::write, now))
        << "it is let go of";
}

} // namespace holdband::ui::test

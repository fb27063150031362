// Notices about running batches: which ones are new, each once, and that they can be turned off.
#include "tests/ui/import_test.h"

#include "core/text/times.h"
#include "ui/imports/watch_card.h"
#include "ui/run/batch_watch.h"
#include "ui/window/preference_menu.h"

#include <QMenuBar>
#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

using results::BatchEventKind;
using results::BatchState;
using std::chrono::hours;

const Instant noon = *parseRfc3339("2026-03-12T12:00:00Z");

BatchState stateAt(Instant last)
{
    BatchState state;
    state.batch = "Trial 3";
    state.sensor = "Loop beer";
    state.gapLimit = hours{1};
    state.lastReading = last;
    return state;
}

std::vector<BatchEventKind> kinds(const std::vector<results::BatchEvent>& events)
{
    std::vector<BatchEventKind> all;
    for (const results::BatchEvent& event : events)
        all.push_back(event.kind);
    return all;
}

} // namespace

TEST(ToldEvents, AreTakenOnceEach)
{
    using ::testing::ElementsAre;
    using ::testing::IsEmpty;
    ToldEvents told;
    BatchState state = stateAt(noon);
    EXPECT_THAT(told.take(state, noon), IsEmpty());
    state.outside = {Side::above, noon - hours{1}, hours{1}};
    EXPECT_THAT(kinds(told.take(state, noon)), ElementsAre(BatchEventKind::outOfBand));
    state.outside->length = hours{2};
    state.lastReading = noon + hours{1};
    EXPECT_THAT(told.take(state, noon + hours{1}), IsEmpty()) << "the same one goes on";
    EXPECT_THAT(kinds(told.take(state, noon + hours{3})), ElementsAre(BatchEventKind::silent));
    EXPECT_THAT(told.take(state, noon + hours{5}), IsEmpty()) << "still silent";
    state.lastReading = noon + hours{6};
    state.outside = {Side::above, noon + hours{5}, hours{1}};
    EXPECT_THAT(kinds(told.take(state, noon + hours{6})), ElementsAre(BatchEventKind::outOfBand))
        << "another one";
    state.outside.reset();
    state.arrived = {noon, noon + hours{6}, Temperature::celsius(2.0)};
    EXPECT_THAT(kinds(told.take(state, noon + hours{6})), ElementsAre(BatchEventKind::arrived));
    EXPECT_THAT(kinds(told.take(state, noon + hours{9})), ElementsAre(BatchEventKind::silent))
        << "silent once more";
}

TEST(ToldEvents, WhatABatchShowsAtFirstSightIsKnown)
{
    ToldEvents told;
    BatchState state = stateAt(noon);
    EXPECT_TRUE(told.take(state, noon + hours{5}).empty()) << "it has been silent all along";
    state.batch = "Trial 4";
    EXPECT_TRUE(told.take(state, noon + hours{5}).empty()) << "another batch";
    state.lastReading = noon + hours{5};
    EXPECT_EQ(told.take(state, noon + hours{7}).size(), 1u);
    told.forget();
    EXPECT_TRUE(told.take(state, noon + hours{7}).empty());
}

/// Pale 2 in the cabinet: 66 ± 3 °F, read each half hour until 12:00 in Denver.
class BatchWatchTest : public ImportTest {
protected:
    void SetUp() override
    {
        ImportTest::SetUp();
        m_watch = std::make_unique<BatchWatch>(
            m_window->session(), [this](const QString& title, const QString& words) {
                m_notices << title + QStringLiteral(": ") + words;
            });
    }

    void watchLog()
    {
        write("live.csv", m_log);
        page().watches()->watch(path("live.csv"));
        wait();
        page().watches()->poll();
        wait();
    }

    void append(const std::string& row)
    {
        m_log += row + "\n";
        write("live.csv", m_log);
        page().watches()->poll();
        wait();
    }

    std::string m_log = "time,Cabinet beer (F)\n2026-03-12T23:00:00Z,66.2\n";
    QStringList m_notices;
    std::unique_ptr<BatchWatch> m_watch;
};

TEST_F(BatchWatchTest, TellsOnceWhenAWatchedBeerLeavesItsBand)
{
    m_watch->setOn(true);
    watchLog();
    EXPECT_EQ(m_notices, QStringList());
    append("2026-03-12T23:30:00Z,66.4");
    EXPECT_EQ(m_notices, QStringList());
    // Above 69 °F from 23:45: half way from 66.4 to 71.6.
    append("2026-03-13T00:00:00Z,71.6");
    EXPECT_EQ(m_notices, QStringList{"Pale 2: The beer has been above its band for 15 min."});
    append("2026-03-13T00:10:00Z,72");
    EXPECT_EQ(m_notices.size(), 1) << "once";
}

TEST_F(BatchWatchTest, TellsNothingWhileItIsOff)
{
    watchLog();
    append("2026-03-12T23:30:00Z,66.4");
    append("2026-03-13T00:00:00Z,71.6");
    m_watch->setOn(true);
    wait();
    EXPECT_EQ(m_notices, QStringList()) << "what is the case already is not told";
    m_watch->setOn(false);
    append("2026-03-13T00:05:00Z,66");
    append("2026-03-13T00:10:00Z,60");
    EXPECT_EQ(m_notices, QStringList());
}

TEST_F(BatchWatchTest, TellsNothingWhileNoFileIsWatched)
{
    m_watch->setOn(true);
    look("live.csv", m_log + "2026-03-12T23:30:00Z,66.4\n2026-03-13T00:00:00Z,71.6\n");
    page().importButton()->click();
    wait();
    EXPECT_EQ(lastOf("Cabinet beer"), *parseRfc3339("2026-03-13T00:00:00Z"));
    EXPECT_EQ(m_notices, QStringList());
}

TEST_F(BatchWatchTest, IsTurnedOffInTheMenu)
{
    QAction* found = nullptr;
    for (QAction* menu : m_window->menuBar()->actions()) {
        for (QAction* action : menu->menu()->actions()) {
            if (action->text().remove(u'&') == "Notify me about running batches")
                found = action;
        }
    }
    ASSERT_TRUE(found);
    EXPECT_TRUE(found->isChecked()) << "on until it is turned off";
    EXPECT_TRUE(m_window->batchWatch()->isOn());
    found->trigger();
    EXPECT_FALSE(m_window->batchWatch()->isOn());
    EXPECT_EQ(storedChoice("watch-batches"), "false") << "also after a restart";
    found->trigger();
    EXPECT_TRUE(m_window->batchWatch()->isOn());
}

} // namespace holdband::ui::test

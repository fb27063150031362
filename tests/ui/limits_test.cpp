// Other limits tried by keyboard: the resulting verdict, and what is saved.
#include "tests/ui/sample_window.h"

#include "core/store/records/batches.h"
#include "ui/charts/run_charts.h"
#include "ui/run/limits_card.h"
#include "ui/run/run_page.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QPushButton>
#include <QSlider>
#include <QSpinBox>
#include <QTest>

namespace holdband::ui::test {

namespace {

class LimitsTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = makeLogbook();
        m_window = openWindow(m_logbook);
        m_window->openRun(QStringLiteral("Pale 1"));
        settle(*m_window);
    }

    RunPage& run() { return *m_window->pages()->run(); }
    LimitsCard& card() { return *run().limits(); }
    bool waitFor(const QString& words)
    {
        return QTest::qWaitFor([&] { return card().verdict().contains(words); }, 5000);
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace

TEST_F(LimitsTest, BeginsWithTheBatchsOwnAndShowsNoText)
{
    EXPECT_EQ(card().tolerance()->value(), 15) << "3 °F in steps of 0.2";
    EXPECT_EQ(card().verdict(), "");
    EXPECT_FALSE(card().saveButton()->isEnabled());
}

TEST_F(LimitsTest, AWiderBandIsTriedAndTheRecordIsUnchanged)
{
    ASSERT_TRUE(run().headline().startsWith("Left the band once"));
    card().tolerance()->setFocus();
    QTest::keyClick(card().tolerance(), Qt::Key_End); // 5 °F: 71 is exactly on the edge of 66 ± 5
    ASSERT_TRUE(waitFor("tayed in the band")) << card().verdict().toStdString();
    EXPECT_TRUE(run().charts()->chart()->excursions.empty()) << "the panels follow";
    EXPECT_TRUE(run().headline().startsWith("Left the band once")) << "the verdict is the record's";
    card().backButton()->click();
    EXPECT_EQ(card().verdict(), "");
    EXPECT_EQ(run().charts()->chart()->excursions.size(), 1u);
}

TEST_F(LimitsTest, IgnoresAShorterExcursion)
{
    card().ignoreShorterThan()->setValue(300);
    EXPECT_TRUE(waitFor("ignored as shorter than")) << card().verdict().toStdString();
}

TEST_F(LimitsTest, TheTimesInsideAreThoseOfTheBatchAndAreTried)
{
    EXPECT_EQ(card().dwell()->value(), 60);
    EXPECT_EQ(card().returnTime()->value(), 15);
    card().returnTime()->setValue(30);
    card().dwell()->setValue(0);
    EXPECT_TRUE(waitFor("eft the band once")) << "the same: " << core(card().verdict());
    EXPECT_EQ(card().limits().bandTimes, (BandTimes{Milliseconds{0}, std::chrono::minutes{30}}));
    EXPECT_TRUE(card().saveButton()->isEnabled());
}

TEST_F(LimitsTest, SavedLimitsAreOfTheBatchAndCanBeUndone)
{
    const auto tolerance = [this] {
        const auto file =
            store::LogbookFile::open(m_logbook.toStdString(), store::Access::read, now);
        const auto batches = store::readBatches(**file);
        return valueIn(*batches->front().tolerance, TemperatureUnit::fahrenheit);
    };
    ASSERT_NEAR(tolerance(), 3.0, 1e-9);
    card().tolerance()->setValue(20);
    ASSERT_TRUE(waitFor("eft the band")) << card().verdict().toStdString();
    card().saveButton()->click();
    settle(*m_window);
    EXPECT_NEAR(tolerance(), 4.0, 1e-9);
    EXPECT_EQ(card().verdict(), "") << "they are its own now";
    m_window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(m_window.get()));
    QTest::keyClick(m_window.get(), Qt::Key_Z, Qt::ControlModifier);
    settle(*m_window);
    EXPECT_NEAR(tolerance(), 3.0, 1e-9);
}

} // namespace holdband::ui::test

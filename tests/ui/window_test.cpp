// The window used by mouse and keyboard.
#include "core/exchange/load.h"
#include "core/results/run/run_review.h"
#include "core/store/records/batches.h"
#include "tests/ui/sample_window.h"
#include "tests/ui/underlined.h"
#include "ui/charts/deviation_panel.h"
#include "ui/charts/energy_panel.h"
#include "ui/charts/run_charts.h"
#include "ui/charts/temperature_panel.h"
#include "ui/comparison/side_by_side_page.h"
#include "ui/forms/save_change.h"
#include "ui/lanes/lanes_view.h"
#include "ui/run/run_page.h"
#include "ui/run/run_tables.h"
#include "ui/tables/table_card.h"
#include "ui/window/notice_bar.h"
#include "ui/window/pages.h"
#include "ui/window/welcome_page.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QMenuBar>
#include <QPushButton>
#include <QScreen>
#include <QTest>
#include <QWheelEvent>
#include <gmock/gmock.h>

namespace holdband::ui::test {

TEST_F(WindowTest, ShowsTheOpenBatchFirst)
{
    const auto window = openWindow(makeLogbook());
    EXPECT_EQ(window->windowTitle(), "small.holdband – Holdband");
    EXPECT_FALSE(window->showsWelcome());
    EXPECT_EQ(window->pages()->run()->batch(), "Pale 2");
}

TEST_F(WindowTest, AClickOnABarOpensItsRun)
{
    const auto window = openWindow(makeLogbook());
    window->setPage(PageId::equipment);
    const auto place = window->lanes()->placeOf("Pale 1");
    ASSERT_TRUE(place);
    QTest::mouseClick(window->lanes(), Qt::LeftButton, {}, *place);
    settle(*window);
    EXPECT_EQ(window->pages()->page(), PageId::run);
    EXPECT_TRUE(window->pages()->run()->headline().startsWith("Left the band once"))
        << window->pages()->run()->headline().toStdString();
    EXPECT_TRUE(window->pages()->subtitle().contains("Pale 1 · Loop · pitched 7 Mar 18:00"));
}

TEST_F(WindowTest, ABatchThatIsRenamedWhileItsRunIsShownStaysShown)
{
    const auto window = openWindow(makeLogbook());
    window->openRun("Pale 1");
    settle(*window);
    QStringList said;
    QObject::connect(window->pages()->run(), &RunPage::failed, window.get(),
                     [&](const QString& sentence) { said << sentence; });
    const auto rename = [&](const std::string& before, const std::string& now) {
        saveChange(
            window->session(), window.get(), {store::HistoryVerb::batchChanged, {before}},
            [=](const store::Change& change) -> Done {
                auto batch = store::readBatch(change.logbook(), before);
                HOLDBAND_TRY(batch);
                batch->name = now;
                return store::updateBatch(change, before, *batch);
            },
            [](Done stored) { ASSERT_TRUE(stored); });
        settle(*window);
        settle(*window);
    };
    rename("Pale 1", "Pale 1 (won)");
    EXPECT_EQ(said, QStringList());
    EXPECT_EQ(window->pages()->run()->batch(), "Pale 1 (won)");
    EXPECT_EQ(window->lanes()->chosen(), QStringList{"Pale 1 (won)"});
    rename("Pale 1 (won)", "Pale 1");
    EXPECT_EQ(said, QStringList());
    EXPECT_EQ(window->pages()->run()->batch(), "Pale 1");
}

TEST_F(WindowTest, ACtrlClickAddsASecondBatch)
{
    const auto window = openWindow(makeLogbook());
    QTest::mouseClick(window->lanes(), Qt::LeftButton, Qt::ControlModifier,
                      *window->lanes()->placeOf("Pale 1"));
    settle(*window);
    EXPECT_EQ(window->pages()->page(), PageId::sideBySide);
    EXPECT_TRUE(window->pages()->sideBySide()->energySentence().contains("Pale 2"));
    EXPECT_TRUE(window->pages()->sideBySide()->temperatureSentence().contains("Pale 1"));
}

TEST_F(WindowTest, LanesWorkByKeyboard)
{
    const auto window = openWindow(makeLogbook());
    window->lanes()->setFocus();
    ASSERT_EQ(window->lanes()->current(), "Pale 2");
    QTest::keyClick(window->lanes(), Qt::Key_Left);
    EXPECT_EQ(window->lanes()->current(), "Pale 1");
    EXPECT_TRUE(window->lanes()->accessibleDescription().contains("Left the band"));
    QTest::keyClick(window->lanes(), Qt::Key_Return);
    settle(*window);
    EXPECT_EQ(window->pages()->run()->batch(), "Pale 1");
}

TEST_F(WindowTest, AltAndNumbersWalkThroughThePages)
{
    const auto window = openWindow(makeLogbook());
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    const std::pair<Qt::Key, PageId> keys[] = {
        {Qt::Key_1, PageId::rounds},    {Qt::Key_3, PageId::sideBySide},
        {Qt::Key_4, PageId::nextBatch}, {Qt::Key_5, PageId::equipment},
        {Qt::Key_6, PageId::imports},   {Qt::Key_2, PageId::run}};
    for (const auto& [key, page] : keys) {
        QTest::keyClick(window.get(), key, Qt::AltModifier);
        EXPECT_EQ(window->pages()->page(), page);
        EXPECT_EQ(window->pageRow()->page(), page);
    }
}

TEST_F(WindowTest, ChamberAndCoolantAreDrawnOnRequest)
{
    const auto window = openWindow(makeLogbook());
    const TemperaturePanel* panel = window->pages()->run()->charts()->temperature();
    const ChartLine chamber{LineRole::chamber, "chamber", {}};
    const ChartLine beer{LineRole::beer, "beer", {}};
    EXPECT_FALSE(panel->isDrawn(chamber));
    EXPECT_TRUE(panel->isDrawn(beer));
    window->activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(window.get()));
    QTest::keyClick(window.get(), Qt::Key_K, Qt::ControlModifier);
    EXPECT_TRUE(panel->isDrawn(chamber));
    QTest::keyClick(window.get(), Qt::Key_K, Qt::ControlModifier);
    EXPECT_FALSE(panel->isDrawn(chamber));
}

TEST_F(WindowTest, AnExcursionIsZoomedTo)
{
    const auto window = openWindow(makeLogbook());
    window->openRun("Pale 1");
    settle(*window);
    RunPage* run = window->pages()->run();
    QTableView* table = run->excursions()->table();
    QTest::mouseClick(table->viewport(), Qt::LeftButton, {},
                      table->visualRect(table->model()->index(0, 1)).center());
    const RunChart* chart = run->charts()->chart();
    ASSERT_EQ(chart->excursions.size(), 1u);
    const Span seen = run->charts()->time().shown();
    EXPECT_LT(seen.start, chart->instantOf(chart->excursions[0].time.fromMs));
    EXPECT_GT(seen.end, chart->instantOf(chart->excursions[0].time.toMs));
    EXPECT_LT(seen.hours(), 10.0);
}

TEST_F(WindowTest, TheThreePanelsShareTheirEdgesAndTheirPointer)
{
    const auto window = openWindow(makeLogbook());
    RunCharts* charts = window->pages()->run()->charts();
    const QRectF plot = charts->temperature()->map().plot;
    for (const ChartPanel* panel :
         std::initializer_list<const ChartPanel*>{charts->deviation(), charts->energy()}) {
        EXPECT_EQ(panel->map().plot.left(), plot.left());
        EXPECT_EQ(panel->map().plot.right(), plot.right());
        EXPECT_EQ(panel->x(), charts->temperature()->x());
    }
    QTest::mouseMove(charts->deviation(), plot.center().toPoint());
    ASSERT_TRUE(charts->time().pointer());
    EXPECT_TRUE(charts->accessibleDescription().contains("beer 66.5"));
}

TEST_F(WindowTest, TheWheelZoomsAboutThePointerAndADoubleClickShowsAll)
{
    const auto window = openWindow(makeLogbook());
    RunCharts* charts = window->pages()->run()->charts();
    ChartPanel* panel = charts->energy();
    const PlotMap before = panel->map();
    const QPointF place(before.plot.left() + before.plot.width() * 0.25, before.plot.center().y());
    QWheelEvent wheel(place, panel->mapToGlobal(place), {}, {0, 240}, Qt::NoButton, Qt::NoModifier,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(panel, &wheel);
    EXPECT_LT(panel->map().shown.hours(), before.shown.hours());
    EXPECT_NEAR(hoursBetween(panel->map().instantAt(place.x()), before.instantAt(place.x())), 0.0,
                0.01);
    QTest::mouseDClick(panel, Qt::LeftButton, {}, place.toPoint());
    EXPECT_TRUE(charts->time().window().showsAll());
}

TEST_F(WindowTest, AnEmptyLogbookShowsWhatToDoNext)
{
    MainWindow window(now, QString());
    window.createLogbook(path("new.holdband"));
    window.show();
    settle(window);
    EXPECT_TRUE(window.showsWelcome());
    EXPECT_TRUE(window.welcome()->sentence().startsWith("Take them in order"));
    const FirstSteps& steps = *window.welcome()->steps();
    EXPECT_TRUE(steps.button(FirstStep::setup)->hasFocus());
    window.loadDescription(path("small.json"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.isEnabled(); }, 20'000));
    settle(window);
    EXPECT_FALSE(window.showsWelcome());
    EXPECT_EQ(window.pages()->run()->batch(), "Pale 2");
}

TEST_F(WindowTest, WithoutALogbookItOffersToOpenOne)
{
    MainWindow window(now, path("sample.holdband"));
    window.show();
    EXPECT_TRUE(window.showsWelcome());
    EXPECT_TRUE(window.welcome()->sentence().contains("sample"));
    window.openLogbook(path("missing.holdband"));
    EXPECT_TRUE(window.showsWelcome());
    EXPECT_TRUE(window.notice()->sentence().contains("There is no logbook at"));
}

TEST_F(WindowTest, ASecondWindowOnlyReadsAndReportsIt)
{
    const QString logbook = makeLogbook();
    const auto first = openWindow(logbook);
    const auto second = openWindow(logbook);
    EXPECT_FALSE(first->session().readOnly());
    EXPECT_TRUE(second->session().readOnly());
    EXPECT_TRUE(second->notice()->sentence().startsWith("Open for reading only"));
    EXPECT_EQ(second->pages()->run()->batch(), "Pale 2");
}

TEST_F(WindowTest, FitsASmallScreen)
{
    const auto window = openWindow(makeLogbook());
    for (int page = 0; page < pageCount; ++page) {
        window->setPage(static_cast<PageId>(page));
        settle(*window);
        EXPECT_LE(window->minimumSizeHint().width(), 1024)
            << page << ", the page itself "
            << window->pages()->currentWidget()->minimumSizeHint().width();
        EXPECT_LE(window->minimumSizeHint().height(), 680) << page;
    }
}

TEST_F(WindowTest, EveryControlHasAName)
{
    const auto window = openWindow(makeLogbook());
    for (const QWidget* widget : window->findChildren<QWidget*>()) {
        // The list of an open combo box is a window of Qt's own.
        if (!(widget->focusPolicy() & Qt::TabFocus) || widget->window() != window.get())
            continue;
        const auto* button = qobject_cast<const QAbstractButton*>(widget);
        const bool named = !widget->accessibleName().isEmpty() ||
                           (button && !button->text().isEmpty()) ||
                           qobject_cast<const QComboBox*>(widget->parentWidget());
        EXPECT_TRUE(named) << widget->metaObject()->className();
    }
}

TEST_F(WindowTest, NoUnderlinedLetterIsUsedTwiceOnAPage)
{
    const auto window = openWindow(makeLogbook());
    window->openRun(QStringLiteral("Pale 1"));
    settle(*window);
    for (const PageId page : {PageId::rounds, PageId::run, PageId::sideBySide, PageId::nextBatch,
                              PageId::equipment, PageId::imports}) {
        window->setPage(page);
        settle(*window);
        const QStringList twice = underlinedTwice(*window);
        EXPECT_TRUE(twice.isEmpty()) << twice.join(", ").toStdString();
    }
}

TEST_F(WindowTest, MakesTheSampleLogbookFromItsDescriptionOnFirstUse)
{
    const QString sample = path("data/holdband/sample.holdband");
    MainWindow window(now, sample);
    window.setSampleDescription(QStringLiteral(HOLDBAND_SAMPLE_DIR "/spring-trials.json"));
    window.show();
    auto* wanted = window.welcome()->findChildren<QPushButton*>().value(0);
    ASSERT_TRUE(wanted && wanted->text() == "Open the &sample logbook");
    QTest::mouseClick(wanted, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor([&] { return window.session().isOpen(); }, 60'000));
    settle(window);
    EXPECT_EQ(window.session().path(), sample);
    EXPECT_FALSE(window.status().contains("backed up")) << "it can be made again";
    window.openRun(QStringLiteral("Lager 2"));
    settle(window);
    EXPECT_EQ(window.pages()->run()->batch(), "Lager 2");
}

TEST_F(WindowTest, ABatchThatMissedATargetSaysWhyItHasNoExcursion)
{
    const QString sample = path("missed.holdband");
    const store::Clock later = [] { return now() + std::chrono::hours{24 * 260}; };
    ASSERT_TRUE(exchange::loadDescription(sample.toStdString(),
                                          HOLDBAND_SAMPLE_DIR "/spring-trials.json", later));
    const auto file = store::LogbookFile::open(sample.toStdString(), store::Access::read, later);
    const auto review = results::reviewRun(**file, "Ale 3");
    ASSERT_TRUE(review) << review.error().sentence();
    EXPECT_EQ(excursionRemark(*review), "None: a stage is watched for them once its target is "
                                        "reached, and that of Crash was not.");
}

TEST_F(WindowTest, TheFirstWindowFitsTheScreen)
{
    MainWindow window(now, QString());
    const QSize room = window.screen()->availableSize();
    EXPECT_LE(window.height(), 860);
    EXPECT_LE(window.height(), room.height() - 40) << "with the desktop's title above it";
    EXPECT_LE(window.width(), room.width());
}

} // namespace holdband::ui::test

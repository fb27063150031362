// The page Next batch on the sample logbook: it shows the review's figures, follows what is chosen
// and typed, and starts the batch. By keyboard and mouse.
#include "core/exchange/load.h"
#include "core/store/records/batches.h"
#include "tests/ui/sample_window.h"
#include "ui/charts/picture_view.h"
#include "ui/forecast/drawn_plan_dialog.h"
#include "ui/forecast/next_batch_page.h"
#include "ui/forecast/plan_card.h"
#include "ui/forecast/room_card.h"
#include "ui/forecast/setup_ticks.h"
#include "ui/forms/quantity_field.h"
#include "ui/forms/save_row.h"
#include "ui/plans/batch_fields.h"
#include "ui/plans/new_batch_dialog.h"
#include "ui/plans/plan_drawing.h"
#include "ui/plans/plan_editor.h"
#include "ui/report/report.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFile>
#include <QLineEdit>
#include <QPointer>
#include <QPushButton>
#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

using ::testing::HasSubstr;

class NextBatchPageTest : public WindowTest {
protected:
    static void SetUpTestSuite()
    {
        s_folder = std::make_unique<QTemporaryDir>();
        const auto loaded = exchange::loadDescription(sample().toStdString(),
                                                      HOLDBAND_SAMPLE_DIR "/spring-trials.json",
                                                      [] { return later(); });
        ASSERT_TRUE(loaded) << loaded.error().sentence();
    }
    static void TearDownTestSuite() { s_folder.reset(); }
    static QString sample() { return s_folder->filePath(QStringLiteral("sample.holdband")); }
    /// After the last of the sample's batches.
    static Instant later() { return now() + std::chrono::hours{24 * 260}; }

    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = path(QStringLiteral("copy.holdband"));
        ASSERT_TRUE(QFile::copy(sample(), m_logbook));
        m_window = openWindow(m_logbook);
        m_window->activateWindow();
        m_window->setPage(PageId::nextBatch);
        wait();
    }
    void wait()
    {
        for (int i = 0; i < 3; ++i)
            settle(*m_window);
    }
    NextBatchPage& page() { return *m_window->pages()->nextBatch(); }
    void chooseRoom(const QString& text)
    {
        QComboBox& choice = *page().room()->choice();
        const int at = choice.findText(text, Qt::MatchContains);
        ASSERT_GE(at, 0) << text.toStdString();
        choice.setCurrentIndex(at);
        Q_EMIT choice.activated(at);
        wait();
    }
    void type(QuantityField& field, const char* text)
    {
        field.edit()->setFocus();
        field.edit()->selectAll();
        QTest::keyClicks(field.edit(), QString::fromLatin1(text));
        QTest::keyClick(field.edit(), Qt::Key_Return);
        wait();
    }

    static std::unique_ptr<QTemporaryDir> s_folder;
    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

std::unique_ptr<QTemporaryDir> NextBatchPageTest::s_folder;

} // namespace

TEST_F(NextBatchPageTest, AnswersForAnAleInJuly)
{
    chooseRoom(QStringLiteral("July 2026"));
    ASSERT_TRUE(page().review());
    EXPECT_TRUE(page().headline().startsWith("Cabinet would use less: "))
        << page().headline().toStdString();
    EXPECT_EQ(page().headline(), shown(page().review()->text.headline));
    EXPECT_FALSE(page().missing()->isVisibleTo(&page()));
    for (const PictureView* picture :
         {page().energyPicture(), page().pastPicture(), page().crashPicture()}) {
        EXPECT_TRUE(picture->picture());
        EXPECT_FALSE(picture->accessibleDescription().isEmpty());
    }
    // What was picked is shown where it could be typed.
    EXPECT_FALSE(page().room()->mean()->isEnabled());
    EXPECT_TRUE(page().room()->mean()->edit()->text().startsWith("76.7"));
}

TEST_F(NextBatchPageTest, EveryFigureSaysHowItCameAbout)
{
    const TableText& words = page().table()->model()->words();
    ASSERT_EQ(words.header.size(), 3);
    EXPECT_EQ(words.header[1], "Loop");
    ASSERT_GE(words.rows.size(), 5u);
    for (std::size_t row = 0; row < 5; ++row) {
        for (const std::size_t column : {1u, 2u})
            EXPECT_GT(words.rows[row][column].why.size(), 40)
                << words.rows[row][0].text.toStdString();
    }
    EXPECT_FALSE(page().pastPicture()->toolTip().isEmpty());
}

TEST_F(NextBatchPageTest, ATypedRoomIsTakenInTheLogbooksUnits)
{
    chooseRoom(QStringLiteral("typed"));
    EXPECT_TRUE(page().room()->mean()->isEnabled());
    type(*page().room()->mean(), "68");
    type(*page().room()->swing(), "9");
    ASSERT_TRUE(page().review());
    EXPECT_NEAR(page().review()->room.meanCelsius, 20.0, 1e-9);
    EXPECT_NEAR(page().review()->room.swingK, 5.0, 1e-9);
}

TEST_F(NextBatchPageTest, ARefusedVolumeKeepsWhatWasTyped)
{
    type(*page().plan()->volume(), "0");
    EXPECT_FALSE(page().review());
    EXPECT_FALSE(page().pitchButton()->isEnabled());
    EXPECT_EQ(page().plan()->volume()->edit()->text(), "0");
    EXPECT_FALSE(page().plan()->volume()->problem().isEmpty());
    type(*page().plan()->volume(), "5");
    EXPECT_TRUE(page().review());
    EXPECT_TRUE(page().pitchButton()->isEnabled());
}

TEST_F(NextBatchPageTest, OneSetupAloneIsForecastToo)
{
    page().setups()->box(0)->click();
    wait();
    ASSERT_TRUE(page().review());
    ASSERT_EQ(page().review()->setups.size(), 1u);
    EXPECT_TRUE(page().headline().startsWith("Cabinet would use about "));
    page().setups()->box(1)->click();
    wait();
    EXPECT_FALSE(page().review());
    EXPECT_EQ(page().headline(), "Tick a setup.");
}

TEST_F(NextBatchPageTest, APlanIsDrawnForTheForecastOnly)
{
    const double before = page().review()->setups[0].energy.total->kwh;
    QTest::mouseClick(page().plan()->drawButton(), Qt::LeftButton);
    auto* dialog = m_window->findChild<DrawnPlanDialog*>();
    ASSERT_TRUE(dialog);
    PlanValue plan = *dialog->editor()->plan();
    plan.schedule.front().length = Hours{96};
    dialog->editor()->setPlan(plan);
    dialog->useButton()->click();
    wait();
    EXPECT_EQ(page().plan()->choice()->currentText(), "drawn");
    ASSERT_TRUE(page().review());
    EXPECT_LT(page().review()->setups[0].energy.total->kwh, before);
    const auto file = store::LogbookFile::open(m_logbook.toStdString(), store::Access::read);
    EXPECT_EQ(store::readPlans(**file)->size(), 2u) << "nothing is saved";
}

TEST_F(NextBatchPageTest, DraggingATargetDrawsAPlan)
{
    Q_EMIT page().plan()->drawing()->targetDragged(0, Temperature::fahrenheit(60.0));
    wait();
    EXPECT_EQ(page().plan()->choice()->currentText(), "drawn");
    ASSERT_TRUE(page().review());
    EXPECT_NEAR(page().review()->placed.stages.front().startTarget.fahrenheit(), 60.0, 1e-9);
}

TEST_F(NextBatchPageTest, PitchThisStartsTheBatchAndKeepsTheForecast)
{
    chooseRoom(QStringLiteral("July 2026"));
    const BatchForecast wanted =
        *results::batchForecast(*page().review(), page().review()->setups[1], now());
    QTest::mouseClick(page().pitchButton(), Qt::LeftButton);
    wait();
    QPointer<NewBatchDialog> dialog = m_window->findChild<NewBatchDialog*>();
    ASSERT_TRUE(dialog);
    EXPECT_EQ(dialog->fields()->setup()->currentText(), "Cabinet") << "it would use less";
    EXPECT_EQ(dialog->planChoice()->currentText(), "as forecast");
    EXPECT_EQ(dialog->fields()->volume()->edit()->text(), "5");
    const std::string name = core(dialog->fields()->name()->text());
    dialog->foot()->saveButton()->click();
    wait();
    if (dialog) { // it asked about something unusual
        dialog->foot()->saveButton()->click();
        wait();
    }
    EXPECT_FALSE(dialog) << "saved";
    const auto file = store::LogbookFile::open(m_logbook.toStdString(), store::Access::read);
    const auto batch = store::readBatch(**file, name);
    ASSERT_TRUE(batch);
    ASSERT_TRUE(batch->forecast);
    EXPECT_EQ(batch->forecast->energy, wanted.energy);
    EXPECT_EQ(batch->forecast->crashHours, wanted.crashHours);
}

TEST_F(NextBatchPageTest, ItsReportHasTheSameFigures)
{
    const auto file = store::LogbookFile::open(m_logbook.toStdString(), store::Access::read);
    ASSERT_TRUE(page().asked());
    const auto document = report::composeForecast(**file, *page().asked());
    ASSERT_TRUE(document) << document.error().sentence();
    EXPECT_EQ(document->headline, page().headline());
    ASSERT_TRUE(document->figure());
    const auto csv = report::rendered(*document, report::Form::csv, {});
    ASSERT_TRUE(csv);
    const double kwh = page().review()->setups[0].energy.total->kwh;
    EXPECT_THAT(csv->toStdString(), HasSubstr(std::to_string(kwh).substr(0, 6)));
    const auto html = report::rendered(*document, report::Form::html, {});
    ASSERT_TRUE(html);
    EXPECT_THAT(html->toStdString(), HasSubstr("would use less"));
}

TEST_F(WindowTest, ALogbookWithoutBatchesSaysWhatAForecastNeeds)
{
    write(QStringLiteral("d.json"), R"({"holdband":1,"setups":[{"name":"Loop"}]})");
    const QString logbook = path(QStringLiteral("new.holdband"));
    ASSERT_TRUE(exchange::loadDescription(core(logbook), core(path(QStringLiteral("d.json"))),
                                          [] { return now(); }));
    const auto window = openWindow(logbook);
    window->setPage(PageId::nextBatch);
    for (int i = 0; i < 3; ++i)
        settle(*window);
    EXPECT_THAT(window->pages()->nextBatch()->headline().toStdString(),
                HasSubstr("A forecast needs a plan"));
}

} // namespace holdband::ui::test

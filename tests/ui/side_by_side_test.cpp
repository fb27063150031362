// The Side by side page on the sample logbook: it shows the review's figures, and what is typed
// there is saved and can be undone. By keyboard.
#include "core/exchange/load.h"
#include "core/store/history/undo.h"
#include "core/store/records/weighing.h"
#include "tests/ui/sample_window.h"
#include "ui/charts/picture_view.h"
#include "ui/comparison/batches_card.h"
#include "ui/comparison/comparison_choice.h"
#include "ui/comparison/judgement_card.h"
#include "ui/comparison/money_card.h"
#include "ui/comparison/side_by_side_page.h"
#include "ui/comparison/weather_card.h"
#include "ui/forms/quantity_field.h"
#include "ui/tables/notes_card.h"
#include "ui/tables/table_card.h"
#include "ui/window/pages.h"
#include "ui/words/words.h"

#include <QComboBox>
#include <QLineEdit>
#include <QMenu>
#include <QPushButton>
#include <QSlider>
#include <QTest>
#include <gmock/gmock.h>

namespace holdband::ui::test {

namespace {

results::SideBySideRequest pair(const char* a, const char* b)
{
    results::SideBySideRequest request;
    request.a = a;
    request.b = b;
    return request;
}

class SideBySideTest : public WindowTest {
protected:
    void SetUp() override
    {
        WindowTest::SetUp();
        m_logbook = path("sample.holdband");
        const auto loaded = exchange::loadDescription(m_logbook.toStdString(),
                                                      HOLDBAND_SAMPLE_DIR "/spring-trials.json",
                                                      [] { return now(); });
        ASSERT_TRUE(loaded) << loaded.error().sentence();
        m_window = openWindow(m_logbook);
        m_window->activateWindow();
        m_window->setPage(PageId::sideBySide);
        wait();
    }

    void wait()
    {
        settle(*m_window);
        settle(*m_window);
    }
    SideBySidePage& page() { return *m_window->pages()->sideBySide(); }
    results::SideBySide reviewed(const results::SideBySideRequest& request) const
    {
        const auto file = store::LogbookFile::open(m_logbook.toStdString(), store::Access::read);
        EXPECT_TRUE(file);
        auto comparison = results::reviewSideBySide(**file, request);
        EXPECT_TRUE(comparison) << comparison.error().sentence();
        return *comparison;
    }
    Weighing weighing() const
    {
        const auto file = store::LogbookFile::open(m_logbook.toStdString(), store::Access::read);
        EXPECT_TRUE(file);
        return *store::readWeighing(**file);
    }
    QStringList titles()
    {
        QStringList all;
        for (const auto& row : page().table()->model()->words().rows)
            all << row[0].text;
        return all;
    }
    static void type(QLineEdit& field, const char* text)
    {
        field.setFocus();
        field.selectAll();
        QTest::keyClicks(&field, QString::fromLatin1(text));
        QTest::keyClick(&field, Qt::Key_Return);
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace

TEST_F(SideBySideTest, TwoSetupsAreShownAtFirstWithAllFigures)
{
    const results::SideBySide wanted = reviewed(pair("Loop", "Cabinet"));
    EXPECT_EQ(page().energySentence(), shown(wanted.text.energySentence));
    EXPECT_EQ(page().temperatureSentence(), shown(wanted.text.temperatureSentence));
    EXPECT_EQ(page().table()->model()->rowCount(), static_cast<int>(wanted.text.measures.size()));
    EXPECT_EQ(page().notes()->sentences().size(), static_cast<qsizetype>(wanted.text.notes.size()));
    for (const QWidget* card : std::initializer_list<QWidget*>{page().batches(), page().weather(),
                                                               page().money(), page().judgement()})
        EXPECT_TRUE(card->isVisibleTo(&page()));
    EXPECT_TRUE(page().batches()->picture()->picture());
    EXPECT_TRUE(page().weather()->picture()->picture());
    EXPECT_TRUE(page().money()->picture()->picture());
    EXPECT_TRUE(page().weather()->sentence().startsWith(shown(wanted.text.weather.sentence)));
    EXPECT_EQ(page().money()->sentence(), shown(wanted.text.money.scenarios[0].sentence));
}

TEST_F(SideBySideTest, EachNoteIsMarkedAtTheMeasureItAffects)
{
    const results::SideBySide wanted = reviewed(pair("Loop", "Cabinet"));
    const auto first = std::find_if(wanted.text.measures.begin(), wanted.text.measures.end(),
                                    [&](const results::MeasureText& line) {
                                        return line.title == wanted.text.notes.at(0).title;
                                    });
    ASSERT_NE(first, wanted.text.measures.end());
    const auto row = first - wanted.text.measures.begin();
    EXPECT_TRUE(titles()[row].startsWith(shown(first->title) + " ¹"))
        << titles()[row].toStdString();
    EXPECT_TRUE(page().notes()->sentences()[0].startsWith("1 · "));
}

TEST_F(SideBySideTest, TwoBatchesCanBeCountedFromAStage)
{
    page().compare("Ale 2", "Ale 3");
    wait();
    EXPECT_TRUE(page().energySentence().contains("Ale 2"));
    QComboBox& from = *page().choice()->from();
    ASSERT_TRUE(from.isVisibleTo(&page()));
    EXPECT_EQ(from.currentText(), "pitching");
    EXPECT_FALSE(page().batches()->isVisibleTo(&page()));
    from.setFocus();
    QTest::keyClicks(&from, "Crash");
    QTest::keyClick(&from, Qt::Key_Return);
    wait();
    results::SideBySideRequest request = pair("Ale 2", "Ale 3");
    request.fromStage = "Crash";
    EXPECT_EQ(page().energySentence(), shown(reviewed(request).text.energySentence));
    EXPECT_EQ(from.currentText(), "Crash") << "it stays chosen";
}

TEST_F(SideBySideTest, AnUntickedBatchDoesNotCount)
{
    QMenu* ticks = page().choice()->batches()->menu();
    ASSERT_TRUE(ticks);
    const auto actions = ticks->actions();
    const auto lager = std::find_if(actions.begin(), actions.end(), [](const QAction* action) {
        return action->data().toString() == "Lager 2";
    });
    ASSERT_NE(lager, actions.end());
    (*lager)->trigger();
    wait();
    results::SideBySideRequest request = pair("Loop", "Cabinet");
    request.only = {"Ale 1",   "Saison 1", "Ale 2", "Ale 4", "Lager 3", "Ale 7",
                    "Lager 1", "Ale 3",    "Ale 5", "Ale 6", "Ale 8"};
    EXPECT_EQ(page().energySentence(), shown(reviewed(request).text.energySentence));
    EXPECT_EQ(page().choice()->batches()->text(), "6 + 5 batches");
}

TEST_F(SideBySideTest, AWeightIsSavedAndUndone)
{
    QSlider* weight = page().judgement()->weight("noise");
    ASSERT_TRUE(weight);
    const QString before = page().judgement()->sentence();
    weight->setFocus();
    QTest::keyClick(weight, Qt::Key_End);
    wait();
    EXPECT_EQ(weighing().weights.at("noise"), mostWeight);
    EXPECT_EQ(page().judgement()->weight("noise"), weight) << "the slider stays under the hand";
    EXPECT_TRUE(weight->hasFocus());
    QTest::keyClick(m_window.get(), Qt::Key_Z, Qt::ControlModifier);
    wait();
    EXPECT_TRUE(weighing().weights.empty());
    EXPECT_EQ(weight->value(), 2) << "1.0 in halves";
    EXPECT_EQ(page().judgement()->sentence(), before);
}

TEST_F(SideBySideTest, ACustomCriterionIsAdded)
{
    type(*page().judgement()->newCriterion(), "smell");
    wait();
    EXPECT_TRUE(page().judgement()->weight("smell"));
    EXPECT_TRUE(weighing().weights.contains("smell"));
}

TEST_F(SideBySideTest, TheReferenceHoldIsAskedForInTheLogbooksUnits)
{
    type(*page().weather()->lift()->edit(), "18");
    wait();
    ASSERT_TRUE(weighing().referenceLift);
    EXPECT_NEAR(weighing().referenceLift->kelvins(), 10.0, 1e-9);
    EXPECT_TRUE(page().weather()->sentence().contains("18"))
        << page().weather()->sentence().toStdString();
    type(*page().weather()->lift()->edit(), "-3");
    wait();
    EXPECT_NEAR(weighing().referenceLift->kelvins(), 10.0, 1e-9) << "refused, with a message";
    EXPECT_FALSE(page().weather()->lift()->problem().isEmpty());
    EXPECT_EQ(page().weather()->lift()->edit()->text(), "-3") << "what was typed stays";
}

TEST_F(SideBySideTest, AnotherPriceMakesAnotherScenario)
{
    const int before = page().money()->scenario()->count();
    type(*page().money()->otherPrice()->edit(), "0.40");
    wait();
    EXPECT_EQ(page().money()->scenario()->count(), before + 1);
    type(*page().money()->perYear()->edit(), "12");
    wait();
    EXPECT_EQ(weighing().batchesPerYear, 12.0);
    EXPECT_EQ(weighing().otherPricePerKwh, 0.40);
}

TEST_F(SideBySideTest, AWrongPairGetsASentenceAndNoEmptyCards)
{
    page().compare("Ale 1", "Loop");
    wait();
    EXPECT_FALSE(page().energySentence().isEmpty());
    EXPECT_FALSE(page().table()->isVisibleTo(&page()));
    EXPECT_FALSE(page().weather()->isVisibleTo(&page()));
    EXPECT_FALSE(page().judgement()->isVisibleTo(&page()));
}

} // namespace holdband::ui::test

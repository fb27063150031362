// The Side by side page on the sample logbook: it shows the review's figures, and what is typed
// there is saved and can be undone. By keyboard.
#include "core/exchange/load.h"
#include "core/store/history/undo.h"
#include "core/store/records/weighing.h"
#include "tests/ui/sample_window.h"
#include "ui/charts/picture_view.h"
#include "ui/comparison/answer_card.h"
#include "ui/comparison/batches_card.h"
#include "ui/comparison/comparison_choice.h"
#include "ui/comparison/details_panel.h"
#include "ui/comparison/glance_view.h"
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
#include <QScrollArea>
#include <QScrollBar>
#include <QSlider>
#include <QTest>
#include <QToolTip>
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

    /// Whether a part of the page is wider than what shows it.
    bool scrollsSideways()
    {
        const auto areas = page().findChildren<QScrollArea*>();
        return std::any_of(areas.begin(), areas.end(), [](const QScrollArea* area) {
            return area->horizontalScrollBar()->maximum() > 0;
        });
    }
    void resizeTo(QSize size)
    {
        m_window->resize(size);
        wait();
        ASSERT_EQ(m_window->size(), size);
    }
    /// Of the page alone; other pages may need a wider window.
    void narrowTo(int width)
    {
        page().setMaximumWidth(width);
        wait();
        ASSERT_EQ(page().width(), width);
    }

    QString m_logbook;
    std::unique_ptr<MainWindow> m_window;
};

/// Text twice as large, for the windows opened until its end.
class LargeText {
public:
    LargeText() : m_usual(QApplication::font())
    {
        QFont large = m_usual;
        if (large.pointSizeF() > 0.0)
            large.setPointSizeF(2.0 * large.pointSizeF());
        else
            large.setPixelSize(2 * large.pixelSize());
        QApplication::setFont(large);
    }
    ~LargeText() { QApplication::setFont(m_usual); }
    LargeText(const LargeText&) = delete;
    LargeText& operator=(const LargeText&) = delete;

private:
    QFont m_usual;
};

} // namespace

TEST_F(SideBySideTest, OpensWithTheAnswerAndThePairs)
{
    const results::SideBySide wanted = reviewed(pair("Loop", "Cabinet"));
    EXPECT_EQ(page().answer()->answer(), shown(wanted.glance.answer));
    EXPECT_EQ(page().answer()->undecided(), shown(wanted.glance.open));
    const PairBarsPicture* bars = page().glance()->picture();
    ASSERT_TRUE(bars);
    ASSERT_EQ(bars->glance().pairs.size(), 5u);
    EXPECT_TRUE(page().glance()->accessibleDescription().startsWith(
        QStringLiteral("Energy, kWh: A %1, B %2, too close to call")
            .arg(shown(wanted.glance.pairs[0].a.text), shown(wanted.glance.pairs[0].b.text))));
    EXPECT_TRUE(page().energy()->picture()) << "every batch's energy";
    EXPECT_EQ(page().answer()->details()->text(),
              QStringLiteral("Details: %1 measures · %2 notes on fairness ▸")
                  .arg(wanted.measures.size())
                  .arg(wanted.notes.size()));
    for (const QWidget* folded :
         std::initializer_list<QWidget*>{page().table()->table(), page().batches()->picture()})
        EXPECT_FALSE(folded->isVisibleTo(&page())) << "folded at first";
}

TEST_F(SideBySideTest, TheDetailsOpenByMouseAndCloseByKeyboard)
{
    QPushButton* details = page().answer()->details();
    QTest::mouseClick(details, Qt::LeftButton);
    EXPECT_TRUE(page().details()->isOpen());
    EXPECT_TRUE(page().table()->table()->isVisibleTo(&page()));
    EXPECT_TRUE(details->text().endsWith("▾"));
    const results::SideBySide wanted = reviewed(pair("Loop", "Cabinet"));
    EXPECT_TRUE(page().details()->sentences().simplified().contains(
        shown(wanted.text.weather.sentence).left(20)));
    details->setFocus();
    QTest::keyClick(details, Qt::Key_Space);
    EXPECT_FALSE(page().details()->isOpen());
    EXPECT_FALSE(page().table()->table()->isVisibleTo(&page()));
    EXPECT_TRUE(details->text().endsWith("▸"));
}

TEST_F(SideBySideTest, EachCardOfTheDetailsFoldsOnItsOwn)
{
    QPushButton* fold = page().table()->foldButton();
    ASSERT_TRUE(fold);
    EXPECT_NE(fold->focusPolicy() & Qt::TabFocus, 0);
    fold->setFocus();
    QTest::keyClick(fold, Qt::Key_Space);
    EXPECT_TRUE(page().table()->table()->isVisibleTo(&page()));
    EXPECT_FALSE(page().answer()->details()->isChecked()) << "others are still folded";
    for (Card* card :
         std::initializer_list<Card*>{page().notes(), page().details()->weather(),
                                      page().details()->deviations(), page().batches()}) {
        card->foldButton()->setFocus();
        QTest::keyClick(card->foldButton(), Qt::Key_Space);
    }
    EXPECT_TRUE(page().answer()->details()->isChecked());
}

TEST_F(SideBySideTest, KeysAndPointerChooseAPairAndF1ExplainsIt)
{
    GlanceView& glance = *page().glance();
    glance.setFocus();
    QTest::keyClick(&glance, Qt::Key_Down);
    QTest::keyClick(&glance, Qt::Key_Down);
    EXPECT_EQ(glance.current(), 2);
    EXPECT_TRUE(glance.accessibleDescription().startsWith("On target, %")) << "it is said first";
    QTest::keyClick(&glance, Qt::Key_F1);
    EXPECT_TRUE(QToolTip::isVisible());
    EXPECT_TRUE(QToolTip::text().contains("A Loop")) << QToolTip::text().toStdString();
    QToolTip::hideText();
    QTest::keyClick(&glance, Qt::Key_End);
    EXPECT_EQ(glance.current(), 4);
    QTest::keyClick(&glance, Qt::Key_Down);
    EXPECT_EQ(glance.current(), 4) << "it is the last";
    int y = 0;
    while (glance.pairAt({20.0, static_cast<double>(y)}) != 1)
        ASSERT_LT(++y, glance.height());
    QTest::mouseClick(&glance, Qt::LeftButton, {}, {20, y + 4});
    EXPECT_EQ(glance.current(), 1);
}

TEST_F(SideBySideTest, FitsTheWindow)
{
    resizeTo({1360, 860});
    EXPECT_FALSE(scrollsSideways());
    EXPECT_EQ(page().glance()->y(), page().energy()->y());
    resizeTo({1024, 680});
    EXPECT_FALSE(scrollsSideways());
    QTest::mouseClick(page().answer()->details(), Qt::LeftButton);
    wait();
    EXPECT_FALSE(scrollsSideways()) << "with the details";
}

TEST_F(SideBySideTest, WithTextTwiceAsLargeTheCardsGoBelowEachOther)
{
    m_window.reset();
    const LargeText large;
    m_window = openWindow(m_logbook);
    m_window->setPage(PageId::sideBySide);
    wait();
    narrowTo(1000);
    EXPECT_FALSE(scrollsSideways());
    EXPECT_GE(page().energy()->y(), page().glance()->y() + page().glance()->height());
    EXPECT_GE(page().money()->y(), page().weather()->y() + page().weather()->height());
    page().compare("Ale 2", "Ale 3");
    wait();
    EXPECT_EQ(page().width(), 1000);
    EXPECT_FALSE(scrollsSideways()) << "two batches";
    m_window.reset();
}

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
    EXPECT_TRUE(page().energy()->picture()) << "both, with their ratio";
    EXPECT_TRUE(page().glance()->picture()->glance().pairs[0].a.batches.empty());
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
    EXPECT_EQ(page().judgement()->shownWeight("noise"), "5.0");
    EXPECT_EQ(page().judgement()->weight("noise"), weight) << "the slider stays under the hand";
    EXPECT_TRUE(weight->hasFocus());
    QTest::keyClick(m_window.get(), Qt::Key_Z, Qt::ControlModifier);
    wait();
    EXPECT_TRUE(weighing().weights.empty());
    EXPECT_EQ(weight->value(), 2) << "1.0 in halves";
    EXPECT_EQ(page().judgement()->shownWeight("noise"), "1.0");
    Q_EMIT weight->sliderMoved(7);
    EXPECT_EQ(page().judgement()->shownWeight("noise"), "3.5") << "while it is dragged";
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
    EXPECT_EQ(page().answer()->answer(), page().energySentence());
    EXPECT_FALSE(page().answer()->details()->isVisibleTo(&page()));
    EXPECT_FALSE(page().glance()->isVisibleTo(&page()));
    EXPECT_FALSE(page().notes()->isVisibleTo(&page()));
    EXPECT_FALSE(page().table()->isVisibleTo(&page()));
    EXPECT_FALSE(page().weather()->isVisibleTo(&page()));
    EXPECT_FALSE(page().judgement()->isVisibleTo(&page()));
}

} // namespace holdband::ui::test

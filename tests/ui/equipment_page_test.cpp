// The Equipment page: its headings, what its buttons act on, and what folds.
#include "tests/ui/dialog_test.h"

#include "core/results/run/cautions.h"
#include "ui/equipment/equipment_page.h"
#include "ui/equipment/list_card.h"
#include "ui/equipment/part_rows.h"
#include "ui/equipment/safety_card.h"
#include "ui/equipment/setup_card.h"
#include "ui/equipment/setup_dialog.h"
#include "ui/forms/edit_table.h"
#include "ui/forms/form_dialog.h"
#include "ui/forms/save_row.h"
#include "ui/tables/table_card.h"
#include "ui/theme/elided_label.h"
#include "ui/words/words.h"

#include <QApplication>
#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <QSignalSpy>
#include <gmock/gmock.h>

namespace holdband::ui::test {

class EquipmentPageTest : public DialogTest {
protected:
    void SetUp() override
    {
        DialogTest::SetUp();
        QSettings("holdband", "holdband").remove("safety-shown");
    }

    std::unique_ptr<EquipmentPage> shownPage()
    {
        auto page = std::make_unique<EquipmentPage>(session);
        page->resize(1300, 900);
        page->show();
        EXPECT_TRUE(QTest::qWaitForWindowExposed(page.get()));
        QObject::connect(&session, &Session::changed, page.get(), &EquipmentPage::refresh);
        page->refresh();
        settle();
        return page;
    }

    static int topOf(const QWidget* widget, const QWidget* page)
    {
        return widget->mapTo(page, QPoint()).y();
    }

    void addSetup(const char* name, const char* kind)
    {
        SetupDialog dialog(session, {}, {});
        dialog.setAttribute(Qt::WA_DeleteOnClose, false);
        dialog.open();
        const auto lines = dialog.findChildren<QLineEdit*>();
        for (QLineEdit* line : lines) {
            if (line->accessibleName() == "Kind")
                line->setText(QString::fromUtf8(kind));
        }
        dialog.name()->setText(QString::fromUtf8(name));
        dialog.foot()->saveButton()->click();
        settle();
        settle();
    }
};

TEST_F(EquipmentPageTest, AddingComesFirstInEachHeading)
{
    const auto page = shownPage();
    for (const ListCard* card : {page->meters(), page->sensors()}) {
        EXPECT_LT(topOf(card->addButton(), card), topOf(card->table(), card));
        EXPECT_GT(topOf(card->editButton(), card), topOf(card->table(), card));
        EXPECT_EQ(card->addButton()->nextInFocusChain(), card->table());
    }
    EXPECT_LT(topOf(page->addSetupButton(), page.get()), topOf(page->setupCards()[0], page.get()));
    QSignalSpy wanted(page->meters(), &ListCard::addWanted);
    QTest::mouseClick(page->meters()->addButton(), Qt::LeftButton);
    EXPECT_EQ(wanted.count(), 1);
}

TEST_F(EquipmentPageTest, TheButtonsNameTheRowThatTheyActOn)
{
    const auto page = shownPage();
    ListCard& meters = *page->meters();
    EXPECT_EQ(meters.choice()->wholeText(), "Loop meter");
    meters.table()->setFocus();
    QTest::keyClick(meters.table(), Qt::Key_Down);
    EXPECT_EQ(meters.choice()->wholeText(), "Cabinet meter");
    EXPECT_EQ(meters.editButton()->accessibleName(), "Edit… Cabinet meter");
    EXPECT_EQ(meters.removeButton()->accessibleName(), "Remove Cabinet meter");
    meters.retireButton()->click();
    settle();
    settle();
    EXPECT_EQ(meters.choice()->wholeText(), "Cabinet meter") << "the choice stays";
    EXPECT_EQ(meters.retireButton()->accessibleName(), "Restore Cabinet meter");
    ListCard& plans = *page->plans();
    EXPECT_EQ(plans.choice()->wholeText(), "");
    EXPECT_FALSE(plans.editButton()->isEnabled());
    EXPECT_FALSE(plans.removeButton()->isEnabled());
    EXPECT_TRUE(plans.addButton()->isEnabled());
}

TEST_F(EquipmentPageTest, RetiringAndRemovingSayHowTheyDiffer)
{
    const auto page = shownPage();
    const QString retire =
        "Retire: Loop meter is no longer offered for new batches, but stays with "
        "the batches that used it.";
    EXPECT_EQ(page->meters()->retireButton()->toolTip(), retire);
    EXPECT_EQ(
        page->meters()->removeButton()->toolTip(),
        "Remove: Loop meter is deleted from the logbook, which is possible only while no batch "
        "uses it.");
    EXPECT_TRUE(page->setupCards()[0]->retireButton()->toolTip().startsWith("Retire: Loop is"));
    EXPECT_TRUE(page->setupCards()[0]->removeButton()->toolTip().startsWith("Remove: Loop is"));
}

TEST_F(EquipmentPageTest, PartsFoldWithTheirCountAndTotal)
{
    const auto page = shownPage();
    Card& parts = *page->setupCards()[0]->parts();
    EXPECT_TRUE(parts.isFolded());
    QStringList texts;
    for (const QLabel* label : parts.findChildren<QLabel*>())
        texts << label->text();
    EXPECT_TRUE(texts.contains("1 part · $43.00")) << core(texts.join(", "));
    EXPECT_EQ(parts.foldButton()->accessibleName(), "Parts of Loop");
    parts.foldButton()->setFocus();
    QTest::keyClick(parts.foldButton(), Qt::Key_Space);
    EXPECT_FALSE(parts.isFolded());
    EXPECT_EQ(parts.foldButton()->accessibleName(), "Parts of Loop");
    page->refresh();
    settle();
    EXPECT_FALSE(page->setupCards()[0]->parts()->isFolded()) << "it stays open";
    EXPECT_TRUE(page->setupCards()[1]->parts()->isHidden()) << "without parts";
}

TEST_F(EquipmentPageTest, ANarrowPageHasItsColumnsBelowEachOther)
{
    const auto page = shownPage();
    const auto left = [&](const QWidget* widget) {
        return widget->mapTo(page.get(), QPoint()).x();
    };
    EXPECT_GT(left(page->sensors()), left(page->safety()));
    page->resize(49 * page->fontMetrics().height(), 900);
    QCoreApplication::processEvents();
    EXPECT_EQ(left(page->sensors()), left(page->safety()));
    EXPECT_GT(topOf(page->sensors(), page.get()), topOf(page->safety(), page.get()));
}

TEST_F(EquipmentPageTest, SafetyIsOpenTheFirstTimeAKindIsShown)
{
    {
        const auto page = shownPage();
        EXPECT_FALSE(page->safety()->isFolded());
        page->refresh();
        settle();
        EXPECT_FALSE(page->safety()->isFolded()) << "it does not fold under the reader's eyes";
    }
    const auto page = shownPage();
    EXPECT_TRUE(page->safety()->isFolded());
    QTest::mouseClick(page->safety()->foldButton(), Qt::LeftButton);
    EXPECT_FALSE(page->safety()->isFolded());
    page->safety()->setFolded(true);
    addSetup("Tub", "ice bath");
    EXPECT_FALSE(page->safety()->isFolded()) << "a new kind";
    page->safety()->setFolded(true);
    addSetup("Tub 2", "Ice bath");
    EXPECT_TRUE(page->safety()->isFolded()) << "the same kind";
}

TEST_F(EquipmentPageTest, APageThatIsNotSeenShowsNothing)
{
    {
        EquipmentPage hidden(session);
        hidden.refresh();
        settle();
    }
    EXPECT_FALSE(shownPage()->safety()->isFolded());
}

TEST(SafetySentences, NameTheSetupsWhereNotAllAreConcerned)
{
    holdband::Setup loop;
    loop.name = "Loop";
    loop.kind = "coolant loop";
    holdband::Setup cabinet;
    cabinet.name = "Cabinet";
    cabinet.kind = "cabinet";
    const QStringList both = safetySentences({loop, cabinet});
    EXPECT_EQ(both[0],
              "Loop: Coolant near beer is propylene glycol and water, never ethylene glycol.");
    EXPECT_TRUE(both[1].startsWith("Cabinet: A closed cabinet"));
    EXPECT_TRUE(both.back().startsWith("Sealed refrigeration circuits"));
    EXPECT_EQ(both.size(), 7) << "each caution once";
    EXPECT_EQ(safetySentences({loop}).size(),
              static_cast<qsizetype>(results::cautionsFor(loop).size()));
    EXPECT_TRUE(safetySentences({loop})[0].startsWith("Mains power"));
    EXPECT_TRUE(safetySentences({}).isEmpty());
}

TEST(Ratings, SayWhichEndIsGood)
{
    EXPECT_EQ(ratingColumns({})[1].title, "1 poor … 5 good");
    holdband::Setup setup;
    setup.ratings = {{"noise", 2.0}};
    EXPECT_TRUE(ratingsText(setup).startsWith("Rated from 1 poor to 5 good: "))
        << core(ratingsText(setup));
}

TEST_F(EquipmentPageTest, TheSetupDialogSaysWhichEndOfARatingIsGood)
{
    SetupDialog dialog(session, {}, {});
    dialog.setAttribute(Qt::WA_DeleteOnClose, false);
    bool said = false;
    for (const QLabel* label : dialog.findChildren<QLabel*>())
        said = said || label->text().startsWith("1 is poor and 5 is good");
    EXPECT_TRUE(said);
    bool tip = false;
    for (const EditTable* table : dialog.findChildren<EditTable*>())
        tip = tip || table->toolTip().startsWith("1 is poor and 5 is good");
    EXPECT_TRUE(tip);
}

} // namespace holdband::ui::test

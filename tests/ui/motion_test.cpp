// Folding and zooming ease into place, or go there at once where motion is off.
#include "core/quantity/instant.h"
#include "ui/charts/time_view.h"
#include "ui/theme/card.h"
#include "ui/theme/motion.h"

#include <QLabel>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QVBoxLayout>
#include <gtest/gtest.h>

namespace holdband::ui::test {

namespace {

class Motion : public testing::Test {
protected:
    void TearDown() override { setMotion(false); }

    static Instant hour(int hours) { return instantFromMs(0) + std::chrono::hours{hours}; }
};

/// A foldable card that is shown.
struct ShownCard {
    ShownCard()
    {
        auto* layout = new QVBoxLayout(&page);
        card = new Card(QStringLiteral("Journal"), &page);
        layout->addWidget(card);
        label = new QLabel(QString(40, u'\n'), card);
        card->contents()->addWidget(label);
        card->makeFoldable(true);
        page.show();
    }
    QWidget page;
    Card* card;
    QLabel* label;
};

} // namespace

TEST_F(Motion, IsOffUntilItIsAllowed)
{
    EXPECT_EQ(motionMs(), 0);
    setMotion(true);
    EXPECT_EQ(motionMs(), 120);
}

TEST_F(Motion, WithoutItAFoldOpensAtOnce)
{
    const ShownCard shown;
    shown.card->setFolded(false);
    EXPECT_TRUE(shown.label->isVisible());
    EXPECT_EQ(shown.label->parentWidget()->maximumHeight(), QWIDGETSIZE_MAX);
}

TEST_F(Motion, AFoldOpensBitByBitAndIsFreeAfterwards)
{
    setMotion(true);
    const ShownCard shown;
    QWidget* body = shown.label->parentWidget();
    shown.card->setFolded(false);
    EXPECT_TRUE(shown.label->isVisible());
    EXPECT_LT(body->maximumHeight(), shown.label->sizeHint().height());
    ASSERT_TRUE(QTest::qWaitFor([&] { return body->maximumHeight() == QWIDGETSIZE_MAX; }, 5'000));
    EXPECT_TRUE(shown.label->isVisible());
}

TEST_F(Motion, AFoldThatClosesIsHiddenAtTheEnd)
{
    const ShownCard shown;
    shown.card->setFolded(false);
    setMotion(true);
    shown.card->setFolded(true);
    EXPECT_TRUE(shown.card->isFolded());
    EXPECT_TRUE(shown.label->isVisible()) << "while it closes";
    ASSERT_TRUE(QTest::qWaitFor([&] { return !shown.label->isVisible(); }, 5'000));
}

TEST_F(Motion, AFoldThatTurnsRoundEndsOpen)
{
    setMotion(true);
    const ShownCard shown;
    QWidget* body = shown.label->parentWidget();
    shown.card->setFolded(false);
    shown.card->setFolded(true);
    shown.card->setFolded(false);
    ASSERT_TRUE(QTest::qWaitFor([&] { return body->maximumHeight() == QWIDGETSIZE_MAX; }, 5'000));
    EXPECT_TRUE(shown.label->isVisible());
}

TEST_F(Motion, AZoomPassesThroughWhatLiesBetween)
{
    TimeView view;
    view.reset({hour(0), hour(1000)});
    setMotion(true);
    QSignalSpy changes(&view, &TimeView::shownChanged);
    view.show({hour(100), hour(200)}, 0.0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return view.shown() == Span{hour(100), hour(200)}; }, 5'000));
    EXPECT_GE(changes.count(), 2);
    view.showAll();
    ASSERT_TRUE(QTest::qWaitFor([&] { return view.window().showsAll(); }, 5'000));
}

TEST_F(Motion, ASecondZoomStartsWhereTheFirstWouldEnd)
{
    TimeView view;
    view.reset({hour(0), hour(1000)});
    setMotion(true);
    view.zoom(0.5);
    view.zoom(0.5);
    ASSERT_TRUE(QTest::qWaitFor([&] { return view.shown() == Span{hour(375), hour(625)}; }, 5'000));
}

TEST_F(Motion, APanEndsAZoom)
{
    TimeView view;
    view.reset({hour(0), hour(1000)});
    setMotion(true);
    view.show({hour(100), hour(200)}, 0.0);
    view.moveBy(std::chrono::hours{10});
    EXPECT_EQ(view.shown(), (Span{hour(110), hour(210)}));
    QTest::qWait(200);
    EXPECT_EQ(view.shown(), (Span{hour(110), hour(210)}));
}

} // namespace holdband::ui::test

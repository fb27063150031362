// Pages with nothing to show: each says in one sentence what will be there, with one button.
#include "tests/ui/sample_window.h"
#include "ui/comparison/side_by_side_page.h"
#include "ui/equipment/equipment_page.h"
#include "ui/forecast/next_batch_page.h"
#include "ui/imports/imports_page.h"
#include "ui/rounds/rounds_page.h"
#include "ui/run/run_page.h"
#include "ui/theme/empty_page.h"
#include "ui/window/page_row.h"
#include "ui/window/pages.h"

#include <QImage>
#include <QPushButton>

namespace holdband::ui::test {

namespace {

constexpr PageId everyPage[] = {PageId::rounds,    PageId::run,       PageId::sideBySide,
                                PageId::nextBatch, PageId::equipment, PageId::imports};

EmptyPage* emptyOf(Pages& pages, PageId page)
{
    switch (page) {
    case PageId::rounds:
        return pages.rounds()->empty();
    case PageId::run:
        return pages.run()->empty();
    case PageId::sideBySide:
        return pages.sideBySide()->empty();
    case PageId::nextBatch:
        return pages.nextBatch()->empty();
    case PageId::equipment:
        return pages.equipment()->empty();
    case PageId::imports:
        break;
    }
    return pages.imports()->empty();
}

/// Visible buttons that are styled as the one to press first.
QList<QPushButton*> primaryButtons(const QWidget& within)
{
    QList<QPushButton*> primary;
    for (QPushButton* button : within.findChildren<QPushButton*>()) {
        if (button->isVisible() && button->property("role").toByteArray() == "main")
            primary << button;
    }
    return primary;
}

bool showsMoreThanOneColour(const QImage& image)
{
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (image.pixel(x, y) != image.pixel(0, 0))
                return true;
        }
    }
    return false;
}

class EmptyPages : public WindowTest {
protected:
    std::unique_ptr<MainWindow> openEmpty()
    {
        const QString logbook = path(QStringLiteral("empty.holdband"));
        EXPECT_TRUE(store::LogbookFile::create(logbook.toStdString(), {}, now));
        auto window = openWindow(logbook);
        for (int i = 0; i < 3; ++i)
            settle(*window);
        return window;
    }
};

TEST_F(EmptyPages, SayWhatWillBeThereWithOneButton)
{
    const auto window = openEmpty();
    for (const PageId page : everyPage) {
        window->setPage(page);
        settle(*window);
        const EmptyPage* empty = emptyOf(*window->pages(), page);
        SCOPED_TRACE(empty->sentence().toStdString());
        ASSERT_TRUE(empty->isVisible());
        EXPECT_TRUE(empty->sentence().endsWith(u'.'));
        EXPECT_EQ(primaryButtons(*window->pages()), QList<QPushButton*>{empty->button()});
        EXPECT_TRUE(empty->button()->isEnabled());
    }
}

TEST_F(EmptyPages, StandCentredWithAnExampleThatIsNotReadOut)
{
    const auto window = openEmpty();
    for (const QSize size : {QSize(1024, 680), QSize(1600, 1000)}) {
        window->resize(size);
        for (const PageId page : everyPage) {
            window->setPage(page);
            settle(*window);
            EmptyPage* empty = emptyOf(*window->pages(), page);
            SCOPED_TRACE(empty->sentence().toStdString());
            const QRect button = empty->button()->geometry();
            EXPECT_NEAR(button.center().x(), empty->rect().center().x(), 2);
            EXPECT_TRUE(empty->rect().contains(button));
            ASSERT_GT(empty->exampleBox().height(), 20);
            EXPECT_TRUE(showsMoreThanOneColour(empty->grab(empty->exampleBox()).toImage()));
            EXPECT_EQ(empty->accessibleName(), empty->sentence()) << "nothing else to read out";
        }
    }
}

TEST_F(EmptyPages, GoAwayWhenThereIsSomethingToShow)
{
    const auto window = openWindow(makeLogbook());
    for (int i = 0; i < 3; ++i)
        settle(*window);
    for (const PageId page : everyPage) {
        window->setPage(page);
        settle(*window);
        EXPECT_FALSE(emptyOf(*window->pages(), page)->isVisible()) << static_cast<int>(page);
        EXPECT_LE(primaryButtons(*window->pages()).size(), 1) << static_cast<int>(page);
    }
}

} // namespace

} // namespace holdband::ui::test

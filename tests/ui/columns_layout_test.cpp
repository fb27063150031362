#include "ui/theme/columns_layout.h"

#include <QWidget>
#include <gtest/gtest.h>

namespace holdband::ui::test {

namespace {

class Columns {
public:
    Columns()
    {
        m_layout = new ColumnsLayout(10);
        m_box.setLayout(m_layout);
    }
    QWidget* add(int share, int least, int height)
    {
        auto* widget = new QWidget(&m_box);
        widget->setMinimumSize(least, height);
        m_layout->addColumn(widget, share);
        return widget;
    }
    void widen(int width) { m_layout->setGeometry({0, 0, width, m_layout->heightForWidth(width)}); }
    ColumnsLayout& layout() { return *m_layout; }

private:
    QWidget m_box;
    ColumnsLayout* m_layout;
};

} // namespace

TEST(ColumnsLayout, FillsTheWidthByShares)
{
    Columns columns;
    const QWidget* a = columns.add(3, 100, 40);
    const QWidget* b = columns.add(1, 100, 60);
    columns.widen(290); // 80 are left over: 60 and 20
    EXPECT_EQ(a->geometry(), QRect(0, 0, 160, 60)) << "as high as its neighbour";
    EXPECT_EQ(b->geometry(), QRect(170, 0, 120, 60));
}

TEST(ColumnsLayout, GoesOnInTheNextLine)
{
    Columns columns;
    const QWidget* a = columns.add(1, 100, 40);
    const QWidget* b = columns.add(1, 100, 60);
    const QWidget* c = columns.add(1, 150, 30);
    columns.widen(220);
    EXPECT_EQ(a->geometry(), QRect(0, 0, 105, 60));
    EXPECT_EQ(b->geometry(), QRect(115, 0, 105, 60));
    EXPECT_EQ(c->geometry(), QRect(0, 70, 220, 30));
    EXPECT_EQ(columns.layout().heightForWidth(220), 100);
    EXPECT_EQ(columns.layout().minimumSize().width(), 150) << "below each other";
}

TEST(ColumnsLayout, LeavesOutWhatIsHidden)
{
    Columns columns;
    columns.add(1, 100, 40)->hide();
    const QWidget* b = columns.add(1, 100, 60);
    columns.widen(220);
    EXPECT_EQ(b->geometry(), QRect(0, 0, 220, 60));
}

TEST(ColumnsLayout, WithoutAShareAColumnTakesWhatItNeeds)
{
    Columns columns;
    const QWidget* a = columns.add(1, 100, 40);
    const QWidget* b = columns.add(0, 80, 40);
    columns.widen(300);
    EXPECT_EQ(a->width(), 210);
    EXPECT_EQ(b->width(), 80);
}

} // namespace holdband::ui::test

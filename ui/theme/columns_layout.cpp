#include "ui/theme/columns_layout.h"

#include <QWidget>
#include <algorithm>

namespace holdband::ui {

ColumnsLayout::ColumnsLayout(int gap) : m_gap(gap)
{
    setContentsMargins(0, 0, 0, 0);
}

ColumnsLayout::~ColumnsLayout()
{
    while (QLayoutItem* item = takeAt(0))
        delete item;
}

void ColumnsLayout::addColumn(QWidget* widget, int share, int least)
{
    addWidget(widget);
    m_columns.back().share = share;
    m_columns.back().least = least;
}

void ColumnsLayout::addItem(QLayoutItem* item)
{
    m_columns.push_back({item, 1, 0});
}

QLayoutItem* ColumnsLayout::itemAt(int index) const
{
    return index >= 0 && index < m_columns.size() ? m_columns[index].item : nullptr;
}

QLayoutItem* ColumnsLayout::takeAt(int index)
{
    return index >= 0 && index < m_columns.size() ? m_columns.takeAt(index).item : nullptr;
}

int ColumnsLayout::Column::width() const
{
    const int own = share > 0 ? item->minimumSize().width() : item->sizeHint().width();
    return std::max(own, least);
}

int ColumnsLayout::heightOf(const Line& line)
{
    int height = 0;
    for (const Placed& placed : line) {
        QLayoutItem* item = placed.column->item;
        height = std::max(height, item->hasHeightForWidth() ? item->heightForWidth(placed.width)
                                                            : item->sizeHint().height());
    }
    return height;
}

/// Each gets what it needs, and its share of the rest.
void ColumnsLayout::spread(Line& line, int width) const
{
    int rest = width - m_gap * static_cast<int>(line.size() - 1);
    int shares = 0;
    for (const Placed& placed : line) {
        rest -= placed.width;
        shares += placed.column->share;
    }
    for (Placed& placed : line) {
        if (shares == 0)
            break;
        const int own = std::max(0, rest) * placed.column->share / shares;
        placed.width += own;
        rest -= own;
        shares -= placed.column->share;
    }
    if (line.size() == 1)
        line.front().width = std::min(line.front().width, width);
}

QList<ColumnsLayout::Line> ColumnsLayout::linesFor(int width) const
{
    QList<Line> lines;
    int used = 0;
    for (const Column& column : m_columns) {
        if (column.item->isEmpty())
            continue;
        const int own = column.width();
        if (lines.isEmpty() || used + m_gap + own > width) {
            lines.push_back({});
            used = -m_gap;
        }
        lines.back().push_back({&column, own});
        used += m_gap + own;
    }
    for (Line& line : lines)
        spread(line, width);
    return lines;
}

int ColumnsLayout::heightForWidth(int width) const
{
    int height = -m_gap;
    for (const Line& line : linesFor(width))
        height += m_gap + heightOf(line);
    return std::max(0, height);
}

QSize ColumnsLayout::sizeHint() const
{
    QSize size(-m_gap, 0);
    for (const Column& column : m_columns) {
        if (!column.item->isEmpty())
            size = {size.width() + m_gap + column.width(),
                    std::max(size.height(), column.item->sizeHint().height())};
    }
    return size.expandedTo({0, 0});
}

QSize ColumnsLayout::minimumSize() const
{
    QSize size(0, 0);
    for (const Column& column : m_columns) {
        if (!column.item->isEmpty())
            size = size.expandedTo(column.item->minimumSize());
    }
    return size;
}

void ColumnsLayout::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    int y = rect.y();
    for (const Line& line : linesFor(rect.width())) {
        const int height = heightOf(line);
        int x = rect.x();
        for (const Placed& placed : line) {
            placed.column->item->setGeometry({x, y, placed.width, height});
            x += placed.width + m_gap;
        }
        y += height + m_gap;
    }
}

} // namespace holdband::ui

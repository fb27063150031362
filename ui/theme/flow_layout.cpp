#include "ui/theme/flow_layout.h"

#include <algorithm>

namespace holdband::ui {

FlowLayout::FlowLayout(int across, int down) : m_across(across), m_down(down)
{
    setContentsMargins(0, 0, 0, 0);
}

FlowLayout::~FlowLayout()
{
    while (QLayoutItem* item = takeAt(0))
        delete item;
}

void FlowLayout::addItem(QLayoutItem* item)
{
    m_items.push_back(item);
}

QLayoutItem* FlowLayout::takeAt(int index)
{
    return index >= 0 && index < m_items.size() ? m_items.takeAt(index) : nullptr;
}

int FlowLayout::heightForWidth(int width) const
{
    return arrange({0, 0, width, 0}, false);
}

QSize FlowLayout::sizeHint() const
{
    QSize size(0, 0);
    for (const QLayoutItem* item : m_items) {
        if (item->isEmpty())
            continue;
        const QSize each = item->sizeHint();
        size = {size.width() + (size.width() > 0 ? m_across : 0) + each.width(),
                std::max(size.height(), each.height())};
    }
    return size;
}

QSize FlowLayout::minimumSize() const
{
    QSize size(0, 0);
    for (const QLayoutItem* item : m_items) {
        if (!item->isEmpty())
            size = size.expandedTo(item->minimumSize());
    }
    return size;
}

void FlowLayout::setGeometry(const QRect& rect)
{
    QLayout::setGeometry(rect);
    arrange(rect, true);
}

int FlowLayout::arrange(const QRect& rect, bool apply) const
{
    int x = rect.x();
    int y = rect.y();
    int line = 0;
    for (QLayoutItem* item : m_items) {
        if (item->isEmpty())
            continue;
        const QSize size = item->sizeHint();
        if (x > rect.x() && x + size.width() > rect.x() + rect.width()) {
            x = rect.x();
            y += line + m_down;
            line = 0;
        }
        if (apply)
            item->setGeometry({x, y, std::min(size.width(), rect.width()), size.height()});
        x += size.width() + m_across;
        line = std::max(line, size.height());
    }
    return y + line - rect.y();
}

} // namespace holdband::ui

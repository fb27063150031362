#include "ui/theme/plain_tips.h"

#include <QAbstractItemView>
#include <QHeaderView>
#include <QHelpEvent>
#include <QTextDocument>
#include <QToolTip>

namespace holdband::ui {

namespace {

constexpr qsizetype oneLine = 70; ///< letters; a plain-text tooltip is never wrapped

QString headerTip(const QHeaderView& header, QPoint at)
{
    const int section = header.logicalIndexAt(at);
    return section < 0 || !header.model()
               ? QString()
               : header.model()
                     ->headerData(section, header.orientation(), Qt::ToolTipRole)
                     .toString();
}

/// True if the view has a text for that place.
bool showOfView(const QAbstractItemView& view, const QHelpEvent& help)
{
    QWidget* viewport = view.viewport();
    const auto* header = qobject_cast<const QHeaderView*>(&view);
    const QModelIndex index = header ? QModelIndex() : view.indexAt(help.pos());
    const QString words =
        header ? headerTip(*header, help.pos()) : index.data(Qt::ToolTipRole).toString();
    if (words.isEmpty())
        return false;
    QToolTip::showText(help.globalPos(), tip(words), viewport,
                       header ? QRect() : view.visualRect(index));
    return true;
}

} // namespace

QString tip(const QString& words)
{
    return words.size() <= oneLine && !Qt::mightBeRichText(words)
               ? words
               : Qt::convertFromPlainText(words, Qt::WhiteSpaceNormal);
}

bool PlainTips::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() != QEvent::ToolTip)
        return QObject::eventFilter(watched, event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const auto* widget = qobject_cast<QWidget*>(watched);
    const auto* view = widget ? qobject_cast<QAbstractItemView*>(widget->parentWidget()) : nullptr;
    if (view && view->viewport() == widget)
        return showOfView(*view, *help);
    if (!widget || widget->toolTip().isEmpty())
        return QObject::eventFilter(watched, event);
    QToolTip::showText(help->globalPos(), tip(widget->toolTip()), const_cast<QWidget*>(widget));
    return true;
}

} // namespace holdband::ui

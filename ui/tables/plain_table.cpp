#include "ui/tables/plain_table.h"

#include "ui/theme/plain_tips.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QToolTip>

namespace holdband::ui {

namespace {

constexpr int explainedFor = 60'000; ///< milliseconds; any key or click closes it earlier

} // namespace

PlainTable::PlainTable(const QString& name, QWidget* parent) : QTableView(parent)
{
    setAccessibleName(name);
    setShowGrid(false);
    setFrameShape(QFrame::StyledPanel); // drawn if the table has the focus
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionBehavior(QAbstractItemView::SelectRows);
    setSelectionMode(QAbstractItemView::SingleSelection);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setTextElideMode(Qt::ElideRight);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setMinimumSectionSize(10);
    verticalHeader()->setDefaultSectionSize(fontMetrics().height() + 5);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsClickable(false);
    horizontalHeader()->setMinimumSectionSize(20);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void PlainTable::setWideColumn(int column)
{
    m_wide = column;
    fit();
}

void PlainTable::setModel(QAbstractItemModel* newModel)
{
    QTableView::setModel(newModel);
    connect(newModel, &QAbstractItemModel::modelReset, this, &PlainTable::fit);
    fit();
}

void PlainTable::fit()
{
    QHeaderView* header = horizontalHeader();
    for (int i = 0; i < header->count(); ++i)
        header->setSectionResizeMode(i, i == m_wide ? QHeaderView::Stretch
                                                    : QHeaderView::ResizeToContents);
    updateGeometry();
}

QSize PlainTable::sizeHint() const
{
    const int rows = model() ? model()->rowCount() : 0;
    const int header = horizontalHeader()->isHidden() ? 0 : horizontalHeader()->sizeHint().height();
    int width = 0;
    for (int i = 0; model() && i < model()->columnCount(); ++i)
        width += std::max(sizeHintForColumn(i), horizontalHeader()->sectionSizeHint(i)) + 2;
    return {std::max(width, 120), header + rows * verticalHeader()->defaultSectionSize() + 4};
}

QSize PlainTable::minimumSizeHint() const
{
    return {120, sizeHint().height()};
}

/// Shows the tooltip of the current cell, as if the pointer rested on it: how the figure was
/// computed.
void PlainTable::explainCurrent()
{
    const QString why = currentIndex().data(Qt::ToolTipRole).toString();
    if (!why.isEmpty())
        QToolTip::showText(viewport()->mapToGlobal(visualRect(currentIndex()).bottomLeft()),
                           tip(why), this, {}, explainedFor);
}

/// F1 on a figure with an explanation is handled by the table, not by the window.
bool PlainTable::event(QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride &&
        static_cast<const QKeyEvent*>(event)->key() == Qt::Key_F1 &&
        !currentIndex().data(Qt::ToolTipRole).toString().isEmpty())
        event->accept();
    return QTableView::event(event);
}

void PlainTable::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_F1) {
        explainCurrent();
        event->accept();
        return;
    }
    if ((event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) &&
        currentIndex().isValid()) {
        Q_EMIT activated(currentIndex());
        event->accept();
        return;
    }
    QTableView::keyPressEvent(event);
}

} // namespace holdband::ui

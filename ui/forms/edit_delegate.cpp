#include "ui/forms/edit_delegate.h"

#include "ui/forms/day_picker.h"
#include "ui/forms/edit_table_model.h"
#include "ui/theme/theme.h"

#include <QComboBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>

namespace holdband::ui {

QWidget* EditDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                    const QModelIndex& index) const
{
    const QString title = index.model()->headerData(index.column(), Qt::Horizontal).toString();
    const QStringList choices = index.data(EditTableModel::ChoicesRole).toStringList();
    QWidget* editor = nullptr;
    if (choices.isEmpty()) {
        auto* line = new QLineEdit(parent);
        setRole(line, "cell");
        editor = line;
    } else {
        auto* list = new QComboBox(parent);
        list->addItems(choices);
        editor = list;
    }
    editor->setAccessibleName(title);
    if (index.data(EditTableModel::TimeRole).toBool())
        new DayPicker(qobject_cast<QLineEdit*>(editor));
    return editor;
}

void EditDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                        const QModelIndex&) const
{
    editor->setGeometry(option.rect); // fills the cell, so that nothing shows from behind
}

void EditDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const
{
    const QString text = index.data(Qt::EditRole).toString();
    if (auto* list = qobject_cast<QComboBox*>(editor)) {
        list->setCurrentText(text);
    } else if (auto* line = qobject_cast<QLineEdit*>(editor)) {
        line->setText(text);
        line->selectAll();
    }
}

void EditDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                const QModelIndex& index) const
{
    if (const auto* list = qobject_cast<QComboBox*>(editor))
        model->setData(index, list->currentText());
    else if (const auto* line = qobject_cast<QLineEdit*>(editor))
        model->setData(index, line->text());
}

QSize EditDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const
{
    constexpr int lineFrame = 18;
    constexpr int listFrame = 38;
    constexpr int calendarButton = 24;
    const QFontMetrics metrics(option.font);
    int width =
        metrics.horizontalAdvance(index.data(EditTableModel::SampleRole).toString()) + lineFrame;
    if (index.data(EditTableModel::TimeRole).toBool())
        width += calendarButton;
    for (const QString& choice : index.data(EditTableModel::ChoicesRole).toStringList())
        width = std::max(width, metrics.horizontalAdvance(choice) + listFrame);
    return QStyledItemDelegate::sizeHint(option, index).expandedTo({width, 0});
}

bool EditDelegate::eventFilter(QObject* editor, QEvent* event)
{
    auto* widget = qobject_cast<QWidget*>(editor);
    const auto* days = editor->findChild<DayPicker*>();
    if (event->type() == QEvent::FocusOut && days && days->calendar())
        return false; // its calendar has the focus: the cell is still being edited
    const bool tab = widget && event->type() == QEvent::KeyPress &&
                     static_cast<const QKeyEvent*>(event)->key() == Qt::Key_Tab;
    if (!tab)
        return QStyledItemDelegate::eventFilter(editor, event);
    Q_EMIT commitData(widget);
    Q_EMIT closeEditor(widget, QAbstractItemDelegate::NoHint);
    Q_EMIT tabbed();
    return true;
}

void EditDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                         const QModelIndex& index) const
{
    QStyledItemDelegate::paint(painter, option, index);
    const Colours& colours = coloursOf(option.palette);
    const QRectF cell = QRectF(option.rect).adjusted(1.5, 1.5, -1.5, -1.5);
    if (!index.data(EditTableModel::RefusedRole).toString().isEmpty()) {
        painter->setPen(QPen(colours.warn, 1.6, Qt::DashLine));
        painter->drawRect(cell);
    } else if (option.state & QStyle::State_HasFocus) {
        painter->setPen(QPen(colours.focus, 1.6));
        painter->drawRect(cell);
    }
}

} // namespace holdband::ui
